import { never } from "../base";
import type { Build, Solid } from "../build";
import type { PieceSpan, Plan } from "./plan";
import { carriesFrom } from "./solid-carries";

/**
 * How far a body has got. One with a pour goes through the first seven:
 * not yet: neither a form of it stands nor are its bars in. formed: some of its form stands, its bars are not all in. bars in: all steps of its bars are
 * done, with or without a form. poured: from the start of its placing to a day after its finish, while it is fresh. curing: from then until all of its form
 * that comes off is gone; where it has none, until it carries. stripped: its form is gone and it does not carry yet. carrying: its form is gone and what its
 * strength is waited for may be (`carriesFrom`).
 * One without: not yet: none of its pieces is being put up. under way: the first is, and not all of them stand. stands: all that have not gone do; without
 * pieces it stands from the start. Both end as gone: all of its pieces have been taken down or have gone by themselves.
 */
export type SolidState = "not yet" | "formed" | "bars in" | "poured" | "curing" | "stripped" | "carrying" | "under way" | "stands" | "gone";

/** What a body is and whether some of its form stands, from an instant on (minutes since the build's epoch). */
export interface SolidStage {
  readonly from: number;
  readonly state: SolidState;
  readonly form: boolean;
}

/** Concrete is fresh for about a day: the next morning it bears a hand and is kept wet (common practice, no source). */
const fresh_min = 1440;

/** The stages of every body in time order, the first from before the build; the same object for the same plan and bodies. Without dates nothing is there yet. */
export function solidStages(build: Build, plan: Plan, solids: readonly Solid[] = build.solids): readonly (readonly SolidStage[])[] {
  const bySolids = known.get(plan) ?? new WeakMap<readonly Solid[], readonly (readonly SolidStage[])[]>();
  known.set(plan, bySolids);
  const found = bySolids.get(solids);
  if (found) return found;
  const made = solids.map((solid) => stagesOf(build, plan, solid));
  bySolids.set(solids, made);
  return made;
}

const known = new WeakMap<Plan, WeakMap<readonly Solid[], readonly (readonly SolidStage[])[]>>();

/** Every body at an instant, read off the table of what stands, the plan's steps and its waits for strength. */
export function statesAt(build: Build, plan: Plan, minute: number, solids: readonly Solid[] = build.solids): readonly SolidStage[] {
  return solidStages(build, plan, solids).map((stages) => stages.findLast(({ from }) => from <= minute) ?? (stages[0] as SolidStage));
}

const before = Number.NEGATIVE_INFINITY;

function stagesOf(build: Build, plan: Plan, solid: Solid): readonly SolidStage[] {
  if (plan.status !== "planned") return [{ from: before, state: "not yet", form: false }];
  const spans = (ids: readonly string[]): PieceSpan[] =>
    ids.flatMap((id) => plan.stands.pieces[build.at.piece.get(id) ?? -1] ?? []).filter(({ up }) => up < never);
  const form = spans(solid.form);
  const own = spans(solid.pieces);
  const { at, instants } = solid.pour === null ? raised(solid, own) : poured(build, plan, solid, own, form);
  const stands = (t: number) => form.some((span) => span.stands <= t && t < span.gone);
  const moments = [...new Set([...instants, ...form.flatMap((span) => [span.stands, span.gone])])].filter((t) => t < never);
  const stages: SolidStage[] = [];
  for (const from of [before, ...moments.sort((a, b) => a - b)]) {
    const last = stages[stages.length - 1];
    const next = { from, state: at(from), form: stands(from) };
    if (!last || last.state !== next.state || last.form !== next.form) stages.push(next);
  }
  return stages;
}

interface Course {
  readonly at: (t: number) => SolidState;
  /** When it may change. */
  readonly instants: readonly number[];
}

function raised(solid: Solid, own: readonly PieceSpan[]): Course {
  if (solid.pieces.length === 0) return { at: () => "stands", instants: [] };
  const first = Math.min(never, ...own.map(({ up }) => up));
  const gone = goneBy(own);
  return {
    at: (t) => {
      if (t < first) return own.length > 0 && first <= 0 ? "stands" : "not yet";
      if (t >= gone) return "gone";
      return own.length === solid.pieces.length && own.every(({ stands }) => stands <= t) ? "stands" : "under way";
    },
    instants: own.flatMap(({ up, stands, gone: end }) => [up, stands, end]),
  };
}

/** When the last of them has gone; never where there are none. */
const goneBy = (own: readonly PieceSpan[]): number => (own.length === 0 ? never : Math.max(...own.map(({ gone }) => gone)));

function poured(build: Build, plan: Plan, solid: Solid, own: readonly PieceSpan[], form: readonly PieceSpan[]): Course {
  const placing = plan.steps[build.at.step.get(solid.pour ?? "") ?? -1];
  if (!placing) return { at: () => "not yet", instants: [] };
  const barSteps = solid.bars.map((id) => plan.steps[build.at.step.get(id) ?? -1]?.finish ?? never);
  const barsIn = barSteps.length === 0 ? never : Math.max(...barSteps);
  const hardens = placing.finish + fresh_min;
  const comesOff = form.filter(({ gone }) => gone < never);
  const bared = Math.max(hardens, ...comesOff.map(({ gone }) => gone));
  const carries = Math.max(bared, carriesFrom(build, plan, solid));
  const gone = goneBy(own);
  return {
    at: (t) => {
      if (t >= gone) return "gone";
      if (t >= carries) return "carrying";
      if (t >= bared && comesOff.length > 0) return "stripped";
      if (t >= hardens) return "curing";
      if (t >= placing.start) return "poured";
      if (t >= barsIn) return "bars in";
      return form.some((span) => span.stands <= t && t < span.gone) ? "formed" : "not yet";
    },
    instants: [barsIn, placing.start, hardens, bared, carries, gone],
  };
}
