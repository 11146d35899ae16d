import { asId, type StepId } from "../../base";
import type { Step, Wait } from "../model";
import { linkMaybe } from "./amounts";
import type { Context } from "./context";
import type { Written } from "./groups";
import type { Speaker } from "./names";

/** Steps that a wait starts from or leads to: of a trial in rounds the last or the first, of a group each copy. */
export function ends(ref: string, end: "from" | "to", context: Context, speaker: Speaker, key: string, part: string): readonly StepId[] {
  const ids = context.names.many("step", ref, speaker, key, part);
  const entry = context.names.entry("step", ref);
  if (!entry || entry.group || entry.all.length < 2) return ids;
  return end === "from" ? ids.slice(-1) : ids.slice(0, 1);
}

const plainWait = (from: StepId, to: StepId, least: Wait["least"]): Wait => ({
  id: asId(`${from}>${to}`),
  name: "",
  from,
  to,
  fromEnd: "finish",
  toEnd: "start",
  least,
  most: null,
  visits: null,
  why: "",
  plain: true,
});

/** Waits written at a step: what it comes after, what a trial decides, the gap between a trial's rounds. */
export function waitsOfStep(written: Written<"steps">, steps: readonly Step[], context: Context): Wait[] {
  const { draft } = written;
  const waits: Wait[] = [];
  const speaker: Speaker = { list: "steps", id: draft.id, copy: written.copy };
  const first = steps[0];
  const last = steps.at(-1);
  if (!first || !last) return waits;
  draft.after.forEach((ref, i) => {
    for (const from of ends(ref, "from", context, speaker, "after", draft.after.length > 1 ? String(i + 1) : ""))
      waits.push(plainWait(from, first.id, null));
  });
  const gap = draft.trial === null ? null : linkMaybe(draft.trial.gap, context, speaker, "trial", "gap");
  steps.slice(1).forEach((step, i) => {
    waits.push(plainWait((steps[i] ?? first).id, step.id, gap));
  });
  for (const to of last.trial?.decides ?? []) waits.push(plainWait(last.id, to, null));
  return waits;
}
