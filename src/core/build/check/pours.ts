import { writtenId } from "../../base";
import type { Names } from "../link/names";
import { lacksSpan, numbering, waitsOf } from "../link/removals";
import type { KeptPlan, Pour, Removal, Step, Wait } from "../model";
import { checkBreaks, isBefore, shownAt } from "./breaks";

/** What pours add to a build: waits of what comes off and goes on, and the days on which a strength was shown. */
export interface Removals {
  readonly waits: readonly Wait[];
  /** Earliest local moment of a step that waited for a strength which has been shown since, by step. */
  readonly notBefore: ReadonlyMap<string, string>;
}

interface Given {
  readonly pours: readonly Pour[];
  readonly steps: readonly Step[];
  readonly at: ReadonlyMap<string, number>;
  readonly waits: readonly Wait[];
  readonly start: string;
  readonly kept: KeptPlan | null;
  readonly names: Names;
}

/** Steps that come after one by what is written, itself left out. */
function after(step: string, next: ReadonlyMap<string, readonly string[]>): ReadonlySet<string> {
  const seen = new Set<string>();
  const open = [step];
  for (let one = open.pop(); one !== undefined; one = open.pop()) {
    for (const other of next.get(one) ?? []) {
      if (seen.has(other)) continue;
      seen.add(other);
      open.push(other);
    }
  }
  return seen;
}

function nextOf(waits: readonly Wait[]): ReadonlyMap<string, readonly string[]> {
  const next = new Map<string, string[]>();
  for (const { from, to, fromEnd, toEnd, least, most } of waits) {
    if (fromEnd !== "finish" || toEnd !== "start" || (least === null && most !== null)) continue;
    const known = next.get(from);
    if (known) known.push(to);
    else next.set(from, [to]);
  }
  return next;
}

/** Why a removal cannot come after its pour; null when it can. */
function before(pour: Step, removal: Step, next: ReadonlyMap<string, readonly string[]>): "same" | "written" | "fixed" | null {
  if (removal.id === pour.id) return "same";
  if (removal.fixed !== null && pour.fixed !== null && isBefore(removal.fixed, pour.fixed)) return "fixed";
  return after(removal.id, next).has(pour.id) ? "written" : null;
}

/** Waits of every removal of every pour, and what is wrong with results and removals. */
export function removalsOf({ pours, steps, at, waits, start, kept, names }: Given): Removals {
  const made: Wait[] = [];
  const notBefore = new Map<string, string>();
  if (pours.length === 0) return { waits: made, notBefore };
  const next = pours.some((pour) => pour.removals.length > 0) ? nextOf(waits) : new Map<string, readonly string[]>();
  const ids = numbering();
  const stepOf = (id: string): Step | undefined => steps[at.get(id) ?? -1];
  const add = (pour: Pour, placed: Step, removal: Removal): void => {
    const off = stepOf(removal.step);
    if (off === undefined) return;
    const where = { list: "pours", id: pour.id, key: "removals" };
    const part = String(removal.entry ?? 1);
    const by = before(placed, off, next);
    if (by !== null) {
      names.say("build.removal-before-pour", where, { part, step: writtenId(off.id), pour: writtenId(placed.id), by });
      return;
    }
    if (lacksSpan(removal)) names.say("build.no-span", where, { part, step: writtenId(off.id) });
    const shown = shownAt(pour, placed, removal);
    made.push(...waitsOf(pour, removal, shown !== null, ids));
    const written = notBefore.get(off.id) ?? off.notBefore;
    if (shown !== null) notBefore.set(off.id, written !== null && isBefore(shown, written) ? written : shown);
  };
  for (const pour of pours) {
    const placed = stepOf(pour.step);
    if (placed === undefined) continue;
    checkBreaks(pour, placed, start, kept, names);
    for (const removal of pour.removals) add(pour, placed, removal);
  }
  return { waits: made, notBefore };
}

/** The pour of each step, and whether what the step says itself agrees with it. */
export function pourOfSteps(
  pours: readonly Pour[],
  steps: readonly Step[],
  at: ReadonlyMap<string, number>,
  names: Names,
): ReadonlyMap<string, Pour> {
  const pourOf = new Map<string, Pour>();
  for (const pour of pours) {
    if (pour.step === "") continue;
    const where = { list: "pours", id: pour.id, key: "step" };
    const first = pourOf.get(pour.step);
    if (first) names.say("build.two-pours", where, { step: pour.step, first: first.id, second: pour.id });
    else pourOf.set(pour.step, pour);
    const said = steps[at.get(pour.step) ?? -1]?.pour;
    const { strength_MPa, cement } = pour.mix;
    if (said && (Math.abs(said.strength_MPa - strength_MPa) > 1e-6 || said.cement !== cement)) {
      names.say("build.two-mixes", { ...where, key: "mix" }, { step: pour.step });
    }
  }
  return pourOf;
}
