import { describe, expect, test } from "vitest";
import { orderOf, rowsOf } from "../../../../test/fixtures/say";
import { place, smallCase, step } from "../../../../test/fixtures/small";
import { access } from "../index";

const panel = smallCase({
  places: [place("cage")],
  pieces: [{ id: "panel", closes: ["cage.door"] }],
  steps: [step("set", { puts: ["panel"] }), step("strip", { takes: ["panel"] }), step("tie", { reaches: [{ place: "cage" }] })],
});
const [set, tie] = [panel.at("set"), panel.at("tie")];

describe("what dates have refuted", () => {
  test("nothing, in a set of nothing", () => {
    expect(access(panel.build, [[]])).toEqual(access(panel.build));
  });

  test("without the number of a link that has an amount it is the precedence itself", () => {
    const turned = rowsOf(panel.build, access(panel.build, [[[tie, set]]]));
    expect(turned[0]).toContain("strip < tie");
    for (const link of [-1, 0, 9999]) expect(rowsOf(panel.build, access(panel.build, [[[tie, set, link]]]))).toEqual(turned);
  });

  test("of two steps that nothing binds, one order only", () => {
    const free = smallCase({ steps: [step("a"), step("b")] });
    expect(orderOf(free.build, access(free.build))).toEqual(["a", "b"]);
    expect(orderOf(free.build, access(free.build, [[[0, 1]]]))).toEqual(["b", "a"]);
    expect(access(free.build, [[[0, 1]], [[1, 0]]]).possible).toBe(false);
    expect(access(free.build, [[[0, 0]]]).possible).toBe(false);
  });

  test("of several in a set one is turned round, the others stay as they were", () => {
    const four = smallCase({ steps: [step("a"), step("b"), step("c"), step("d")] });
    expect(
      orderOf(
        four.build,
        access(four.build, [
          [
            [0, 1],
            [2, 3],
          ],
        ]),
      ),
    ).toEqual(["b", "a", "c", "d"]);
    expect(
      orderOf(
        four.build,
        access(four.build, [
          [
            [0, 1],
            [2, 3],
          ],
          [[1, 0]],
        ]),
      ),
    ).toEqual(["a", "b", "d", "c"]);
  });

  test.each([
    [{ least: "2 h", most: "5 h" }, "2 h to 5 h"],
    [{ least: "2 h" }, "2 h"],
    [{ fromEnd: "start", least: "2 h" }, "2 h"],
    [{ most: "5 h" }, "5 h"],
  ])("a wait by its link, %j: then there is no way, and its amounts are told", (over, text) => {
    const one = smallCase({ steps: [step("a"), step("b")], waits: [{ id: "w", from: "a", to: "b", why: "", ...over }] });
    const first = access(one.build);
    const refused = access(one.build, [[[0, 1, first.arcs.link?.[0] as number]]]);
    expect(refused.findings.map(({ code }) => code)).toEqual(["access.refuted"]);
    expect(refused.findings[0]?.because?.find(({ rule }) => rule === "refused")?.detail).toEqual({
      before: ["a"],
      after: ["b"],
      amounts: [text],
    });
  });
});
