import { never } from "../base";
import { type Build, pourOf, type Solid, type Step, type Wait } from "../build";
import type { Plan } from "./plan";

/** Strength is specified at 28 days: where a build says nothing else, this is when a body is taken to carry (common practice, no source). */
const specified_min = 28 * 1440;

/**
 * When a poured body may carry, by the plan: all of its pour's waits for strength that let something lean on it, load it or take away what props it have let
 * go; bare sides say nothing of it. Of these only the ones that lead to steps at this body count, where there are such. Where the pour has none: when
 * something it holds stands on it, or 28 days after its finish, whichever is first. Never without a date for its pour.
 */
export function carriesFrom(build: Build, plan: Plan, solid: Solid): number {
  const pour = build.at.step.get(solid.pour ?? "") ?? -1;
  const placing = plan.steps[pour];
  if (!placing) return never;
  const all = readyOf(build, plan).filter(({ wait }) => isForStrength(wait, build.steps[pour]!.id));
  const here = all.filter(({ wait }) => isAt(build.steps[build.at.step.get(wait.to) ?? -1], solid, build));
  const counted = here.length > 0 ? here : all;
  if (counted.length > 0) return Math.max(...counted.map(({ ready }) => ready));
  return Math.min(placing.finish + specified_min, restsFrom(build, plan, solid));
}

interface Ready {
  readonly wait: Wait;
  readonly ready: number;
}

/** The waits of a build with when each lets go in this plan. */
function readyOf(build: Build, plan: Plan): readonly Ready[] {
  const found = known.get(plan);
  if (found) return found;
  const { arcs, statements } = plan.access;
  const byId = new Map(build.waits.map((wait) => [wait.id as string, wait]));
  const made = (plan.waits ?? []).flatMap(({ row, ready }): Ready[] => {
    const wait = byId.get(statements[arcs.reason[row] ?? -1]?.id ?? "");
    return wait ? [{ wait, ready }] : [];
  });
  known.set(plan, made);
  return made;
}

const known = new WeakMap<Plan, readonly Ready[]>();

const isForStrength = (wait: Wait, pour: string): boolean =>
  wait.from === pour && wait.least !== null && (wait.removal ? wait.removal.sort !== "sides" : pourOf(wait.least.on) === pour);

/** Whether a step takes away what forms this body, or works in its places, or puts up what it holds. */
function isAt(step: Step | undefined, { form, pieces, places }: Solid, build: Build): boolean {
  if (!step) return false;
  const inPlace = (place: string | null) => places.some((one) => one === place);
  return (
    step.takes.some((piece) => form.includes(piece)) ||
    inPlace(step.place) ||
    step.reaches.some(({ any }) => any.some(({ place }) => inPlace(place))) ||
    step.puts.some((piece) => isHeld(build, piece, pieces))
  );
}

const isHeld = (build: Build, piece: string, by: readonly string[]): boolean =>
  (build.pieces[build.at.piece.get(piece) ?? -1]?.heldBy ?? []).some((set) => set.some((holder) => by.includes(holder)));

function restsFrom(build: Build, plan: Plan, { pieces }: Solid): number {
  return Math.min(
    never,
    ...build.pieces.flatMap((piece, index) => (isHeld(build, piece.id, pieces) ? [plan.stands.pieces[index]?.stands ?? never] : [])),
  );
}
