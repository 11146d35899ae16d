import { describe, expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { readDocument } from "../build";
import { apply, type Removable, removeMember } from ".";

const document = documentOf({
  equipment: [{ id: "mixer" }],
  stock: [{ id: "sheets", inHand: 6 }],
  places: [
    { id: "cage", ways: [{ id: "north" }] },
    { id: "yard", ways: [{ id: "gate" }], below: ["cage"], layerOf: "cage" },
  ],
  pieces: [
    {
      id: "face",
      closes: ["cage.north"],
      fills: ["cage"],
      heldBy: [["brace", "guy"], ["post"]],
      uses: [{ of: "sheets" }],
      off: [{ place: "cage" }],
    },
    { id: "brace", fromStart: true },
    { id: "guy", fromStart: true },
    { id: "post", fromStart: true },
  ],
  steps: [
    {
      id: "tie",
      reaches: [{ place: "cage" }, { place: "yard" }, { any: [{ place: "cage" }, { place: "yard" }] }],
      place: "cage",
      equipment: [{ of: "mixer" }],
      needs: ["bars"],
    },
    { id: "set", puts: ["face"], after: ["tie", "look"], leansOn: [{ piece: "brace" }], holdPoint: { places: ["cage"] } },
    { id: "look", trial: { decides: ["set"] } },
  ],
  waits: [
    { id: "v", from: "tie", to: "set", least: "1 d" },
    { id: "w", from: "set", to: "look", fromEnd: "start", most: "9 d" },
  ],
  deliveries: [{ id: "bars", brings: [{ of: "sheets" }] }],
  bookings: [{ id: "pump", step: "set" }],
  groups: [{ id: "g", count: 1, members: ["tie", "cage"] }],
});

const without = (list: Parameters<typeof removeMember>[1], id: string) => apply(document, removeMember(document, list, id));

describe("removing a member", () => {
  test("the fixture itself is sound", () => {
    expect(readDocument(document).findings).toEqual([]);
  });

  test.each([
    ["steps", "tie"],
    ["steps", "set"],
    ["steps", "look"],
    ["pieces", "face"],
    ["pieces", "brace"],
    ["pieces", "post"],
    ["places", "cage"],
    ["places", "yard"],
    ["deliveries", "bars"],
    ["equipment", "mixer"],
    ["stock", "sheets"],
    ["waits", "v"],
    ["bookings", "pump"],
    ["groups", "g"],
  ] as const)("%s %s leaves a document that reads, and comes back whole", (list, id) => {
    const { document: after, inverse } = without(list, id);
    const { build, findings } = readDocument(after);
    expect(findings.filter((finding) => finding.severity === "stop")).toEqual([]);
    expect(build).not.toBe(null);
    expect(JSON.stringify((after as Record<string, unknown>)[list])).not.toContain(`"id":"${id}"`);
    expect(JSON.stringify(apply(after, inverse).document)).toBe(JSON.stringify(document));
  });

  test("takes exactly what speaks of it", () => {
    const after = without("steps", "set").document as Record<string, { id: string }[]>;
    expect(after.waits).toEqual([]);
    expect(after.bookings).toEqual([]);
    expect(after.steps?.find((step) => step.id === "look")).toEqual({ id: "look", trial: { decides: [] } });
    expect(after.pieces).toBe(document.pieces);
    const pieces = without("pieces", "guy").document as { pieces: { heldBy?: unknown }[] };
    expect(pieces.pieces[0]?.heldBy).toEqual([["post"]]);
    const places = without("places", "cage").document as { steps: { place?: string; reaches?: unknown }[] };
    expect(places.steps[0]?.reaches).toEqual([{ place: "yard" }, { any: [{ place: "yard" }] }]);
    expect(places.steps[0]?.place).toBeUndefined();
  });

  test("orders in choices go with their step, and a choice of which less than two ways are left; amounts counted of it go", () => {
    const chosen = documentOf({
      steps: [{ id: "a" }, { id: "b" }, { id: "cast", pour: { strength: "20 MPa" } }, { id: "c" }],
      pieces: [
        { id: "deck", fromStart: true, heldBy: [["post"]], holdsItself: "70 % of cast" },
        { id: "post", fromStart: true },
      ],
      choices: [
        { id: "two", either: [{ waits: [{ from: "a", to: "b" }] }, { waits: [{ from: "b", to: "a" }] }] },
        {
          id: "three",
          either: [
            {
              waits: [
                { from: "a", to: "b" },
                { from: "b", to: "c" },
              ],
            },
            { waits: [{ from: "c", to: "b" }] },
            { waits: [{ from: "a", to: "c" }] },
          ],
        },
      ],
      waits: [{ id: "w", from: "a", to: "c" }],
      groups: [{ id: "g", count: 2, members: ["a", "w"], differences: { "2": { a: { work: "1 h" } } } }],
    });
    const without = (id: string) => apply(chosen, removeMember(chosen, "steps", id)).document as Record<string, Record<string, unknown>[]>;
    expect(
      without("c").choices?.map(({ id, either }) => [id, (either as { waits: unknown[] }[]).map(({ waits }) => waits.length)]),
    ).toEqual([["two", [1, 1]]]);
    expect(without("b").choices).toEqual([]);
    expect(without("a").groups).toEqual([]);
    expect(without("c").groups?.[0]?.members).toEqual(["a"]);
    expect(without("cast").pieces?.[0]).toEqual({ id: "deck", fromStart: true, heldBy: [["post"]] });
    for (const id of ["a", "b", "c", "cast"])
      expect(
        readDocument(without(id)).findings.filter(({ severity }) => severity === "stop"),
        id,
      ).toEqual([]);
  });

  test("a copy stands for its member", () => {
    expect(removeMember(document, "steps", "tie#1")).toEqual(removeMember(document, "steps", "tie"));
  });

  test("what a single copy of a group says of it goes too", () => {
    const many = documentOf({
      places: [{ id: "hole" }, { id: "yard", ways: [{ id: "gate" }] }],
      pieces: [{ id: "post" }, { id: "brace" }],
      steps: [
        { id: "set", puts: ["post"], place: "hole" },
        { id: "prop", puts: ["brace"] },
      ],
      groups: [
        {
          id: "posts",
          count: 3,
          members: ["set", "post"],
          differences: {
            "2": { set: { place: "yard", reaches: [{ place: "yard" }], work: "3 h" }, post: { heldBy: [["brace"]] } },
            "3": { set: { after: ["prop"] } },
          },
        },
      ],
    });
    const without = (...members: [Removable, string][]) => {
      const after = members.reduce<unknown>((now, [list, id]) => apply(now, removeMember(now, list, id)).document, many);
      expect(readDocument(after).findings.filter(({ severity }) => severity === "stop")).toEqual([]);
      return (after as { groups: { differences: Record<string, unknown> }[] }).groups[0]?.differences;
    };
    expect(without(["places", "yard"])?.["2"]).toEqual({ set: { reaches: [], work: "3 h" }, post: { heldBy: [["brace"]] } });
    expect(without(["pieces", "brace"], ["steps", "prop"])).toEqual({
      "2": { set: { place: "yard", reaches: [{ place: "yard" }], work: "3 h" }, post: { heldBy: [] } },
      "3": { set: { after: [] } },
    });
  });
});
