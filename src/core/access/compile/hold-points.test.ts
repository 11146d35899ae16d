import { describe, expect, test } from "vitest";
import { place, small, step } from "../../../../test/fixtures/small";

const cage = place("cage", { id: "north", passes: ["person"] }, { id: "top", passes: ["person", "hose"] });
const look = step("look", { sort: "inspection", reaches: [{ place: "cage", need: "sight" }], holdPoint: { places: ["cage"] } });
const tie = step("tie", { reaches: [{ place: "cage" }] });
const concrete = { id: "concrete", fills: ["cage"] };
const pour = step("pour", { puts: ["concrete"] });

describe("a hold point", () => {
  test("is after the work and before what fills the place", () => {
    const { rows } = small({ places: [cage], pieces: [concrete], steps: [pour, look, tie] });
    expect(rows).toContain("tie < look: hold-point(look tie cage) must");
    expect(rows).toContain("look < pour: hold-point(look pour cage) must redundant");
  });

  test("leaves alone who only looks", () => {
    const photo = step("photo", { reaches: [{ place: "cage", need: "sight" }] });
    expect(small({ places: [cage], steps: [look, photo] }).rows).toEqual([]);
  });

  test("leaves alone who closes the place himself", () => {
    const cover = step("cover", { puts: ["lid"], reaches: [{ place: "cage" }] });
    const { rows } = small({ places: [cage], pieces: [{ id: "lid", closes: ["cage.top"] }], steps: [look, cover] });
    expect(rows).toEqual([]);
  });

  test("lets work go on once every way is closed; a way that was made counts when its maker is gone", () => {
    const shut = { id: "shut", closes: ["cage.north"] };
    const ladder = { id: "ladder", makes: ["cage.top"] };
    const steps = [
      look,
      step("ladder-up", { puts: ["ladder"] }),
      step("ladder-down", { takes: ["ladder"] }),
      step("shut-up", { puts: ["shut"], after: ["look"] }),
      step("open-again", { takes: ["shut"] }),
      { ...tie, after: ["open-again", "ladder-down"] },
    ];
    const { rows, codes } = small({ places: [cage], pieces: [shut, ladder], steps });
    expect(codes).toEqual([]);
    expect(rows.filter((row) => row.includes("hold-point"))).toEqual([
      "shut-up < tie: hold-point(look shut-up cage) must redundant",
      "ladder-down < tie: hold-point(look ladder-down cage) must",
    ]);
  });

  test("does not, while one way stays open", () => {
    const shut = { id: "shut", closes: ["cage.north"] };
    const steps = [look, step("shut-up", { puts: ["shut"], after: ["look"] }), { ...tie, after: ["shut-up"] }];
    const { blocks, codes } = small({ places: [cage], pieces: [shut], steps });
    expect(codes).toEqual(["access.hold-point"]);
    expect(blocks).toEqual([["hold-point(look cage)", "wait(look shut-up look>shut-up)", "wait(shut-up tie shut-up>tie)"]]);
  });

  test("cannot be the very step that fills the place", () => {
    const own = step("pour", { puts: ["concrete"], holdPoint: { places: ["cage"] } });
    expect(small({ places: [cage], pieces: [concrete], steps: [own] }).blocks).toEqual([["hold-point(pour cage)"]]);
  });

  test("is not asked of what filled the place from the start", () => {
    const old = { id: "old", fills: ["cage"], fromStart: true };
    const steps = [step("break-out", { takes: ["old"] }), look];
    expect(small({ places: [cage], pieces: [old], steps }).order).toBe("break-out look");
  });

  test("taking down what has its fasteners there is work there", () => {
    const panel = { id: "panel", off: [{ place: "cage", need: "arm", depth: "1 in" }] };
    const steps = [look, step("set", { puts: ["panel"] }), step("strip", { takes: ["panel"] })];
    expect(small({ places: [cage], pieces: [panel], steps }).rows).toContain("strip < look: hold-point(look strip cage) must");
  });
});
