import { type ClauseSearch, holds, reachMany, topologicalOrder } from "../../graph";
import type { Program } from "../compile/program";
import { graphOfRows, type Rows } from "./rows";
import type { Settled } from "./settled";

/** Most work spent on asking whether a chosen precedence could be the other way round, besides as much as the order itself took. */
const budget = 20_000;

/**
 * For each row, 1 when it holds in every order. A row with an amount does when nothing was chosen on the way to it; a bare precedence also when it follows from
 * those, or when asking for the reverse is refuted. What the budget does not reach counts as chosen.
 */
export function forcedRows(program: Program, settled: Settled, rows: Rows): Uint8Array {
  const forced = new Uint8Array(rows.atom.length);
  const open: number[] = [];
  rows.atom.forEach((atom, r) => {
    const clause = rows.clause[r] as number;
    if (settled.matters(clause) && settled.open(clause).length === 1) forced[r] = 1;
    else if (program.bare.at(atom) === atom) open.push(r);
  });
  const ends = (list: { at(atom: number): number }) => open.map((r) => list.at(rows.atom[r] as number));
  const follow = settled.follow(ends(program.from), ends(program.to));
  const unsure = open.filter((r, i) => {
    if (follow[i] === 1 || settled.always(rows.atom[r] as number) === 1) forced[r] = 1;
    return forced[r] === 0;
  });
  const reversible = turnable(program, settled, rows, unsure);
  askReverse(
    program,
    settled.every,
    rows,
    unsure.filter((_, i) => reversible[i] === 0),
    forced,
  );
  return forced;
}

/**
 * For each of the rows, 1 when the answer stays an order with this row's clause met by its other option and the row turned round. Looked at only
 * where that is easily seen: the row is "s before the closing", the other option "after the opening", and no other path leads from s to either.
 */
function turnable(program: Program, settled: Settled, rows: Rows, which: readonly number[]): Uint8Array {
  const { graph, rowOf } = graphOfRows(program, rows);
  const order = topologicalOrder(graph);
  const answer = new Uint8Array(which.length);
  if (order === null) return answer;
  const askFrom: number[] = [];
  const askTo: number[] = [];
  const askFor: number[] = [];
  which.forEach((r, i) => {
    const s = program.from.at(rows.atom[r] as number);
    const other = settled.open(rows.clause[r] as number).find((atom) => atom !== rows.atom[r]);
    if (other === undefined || program.isSelector(other) || program.to.at(other) !== s) return;
    answer[i] = 1;
    for (let at = graph.start[s] as number; at < (graph.start[s + 1] as number); at++) {
      if (rowOf[graph.arc[at] as number] === r) continue;
      for (const goal of [program.from.at(other), program.to.at(rows.atom[r] as number)]) {
        if (graph.target[at] === goal) answer[i] = 0;
        askFrom.push(graph.target[at] as number);
        askTo.push(goal);
        askFor.push(i);
      }
    }
  });
  const leads = reachMany(graph, order, askFrom, askTo);
  leads.forEach((yes, k) => {
    if (yes === 1) answer[askFor[k] as number] = 0;
  });
  return answer;
}

function askReverse(program: Program, search: ClauseSearch, rows: Rows, which: readonly number[], forced: Uint8Array): void {
  const end = search.work + Math.max(budget, search.work);
  const known = new Map<number, number>();
  for (const r of which) {
    const atom = rows.atom[r] as number;
    if (!known.has(atom)) {
      if (search.work >= end) break;
      const reverse = search.addArc(program.to.at(atom), program.from.at(atom));
      known.set(atom, search.solve([holds(reverse)], end - search.work) === "no" ? 1 : 0);
    }
    forced[r] = known.get(atom) as number;
  }
}
