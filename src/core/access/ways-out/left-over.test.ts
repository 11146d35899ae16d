import { describe, expect, test } from "vitest";
import { place, smallCase, step } from "../../../../test/fixtures/small";
import type { Finding, Statement } from "../../base";
import { access, may } from "../index";
import { keyOf, leftOver } from "./left-over";

describe("a statement is the same before and after an edit", () => {
  const reach: Statement = { rule: "reach", step: "a", id: "2", place: "q", need: "arm", detail: { depth_mm: 300 } };
  const wait: Statement = { rule: "wait", step: "a", other: "b", id: "w", detail: { plain: false } };

  test("a reach, by what must be got to, not by its number in the list", () => {
    for (const rule of ["reach", "off"]) {
      const one = { ...reach, rule };
      expect(keyOf({ ...one, id: "1" })).toBe(keyOf(one));
      expect(keyOf({ ...one, detail: { depth_mm: 400 } })).not.toBe(keyOf(one));
      expect(keyOf({ ...one, step: "b" })).not.toBe(keyOf(one));
    }
    expect(keyOf({ ...reach, rule: "off" })).not.toBe(keyOf(reach));
  });

  test("anything else, by its id, whatever else is told of it", () => {
    expect(keyOf({ ...wait, detail: { plain: true } })).toBe(keyOf(wait));
    expect(keyOf({ ...wait, id: "v" })).not.toBe(keyOf(wait));
    expect(keyOf({ ...wait, other: "c" })).not.toBe(keyOf(wait));
  });
});

describe("what is left of a block", () => {
  const shut = { places: [place("cage")], pieces: [{ id: "lid", closes: ["cage.door"] }] };
  const on = step("lid-on", { puts: ["lid"] });
  const blocked = smallCase({ ...shut, steps: [on, step("tie", { reaches: [{ place: "cage" }], after: ["lid-on"] })] });
  const [finding] = access(blocked.build).findings as [Finding];

  test("nothing where an order is possible; else what still stands in the way", () => {
    const free = smallCase({ ...shut, steps: [on, step("tie", { reaches: [{ place: "cage" }] })] });
    expect(leftOver(blocked.build, finding)(free.build)).toBeNull();
    expect(leftOver(blocked.build, finding)(blocked.build)?.because).toEqual(finding.because);
  });

  test("all of it where a step that was asked about is no more", () => {
    const answer = may(blocked.build, blocked.at("tie"), blocked.at("lid-on"));
    if (answer.verdict !== "no") throw new Error(answer.verdict);
    const left = leftOver(blocked.build, answer.finding);
    const without = (id: string) => smallCase({ ...shut, steps: [on, step("tie")].filter((s) => s.id !== id) }).build;
    expect(left(without("tie"))).toBe(answer.finding);
    expect(left(without("lid-on"))).toBe(answer.finding);
    expect(left(without("none"))).toBeNull();
  });
});
