import { type ClauseSearch, fails, holds } from "../../graph";
import type { Program } from "../compile/program";
import type { Rows } from "./rows";
import type { Settled } from "./settled";

/** Most work spent on asking whether a chosen precedence could be the other way round, besides as much as the order itself took. */
const budget = 5000;

/** Answers unlike the usual one that are looked at first. */
const unlike = 4;

/** So many precedences are looked up one by one rather than all at once. */
const few = 256;

/**
 * For each row, 1 when it holds in every order. A row with an amount does when nothing was chosen on the way to it; a bare precedence also when it follows from
 * those, or when asking for the reverse is refuted. What the budget does not reach counts as chosen.
 */
export function forcedRows(program: Program, settled: Settled, rows: Rows): Uint8Array {
  const forced = new Uint8Array(rows.atom.length);
  const open: number[] = [];
  rows.atom.forEach((atom, r) => {
    const clause = rows.clause[r] as number;
    if (settled.matters(clause) && settled.openCount(clause) === 1) forced[r] = 1;
    else if (program.bare.at(atom) === atom) open.push(r);
  });
  const ends = (list: { at(atom: number): number }) => open.map((r) => list.at(rows.atom[r] as number));
  const follow = settled.follow(ends(program.from), ends(program.to));
  const unsure = open.filter((r, i) => {
    if (follow[i] === 1) forced[r] = 1;
    return follow[i] !== 1;
  });
  askReverse(program, settled.every, rows, unsure, forced);
  return forced;
}

/** First a few answers unlike the usual one, for as long as they show more of them to be free; then one question for each that is left. */
function askReverse(program: Program, search: ClauseSearch, rows: Rows, unsure: readonly number[], forced: Uint8Array): void {
  const end = 2 * search.work + budget;
  let atoms = [...new Set(unsure.map((r) => rows.atom[r] as number))];
  for (let lead = 1, before = -1; lead <= unlike && atoms.length > 0 && atoms.length !== before; lead++) {
    before = atoms.length;
    if (search.solve([], budget + search.work, lead) !== "yes") break;
    if (atoms.length <= few) {
      atoms = atoms.filter((atom) => search.leadsTo(program.from.at(atom), program.to.at(atom)));
      continue;
    }
    const ends = (list: { at(atom: number): number }) => atoms.map((atom) => list.at(atom));
    const leads = search.leads(ends(program.from), ends(program.to));
    atoms = atoms.filter((_, i) => leads[i] === 1);
  }
  const always = new Set<number>();
  for (let i = 0; i < atoms.length && search.work < end; i++) {
    const atom = atoms[i] as number;
    const reverse = search.addArc(program.to.at(atom), program.from.at(atom));
    // The reverse rules out the precedence itself; said outright, what must then hold instead comes at once.
    const answer = search.solve([holds(reverse), fails(atom)], end - search.work);
    if (answer === "no") always.add(atom);
    // An answer shows others to be free, too.
    else if (answer === "yes") atoms = atoms.filter((other, k) => k <= i || search.leadsTo(program.from.at(other), program.to.at(other)));
  }
  for (const r of unsure) if (always.has(rows.atom[r] as number)) forced[r] = 1;
}
