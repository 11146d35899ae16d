import { limits } from "../../base";
import type { Amount, ClockRef, Step } from "../model";
import { type AmountDraft, thousandths } from "../read/amounts";
import type { Names, Speaker } from "./names";

/** What amounts refer to: calendars and what steps pour, by the id the steps are read as. */
export interface AmountContext {
  readonly names: Names;
  readonly pours: ReadonlyMap<string, NonNullable<Step["pour"]>>;
}

/** Of a pour: a share or a stress of its strength, or the warmth since it was placed. */
function ofPour(
  draft: Extract<AmountDraft, { pour: string }>,
  context: AmountContext,
  speaker: Speaker,
  key: string,
  part: string,
): [ClockRef, number] | null {
  const pour = context.names.one("step", draft.pour, speaker, key, part);
  if (pour === null) return null;
  const where = { list: speaker.list, id: speaker.id, key };
  const spec = context.pours.get(pour);
  if (!spec) {
    if (!context.names.isUnreadable("pour")) context.names.say("build.not-a-pour", where, { part, value: draft.pour });
    return null;
  }
  if (draft.kind === "warm") return [{ kind: "warm", pour }, draft.amount];
  const amount = draft.kind === "share" ? draft.amount : thousandths(draft.stress_MPa / spec.strength_MPa);
  if (amount > limits.strengthShare.most * 10) {
    context.names.say("build.over-strength", where, { part, value: draft.text, pour, percent: Math.round(amount / 10) });
  }
  return [{ kind: "strength", pour }, amount];
}

function working(
  kind: "working" | "days",
  draft: { calendar: string; amount: number },
  names: Names,
  speaker: Speaker,
  key: string,
  part: string,
): [ClockRef, number] | null {
  const calendar = names.one("calendar", draft.calendar, speaker, key, part);
  return calendar === null ? null : [{ kind, calendar } as ClockRef, draft.amount];
}

/** An amount with what it refers to looked up; null after a finding. */
export function linkAmount(draft: AmountDraft, context: AmountContext, speaker: Speaker, key: string, part = ""): Amount | null {
  const { text, from } = draft;
  if (draft.kind === "elapsed") return { on: { kind: "elapsed" }, amount: draft.amount, text, from };
  const linked =
    draft.kind === "working" || draft.kind === "days"
      ? working(draft.kind, draft, context.names, speaker, key, part)
      : ofPour(draft, context, speaker, key, part);
  return linked && { on: linked[0], amount: linked[1], text, from };
}

export function linkMaybe(draft: AmountDraft | null, context: AmountContext, speaker: Speaker, key: string, part = ""): Amount | null {
  return draft === null ? null : linkAmount(draft, context, speaker, key, part);
}
