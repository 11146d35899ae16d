import { describe, expect, test } from "vitest";
import { place, smallCase, step } from "../../../../test/fixtures/small";
import type { Statement } from "../../base";
import { inParts } from "./parts";

const hatch = { id: "hatch", passes: ["unit"], opening: { wide: "700 mm", high: "700 mm" } };
const { build } = smallCase({
  places: [place("yard"), place("tank", hatch)],
  pieces: [
    { id: "core", name: "Core", size: { long: "1200 mm", wide: "600 mm", thick: "900 mm" }, weight: "50 kg" },
    { id: "other", fromStart: true, size: { long: "1 m", wide: "1 m", thick: "1 m" }, weight: "90 kg" },
    { id: "light", size: { long: "2 m", wide: "2 m", thick: "2 m" } },
    { id: "shapeless", weight: "10 kg" },
    { id: "roof", heldBy: [["other"], ["core", "other"]] },
  ],
  steps: [
    step("bring", {
      puts: ["core"],
      reaches: [
        { place: "tank", need: "unit", piece: "other" },
        {
          any: [
            { place: "yard", need: "unit", piece: "core" },
            { place: "tank", need: "sight" },
          ],
        },
        { place: "yard" },
      ],
      leansOn: [{ piece: "other" }],
    }),
    step("cast", { leansOn: [{ piece: "core" }] }),
    step("away", { takes: ["core", "other"] }),
    step("idle"),
  ],
});
const made = (unit: string | undefined, more: Partial<Statement> = {}) =>
  inParts({
    build,
    because: [{ rule: "reach", step: "bring", id: "1", place: "tank", need: "unit", detail: unit === undefined ? {} : { unit }, ...more }],
  });

