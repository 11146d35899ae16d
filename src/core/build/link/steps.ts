import { asId, type StepId } from "../../base";
import type { Step, Wait } from "../model";
import { linkMaybe } from "./amounts";
import { type Context, sayAt } from "./context";
import type { Written } from "./groups";
import type { Speaker } from "./names";
import { linkReaches } from "./places";
import { ends, waitsOfStep } from "./plain-waits";

const none: readonly never[] = [];

/** A step as linked, with the waits that are written at it. */
export interface LinkedStep {
  /** One, or a trial's rounds in order. */
  readonly steps: readonly Step[];
  readonly waits: readonly Wait[];
}

const speakerOf = (written: Written<"steps">): Speaker => ({ list: "steps", id: written.draft.id, copy: written.copy });

function checkDates(step: Step, context: Context, speaker: Speaker): void {
  for (const [key, value] of [
    ["deadline", step.deadline],
    ["fixed", step.fixed],
    ["done", step.done?.start ?? null],
  ] as const) {
    if (value !== null && value.slice(0, 10) < context.start)
      sayAt(context, speaker, key, "build.before-start", { value, start: context.start });
  }
}

function leans(written: Written<"steps">, context: Context, speaker: Speaker): Step["leansOn"] {
  return written.draft.leansOn.flatMap((lean, i) => {
    const part = String(i + 1);
    const once = linkMaybe(lean.once, context, speaker, "leansOn", `${part}.once`);
    return context.names.many("piece", lean.piece, speaker, "leansOn", part).map((piece) => ({ piece, once }));
  });
}

function linkOne(written: Written<"steps">, context: Context): Step {
  const { draft, id } = written;
  const { names } = context;
  const speaker = speakerOf(written);
  const puts = names.list("piece", draft.puts, speaker, "puts");
  const takes = names.list("piece", draft.takes, speaker, "takes");
  const moved = [...puts, ...takes];
  const reaches = linkReaches(draft.reaches, moved.length === 1 ? (moved[0] ?? null) : null, context, speaker, "reaches");
  const step: Step = {
    id: asId(id),
    ...draft.own,
    place: draft.place === null ? (reaches[0]?.any[0]?.place ?? null) : names.one("place", draft.place, speaker, "place"),
    calendar: draft.calendar === null ? context.usual : (names.one("calendar", draft.calendar, speaker, "calendar") ?? context.usual),
    reaches,
    puts: draft.closes.length > 0 ? [...puts, asId(id)] : puts,
    takes,
    leansOn: draft.leansOn.length === 0 ? none : leans(written, context, speaker),
    alone: names.list("place", draft.alone, speaker, "alone"),
    needs: names.list("delivery", draft.needs, speaker, "needs"),
    equipment: draft.equipment.flatMap((item) => {
      const of = names.one("equipment", item.of, speaker, "equipment");
      return of === null ? [] : [{ of, number: item.number }];
    }),
    holdPoint: draft.holdPoint === null ? null : { places: names.list("place", draft.holdPoint, speaker, "holdPoint") },
    trial:
      draft.trial === null ? null : { rounds: draft.trial.rounds, round: 1, decides: decided(written, context), what: draft.trial.what },
    group: written.membership,
  };
  checkDates(step, context, speaker);
  return step;
}

/** The steps that rest on a trial; of one that is itself a trial in rounds, its first. */
function decided(written: Written<"steps">, context: Context): readonly StepId[] {
  const speaker = speakerOf(written);
  return (written.draft.trial?.decides ?? none).flatMap((ref) => ends(ref, "to", context, speaker, "trial", ""));
}

/**
 * A trial in rounds is that many steps: what it puts up goes up in the first and comes down in the last, and only the ends keep its dates.
 */
function rounds(step: Step, id: string): readonly Step[] {
  const count = step.trial?.rounds ?? 1;
  if (!step.trial || count < 2) return [step];
  const trial = step.trial;
  return Array.from(
    { length: count },
    (_, i): Step => ({
      ...step,
      id: asId(`${id}#${i + 1}`),
      puts: i === 0 ? step.puts : none,
      takes: i === count - 1 ? step.takes : none,
      notBefore: i === 0 ? step.notBefore : null,
      fixed: i === 0 ? step.fixed : null,
      deadline: i === count - 1 ? step.deadline : null,
      trial: { ...trial, round: i + 1 },
      ...(i === 0 || step.begun === null ? {} : unbegun(step.begun.whole_min)),
    }),
  );
}

/** What is left is left of the first round. */
const unbegun = (likely_min: number): Pick<Step, "work" | "begun"> => ({
  work: { low_min: likely_min, likely_min, high_min: likely_min },
  begun: null,
});

export function linkStep(written: Written<"steps">, context: Context): LinkedStep {
  const steps = rounds(linkOne(written, context), written.id);
  return { steps, waits: waitsOfStep(written, steps, context) };
}
