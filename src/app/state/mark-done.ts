import type { LocalMoment } from "../../core/build";
import { tick } from "../../core/edit";
import type { Desk } from "./desk";
import { shownName } from "./names";

/** Ticks a step as done as it was planned, or takes the tick off (null), and says so. */
export function markDone(desk: Desk, step: string, planned: { readonly start: LocalMoment; readonly finish: LocalMoment } | null): void {
  const { build } = desk;
  if (build === null) return;
  const name = shownName(build.steps[build.at.step.get(step as never) ?? -1]);
  desk.edit(tick(build, step, planned, desk.document), planned === null ? `take the tick off “${name}”` : `tick “${name}”`);
  desk.say(`${name} is ${planned === null ? "not " : ""}done.`);
}
