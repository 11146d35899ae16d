import type { Clock } from "../base";
import type { Build, Step } from "../build";
import type { Clocks } from "../clock";
import { anybody } from "./crews";
import type { Stretch } from "./stretches";

/** Who works on a step, stretch by stretch; people by position. */
export interface Named {
  readonly people: readonly (readonly number[])[];
}

interface Busy {
  readonly from: number[];
  readonly to: number[];
}

/**
 * Names people to the stretches of steps, in the order in which the steps start: who did the last stretch of the same step goes on; of the others, who
 * has the fewest roles goes first, so that those who can do more stay free. The plan has made sure that enough people are there; where a hand-over in
 * the middle of a stretch would be needed, fewer are named.
 */
export function namesOf(build: Build, clocks: Clocks, order: Int32Array, stretches: readonly (readonly Stretch[])[]): Named {
  const count = build.people.length;
  const there: Clock[] = build.people.map((p) => clocks.person(p.id));
  const busy: Busy[] = build.people.map(() => ({ from: [], to: [] }));
  const byFew = build.people.map((_, i) => i).sort((a, b) => build.people[a]!.roles.length - build.people[b]!.roles.length || a - b);
  const named: (readonly number[])[] = new Array(build.steps.length).fill([]);
  for (const s of order) {
    if (s >= build.steps.length || count === 0) continue;
    const step = build.steps[s]!;
    if (step.hands.length === 0) continue;
    const all = new Set<number>();
    let before: readonly number[] = [];
    for (const stretch of stretches[s]!) {
      const free = (i: number): boolean => isThere(there[i]!, stretch) && isFree(busy[i]!, stretch);
      before = choose(build, step, before, byFew, free);
      for (const i of before) {
        all.add(i);
        book(busy[i]!, stretch);
      }
    }
    named[s] = [...all].sort((a, b) => a - b);
  }
  return { people: named };
}

function choose(build: Build, step: Step, before: readonly number[], byFew: readonly number[], free: (i: number) => boolean): number[] {
  const taken: number[] = [];
  const special = step.hands.filter((h) => h.role !== anybody);
  for (const need of [...special, ...step.hands.filter((h) => h.role === anybody)]) {
    const can = (i: number): boolean => need.role === anybody || build.people[i]!.roles.includes(need.role);
    let wanted = need.number;
    for (const pass of [before, byFew]) {
      for (const i of pass) {
        if (wanted === 0) break;
        if (taken.includes(i) || !can(i) || !free(i)) continue;
        taken.push(i);
        wanted--;
      }
    }
  }
  return taken;
}

function isThere(clock: Clock, [from, to]: Stretch): boolean {
  return from === to || (clock.begin(from) === from && clock.runEnd(from) >= to);
}

/** A person's stretches lie apart, in time order: only the last one that begins before the end of this one can meet it. */
function isFree(busy: Busy, [from, to]: Stretch): boolean {
  let k = busy.from.length - 1;
  while (k >= 0 && busy.from[k]! >= to) k--;
  return k < 0 || busy.to[k]! <= from;
}

function book(busy: Busy, [from, to]: Stretch): void {
  if (from === to) return;
  let k = busy.from.length;
  while (k > 0 && busy.from[k - 1]! > from) k--;
  busy.from.splice(k, 0, from);
  busy.to.splice(k, 0, to);
}
