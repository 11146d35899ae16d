import type { Amount, Build, Passage, Wait } from "../../src/core/build";
import { passes } from "./passes";
import { type About, goalOf, isOrder, reachesOf } from "./rules";
import { asWritten, type Facts } from "./state";

export type End = "start" | "finish";

/** `end(from) + least_min <= end(to)`; -1 stands for the build's epoch. An upper wait is one that runs backwards with a negative amount. */
export interface Gap {
  readonly from: number;
  readonly fromEnd: End;
  readonly to: number;
  readonly toEnd: End;
  readonly least_min: number;
  /** Whether it says which of two steps comes first; the order layer takes the others for true. */
  readonly order: boolean;
}

/** Everything the build asks, as and and or over gaps. */
export type Formula = { readonly all: readonly Formula[] } | { readonly any: readonly Formula[] } | Gap;

const yes: Formula = { all: [] };
const no: Formula = { any: [] };

/** Plain elapsed minutes; these builds use no other clock. */
function minutes(amount: Amount | null): number {
  if (amount === null) return 0;
  if (amount.on.kind !== "elapsed") throw new Error(`not elapsed: ${amount.text}`);
  return amount.amount;
}

function before(from: number, to: number, least_min = 0): Formula {
  return from === to ? no : { from, fromEnd: "finish", to, toEnd: "start", least_min, order: true };
}

/** `s` is done before `least_min` have passed since the finish of `from`. */
const doneWithin = (s: number, from: number, most_min: number): Formula => ({
  from: s,
  fromEnd: "finish",
  to: from,
  toEnd: "finish",
  least_min: -most_min,
  order: false,
});

/** One rule of the build as a formula. */
export interface Part {
  readonly about: About;
  readonly formula: Formula;
}

/** The whole build as one formula; of equal meaning with the rules, by another road: nothing is simulated. */
export const formulaOf = (build: Build): Formula => ({ all: partsOf(build).map(({ formula }) => formula) });

export function partsOf(build: Build, facts: Facts = asWritten): Part[] {
  const p = pieceFormulas(build, facts);
  const parts: Part[] = [];
  const add = (about: About, formula: Formula) => parts.push({ about, formula });
  build.steps.forEach((step, s) => {
    for (const { reach, id, piece } of reachesOf(build, s)) {
      const any = reach.any.map((a) => p.reach(s, build.at.place.get(a.place)!, a.need, []));
      add({ kind: "reach", step: step.id, id, goal: goalOf(reach), ...(piece === undefined ? {} : { piece }) }, { any });
    }
    for (const { piece, once } of step.leansOn)
      add({ kind: "lean", step: step.id, piece }, p.leans(s, build.at.piece.get(piece)!, minutes(once)));
    for (const place of step.holdPoint?.places ?? [])
      add({ kind: "hold-point", step: step.id, place }, p.holdPoint(s, build.at.place.get(place)!));
  });
  build.pieces.forEach((piece, i) => {
    if (piece.up >= 0 && piece.down >= 0) add({ kind: "up-before-down", piece: piece.id }, before(piece.up, piece.down));
    if (piece.heldBy.length === 0) return;
    const held: About = { kind: "held", piece: piece.id };
    if (piece.up >= 0) add(held, p.heldAt(i, piece.up));
    const takers = piece.heldBy.flat().map((id) => build.pieces[build.at.piece.get(id)!]!.down);
    for (const t of new Set(takers)) if (t >= 0) add(held, { any: [p.notThere(i, t), p.byItself(i, t), p.heldAt(i, t)] });
  });
  const wait = (w: Wait): Formula => waitFormula(w, build.at.step.get(w.from)!, build.at.step.get(w.to)!);
  for (const w of build.waits) add({ kind: "wait", id: w.id, step: w.from, other: w.to }, wait(w));
  for (const c of build.choices) add({ kind: "choice", id: c.id }, { any: c.either.map((e) => ({ all: e.waits.map(wait) })) });
  return parts;
}

function waitFormula(w: Wait, from: number, to: number): Formula {
  const least: Formula =
    w.least === null && w.most !== null
      ? yes
      : { from, fromEnd: w.fromEnd, to, toEnd: w.toEnd, least_min: minutes(w.least), order: isOrder(w) };
  if (w.most === null) return least;
  return { all: [least, { from: to, fromEnd: w.toEnd, to: from, toEnd: w.fromEnd, least_min: -minutes(w.most), order: false }] };
}

