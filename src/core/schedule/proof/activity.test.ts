import { expect, test } from "vitest";
import { Activity } from "./activity";
import { Atoms } from "./atoms";
import { Trail } from "./trail";

test("a literal is wanted that more clauses spoke of than of its denial, and the one that mattered most of late comes first", () => {
  const variables = 3000;
  const maps = new Array<null>(variables).fill(null);
  const trail = new Trail(variables, maps, new Int32Array(variables), new Int32Array(variables).fill(9));
  const atoms = new Atoms(variables, maps);
  const activity = new Activity(trail, atoms, 0.5);
  const atom = (x: number): number => atoms.literal(2 * x, 5) >> 1;
  const all = Array.from({ length: variables }, (_, x) => atom(x));
  expect(activity.next()).toBe(-1);
  const [a, b] = [all[1]!, all[2999]!];
  for (const literal of [2 * a, 2 * b + 1, 2 * b + 1]) activity.enter(literal);
  expect(activity.wanted(a)).toBe(2 * a);
  expect(activity.wanted(b)).toBe(2 * b + 1);
  // Never spoken of, or as often as its denial: the smaller start.
  expect(activity.wanted(all[7]!)).toBe(2 * all[7]! + 1);
  activity.enter(2 * a + 1);
  expect(activity.wanted(a)).toBe(2 * a + 1);
  for (const literal of [2 * b, 2 * b, 2 * b]) activity.enter(literal);
  expect(activity.wanted(b)).toBe(2 * b);
  expect(activity.next()).toBe(b);
  // Three clashes later once counts as much as eight times did.
  for (let k = 0; k < 3; k++) activity.fade();
  activity.enter(2 * a);
  expect(activity.next()).toBe(a);
  trail.decide(2 * 1, 5);
  expect(activity.next()).toBe(b);
  trail.backTo(0);
  activity.backTo(0);
  expect(activity.next()).toBe(a);
});
