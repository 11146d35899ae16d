import type { CalendarId } from "../../base";
import type { BuildCode, DetailOf } from "../codes";
import type { CalendarSpec, Site } from "../model";
import type { AmountContext } from "./amounts";
import type { Speaker } from "./names";
import type { ReachContext } from "./places";

/** Everything that putting one member together may look up. */
export interface Context extends AmountContext, ReachContext {
  readonly usual: CalendarId;
  readonly start: string;
  readonly units: Site["units"];
  readonly calendars: readonly CalendarSpec[];
}

export function sayAt<C extends BuildCode>(context: Context, speaker: Speaker, key: string, code: C, detail: DetailOf<C>): void {
  context.names.say(code, { list: speaker.list, id: speaker.id, key }, detail);
}
