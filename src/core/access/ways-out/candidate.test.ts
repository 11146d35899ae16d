import { expect, test } from "vitest";
import { place, smallCase, step } from "../../../../test/fixtures/small";
import type { Statement } from "../../base";
import { bench } from "./bench";
import { closers, visitors, workersAt } from "./candidate";

const size = { long: "2 m", wide: "1 m", thick: "1 m" };
const { build } = smallCase({
  places: [place("cage"), place("yard")],
  pieces: [
    { id: "bare" },
    { id: "steel", size, weight: "40 kg" },
    { id: "panel", closes: ["cage.door"] },
    { id: "old", closes: ["cage.door"], fromStart: true },
    { id: "clamp", fromStart: true, off: [{ place: "cage" }] },
  ],
  steps: [
    step("look", { reaches: [{ place: "cage", need: "sight" }] }),
    step("sweep", { reaches: [{ place: "yard" }] }),
    step("set", { puts: ["panel"] }),
    step("tie", { sort: "embed", puts: ["bare", "steel"], reaches: [{ any: [{ place: "yard" }, { place: "cage" }] }] }),
    step("free", { takes: ["clamp"] }),
    step("mend", { puts: [], reaches: [{ place: "cage", need: "arm", depth: "1 m" }] }),
  ],
});
const closes: Statement = { rule: "closes", piece: "panel", place: "cage", way: "cage.door" };
const reach: Statement = { rule: "reach", step: "tie", id: "1", place: "cage", need: "person" };

test("who works at a place does more than look, may do so elsewhere too, or takes something down there; those of the block first", () => {
  const workers = (...because: Statement[]) => workersAt({ build, because }, "cage").map(({ id }) => id);
  expect(workers()).toEqual(["tie", "free", "mend"]);
  expect(workers({ rule: "wait", id: "w", step: "look", other: "mend" })).toEqual(["mend", "tie", "free"]);
});

test("closers are pieces of the block that a step puts up", () => {
  const because = [closes, { ...closes, piece: "old" }, { ...closes, piece: "nothing" }, { ...closes, rule: "makes" }];
  expect(closers({ build, because }).map(({ piece, by }) => [piece.id, by.id])).toEqual([["panel", "set"]]);
});

test("an inspection that stops the work is a visitor that must see", () => {
  const point: Statement = { rule: "hold-point", step: "look", place: "cage" };
  const because = [reach, point, { ...reach, step: "nobody" }, closes];
  expect(visitors({ build, because }).map(({ step: { id }, says }) => [id, says.need])).toEqual([
    ["tie", "person"],
    ["look", "sight"],
  ]);
});

test("on the bench goes what is cast in, as the piece of known size among those that are put up; not where several places would do", () => {
  const [way] = bench({ build, because: [reach, closes] });
  expect(way?.detail).toEqual({ step: "tie", place: "cage", piece: "steel" });
  const { place: _, need: __, ...any } = reach;
  expect(bench({ build, because: [any, closes] }).map(({ detail }) => detail)).toEqual([
    { step: "tie", place: "", piece: "panel", other: "set" },
  ]);
});
