import { describe, expect, test } from "vitest";
import { orderOf, say, sayAll } from "../../../../test/fixtures/say";
import { place, small, smallCase, step } from "../../../../test/fixtures/small";
import type { Finding } from "../../base";
import { access, waysOut } from "../index";

const done = (day: string) => ({ done: { start: `${day}T08:00`, finish: `${day}T09:00` } });
const link = (from: string, to: string) => ({ id: `${from}-${to}`, from, to, why: "" });

describe("what is done comes before what is not", () => {
  test("a link that asks for the other way round is refused, with the tick and its day", () => {
    const { blocks, result } = small({ steps: [step("a", done("2027-03-06")), step("b")], waits: [link("b", "a")] });
    expect(blocks).toEqual([["done(a b)", "wait(b a b-a)"]]);
    expect(result.findings[0]?.because?.[0]).toEqual({ rule: "done", step: "a", other: "b", detail: { date: "2027-03-06T09:00" } });
  });

  test("so is each of several", () => {
    const steps = [step("a", done("2027-03-06")), step("b"), step("c", done("2027-03-07")), step("d")];
    const { blocks } = small({ steps, waits: [link("b", "a"), link("d", "c")] });
    expect(blocks.map((one) => one.join(" ")).sort()).toEqual(["done(a b) wait(b a b-a)", "done(c d) wait(d c d-c)"]);
  });

  test("between done steps, and from a done step on, links stand as they are", () => {
    const steps = [step("a", done("2027-03-07")), step("b", done("2027-03-06")), step("c")];
    const { codes, order } = small({ steps, waits: [link("b", "a"), link("a", "c")] });
    expect([codes, order]).toEqual([[], "b a c"]);
  });

  test("where there is another way, it is taken: what is closed is opened first", () => {
    const partial = (ticked: object) => ({
      places: [place("cage")],
      pieces: [{ id: "panel", closes: ["cage.door"] }],
      steps: [
        step("set", { puts: ["panel"], ...ticked }),
        step("strip", { takes: ["panel"] }),
        step("tie", { reaches: [{ place: "cage" }] }),
      ],
    });
    expect(small(partial({})).order).toBe("tie set strip");
    expect(small(partial(done("2027-03-06"))).order).toBe("set strip tie");
  });
});

describe("nothing is asked any more of what is done", () => {
  const [ticked, open] = [done("2027-03-06"), {}];
  const blockedUnless = (partial: (over: object) => Parameters<typeof small>[0], codes: string[], order: string) => {
    expect(small(partial(open)).codes).toEqual(codes);
    const after = small(partial(ticked));
    expect([after.codes, after.order]).toEqual([[], order]);
  };

  test("what holds a piece when it is put up", () => {
    const pieces = [{ id: "wall", heldBy: [["prop"]] }, { id: "prop" }];
    blockedUnless((over) => ({ pieces, steps: [step("up", { puts: ["wall"], ...over }), step("next")] }), ["access.held"], "up next");
  });

  test("what holds it when a holder is taken down", () => {
    const pieces = [
      { id: "wall", fromStart: true, heldBy: [["prop"]] },
      { id: "prop", fromStart: true },
    ];
    blockedUnless((over) => ({ pieces, steps: [step("away", { takes: ["prop"], ...over }), step("next")] }), ["access.held"], "away next");
  });

  test("that an inspection comes before what fills its place, so it may look once that is dug out", () => {
    const partial = (over: object) => ({
      places: [place("pit")],
      pieces: [{ id: "gravel", fills: ["pit"] }],
      steps: [
        step("fill", { puts: ["gravel"], ...over }),
        step("dig", { takes: ["gravel"] }),
        step("look", { sort: "inspection", reaches: [{ place: "pit", need: "sight" }], holdPoint: { places: ["pit"] }, after: ["fill"] }),
      ],
    });
    blockedUnless(partial, ["access.hold-point"], "fill dig look");
  });

  test("that a piece was put up before it was taken down", () => {
    const steps = (over: object) => [step("up", { puts: ["deck"], after: ["down"] }), step("down", { takes: ["deck"], ...over })];
    blockedUnless((over) => ({ pieces: [{ id: "deck" }], steps: steps(over) }), ["access.ring"], "down up");
  });
});

test("a tick is taken back, once a step, and then the build can be built", () => {
  const steps = [step("a", done("2027-03-06")), step("b", { reaches: [{ place: "cage" }] })];
  const one = smallCase({
    places: [place("cage")],
    pieces: [{ id: "panel", closes: ["cage.door"] }],
    steps: [{ ...steps[0], puts: ["panel"] }, steps[1]],
  });
  const finding = access(one.build).findings[0] as Finding;
  expect(sayAll(finding)).toContain("done(a b)");
  const way = waysOut(one.build, finding, one.apply).find(({ kind }) => kind === "untick");
  expect(way).toEqual({ kind: "untick", detail: { step: "a" }, edits: [{ path: ["steps", "id=a", "done"] }] });
  const next = one.apply(way?.edits ?? []);
  expect(next === null ? [] : orderOf(next, access(next))).toEqual(["b", "a"]);
  expect((finding.because ?? []).map(say).filter((said) => said.startsWith("done"))).toHaveLength(1);
});
