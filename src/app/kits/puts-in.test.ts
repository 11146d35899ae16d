import { expect, test } from "vitest";
import { type Build, readDocument } from "../../core/build";
import { apply } from "../../core/edit";
import { putIn } from "../../core/kits";
import wall from "../../examples/garden-wall.json";
import { firstStepOf, putsIn, putsInLines } from "./puts-in";

const withPart = (kit: string, answers: Readonly<Record<string, string | number | boolean>>) => {
  const build = readDocument(apply(wall, putIn(wall, kit, "It", answers).edits).document).build as Build;
  return { build, part: build.parts[0]! };
};
const linesOf = (kit: string, answers: Readonly<Record<string, string | number | boolean>> = {}) => {
  const { build, part } = withPart(kit, answers);
  return new Map(putsInLines(putsIn(build, part)).map(({ what, says, names }) => [what, { says, names }]));
};

test("a part is told by its work, its pours, what is to order, whom to ask and its hold points, each by name", () => {
  const lines = linesOf("footing", { number: 2 });
  expect([...lines.keys()]).toEqual(["work", "concrete", "to order", "to ask for", "hold points"]);
  expect(lines.get("work")?.says).toMatch(/^8 steps, \d+ hours of work$/);
  expect(lines.get("concrete")?.says).toBe("1 pour, with the form and its figures");
  expect(lines.get("to order")).toEqual({ says: "", names: ["Bars for It, cut and bent", "Concrete for It"] });
  expect(lines.get("hold points")?.names).toHaveLength(2);
});

test("several alike are as many steps as one, and more hours", () => {
  const [one, four] = [1, 4].map((number) => withPart("footing", { number })).map(({ build, part }) => putsIn(build, part));
  expect(four!.steps).toBe(one!.steps);
  expect(four!.hours).toBeGreaterThan(one!.hours);
});

test("that there is no hold point is said too; of what else there is none nothing is said", () => {
  const lines = linesOf("stock-in-hand");
  expect([...lines.keys()]).toEqual(["work", "hold points"]);
  expect(lines.get("hold points")).toEqual({ says: "none", names: [] });
});

test("what nothing is left of comes to nothing", () => {
  const { build, part } = withPart("footing", { number: 2 });
  const counts = putsIn(build, part);
  expect([counts.steps, counts.deliveries.length]).toEqual([part.made.steps?.length, part.made.deliveries?.length]);
  expect(putsInLines(putsIn(build, { ...part, made: {} }))).toEqual([
    { what: "work", says: "0 steps, 0 hours of work", names: [] },
    { what: "hold points", says: "none", names: [] },
  ]);
});

test("its first step is looked for among the copies too", () => {
  const { build, part } = withPart("footing", { number: 2 });
  expect(firstStepOf(build, part)).toMatch(/#1$/);
  expect(firstStepOf(build, { ...part, made: {} })).toBeNull();
});
