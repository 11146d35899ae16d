import { access, type RefusedLink } from "../../access";
import type { Build } from "../../build";
import type { Clocks } from "../../clock";
import type { Problem, Solution } from "../../schedule";
import type { Bound } from "../bound";
import { dating } from "../dates";
import { begun, eachFor, goOn, uncounted } from "./portions";
import { ofSteps } from "./relaxed";
import { type Found, replayed } from "./replay";

/** A link from an end of one step to an end of another, `least` minutes apart. */
interface Cut {
  readonly from: number;
  readonly fromEnd: number;
  readonly to: number;
  readonly toEnd: number;
  readonly least: number;
}

interface Case {
  /** Rows that no order of this case has. */
  readonly refused: readonly (readonly RefusedLink[])[];
  /** What every schedule of this case keeps, beside what is true in every order. */
  readonly cuts: readonly Cut[];
}

/**
 * Whether any other order finishes earlier than the best plan, by cases: a schedule keeps all chosen precedences of an order, or there is a first among them
 * that it does not keep. A case is closed when nothing in it can finish earlier (proved over all its orders at once), or when no order is left in it; else its
 * order is searched, and the case is split by the precedences chosen there. Yields the units of work done; 0 in the midst of them.
 * @param over the problem that holds for every order
 * @param own the order of the best plan, in which nothing finishes earlier: that has been shown
 * @returns a better plan; true where there is none; false where that cannot be said
 */
export function* otherOrders(build: Build, clocks: Clocks, over: Problem, own: Bound, best: Found): Generator<number, Found | boolean> {
  const plain = over.clocks.indexOf(clocks.elapsed);
  const cases: Case[] = split({ refused: [], cuts: [] }, own);
  let whole = true;
  for (let now = cases.pop(); now !== undefined; now = cases.pop()) {
    const left = yield* anyBefore(withCuts(over, now.cuts, plain), best.finish);
    if (left === null) continue;
    const order = access(build, now.refused);
    yield 1;
    if (!order.possible) {
      if (order.findings.some(({ code }) => code === "access.too-hard")) whole = false;
      continue;
    }
    const { bound } = yield* eachFor(0, dating(build, order, clocks));
    yield 0;
    const made = yield* anyBefore(ofSteps(bound.problem, build.steps.length), best.finish);
    if (made !== null) {
      const found = replayed(build, clocks, made.start, order.order);
      if (found !== null && found.finish < best.finish) return found;
      whole = false;
    }
    cases.push(...split(now, bound));
  }
  return whole;
}

/** A schedule that finishes before `finish`; null where there is none. */
function* anyBefore(p: Problem, finish: number): Generator<number, Solution | null> {
  const search = yield* uncounted(begun({ ...p, horizon: (finish - 1) as Problem["horizon"] }, null));
  while (!search.done && search.result().solution === null) yield yield* uncounted(goOn(search));
  return search.result().solution;
}

/** The cases in which one of the precedences chosen in an order is not kept, and those before it are; the last of them first. */
function split({ refused, cuts }: Case, { access: { arcs }, problem: { links }, row }: Bound): Case[] {
  const out: Case[] = [];
  const kept: Cut[] = [];
  const seen = new Set<number>();
  for (let l = 0; l < links.count; l++) {
    const r = row[l]!;
    if (r < 0 || arcs.forced[r] === 1 || seen.has(r)) continue;
    seen.add(r);
    const from = links.from[l]!;
    const to = links.to[l]!;
    const bare = arcs.least[r]! < 0 && arcs.most[r]! < 0 && links.fromEnd[l] === 1 && links.toEnd[l] === 0;
    const broken: Cut[] = bare ? [{ from: to, fromEnd: 0, to: from, toEnd: 1, least: 1 }] : [];
    out.push({ refused: [...refused, [[from, to, arcs.link?.[r] ?? -1]]], cuts: [...cuts, ...kept, ...broken] });
    if (bare) kept.push({ from, fromEnd: 1, to, toEnd: 0, least: 0 });
  }
  return out.reverse();
}

function withCuts(p: Problem, cuts: readonly Cut[], plain: number): Problem {
  const { links } = p;
  const n = links.count;
  const count = n + cuts.length;
  const grown = <T extends Int32Array | Uint8Array>(list: T, out: T, value: (cut: Cut) => number): T => {
    out.set(list.subarray(0, n));
    cuts.forEach((cut, k) => {
      out[n + k] = value(cut);
    });
    return out;
  };
  return {
    ...p,
    links: {
      count,
      from: grown(links.from, new Int32Array(count), (cut) => cut.from),
      to: grown(links.to, new Int32Array(count), (cut) => cut.to),
      fromEnd: grown(links.fromEnd, new Uint8Array(count), (cut) => cut.fromEnd),
      toEnd: grown(links.toEnd, new Uint8Array(count), (cut) => cut.toEnd),
      clock: grown(links.clock, new Int32Array(count), () => plain),
      least: grown(links.least, new Int32Array(count), (cut) => cut.least),
      most: grown(links.most, new Int32Array(count), () => -1),
    },
  };
}
