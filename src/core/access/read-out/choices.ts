import type { Program } from "../compile/program";
import type { OpenChoice } from "../result";
import type { Reasons } from "./reasons";
import type { Rows } from "./rows";
import type { Settled } from "./settled";

type Pairs = (readonly [from: number, to: number])[];

/** Clauses in use that could be met in more than one way. Options are told by what they ask for when everything under them is taken as usual. */
export function openChoices(program: Program, settled: Settled, rows: Rows, reasons: Reasons, forced: Uint8Array): OpenChoice[] {
  const rowOf = new Int32Array(program.clauses).fill(-1);
  rows.clause.forEach((clause, r) => {
    rowOf[clause] = r;
  });
  const choices: OpenChoice[] = [];
  rows.taken.forEach((taken, clause) => {
    const row = rowOf[clause] as number;
    if (taken < 0 || (row >= 0 && forced[row] === 1) || settled.openCount(clause) < 2) return;
    const open = settled.open(clause);
    const options = open.map((option) => ({ arcs: pairsOf(program, settled, option) }));
    const statement = row < 0 ? reasons.of(clause, -1) : (rows.reason[row] as number);
    choices.push({ statement, options, chosen: open.indexOf(taken) });
  });
  return choices;
}

function pairsOf(program: Program, settled: Settled, option: number): Pairs {
  if (!program.isSelector(option) && program.orders(option) && program.from.at(option) < program.steps)
    return [[program.from.at(option), program.to.at(option)]];
  const pairs: Pairs = [];
  const seen: number[] = [];
  const take = (atom: number): void => {
    if (program.isSelector(atom)) {
      if (seen.includes(atom)) return;
      seen.push(atom);
      for (let c = program.groups.first(atom); c >= 0; c = program.groups.next(c)) {
        const first = settled.usual(c);
        if (first >= 0) take(first);
      }
    } else if (program.orders(atom) && program.from.at(atom) < program.steps) pairs.push([program.from.at(atom), program.to.at(atom)]);
  };
  take(option);
  return pairs;
}
