import { describe, expect, test } from "vitest";
import type { Passage } from "../../build";
import { Facts, needDetail, needKey } from "./facts";

/** Facts in the order in which the compiler might come across them. */
function some() {
  const facts = new Facts();
  return {
    facts,
    reach: facts.add({ rule: "reach", step: "b", id: "1" }, "steps", 1000),
    wait: facts.add({ rule: "wait", id: "w", step: "a", other: "b" }, "waits", 0),
    closes: facts.add({ rule: "closes", piece: "p", place: "q", way: "q.w" }, "pieces", 1),
    ways: facts.add({ rule: "ways", place: "q", need: "person" }, "places", 0),
    asked: facts.add({ rule: "asked", step: "a", other: "b" }, "choices", 0),
    leans: facts.add({ rule: "leans", step: "a", piece: "p" }, "steps", 600),
    deadline: facts.add({ rule: "deadline", step: "a" }, "steps", 900),
    again: facts.add({ rule: "wait", id: "v", step: "a", other: "b" }, "waits", 0),
  };
}

describe("facts", () => {
  test("are told in document order, those at one place in the order they came up", () => {
    const { facts, ...n } = some();
    const all = Object.values(n).reverse();
    expect(facts.inOrder(all)).toEqual([n.ways, n.closes, n.leans, n.deadline, n.reach, n.wait, n.again, n.asked]);
  });

  test("are tried for leaving out by kind, facts first, each kind backwards; what was asked last of all", () => {
    const { facts, ...n } = some();
    expect(facts.tryOut(Object.values(n))).toEqual([n.closes, n.ways, n.reach, n.leans, n.deadline, n.again, n.wait, n.asked]);
  });

  test("have the kind of their rule", () => {
    const { facts, ...n } = some();
    expect([n.ways, n.reach, n.deadline, n.wait].map((f) => facts.kind(f))).toEqual(["fact", "reach", "date", "link"]);
  });
});

describe("needs", () => {
  const unit = { kind: "unit", long_mm: 2000, wide_mm: 300, thick_mm: 40, mass_kg: 60, piece: null } as const;
  const all: Passage[] = [
    { kind: "person" },
    { kind: "hand", depth_mm: 300 },
    { kind: "hand", depth_mm: 301 },
    { kind: "arm", depth_mm: 300 },
    { kind: "arm", depth_mm: 301 },
    unit,
    { ...unit, long_mm: 2001 },
    { ...unit, wide_mm: 301 },
    { ...unit, thick_mm: 41 },
    { ...unit, mass_kg: 61 },
    { ...unit, piece: "p" as never },
    { ...unit, piece: "q" as never },
  ];

  test("share a key only when they are the same", () => {
    expect(new Set(all.map(needKey)).size).toBe(all.length);
    expect(all.map((need) => needKey({ ...need }))).toEqual(all.map(needKey));
  });

  test("tell their measures", () => {
    expect([all[0], all[1], all[5], all[10]].map((need) => needDetail(need as Passage))).toEqual([
      {},
      { depth_mm: 300 },
      { long_mm: 2000, wide_mm: 300, thick_mm: 40, mass_kg: 60 },
      { long_mm: 2000, wide_mm: 300, thick_mm: 40, mass_kg: 60, unit: "p" },
    ]);
  });
});
