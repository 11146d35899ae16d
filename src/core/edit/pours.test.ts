import { describe, expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { column, slabPour } from "../../../test/fixtures/pours";
import { readDocument } from "../build";
import { addPour, apply, countsOn, lostWith, pourOfStep, removeMember, removePour, setField } from ".";

const document = documentOf({
  stock: [{ id: "bags" }],
  pieces: [
    { id: "form", fromStart: true },
    { id: "deck", fromStart: true, heldBy: [["form"]], holdsItself: "70 % of a" },
  ],
  steps: [{ id: "a", name: "Pour the slab" }, { id: "b" }, { id: "c", pour: { strength: "3000 psi", cement: "III" } }],
  waits: [
    { id: "w", from: "a", to: "b", least: { is: "2000 psi of a", from: "drawing" } },
    { id: "v", from: "c", to: "b", least: "50 % of c" },
  ],
  pours: [
    slabPour({
      mix: { strength: "4000 psi", cement: "II" },
      elements: [column({ pieces: ["form", "deck"], held: { pass: "9 in", every: "9 min", who: "helper" } })],
      removals: [{ sort: "sides", step: "b" }],
      sacks: "bags",
    }),
  ],
});
const changed = (edits: Parameters<typeof apply>[1]) => apply(document, edits).document as Record<string, Record<string, unknown>[]>;
const stops = (edited: unknown) => readDocument(edited).findings.filter(({ severity }) => severity === "stop");

describe("pours", () => {
  test("the fixture itself is sound", () => {
    expect(readDocument(document).findings).toEqual([]);
  });

  test("adding one takes over what its step says of its concrete", () => {
    const elements = [{ id: "slab", shape: { kind: "slab", long: "20 ft", wide: "12 ft", thick: "5 in" } }];
    const edited = changed(addPour(document, "c", "4000 psi", elements));
    expect(edited.pours!.at(-1)).toEqual({ id: "c", name: "c", step: "c", mix: { strength: "3000 psi", cement: "III" }, elements });
    expect(edited.steps!.at(-1)).toEqual({ id: "c" });
    expect(readDocument(edited).findings).toEqual([]);
    const named = apply(document, removePour(document, "slab")).document;
    expect(addPour(named, "b", "4000 psi", elements)[0]!.value).toMatchObject({ id: "b", mix: { strength: "4000 psi" } });
  });

  test("one field is changed where it stands, and back", () => {
    const edit = [setField("pours", "slab", ["elements", "id=columns", "form", "bands", "at"], ["3 in", "10 in"])];
    const { document: edited, inverse } = apply(document, edit);
    const form = readDocument(edited).build!.pours[0]!.elements[0]!.form!;
    expect(form.kind === "column" && form.bands.at_mm).toEqual([76.2, 254]);
    expect(JSON.stringify(apply(edited, inverse).document)).toBe(JSON.stringify(document));
  });

  test("what counts on one is named, and holds without it", () => {
    expect(countsOn(document, "slab")).toEqual([
      { list: "pieces", id: "deck", key: ["holdsItself"] },
      { list: "waits", id: "w", key: ["least"] },
    ]);
    const edited = changed(removePour(document, "slab"));
    expect(edited.pours).toEqual([]);
    expect(edited.steps![0]).toEqual({ id: "a", name: "Pour the slab", pour: { strength: "4000 psi", cement: "II" } });
    expect(stops(edited)).toEqual([]);
    expect(pourOfStep(document, "a")?.id).toBe("slab");
    expect(pourOfStep(edited, "a")).toBe(null);
  });

  test("one that nothing counts on goes without a trace", () => {
    const alone = changed([{ path: ["waits", "id=w"] }, { path: ["pieces", "id=deck", "holdsItself"] }]);
    expect(removePour(alone, "slab")).toEqual([{ path: ["pours", "id=slab"] }]);
  });

  test("a step takes its pour along, and that is named", () => {
    expect(lostWith(document, "steps", "a")).toEqual([
      { list: "pieces", id: "deck", goes: false },
      { list: "waits", id: "w", goes: true },
      { list: "pours", id: "slab", goes: true },
    ]);
    expect(lostWith(document, "steps", "b")).toEqual([
      { list: "pours", id: "slab", goes: false },
      { list: "waits", id: "w", goes: true },
      { list: "waits", id: "v", goes: true },
    ]);
    expect(changed(removeMember(document, "steps", "b")).pours![0]).toMatchObject({ removals: [] });
  });

  test.each([
    ["people", "helper", { held: { pass: "9 in", every: "9 min" } }],
    ["pieces", "form", { pieces: ["deck"] }],
  ] as const)("%s %s leaves its elements", (list, id, left) => {
    const edited = changed(removeMember(document, list, id));
    expect((edited.pours![0]!.elements as object[])[0]).toMatchObject(left);
    expect(stops(edited)).toEqual([]);
    expect(lostWith(document, list, id)).toContainEqual({ list: "pours", id: "slab", goes: false });
  });

  test("stock of sacks leaves a ready-mixed pour", () => {
    expect(changed(removeMember(document, "stock", "bags")).pours![0]).not.toHaveProperty("sacks");
  });
});