describe("equal parts", () => {
  test("are brought in, put up, leaned on, taken down and hold like the whole; what is said of other pieces stays", () => {
    const sized = { size: { long: "1200 mm", wide: "600 mm", thick: "450 mm" }, weight: { is: "25 kg", from: "own guess" } };
    expect(made("core")).toEqual([
      {
        kind: "split",
        detail: { step: "bring", piece: "core", place: "tank", way: "tank.hatch", parts: 2 },
        edits: [
          { path: ["pieces", "id=core", "name"], value: "Core, part 1 of 2" },
          { path: ["pieces", "id=core", "size"], value: sized.size },
          { path: ["pieces", "id=core", "weight"], value: sized.weight },
          { path: ["pieces", "id=core-part-2"], value: { id: "core-part-2", name: "Core, part 2 of 2", sort: "other", ...sized } },
          { path: ["steps", "id=bring", "puts", "id=core-part-2"], value: "core-part-2" },
          {
            path: ["steps", "id=bring", "reaches", "+999"],
            value: {
              any: [
                { place: "yard", need: "unit", piece: "core-part-2" },
                { place: "tank", need: "sight" },
              ],
            },
          },
          { path: ["steps", "id=cast", "leansOn", "+999"], value: { piece: "core-part-2" } },
          { path: ["steps", "id=away", "takes", "id=core-part-2"], value: "core-part-2" },
          { path: ["pieces", "id=roof", "heldBy", "1", "id=core-part-2"], value: "core-part-2" },
        ],
      },
    ]);
  });

  test("are not made of what has no size or no weight, nor where no unit or place is named", () => {
    for (const unit of ["light", "shapeless", "nothing", undefined]) expect(made(unit)).toEqual([]);
    expect(made("core", { place: "nowhere" })).toEqual([]);
    expect(made("core", { place: "yard" })).toEqual([]);
    expect(made("core", { step: "nobody" })).toEqual([]);
  });

  test("are cut across the long side where that is what does not pass; what goes in elsewhere or beside it is left as it is", () => {
    const low = { id: "slot", passes: ["unit"], longest: "700 mm" };
    const pipe = smallCase({
      places: [place("tank", low)],
      pieces: [
        { id: "pipe", name: "Pipe", size: { long: "2000 mm", wide: "50 mm", thick: "50 mm" }, weight: "10 kg" },
        { id: "rod", size: { long: "600 mm", wide: "9 mm", thick: "9 mm" }, weight: "1 kg" },
      ],
      steps: [
        step("bring", {
          puts: ["pipe", "rod"],
          reaches: [
            {
              any: [
                { place: "tank", need: "unit", piece: "pipe" },
                { place: "tank", need: "unit", piece: "rod" },
                { place: "tank", need: "hose" },
              ],
            },
            { place: "tank", need: "unit", piece: "rod" },
          ],
        }),
        step("weigh", { leansOn: [{ piece: "rod" }] }),
        step("press", { leansOn: [{ piece: "pipe", once: "2 h" }] }),
      ],
    });
    const says: Statement = { rule: "reach", step: "bring", id: "1", place: "tank", need: "unit", detail: { unit: "pipe" } };
    const [way, ...more] = inParts({ build: pipe.build, because: [says] });
    expect(more).toEqual([]);
    expect(way?.detail).toMatchObject({ parts: 3 });
    expect(way?.edits.slice(1, 3).map(({ value }) => value)).toEqual([
      { long: "666.7 mm", wide: "50 mm", thick: "50 mm" },
      { is: "3.4 kg", from: "own guess" },
    ]);
    expect(way?.edits.filter(({ path }) => path[0] === "steps" && path.includes("+999"))).toEqual(
      ["pipe-part-2", "pipe-part-3"].flatMap((id) => [
        {
          path: ["steps", "id=bring", "reaches", "+999"],
          value: {
            any: [
              { place: "tank", need: "unit", piece: id },
              { place: "tank", need: "unit", piece: "rod" },
              { place: "tank", need: "hose" },
            ],
          },
        },
        { path: ["steps", "id=press", "leansOn", "+999"], value: { piece: id, once: "2 h" } },
      ]),
    );
  });

  test("are written once at a trial of several rounds, which is written once itself", () => {
    const trial = smallCase({
      places: [place("tank", hatch)],
      pieces: [{ id: "core", fromStart: true, size: { long: "1200 mm", wide: "600 mm", thick: "900 mm" }, weight: "50 kg" }],
      steps: [step("fit", { trial: { rounds: 3, decides: [], what: "fit" }, reaches: [{ place: "tank", need: "unit", piece: "core" }] })],
    });
    const says: Statement = { rule: "reach", step: "fit#2", id: "1", place: "tank", need: "unit", detail: { unit: "core" } };
    const [way] = inParts({ build: trial.build, because: [says] });
    expect(trial.build.steps).toHaveLength(3);
    expect(way?.edits.filter(({ path }) => path[0] === "steps").map(({ path }) => path.join(" "))).toEqual(["steps id=fit reaches +999"]);
  });

  test("of a piece of a group are made once for all its copies", () => {
    const group = smallCase({
      places: [place("tank", hatch)],
      pieces: [{ id: "core", size: { long: "1200 mm", wide: "600 mm", thick: "900 mm" }, weight: "50 kg" }],
      steps: [step("bring", { puts: ["core"], reaches: [{ place: "tank", need: "unit", piece: "core" }] })],
      groups: [{ id: "cores", count: 3, members: ["core", "bring"] }],
    });
    const says: Statement = { rule: "reach", step: "bring#2", id: "1", place: "tank", need: "unit", detail: { unit: "core#2" } };
    const [way] = inParts({ build: group.build, because: [says] });
    const paths = way?.edits.map(({ path }) => path.join(" ")) ?? [];
    expect(paths.filter((path) => path.startsWith("steps id=bring "))).toEqual([
      "steps id=bring puts id=core-part-2",
      "steps id=bring reaches +999",
    ]);
    expect(paths).toContain("groups id=cores members id=core-part-2");
  });
});
