import { type Access, lastChances, may, why } from "../../src/core/access";
import type { Finding } from "../../src/core/base";
import type { Build } from "../../src/core/build";
import { type Answers, brute } from "./brute";
import type { Draw } from "./draw";
import { judge } from "./judge";
import { rulesOfStatements } from "./statements";

/** What of access's answer the judges contradict, one text each. */
export type Faults = string[];

/** The order rows of the arcs, as pairs. */
const orderRows = ({ arcs }: Access) => [...Array(arcs.count).keys()].filter((r) => arcs.orders[r] === 1);

/** Possible or not, the order, what is forced, what is marked as following from the rest. */
export function faultsOfOrder(build: Build, result: Access, known: Answers, draw: Draw): Faults {
  if (result.possible !== known.possible) return [`possible is ${result.possible}`];
  if (!result.possible) return result.order.length === 0 ? [] : ["an order though there is none"];
  const faults: Faults = [];
  const name = (s: number) => build.steps[s]?.id ?? `?${s}`;
  const { arcs } = result;
  for (const order of [[...result.order], ...Array.from({ length: 3 }, () => someOrder(build.steps.length, result, draw))]) {
    for (const rule of judge(build, order).broken) faults.push(`${order.map(name).join(" ")} breaks ${JSON.stringify(rule)}`);
  }
  for (const r of orderRows(result)) {
    const [from, to] = [arcs.from[r]!, arcs.to[r]!];
    const text = `${name(from)} before ${name(to)} (${JSON.stringify(result.statements[arcs.reason[r]!])})`;
    const must = !known.may[to]![from]!;
    if (arcs.forced[r] === 1 && !must) faults.push(`said to be forced: ${text}`);
    if (arcs.forced[r] === 0 && must && arcs.least[r]! < 0 && arcs.most[r]! < 0) faults.push(`forced but said to be chosen: ${text}`);
  }
  const all = closure(build.steps.length, result, () => true);
  const needed = closure(build.steps.length, result, (r) => arcs.redundant[r] === 0);
  if (all.join() !== needed.join()) faults.push("what is marked redundant does not follow from the rest");
  return faults;
}

/** An order drawn from all that the arcs allow: any of them must do. */
function someOrder(n: number, { arcs }: Access, draw: Draw): number[] {
  const rows = [...Array(arcs.count).keys()].filter((r) => arcs.orders[r] === 1);
  const order: number[] = [];
  while (order.length < n) {
    const left = [...Array(n).keys()].filter((s) => !order.includes(s));
    const free = left.filter((s) => rows.every((r) => arcs.to[r] !== s || order.includes(arcs.from[r]!)));
    if (free.length === 0) return order;
    order.push(draw.pick(free));
  }
  return order;
}

function closure(n: number, result: Access, which: (row: number) => boolean): string[] {
  const after = Array.from({ length: n }, () => new Set<number>());
  for (const r of orderRows(result)) if (which(r)) after[result.arcs.from[r]!]!.add(result.arcs.to[r]!);
  for (let m = 0; m < n; m++) for (const set of after) if (set.has(m)) for (const s of after[m]!) set.add(s);
  return after.map((set) => [...set].sort((a, b) => a - b).join(" "));
}

/** Why and may for every pair given. */
export function faultsOfAnswers(build: Build, result: Access, known: Answers, pairs: readonly (readonly [number, number])[]): Faults {
  const faults: Faults = [];
  const turn = new Map([...result.order].map((s, i) => [s, i]));
  for (const [a, b] of pairs) {
    const text = `${build.steps[a]!.id} before ${build.steps[b]!.id}`;
    const allowed = may(build, a, b);
    if ((allowed.verdict === "yes") !== known.may[a]![b]!) faults.push(`may: ${allowed.verdict} for ${text}`);
    if (allowed.verdict === "no") faults.push(...faultsOfBlock(build, allowed.finding).map((f) => `may ${text}: ${f}`));
    if (!result.possible) continue;
    const reason = why(build, result, a, b);
    const must = !known.may[b]![a]!;
    if ((reason.verdict === "must") !== must) faults.push(`why: ${reason.verdict} for ${text}`);
    if (reason.verdict === "none") continue;
    const ends = [a, ...reason.links.map((l) => l.to)];
    if (reason.links.some((l, i) => l.from !== ends[i]) || ends.at(-1) !== b) faults.push(`why: no chain from ${text}`);
    if (reason.links.some((l) => turn.get(l.from)! >= turn.get(l.to)!)) faults.push(`why: a link against the order, ${text}`);
  }
  return faults;
}

/** Whether what a finding blames cannot hold together, and can with any one left out. */
export function faultsOfBlock(build: Build, finding: Finding): Faults {
  const because = finding.because ?? [];
  const said = because.map((s) => JSON.stringify(s)).join(" ");
  const possible = (kept: typeof because) => brute(build, rulesOfStatements(build, kept)).possible;
  if (possible(because)) return [`can hold together: ${said}`];
  return because.filter((_, i) => !possible(because.filter((_, j) => j !== i))).map((s) => `not needed: ${JSON.stringify(s)} in ${said}`);
}

/** Closings: what is before one is before it in the order, and forced only where it must be. */
export function faultsOfClosings(build: Build, result: Access, known: Answers): Faults {
  const turn = new Map([...result.order].map((s, i) => [s, i]));
  return lastChances(build, result).flatMap(({ piece, step, before, forGood }) => {
    const p = build.pieces[piece]!;
    const text = (s: number) => `${build.steps[s]!.id} before ${p.id} closes`;
    return [
      ...(p.up === step ? [] : [`${p.id} is not put up by ${step}`]),
      ...(forGood === (p.down < 0 && p.goesAfter === null) ? [] : [`${p.id}: for good is ${forGood}`]),
      ...before.filter((b) => turn.get(b.step)! >= turn.get(step)!).map((b) => `not in the order: ${text(b.step)}`),
      ...before.filter((b) => b.forced && known.may[step]![b.step]).map((b) => `not forced: ${text(b.step)}`),
    ];
  });
}
