import { expect, test } from "vitest";
import { smallCase, step } from "../../../../test/fixtures/small";
import { compile } from "./compile";
import { timeLayer } from "./time-layer";

test("what a step takes and when it must be are one variable and one clause each, no precedence and under no guard; what is not bounded has no delay", () => {
  const { build } = smallCase({
    steps: [step("a"), step("b", { deadline: "2027-03-07" })],
    waits: [{ id: "w", from: "a", to: "b", least: "1 h", most: "2 h", why: "" }],
  });
  const program = compile(build);
  const layer = timeLayer(program, {
    work: (s) => ({ least: 60, most: s === 0 ? Number.POSITIVE_INFINITY : 90 }),
    least: () => 30,
    most: () => Number.POSITIVE_INFINITY,
    notBefore: () => null,
    deadline: (s) => (s === 1 ? 500 : null),
    fixed: () => null,
  });
  const own = { from: program.atoms, count: 3 };
  expect(layer.variables).toBe(own.from + own.count);
  const added = (list: Int32Array) => [...list.subarray(list.length - own.count)];
  expect([layer.from, layer.to, layer.guard].map(added)).toEqual([
    [-1, -1, -1],
    [-1, -1, -1],
    [-1, -1, -1],
  ]);
  expect(added(layer.literals)).toEqual([0, 1, 2].map((i) => 2 * (own.from + i)));
  expect(added(layer.statement).map((fact) => program.facts.statement(fact).rule)).toEqual(["work", "work", "deadline"]);
  // Instants: starts and finishes of a (0, 1) and b (2, 3), and the epoch (4). First the bare precedence, last that no step runs backwards.
  const arcs = [...(layer.time?.from ?? [])].map((from, i) => [from, layer.time?.to[i], layer.time?.delay[i]]);
  expect(arcs).toEqual([
    [1, 2, 0],
    [1, 2, 30],
    [0, 1, 60],
    [2, 3, 60],
    [3, 2, -90],
    [3, 4, -500],
    [0, 1, 0],
    [2, 3, 0],
  ]);
});
