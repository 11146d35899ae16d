import type { Amount, Build, Passage, Wait } from "../../src/core/build";
import { passes } from "./passes";
import { type About, goalOf, reachesOf } from "./rules";
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

/** ACI 209R-92, equation 2-1: days until a share x of the 28 day strength, a x / (1 - b x). From memory, as in core/clock. */
const gains = { I: { a: 4, b: 0.85 }, III: { a: 2.3, b: 0.92 } } as const;

/** Minutes until so many thousandths are there, at 20 C; the last minute at which there is no more of them is the one before the next thousandth. */
function strength_min(cement: "I" | "III", thousandths: number): number {
  const { a, b } = gains[cement];
  // Whole numbers throughout, so that no last digit decides: a and b in hundredths.
  return Math.ceil((1440 * Math.round(100 * a) * thousandths) / (100_000 - Math.round(100 * b) * thousandths));
}

/** The pour whose strength an amount is, by position. */
export const pourOf = (build: Build, amount: Amount | null): number | null =>
  amount?.on.kind === "strength" ? build.at.step.get(amount.on.pour)! : null;

/** Plain elapsed minutes that must pass at least; these builds use no clocks but that and the strength of their pours. */
export function minutes(build: Build, amount: Amount | null): number {
  if (amount === null) return 0;
  const pour = pourOf(build, amount);
  if (pour !== null) return strength_min(build.steps[pour]!.pour!.cement as "I" | "III", amount.amount);
  if (amount.on.kind !== "elapsed") throw new Error(`not elapsed: ${amount.text}`);
  return amount.amount;
}

/** As many as may pass at most. */
export function mostMinutes(build: Build, amount: Amount): number {
  const pour = pourOf(build, amount);
  return pour === null ? minutes(build, amount) : strength_min(build.steps[pour]!.pour!.cement as "I" | "III", amount.amount + 1) - 1;
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

/** As long as something may be used that goes once the amount has passed: with a strength, till the minute before. */
export const usedWithin = (build: Build, amount: Amount): number => minutes(build, amount) - (pourOf(build, amount) === null ? 0 : 1);

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
    for (const { piece, once } of step.leansOn) add({ kind: "lean", step: step.id, piece }, p.leans(s, build.at.piece.get(piece)!, once));
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
  const wait = (w: Wait): Formula => waitFormula(build, w);
  for (const w of build.waits) add({ kind: "wait", id: w.id, step: w.from, other: w.to }, wait(w));
  for (const c of build.choices) add({ kind: "choice", id: c.id }, { any: c.either.map((e) => ({ all: e.waits.map(wait) })) });
  return parts;
}

/** The end a wait's amount is counted from: a strength from the finish of the pour it names. */
const countedFrom = (build: Build, w: Wait, amount: Amount | null): readonly [number, End] => {
  const pour = pourOf(build, amount);
  return pour === null ? [build.at.step.get(w.from)!, w.fromEnd] : [pour, "finish"];
};

function waitFormula(build: Build, w: Wait): Formula {
  const [own, to] = [build.at.step.get(w.from)!, build.at.step.get(w.to)!];
  const atLeast = (from: number, fromEnd: End, least_min: number): Formula => {
    const order = fromEnd === "finish" && w.toEnd === "start";
    return order && from === to ? no : { from, fromEnd, to, toEnd: w.toEnd, least_min, order };
  };
  const all: Formula[] = [];
  if (w.least !== null || w.most === null) {
    const [from, fromEnd] = countedFrom(build, w, w.least);
    all.push(atLeast(own, w.fromEnd, 0), atLeast(from, fromEnd, minutes(build, w.least)));
  }
  if (w.most !== null) {
    const [from, fromEnd] = countedFrom(build, w, w.most);
    all.push({ from: to, fromEnd: w.toEnd, to: from, toEnd: fromEnd, least_min: -mostMinutes(build, w.most), order: false });
  }
  return { all };
}

function pieceFormulas(build: Build, facts: Facts) {
  const at = (i: number) => build.pieces[i]!;
  // How old a piece is that stands from the start is not known: any amount may have passed, and none need have. A strength is that of a pour of this build.
  const passed = (i: number, s: number, amount: Amount | null): Formula => {
    const pour = pourOf(build, amount);
    if (pour !== null) return before(pour, s, minutes(build, amount));
    return at(i).up >= 0 ? before(at(i).up, s, minutes(build, amount)) : yes;
  };
  const there = (i: number, s: number, once: Amount | null = null): Formula => {
    if (at(i).up < 0) return at(i).fromStart ? passed(i, s, once) : no;
    return { all: [before(at(i).up, s), passed(i, s, once)] };
  };
  const stillThere = (i: number, s: number): Formula => {
    const { down, goesAfter, up } = at(i);
    if (down >= 0) return before(s, down);
    if (goesAfter === null || up === s) return yes;
    const from = pourOf(build, goesAfter) ?? up;
    return from >= 0 ? doneWithin(s, from, usedWithin(build, goesAfter)) : yes;
  };
  const gone = (i: number, s: number): Formula => {
    const { down, goesAfter } = at(i);
    if (goesAfter !== null) return there(i, s, goesAfter);
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
  const byItself = (i: number, t: number): Formula => (at(i).holdsItself === null ? no : there(i, t, at(i).holdsItself));
  const leans = (s: number, i: number, once: Amount | null): Formula => ({ all: [there(i, s, once), stillThere(i, s)] });

  function holdPoint(h: number, q: number): Formula {
    const { id, ways } = build.places[q]!;
    const each = [...build.pieces.keys()];
    const fillers = each.filter((i) => at(i).fills.includes(id));
    const during = (i: number, s: number): Formula => (at(i).goesAfter === null ? { all: [there(i, s), stillThere(i, s)] } : no);
    const closed = (s: number): Formula => {
      const shut = ways.map((w): Formula => {
        const names = (refs: readonly { place: string; way: string }[]) => refs.some((r) => r.place === id && r.way === w.id);
        const closers = each.filter((i) => names(at(i).closes)).map((i) => during(i, s));
        return { any: [...closers, ...each.filter((i) => names(at(i).makes)).map((i) => gone(i, s))] };
      });
      return { any: [...fillers.map((i) => during(i, s)), ...(shut.length > 0 ? [{ all: shut }] : [])] };
    };
    const works = [...build.steps.keys()].filter((s) => {
      const needs = reachesOf(build, s).flatMap(({ reach: r }) => r.any.filter((a) => a.place === id).map((a) => a.need.kind));
      const sets =
        each.some((i) => at(i).up === s && at(i).closes.some((r) => r.place === id)) &&
        !needs.some((n) => n === "person" || n === "machine");
      return s !== h && !sets && !fillers.some((i) => at(i).up === s) && needs.some((n) => n !== "sight");
    });
    const said = build.steps[h]!.reaches.some((r) => r.any.every((a) => a.place === id));
    return {
      all: [
        ...works.map((s): Formula => ({ any: [before(s, h), closed(s)] })),
        ...fillers.filter((i) => at(i).up >= 0).map((i) => before(h, at(i).up)),
        ...(said ? [] : [reach(h, q, { kind: "sight" }, [])]),
      ],
    };
  }
  return { reach, leans, heldAt, notThere, byItself, holdPoint };
}
