import { expect, test } from "vitest";
import { porch } from "../../../test/drawings/porch";
import { sheet } from "./sheet";
import { walk, walkChalk } from "./walk";

const { build, plan } = porch();
const made = sheet({ build, plan, scale: "weekends" });
const at = (id: string) => build.at.step.get(id)!;
const idOf = (step: number | null) => (step === null ? null : build.steps[step]!.id);

test("left and right go along a lane, up and down to the nearest step of the next lane that has one", () => {
  expect(idOf(walk(made, at("panels"), "right"))).toBe("last-panel");
  expect(idOf(walk(made, at("last-panel"), "left"))).toBe("panels");
  expect(walk(made, at("dig"), "left")).toBeNull();
  expect(idOf(walk(made, at("roof"), "down"))).toBe("walls");
  expect(walk(made, at("roof"), "up")).toBeNull();
});

test("without a start, and by Home and End, the first and the last in time", () => {
  expect(idOf(walk(made, null, "right"))).toBe("dig");
  expect(idOf(walk(made, at("seal"), "last"))).toBe("roof");
});

test("every step can be reached by keys from the first", () => {
  const seen = new Set<number>([walk(made, null, "first")!]);
  for (const step of seen)
    for (const way of ["left", "right", "up", "down"] as const) {
      const next = walk(made, step, way);
      if (next !== null) seen.add(next);
    }
  expect(seen.size).toBe(build.steps.length);
});

test("along the chalk line each link leads to the next, and from beside it onto it", () => {
  const steps = plan.chain.map(({ job }) => job);
  expect(steps.slice(0, -1).map((step) => walkChalk(plan, step, "right"))).toEqual(steps.slice(1));
  expect(walkChalk(plan, steps[steps.length - 1]!, "right")).toBeNull();
  expect(idOf(walkChalk(plan, at("strip"), "right"))).toBe("walls");
  expect(idOf(walkChalk(plan, at("strip"), "left"))).toBe("walls");
});
