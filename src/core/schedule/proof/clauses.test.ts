import { expect, it } from "vitest";
import { Atoms } from "./atoms";
import { Clauses } from "./clauses";
import { Trail, Why } from "./trail";

it("watches a clause by two of its literals however many atoms there are", () => {
  const variables = 5;
  const maps = new Array<null>(variables).fill(null);
  const trail = new Trail(variables, maps, new Int32Array(variables), new Int32Array(variables).fill(9_000));
  const atoms = new Atoms(variables, maps);
  const clauses = new Clauses(trail, atoms);
  const [a, b, c] = [1, 2, 3].map((x) => atoms.literal(2 * x, 5));
  for (let v = 1; v <= 4_000; v++) atoms.literal(0, v);
  const far = atoms.literal(2 * 4, 5);
  const clause = clauses.add(Int32Array.of(a!, b!, far, c!), 4, 4);
  const deny = (x: number): void => {
    trail.decide(2 * x + 1, -4);
    expect(clauses.rise(2 * x + 1, -9_000, -4)).toBe(true);
  };
  deny(2);
  trail.backTo(0);
  deny(4);
  deny(2);
  expect([...clauses.cells.slice(clause, clause + 4)].sort((x, y) => x - y)).toEqual([a, b, c, far]);
  expect(trail.low(1)).toBe(0);
  deny(3);
  expect(trail.low(1)).toBe(5);
  expect(trail.why[trail.size - 1]).toBe(Why.clause);
});
