import { describe, expect, test } from "vitest";
import { place, small, step } from "../../../../test/fixtures/small";

const load = step("load", { leansOn: [{ piece: "ledge" }] });
const set = step("set", { puts: ["ledge"] });

describe("leaning on a piece", () => {
  test("that nobody puts up cannot be", () => {
    const { codes, blocks } = small({ pieces: [{ id: "ledge" }], steps: [load] });
    expect(codes).toEqual(["access.blocked"]);
    expect(blocks).toEqual([["leans(load ledge)"]]);
  });

  test("that stands from the start asks for nothing but that it still stands", () => {
    const pieces = [{ id: "ledge", fromStart: true }];
    expect(small({ pieces, steps: [load] }).rows).toEqual([]);
    expect(small({ pieces, steps: [step("off", { takes: ["ledge"] }), load] }).rows).toEqual(["load < off: leans(load off ledge) must"]);
  });

  test("that goes by itself is over before it goes, whichever step puts it up", () => {
    const pieces = [{ id: "ledge", goesAfter: "2 d" }];
    const rows = ["set < load: leans(load set ledge) must", "set within 2 d < load: leans(load set ledge) must time"];
    expect(small({ pieces, steps: [set, load] }).rows).toEqual(rows);
    expect(small({ pieces, steps: [load, set] }).rows).toEqual(rows);
    const both = step("both", { puts: ["ledge"], leansOn: [{ piece: "ledge" }] });
    expect(small({ pieces, steps: [both] }).blocks).toEqual([["leans(both ledge)"]]);
  });

  test("that one puts up oneself, as a way in, asks for nothing", () => {
    const pieces = [{ id: "ladder", goesAfter: "2 d", makes: ["pit.side"] }];
    const steps = [step("climb", { puts: ["ladder"], reaches: [{ place: "pit" }] })];
    expect(small({ places: [place("pit", { id: "side", passes: ["person"] })], pieces, steps })).toMatchObject({
      rows: [],
      order: "climb",
    });
  });

  test("that goes once a pour has its strength is over before that, whichever step is the pour", () => {
    const pieces = [{ id: "ledge", goesAfter: "75 % of pour" }];
    const pour = step("pour", { sort: "pour", pour: { strength: "28 MPa" } });
    for (const steps of [
      [pour, set, load],
      [load, set, pour],
    ])
      expect(small({ pieces, steps }).rows).toContain("pour within 75 % of pour < load: leans(load pour ledge) must time");
  });
});
