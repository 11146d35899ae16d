import { describe, expect, test } from "vitest";
import { type Case, sayAll } from "../../../../test/fixtures/say";
import { place, smallCase, step } from "../../../../test/fixtures/small";
import type { Finding, WayOut } from "../../base";
import { access, may, waysOut } from "../index";
import { the } from "./written";

const blockOf = ({ build }: Case): Finding => access(build).findings[0] as Finding;
const found = (one: Case, finding = blockOf(one)) => waysOut(one.build, finding, one.apply);
const ofKind = (ways: readonly WayOut[], kind: string) => ways.find((way) => way.kind === kind);
const built = (one: Case, way: WayOut | undefined) => {
  const build = one.apply(way?.edits ?? []);
  if (build === null) throw new Error("no build");
  return { build, result: access(build), step: (id: string) => build.steps.find((s) => s.id === id) };
};
const asked = (one: Case, a: string, b: string): Finding => {
  const answer = may(one.build, one.at(a), one.at(b));
  if (answer.verdict !== "no") throw new Error(answer.verdict);
  return answer.finding;
};

describe("a unit that does not pass", () => {
  const tank = (size: object, hole = "600 mm", more: object = {}) =>
    smallCase({
      places: [
        place("tank", { id: "hole", passes: ["person", "unit"], opening: { wide: hole, high: hole } }, { id: "top", passes: ["sight"] }),
      ],
      pieces: [
        { id: "core", name: "Core", closes: ["tank.top"], size, weight: "100 kg", off: [{ place: "tank", need: "unit", piece: "core" }] },
        { id: "roof", heldBy: [["core"], ["post"]] },
        { id: "post" },
      ],
      steps: [
        step("set", { puts: ["core"], reaches: [{ place: "tank", need: "unit", piece: "core" }] }),
        step("prop", { puts: ["post"] }),
        step("cast", { puts: ["roof"], leansOn: [{ piece: "core", once: "1 d" }] }),
        step("strip", { takes: ["core"], after: ["cast"] }),
      ],
      ...more,
    });

  test("is made in as few equal parts as pass, each a piece of its own that is brought in, leaned on and taken down", () => {
    const one = tank({ long: "2 m", wide: "1200 mm", thick: "1 m" });
    const way = ofKind(found(one), "split");
    expect(way?.detail).toMatchObject({ piece: "core", place: "tank", way: "tank.hole", parts: 4 });
    const { build, result, step: of } = built(one, way);
    expect(result.possible).toBe(true);
    const parts = build.pieces.filter(({ id }) => id.startsWith("core"));
    expect(parts.map(({ name }) => name)).toEqual([1, 2, 3, 4].map((n) => `Core, part ${n} of 4`));
    for (const part of parts) {
      expect(part).toMatchObject({ size_mm: { long: 2000, wide: 600, thick: 500 }, mass_kg: 25, closes: [{ place: "tank", way: "top" }] });
      expect(part.off).toMatchObject([{ any: [{ need: { kind: "unit", piece: part.id, wide_mm: 600 } }] }]);
    }
    const ids = parts.map(({ id }) => id);
    expect(of("set")?.puts).toEqual(ids);
    expect(of("strip")?.takes).toEqual(ids);
    expect(of("set")?.reaches.map(({ any }) => any[0]?.need)).toMatchObject(ids.map((piece) => ({ piece })));
    expect(of("cast")?.leansOn.map(({ piece, once }) => [piece, once?.text])).toEqual(ids.map((id) => [id, "1 d"]));
    expect(build.pieces.find(({ id }) => id === "roof")?.heldBy).toEqual([ids, ["post"]]);
  });

  test("two parts where a half passes; none where even eight are too large", () => {
    expect(ofKind(found(tank({ long: "2 m", wide: "1 m", thick: "500 mm" })), "split")?.detail.parts).toBe(2);
    expect(ofKind(found(tank({ long: "2 m", wide: "1 m", thick: "1 m" }, "200 mm")), "split")).toBeUndefined();
  });
});

