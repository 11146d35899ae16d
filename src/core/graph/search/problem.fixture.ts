import type { Random } from "../../base";
import type { ClauseProblem } from "./problem";

export interface Row {
  readonly literals: readonly number[];
  readonly statement: number;
  readonly guard?: number;
}

/** A problem from rows and arcs ([-1, -1]: a selector), added to another one where there is one. */
export function clauses(
  base: ClauseProblem | null,
  rows: readonly Row[],
  arcs: readonly (readonly [number, number])[],
  nodes = base?.nodes ?? 0,
): ClauseProblem {
  const literals = [...(base?.literals ?? []), ...rows.flatMap((r) => r.literals)];
  const start = [...(base?.start ?? [0])];
  for (const row of rows) start.push((start.at(-1) as number) + row.literals.length);
  const from = [...(base?.from ?? []), ...arcs.map(([u]) => u)];
  return {
    nodes,
    variables: from.length,
    from: Int32Array.from(from),
    to: Int32Array.from([...(base?.to ?? []), ...arcs.map(([, v]) => v)]),
    start: Int32Array.from(start),
    literals: Int32Array.from(literals),
    statement: Int32Array.from([...(base?.statement ?? []), ...rows.map((r) => r.statement)]),
    guard: Int32Array.from([...(base?.guard ?? []), ...rows.map((r) => r.guard ?? -1)]),
    time: base?.time ?? null,
  };
}

/** Four or five nodes, up to nine variables, clauses of up to three literals; arcs appear negated now and then, selectors as guards. */
export function randomProblem(random: Random): ClauseProblem {
  const nodes = random.int(4, 5);
  const arcs = Array.from({ length: random.int(5, 7) }, (): [number, number] => [random.int(0, nodes - 1), random.int(0, nodes - 1)]);
  const selectors = random.int(1, 2);
  const all: [number, number][] = [...arcs, ...Array.from({ length: selectors }, (): [number, number] => [-1, -1])];
  const rows = Array.from({ length: random.int(4, 12) }, (_, i): Row => {
    const literals = Array.from({ length: random.int(1, 3) }, () => {
      const variable = random.int(0, all.length - 1);
      return 2 * variable + (random.int(0, 9) < 2 ? 1 : 0);
    });
    const statement = random.int(0, 3) === 0 ? Math.max(0, i - 1) : i;
    if (random.int(0, 2) > 0) return { literals: [...new Set(literals)], statement };
    const guard = random.int(arcs.length, all.length - 1);
    return { literals: [...new Set(literals.filter((l) => l >> 1 !== guard)), 2 * guard + 1], statement, guard };
  });
  return clauses(null, rows, all, nodes);
}

/** Every set of values in turn. */
export function possibleByTrying(problem: ClauseProblem, keeps: (statement: number) => boolean, literals: readonly number[] = []): boolean {
  for (let bits = 0; bits < 2 ** problem.variables; bits++) {
    const value = (literal: number) => ((bits >> (literal >> 1)) & 1) !== (literal & 1);
    if (literals.every(value) && meets(problem, keeps, value) && !ringed(problem, bits)) return true;
  }
  return false;
}

function meets(problem: ClauseProblem, keeps: (statement: number) => boolean, value: (literal: number) => boolean): boolean {
  return problem.statement.every((of, c) => {
    if (!keeps(of)) return true;
    return problem.literals.slice(problem.start[c], problem.start[c + 1]).some(value);
  });
}

/** Arcs that hold, taken away from the front as long as something has nothing before it. */
function ringed(problem: ClauseProblem, bits: number): boolean {
  let arcs: [number, number][] = [];
  for (let v = 0; v < problem.variables; v++) {
    if (((bits >> v) & 1) === 1 && (problem.from[v] as number) >= 0) arcs.push([problem.from[v] as number, problem.to[v] as number]);
  }
  for (let before = -1; before !== arcs.length; ) {
    before = arcs.length;
    arcs = arcs.filter(([u]) => arcs.some(([, v]) => v === u));
  }
  return arcs.length > 0;
}
