import type { Program } from "../compile/program";
import type { OpenChoice } from "../result";
import type { Reasons } from "./reasons";
import { groupsOf, isRefusal, type Rows } from "./rows";
import type { Settled } from "./settled";

type Pairs = (readonly [from: number, to: number])[];

/** Clauses in use that could be met in more than one way. Options are told by what they ask for when everything under them is taken as usual. */
export function openChoices(program: Program, settled: Settled, rows: Rows, reasons: Reasons, forced: Uint8Array): OpenChoice[] {
  const groups = groupsOf(program);
  const rowOf = new Map([...rows.clause].map((clause, r) => [clause, r]));
  const choices: OpenChoice[] = [];
  for (const [clause, taken] of rows.used) {
    if (isRefusal(program, clause)) continue;
    const open = settled.open(clause);
    const row = rowOf.get(clause);
    if (open.length < 2 || (row !== undefined && forced[row] === 1)) continue;
    const options = open.map((option) => ({ arcs: pairsOf(program, settled, groups, option) }));
    const statement = row === undefined ? reasons.of(clause, -1, -1) : (rows.reason[row] as number);
    choices.push({ statement, options, chosen: open.indexOf(taken) });
  }
  return choices;
}

function pairsOf(program: Program, settled: Settled, groups: ReadonlyMap<number, readonly number[]>, option: number): Pairs {
  const pairs: Pairs = [];
  const seen = new Set<number>();
  const todo = [option];
  for (let atom = todo.pop(); atom !== undefined; atom = todo.pop()) {
    if (seen.has(atom)) continue;
    seen.add(atom);
    if (program.isSelector(atom)) {
      for (const clause of [...(groups.get(atom) ?? [])].reverse()) {
        const first = settled.open(clause)[0];
        if (first !== undefined) todo.push(first);
      }
    } else if (program.orders(atom) && program.from.at(atom) < program.steps) pairs.push([program.from.at(atom), program.to.at(atom)]);
  }
  return pairs;
}
