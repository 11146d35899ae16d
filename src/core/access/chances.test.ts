import { describe, expect, test } from "vitest";
import { place, smallCase, step } from "../../../test/fixtures/small";
import { access, lastChances } from "./index";

const told = (partial: Parameters<typeof smallCase>[0]) => {
  const { build } = smallCase(partial);
  const id = (s: number) => build.steps[s]?.id ?? "";
  return lastChances(build, access(build)).map((c) => ({
    piece: build.pieces[c.piece]?.id,
    step: id(c.step),
    before: c.before.map((b) => `${id(b.step)} ${b.what} ${b.forced ? "must" : "chosen"}`),
    forGood: c.forGood,
  }));
};

const cage = place(
  "cage",
  { id: "north", passes: ["person"] },
  { id: "top", passes: ["person", "hose"] },
  { id: "slot", passes: ["sight"] },
);

describe("what comes before a closing", () => {
  test("also who could get in by another way, when something else puts it before", () => {
    const [closing] = told({
      places: [cage, place("yard")],
      pieces: [{ id: "pane", closes: ["cage.slot"] }],
      steps: [
        step("close", { puts: ["pane"], after: ["look", "fill", "sweep"] }),
        step("sweep", { reaches: [{ place: "yard" }] }),
        step("fill", { reaches: [{ place: "cage", need: "hose" }] }),
        step("look", { sort: "check", reaches: [{ any: [{ place: "yard" }, { place: "cage", need: "sight" }] }], after: ["fill"] }),
      ],
    });
    // No hose goes through the slot, so closing that is no last chance of filling.
    expect(closing).toEqual({ piece: "pane", step: "close", before: ["look check must"], forGood: true });
  });

  test("for what fills a place, who might work there or elsewhere", () => {
    const [closing] = told({
      places: [place("yard"), cage],
      pieces: [{ id: "concrete", fills: ["cage"] }],
      steps: [
        step("pour", { puts: ["concrete"], after: ["bend", "rest", "photo"] }),
        step("photo", { sort: "photograph", reaches: [{ any: [{ place: "yard" }, { place: "cage", need: "sight" }] }], after: ["bend"] }),
        step("rest", { reaches: [{ place: "yard" }] }),
        step("bend", { reaches: [{ any: [{ place: "yard" }, { place: "cage" }] }] }),
      ],
    });
    expect(closing?.before).toEqual(["bend work must", "photo photograph must"]);
  });

  test("also who must get in to take something down", () => {
    const [closing] = told({
      places: [place("yard"), cage],
      pieces: [{ id: "pane", closes: ["cage.top"] }, { id: "frame" }, { id: "clamp", fromStart: true, off: [{ place: "cage" }] }],
      steps: [
        step("free", { takes: ["frame", "clamp"] }),
        step("close", { puts: ["pane"], after: ["free"] }),
        step("set", { puts: ["frame"] }),
      ],
    });
    expect(closing).toEqual({ piece: "pane", step: "close", before: ["free work must"], forGood: true });
  });

  test("for what fills a place on the way to another, who must pass there", () => {
    const [closing] = told({
      places: [place("trench"), place("pit", { id: "side", passes: ["person"], through: "trench" })],
      pieces: [{ id: "gravel", fills: ["trench"] }],
      steps: [step("fill", { puts: ["gravel"] }), step("dig", { reaches: [{ place: "pit" }] })],
    });
    expect(closing).toEqual({ piece: "gravel", step: "fill", before: ["dig work must"], forGood: true });
  });

  test("each of several, once, however often it gets in", () => {
    const through = (id: string) => place(id, { id: "side", passes: ["person"], through: "trench" });
    const [closing] = told({
      places: [place("trench"), through("pit"), through("shaft")],
      pieces: [{ id: "gate", closes: ["trench.door"] }],
      steps: [
        step("shut", { puts: ["gate"] }),
        step("dig", { reaches: [{ place: "pit" }, { place: "trench" }, { place: "trench", need: "sight" }] }),
        step("sink", { reaches: [{ place: "shaft" }] }),
        step("line", { reaches: [{ place: "shaft" }, { place: "pit" }] }),
      ],
    });
    expect(closing?.before).toEqual(["dig work must", "sink work must", "line work must"]);
  });

  test("a pour is work like any other; what only holds the piece is not there", () => {
    const closings = told({
      places: [place("trench")],
      pieces: [{ id: "lid", closes: ["trench.door"], heldBy: [["ledger"]] }, { id: "ledger" }],
      steps: [
        step("ledger-up", { puts: ["ledger"] }),
        step("lid-on", { puts: ["lid"] }),
        step("pour", { sort: "pour", reaches: [{ place: "trench", need: "hose" }] }),
      ],
    });
    expect(closings).toEqual([{ piece: "lid", step: "lid-on", before: ["pour work must"], forGood: true }]);
  });
});

describe("closings", () => {
  test("are told in the order of going up, and of one step in the document's; not of what never goes up or stands from the start", () => {
    const closings = told({
      places: [cage, place("pit"), place("loft")],
      pieces: [
        { id: "last", closes: ["pit.door"] },
        { id: "never", closes: ["loft.door"] },
        { id: "old", closes: ["cage.top"], fromStart: true },
        { id: "first", closes: ["cage.north"] },
        { id: "bare" },
        { id: "also-first", fills: ["loft"] },
      ],
      steps: [
        step("b", { puts: ["last", "bare"], after: ["a"] }),
        step("a", { puts: ["first", "also-first"] }),
        step("c", { takes: ["old"] }),
      ],
    });
    expect(closings.map(({ piece, step: s }) => `${piece} by ${s}`)).toEqual(["first by a", "also-first by a", "last by b"]);
  });

  test("there are none where there is no order", () => {
    const shut = told({
      places: [place("pit")],
      pieces: [{ id: "lid", closes: ["pit.door"] }],
      steps: [step("cover", { puts: ["lid"] }), step("dig", { reaches: [{ place: "pit" }], after: ["cover"] })],
    });
    expect(shut).toEqual([]);
  });
});
