import { describe, expect, test } from "vitest";
import { inOrder } from "../../../../test/fixtures/kits/in-order";
import { holds } from "../../../../test/fixtures/kits/kit-check";

describe.each(["us", "metric"] as const)("piers in %s", (units) => {
  test("are bored, cleaned out, and their cage lowered in, before the collar and the pour", () => {
    const looked = holds(units, [["pier", "Piers", { bell: true, digging: "auger" }]]);
    inOrder(looked, ["piers-set-out#1", "piers-dig#1", "piers-lower#1", "piers-collar#1", "piers-place", "piers-strip#1"]);
    inOrder(looked, ["piers-clean#4", "piers-lower#4", "piers-inspect", "piers-place"]);
    inOrder(looked, ["piers-cage#2", "piers-lower#2"]);
    const kinds = looked.build.pours[0]?.elements.map(({ id, shape, form }) => [id, shape.kind, form !== null]);
    expect(kinds).toEqual([
      ["bell", "footing", false],
      ["shaft", "pier", false],
      ["head", "column", true],
    ]);
  });

  test("carry a slab on a deck, or columns", () => {
    const slab = holds(units, [
      ["pier", "Piers", { above: "1.2 m", apart: "6 ft" }],
      ["deck-slab", "Slab", { long: "20 ft", wide: "4 ft" }],
    ]);
    expect(slab.build.pieces.find(({ id }) => id === "slab-concrete")?.heldBy).toEqual([
      ["slab-sheathing", "piers-concrete#1", "piers-concrete#2", "piers-concrete#3", "piers-concrete#4"],
    ]);
    const columns = holds(units, [
      ["pier", "Piers", { above: "0 in" }],
      ["column", "Columns", { head: "4 ft" }],
    ]);
    inOrder(columns, ["piers-place", "columns-set-faces#4", "columns-place"]);
  });
});
