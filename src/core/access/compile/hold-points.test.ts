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

  test("is after all who work there, each of them, and after nobody twice", () => {
    const paint = step("paint", { reaches: [{ place: "cage" }, { place: "cage", need: "arm", depth: "1 m" }] });
    const sweep = step("sweep", { reaches: [{ place: "yard" }] });
    const own = { ...look, reaches: [{ place: "cage" }] };
    expect(
      small({ places: [cage, place("yard")], steps: [sweep, own, paint, tie, step("oil", { reaches: [{ place: "cage" }] })] }).rows,
    ).toEqual([
      "paint < look: hold-point(look paint cage) must",
      "tie < look: hold-point(look tie cage) must",
      "oil < look: hold-point(look oil cage) must",
    ]);
  });

  test("leaves alone who only looks", () => {
    const photo = step("photo", { reaches: [{ place: "cage", need: "sight" }] });
    expect(small({ places: [cage], steps: [look, photo] }).rows).toEqual([]);
  });

  test("leaves alone who sets from outside what closes the place, and who fills it", () => {
    const cover = (need: object) => step("cover", { puts: ["lid"], reaches: [{ place: "cage", ...need }] });
    const rows = (need: object) =>
      small({ places: [cage], pieces: [{ id: "lid", closes: ["cage.top"] }], steps: [look, cover(need)] }).rows;
    expect(rows({ need: "arm", depth: "300 mm" })).toEqual([]);
    expect(rows({ need: "hose" })).toEqual([]);
    expect(rows({ need: "person" })).toEqual(["cover < look: hold-point(look cover cage) must"]);
    const inside = { ...pour, reaches: [{ place: "cage", need: "machine" }] };
    const yard = place("cage", { id: "gate", passes: ["machine"] });
    expect(small({ places: [yard], pieces: [concrete], steps: [look, inside] }).order).toBe("look pour");
  });

  test("tying and closing in one go comes neither before the inspection nor after it, unless another way stays open", () => {
    const face = { id: "face", closes: ["cage.north"] };
    const one = place("cage", { id: "north", passes: ["person"] });
    const tieAndClose = step("tie-and-close", { puts: ["face"], reaches: [{ place: "cage" }] });
    expect(small({ places: [one], pieces: [face], steps: [look, tieAndClose] }).codes).toEqual(["access.hold-point"]);
    expect(small({ places: [one], pieces: [face], steps: [tie, look, tieAndClose] }).codes).toEqual(["access.hold-point"]);
    expect(small({ places: [cage], pieces: [face], steps: [look, tieAndClose] }).order).toBe("tie-and-close look");
  });

  test("sees the place before it is closed, also where its step says nothing of that", () => {
    const bare = step("look", { sort: "inspection", holdPoint: { places: ["cage"] } });
    const face = { id: "face", closes: ["cage.north", "cage.top"] };
    const close = step("close", { puts: ["face"] });
    const { rows, order } = small({ places: [cage], pieces: [face], steps: [close, bare, tie] });
    expect(order).toBe("tie look close");
    expect(rows).toContain("tie < look: hold-point(look tie cage) must");
    expect(rows.some((row) => row.startsWith("look < close: closes(look close face cage."))).toBe(true);
    const elsewhere = { ...bare, reaches: [{ any: [{ place: "cage", need: "sight" }, { place: "yard" }] }] };
    expect(small({ places: [cage, place("yard")], pieces: [face], steps: [close, elsewhere, tie] }).order).toBe("tie look close");
    const late = small({ places: [cage], pieces: [face], steps: [close, { ...bare, after: ["close"] }] });
    expect(late.codes).toEqual(["access.hold-point"]);
    expect(late.blocks[0]).toContain("hold-point(look cage)");
  });

  test("sees the place itself, whatever else its step may do instead or besides", () => {
    const face = { id: "face", closes: ["cage.north", "cage.top"] };
    const close = step("close", { puts: ["face"] });
    const late = (reaches: object[]) =>
      small({
        places: [cage, place("yard")],
        pieces: [face],
        steps: [close, step("look", { sort: "inspection", holdPoint: { places: ["cage"] }, reaches, after: ["close"] })],
      }).codes;
    expect(late([{ any: [{ place: "cage", need: "sight" }, { place: "yard" }] }])).toEqual(["access.hold-point"]);
    expect(late([{ place: "yard" }])).toEqual(["access.hold-point"]);
    expect(late([{ place: "cage", need: "sight" }])).toEqual(["access.blocked"]);
  });

  test("takes a step that sets the lid with an arm and stands in the place besides for work there", () => {
    const cover = step("cover", {
      puts: ["lid"],
      reaches: [
        { place: "cage", need: "arm", depth: "300 mm" },
        { place: "cage", need: "person" },
      ],
    });
    const { rows } = small({ places: [cage], pieces: [{ id: "lid", closes: ["cage.top"] }], steps: [look, cover] });
    expect(rows).toEqual(["cover < look: hold-point(look cover cage) must"]);
  });

  test("is told after what the steps before it in the document are asked", () => {
    const steps = [
      step("stand-on", { leansOn: [{ piece: "plank" }], after: ["look"] }),
      look,
      step("plank-off", { takes: ["plank"] }),
      { ...tie, after: ["plank-off"] },
    ];
    const { blocks } = small({ places: [cage], pieces: [{ id: "plank", fromStart: true }], steps });
    expect(blocks).toEqual([
      ["leans(stand-on plank)", "hold-point(look cage)", "wait(look stand-on look>stand-on)", "wait(plank-off tie plank-off>tie)"],
    ]);
  });

  test("lets nobody work behind it in a place that was closed and opened again", () => {
    const shut = { id: "shut", closes: ["cage.north", "cage.top"] };
    const steps = [
      look,
      step("shut-up", { puts: ["shut"], after: ["look"] }),
      step("open-again", { takes: ["shut"] }),
      { ...tie, after: ["open-again"] },
    ];
    expect(small({ places: [cage], pieces: [shut], steps }).codes).toEqual(["access.hold-point"]);
    const dug = [look, pour, step("dig-out", { takes: ["concrete"] }), { ...tie, after: ["dig-out"] }];
    expect(small({ places: [cage], pieces: [concrete], steps: dug }).codes).toEqual(["access.hold-point"]);
  });

  test("lets work that might be there go on elsewhere while the place is closed: covered, or with its ladder gone", () => {
    const lid = { id: "lid", closes: ["cage.north"] };
    const ladder = { id: "ladder", makes: ["cage.top"], fromStart: true };
    const either = step("tie", { reaches: [{ any: [{ place: "cage" }, { place: "yard" }] }], after: ["cover", "ladder-down"] });
    const steps = [look, step("cover", { puts: ["lid"], after: ["look"] }), step("ladder-down", { takes: ["ladder"] }), either];
    const { rows, order } = small({ places: [cage, place("yard")], pieces: [lid, ladder], steps });
    expect(order.endsWith("tie")).toBe(true);
    expect(rows.filter((row) => row.includes("hold-point"))).toEqual([
      "cover < tie: hold-point(look cover cage) must",
      "ladder-down < tie: hold-point(look ladder-down cage) must",
    ]);
    const lidOff = [...steps, step("uncover", { takes: ["lid"] })];
    expect(small({ places: [cage, place("yard")], pieces: [lid, ladder], steps: lidOff }).rows).toContain(
      "tie < uncover: hold-point(look uncover cage) must",
    );
  });

  test("relies on nothing that goes by itself to keep the place closed", () => {
    const sheet = { id: "sheet", closes: ["cage.north", "cage.top"], goesAfter: "2 d" };
    const either = step("tie", { reaches: [{ any: [{ place: "cage" }, { place: "yard" }] }], after: ["cover"] });
    const steps = [look, step("cover", { puts: ["sheet"], after: ["look"] }), either];
    expect(small({ places: [cage, place("yard")], pieces: [sheet], steps }).codes).toEqual(["access.hold-point"]);
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