describe("another way in", () => {
  const loft = (pieces: object[] = [], steps: object[] = []) =>
    smallCase({
      places: [place("loft", { id: "slit", passes: ["sight"] })],
      pieces,
      steps: [
        step("look", { sort: "inspection", calendar: "inspector", hands: 0, reaches: [{ place: "loft", need: "person" }] }),
        ...steps,
      ],
      calendars: [
        { id: "always", name: "Always", week: { mon: ["8:00-16:00"] } },
        { id: "inspector", name: "Inspector", week: { tue: ["8:00-16:00"] } },
      ],
      usual: "always",
    });

  test("where nothing closes the place it is a ladder or the like, put up before the work by one pair of hands on the usual calendar", () => {
    const one = loft();
    const way = ofKind(found(one), "clean-out");
    expect(way?.detail).toEqual({ place: "loft", step: "look", open: true });
    const { build, result, step: of } = built(one, way);
    expect([...result.order].map((s) => build.steps[s]?.id)).toEqual(["loft-way-in-up", "look"]);
    expect(of("loft-way-in-up")).toMatchObject({
      hands: [{ role: "hands", number: 1 }],
      calendar: "always",
      name: "Put up a way in to the loft",
    });
  });

  test("where something does it is a clean-out, shut by one pair of hands on the usual calendar", () => {
    const board = { id: "board", closes: ["loft.slit"] };
    const shut = [
      step("nail", { puts: ["board"] }),
      step("peer", { sort: "inspection", calendar: "inspector", hands: 0, after: ["nail"], reaches: [{ place: "loft", need: "sight" }] }),
    ];
    const one = loft([board], shut);
    const finding = access(one.build).findings.find((f) => f.where.id === "peer") as Finding;
    const way = ofKind(found(one, finding), "clean-out");
    expect(way?.detail).toEqual({ place: "loft", step: "peer" });
    const closes = way?.edits.find(({ path }) => path[1] === "id=loft-clean-out-shut")?.value;
    expect(closes).toMatchObject({ hands: [{ role: "hands", number: 1 }], name: "Close the clean-out at the loft" });
    expect(closes).not.toHaveProperty("calendar");
    expect(ofKind(found(one, blockOf(one)), "clean-out")?.detail.open).toBeUndefined();
  });

  test("names read on in a sentence", () => {
    const names = ["Ring beam steel", "The pit", "Ruth's loft", "my shed", "2nd floor", "DIN box", "Under-deck space"];
    expect(names.map(the)).toEqual([
      "the ring beam steel",
      "the pit",
      "Ruth's loft",
      "my shed",
      "2nd floor",
      "the DIN box",
      "the under-deck space",
    ]);
  });
});

describe("what was asked by name", () => {
  const one = smallCase({
    places: [place("cage"), place("yard")],
    pieces: [{ id: "face", closes: ["cage.door"] }, { id: "brace" }],
    steps: [step("set", { puts: ["face", "brace"] }), step("tie", { reaches: [{ place: "cage" }, { place: "yard" }] })],
  });

  test("is not had by splitting either of the two, and a face left off says that the step puts it up no more", () => {
    const ways = found(one, asked(one, "set", "tie"));
    expect(ways.map(({ kind }) => kind)).not.toContain("split");
    expect(ofKind(ways, "leave-face-off")?.detail).toEqual({ piece: "face", step: "set", other: "tie", emptied: ["face"] });
  });
});

describe("an inspection that stops the work", () => {
  const cage = place("cage", { id: "door", passes: ["person"] });
  const look = step("look", { sort: "inspection", holdPoint: { places: ["cage"] } });

  test("where a step ties and closes, the closing becomes a step of its own, after it", () => {
    const tie = step("tie", { puts: ["face"], reaches: [{ place: "cage" }] });
    const one = smallCase({ places: [cage], pieces: [{ id: "face", closes: ["cage.door"] }], steps: [tie, look] });
    const { build, result } = built(one, ofKind(found(one), "split"));
    expect([...result.order].map((s) => build.steps[s]?.id)).toEqual(["tie", "look", "tie-part"]);
  });

  test("work that comes in between is seen by a second one, also where no statement names it", () => {
    const shut = [
      step("close", { puts: ["face"], after: ["look"] }),
      step("open", { takes: ["face"] }),
      step("cut", { reaches: [{ place: "cage" }], after: ["open"] }),
    ];
    const one = smallCase({ places: [cage], pieces: [{ id: "face", closes: ["cage.door"] }], steps: [look, ...shut] });
    expect(sayAll(blockOf(one))).toContain("hold-point(look cage)");
    const way = ofKind(found(one), "second-inspection");
    expect(way?.detail).toEqual({ step: "look", place: "cage", other: "cut" });
    expect(built(one, way).result.possible).toBe(true);
  });

  test("what closes the place before it is put up later, a written wait given up for it", () => {
    const close = step("close", { puts: ["face"] });
    const waits = [{ id: "w", from: "close", to: "look", least: "1 h", why: "" }];
    const one = smallCase({ places: [cage], pieces: [{ id: "face", closes: ["cage.door"] }], steps: [close, look], waits });
    const way = ofKind(found(one), "later");
    expect(way?.edits).toEqual([{ path: ["waits", "id=w"] }, { path: ["steps", "id=close", "after", "id=look"], value: "look" }]);
    expect(built(one, way).result.possible).toBe(true);
  });
});