function pieceFormulas(build: Build, facts: Facts) {
  const at = (i: number) => build.pieces[i]!;
  // How old a piece is that stands from the start is not known: any amount may have passed, and none need have.
  const there = (i: number, s: number, once = 0): Formula => (at(i).up >= 0 ? before(at(i).up, s, once) : at(i).fromStart ? yes : no);
  const stillThere = (i: number, s: number): Formula => {
    const { down, goesAfter, up } = at(i);
    if (down >= 0) return before(s, down);
    if (goesAfter === null) return yes;
    return up >= 0 ? doneWithin(s, up, minutes(goesAfter)) : yes;
  };
  const gone = (i: number, s: number): Formula => {
    const { down, goesAfter } = at(i);
    if (goesAfter !== null) return there(i, s, minutes(goesAfter));
    return down >= 0 ? before(down, s) : no;
  };
  const notYet = (i: number, s: number): Formula => (at(i).up >= 0 ? before(s, at(i).up) : at(i).fromStart ? no : yes);
  const outOfTheWay = (i: number, s: number): Formula => (at(i).up === s ? yes : { any: [notYet(i, s), gone(i, s)] });
  const serves = (i: number, s: number): Formula => ({ all: [at(i).up === s ? yes : there(i, s), stillThere(i, s)] });

  function reach(s: number, q: number, need: Passage, walk: readonly string[]): Formula {
    const here = `${q} ${JSON.stringify(need)}`;
    if (walk.includes(here)) return no;
    const { id, ways } = build.places[q]!;
    const each = [...build.pieces.keys()];
    const fillers = each.filter((i) => at(i).fills.includes(id) && facts.fills(at(i).id, id)).map((i) => outOfTheWay(i, s));
    if (!facts.walled(id, need)) return { all: fillers };
    const usable = ways
      .filter((w) => passes(w, need))
      .map((w): Formula => {
        const of = (refs: readonly { place: string; way: string }[]) => refs.some((r) => r.place === id && r.way === w.id);
        return {
          all: [
            ...each.filter((i) => of(at(i).closes) && facts.closes(at(i).id, id, w.id)).map((i) => outOfTheWay(i, s)),
            ...each.filter((i) => of(at(i).makes) && facts.makes(at(i).id, id, w.id)).map((i) => serves(i, s)),
            w.through === null || !facts.through(id, w.id)
              ? yes
              : reach(s, build.at.place.get(w.through.place)!, w.through.need, [...walk, here]),
          ],
        };
      });
    return { all: [...fillers, { any: usable }] };
  }

  /** The sets that hold it, whole once step t is done. */
  const heldAt = (i: number, t: number): Formula => ({
    any: at(i).heldBy.map((set) => ({
      all: set.map((id) => {
        const m = build.at.piece.get(id)!;
        if (at(m).goesAfter !== null) return no;
        return { all: [at(m).up === t ? yes : there(m, t), stillThere(m, t)] };
      }),
    })),
  });
  const notThere = (i: number, t: number): Formula => (at(i).down === t ? yes : { any: [notYet(i, t), gone(i, t)] });
  const byItself = (i: number, t: number): Formula => (at(i).holdsItself === null ? no : there(i, t, minutes(at(i).holdsItself)));
  const leans = (s: number, i: number, once: number): Formula => ({ all: [there(i, s, once), stillThere(i, s)] });

  function holdPoint(h: number, q: number): Formula {
    const { id, ways } = build.places[q]!;
    const fillers = build.pieces.filter((p) => p.fills.includes(id) && p.up >= 0);
    const closers = (way: string) => build.pieces.filter((p) => p.up >= 0 && p.closes.some((r) => r.place === id && r.way === way));
    const makers = (way: string) => build.pieces.filter((p) => p.down >= 0 && p.makes.some((r) => r.place === id && r.way === way));
    const shutAt = new Set([...fillers, ...ways.flatMap((w) => closers(w.id))].map((p) => p.up));
    const closed = (s: number): Formula => {
      const each = ways.map(
        (w): Formula => ({ any: [...closers(w.id).map((p) => before(p.up, s)), ...makers(w.id).map((p) => before(p.down, s))] }),
      );
      return { any: [...fillers.map((p) => before(p.up, s)), ...(each.length > 0 ? [{ all: each }] : [])] };
    };
    const works = [...build.steps.keys()].filter(
      (s) =>
        s !== h &&
        !shutAt.has(s) &&
        reachesOf(build, s).some(({ reach: r }) => r.any.some((a) => a.place === id && a.need.kind !== "sight")),
    );
    return { all: [...works.map((s): Formula => ({ any: [before(s, h), closed(s)] })), ...fillers.map((p) => before(h, p.up))] };
  }
  return { reach, leans, heldAt, notThere, byItself, holdPoint };
}
