import type { Amount } from "../../build";
import { type ClauseProblem, IntList, type TimeLayer } from "../../graph";
import { problemOf } from "./layers";
import type { Program } from "./program";

/** What clocks say of a build in plain elapsed minutes, whatever the date: bounds that no calendar can beat. `Infinity` and null where there are none. */
export interface TimeBounds {
  /** From a step's start to its finish. */
  work(step: number): { readonly least: number; readonly most: number };
  /** The least that passes until an amount is gathered. */
  least(amount: Amount): number;
  /** The most that may pass without more than the amount. */
  most(amount: Amount): number;
  /** Minutes since the build's epoch: earliest start, latest finish, exact start. */
  notBefore(step: number): number | null;
  deadline(step: number): number | null;
  fixed(step: number): number | null;
}

interface Gap {
  readonly from: number;
  readonly to: number;
  readonly delay: number;
}

/**
 * The time layer: the order layer's clauses over links with their amounts, and what steps take and when they must be. Instants are starts and finishes
 * of steps and the epoch, which is the last. Adds the statements about work and dates to the program's facts.
 */
export function timeLayer(program: Program, bounds: TimeBounds): ClauseProblem {
  const base = problemOf(
    program,
    Int32Array.from({ length: program.atoms }, (_, atom) => atom),
  );
  const links = Array.from({ length: program.atoms }, (_, atom) => linkGaps(program, bounds, atom));
  const own = ownGaps(program, bounds);
  const added = (list: Int32Array, value: (i: number) => number): Int32Array => Int32Array.from([...list, ...own.map((_, i) => value(i))]);
  const clauses = base.statement.length;
  const literals = base.literals.length;
  return {
    nodes: base.nodes,
    variables: base.variables + own.length,
    from: added(base.from, () => -1),
    to: added(base.to, () => -1),
    start: Int32Array.from([...base.start.subarray(0, clauses), ...own.map((_, i) => literals + i), literals + own.length]),
    literals: added(base.literals, (i) => 2 * (base.variables + i)),
    statement: added(base.statement, (i) => own[i]?.fact ?? 0),
    guard: added(base.guard, () => -1),
    time: packed(2 * program.steps + 1, [...links, ...own.map(({ gaps }) => gaps)], noneBackwards(program.steps)),
  };
}

function linkGaps(program: Program, bounds: TimeBounds, atom: number): Gap[] {
  if (program.isSelector(atom) || program.from.at(atom) >= program.steps) return [];
  const ends = program.ends.at(atom);
  const from = 2 * program.from.at(atom) + (ends >> 1);
  const to = 2 * program.to.at(atom) + (ends & 1);
  const amount = (index: number): Amount => program.amounts[index] as Amount;
  const least = program.least.at(atom);
  const most = program.most.at(atom);
  const gaps: Gap[] = [];
  if (least >= 0) gaps.push({ from, to, delay: bounds.least(amount(least)) });
  else if (program.orders(atom)) gaps.push({ from, to, delay: 0 });
  if (most >= 0) gaps.push({ from: to, to: from, delay: -bounds.most(amount(most)) });
  return gaps.filter(({ delay }) => Number.isFinite(delay));
}

function ownGaps(program: Program, bounds: TimeBounds): { readonly fact: number; readonly gaps: Gap[] }[] {
  const epoch = 2 * program.steps;
  const own: { readonly fact: number; readonly gaps: Gap[] }[] = [];
  program.build.steps.forEach((step, s) => {
    const start = 2 * s;
    const finish = start + 1;
    const say = (rule: "work" | "not-before" | "deadline" | "fixed", detail: Record<string, string | number>, gaps: Gap[]): void => {
      own.push({ fact: program.facts.add({ rule, step: step.id, detail }, "steps", s * 1000 + 800 + own.length / 1e6), gaps });
    };
    const { least, most } = bounds.work(s);
    const longest = Number.isFinite(most) ? [{ from: finish, to: start, delay: -most }] : [];
    say("work", { minutes: least }, [{ from: start, to: finish, delay: least }, ...longest]);
    const notBefore = bounds.notBefore(s);
    const deadline = bounds.deadline(s);
    const fixed = bounds.fixed(s);
    if (notBefore !== null)
      say("not-before", { date: step.notBefore ?? program.build.resumes ?? "" }, [{ from: epoch, to: start, delay: notBefore }]);
    if (deadline !== null) say("deadline", { date: step.deadline ?? "" }, [{ from: finish, to: epoch, delay: -deadline }]);
    if (fixed !== null) {
      say("fixed", { date: step.fixed ?? "" }, [
        { from: epoch, to: start, delay: fixed },
        { from: start, to: epoch, delay: -fixed },
      ]);
    }
  });
  return own;
}

/** No step finishes before it starts, whatever is left out. */
const noneBackwards = (steps: number): Gap[] => Array.from({ length: steps }, (_, s) => ({ from: 2 * s, to: 2 * s + 1, delay: 0 }));

function packed(nodes: number, gaps: readonly (readonly Gap[])[], always: readonly Gap[]): TimeLayer {
  const start = new IntList(gaps.length + 1);
  start.push(0);
  for (const list of gaps) start.push(start.at(start.length - 1) + list.length);
  const all = [...gaps.flat(), ...always];
  return {
    nodes,
    start: start.packed(),
    from: Int32Array.from(all, (g) => g.from),
    to: Int32Array.from(all, (g) => g.to),
    delay: Float64Array.from(all, (g) => g.delay),
  };
}
