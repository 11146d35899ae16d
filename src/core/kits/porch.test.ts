import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { builtFrom, holds, type Looked, lookAt, mostOf, type Put } from "../../../test/fixtures/kits/kit-check";
import { unknownOf } from ".";

/** Two columns on footings, a slab on a deck, a small roof on posts: usual answers throughout. */
const porch: readonly Put[] = [
  ["footing", "Footing"],
  ["column", "Column"],
  ["deck-slab", "Slab"],
  ["post-roof", "Roof"],
];

/** A step from kits, and what the builder who wrote it by hand calls it. Several alike are numbered alike. */
const sameStep: Readonly<Record<string, string>> = {
  "footing-set-out": "string-lines",
  "footing-dig": "dig-pits",
  "footing-tie": "mats",
  "footing-starters": "dowels",
  "footing-photo": "pads-pictured",
  "footing-inspect": "pads-seen",
  "footing-place": "cast-pads",
  "footing-fill-in": "fill-pits",
  "column-panels": "make-boards",
  "column-coat": "oil-boards",
  "column-set-faces": "stand-three",
  "column-seal": "caulk",
  "column-tie": "tie-posts",
  "column-scaffold-up": "tower-up",
  "column-photo": "posts-pictured",
  "column-inspect": "posts-seen",
  "column-close": "close-posts",
  "column-plumb": "true-up",
  "column-place": "cast-posts",
  "column-scaffold-down": "tower-down",
  "column-strip": "bare-posts",
  "column-roughen": "chip-heads",
  "slab-shore": "prop",
  "slab-joist": "lay-beams",
  "slab-sheathe": "lay-ply",
  "slab-scaffold-up": "rails-up",
  "slab-coat": "oil-deck",
  "slab-edge": "rim-on",
  "slab-seal": "caulk-deck",
  "slab-tie": "tie-slab",
  "slab-sleeves": "sleeves",
  "roof-set-bolts": "jig-bolts",
  "slab-photo": "slab-pictured",
  "slab-inspect": "slab-seen",
  "slab-check": "wedges-looked-at",
  "slab-place": "cast-slab",
  "slab-strip-edges": "rim-off",
  "slab-uncover": "plastic-off",
  "slab-strip": "deck-out",
  "slab-scaffold-down": "rails-down",
  "roof-set-post-bases": "set-shoes",
  "roof-stand-posts": "raise-posts",
  "roof-set-beams": "plates-on",
  "roof-set-roof-scaffold": "roof-tower-up",
  "roof-set-rafters": "raise-rafters",
  "roof-board-roof": "lay-decking",
  "roof-take-braces": "roof-props-out",
  "roof-inspect-frame": "frame-seen",
  "roof-lay-underlay": "lay-felt",
  "roof-lay-roofing": "lay-tin",
  "roof-take-roof-scaffold": "roof-tower-down",
};

/** Every pair of steps of which the order says that one goes before the other, by name. */
function orderOf({ build, plan }: Looked, called: (id: string) => string): ReadonlySet<string> {
  const { arcs } = plan.access;
  const next = build.steps.map((): number[] => []);
  for (let row = 0; row < arcs.count; row += 1) if (arcs.orders[row] === 1) next[arcs.from[row] as number]?.push(arcs.to[row] as number);
  const pairs = new Set<string>();
  build.steps.forEach(({ id }, start) => {
    const seen = new Set<number>();
    const open = [start];
    for (let at = open.pop(); at !== undefined; at = open.pop()) {
      for (const to of next[at] ?? []) {
        if (seen.has(to)) continue;
        seen.add(to);
        open.push(to);
        pairs.add(`${called(id)} < ${called(build.steps[to]?.id ?? "")}`);
      }
    }
  });
  return pairs;
}

const byHand = (id: string): string => {
  const [word = "", copy] = id.split("#");
  return `${sameStep[word] ?? `nobody's ${word}`}${copy === undefined ? "" : `#${copy}`}`;
};

describe.each(["us", "metric"] as const)("two columns, a slab on a deck and a roof from kits, %s", (units) => {
  const looked = holds(units, porch);

  test("have an order and dates without one typed link, and forms that hold", () => {
    const { build, plan, sheets } = looked;
    expect(build.steps.flatMap(({ id }) => byHand(id)).filter((name) => name.startsWith("nobody"))).toEqual([]);
    expect(build.waits.filter(({ plain, removal }) => plain && !removal)).toEqual([]);
    expect(plan.steps.every(({ start, finish }) => start < finish)).toBe(true);
    expect(sheets.map(({ ready }) => ready)).toEqual([true, true, true]);
    expect(mostOf(looked)).toBeLessThanOrEqual(100);
    expect(build.pours.map(({ elements }) => elements.some(({ form }) => form !== null))).toEqual([false, true, true]);
  });

  test("give the very order of the same structure written by hand", () => {
    const hand = lookAt(JSON.parse(readFileSync("test/fixtures/kits/porch-by-hand.json", "utf8")));
    expect(hand.build.waits.filter(({ plain }) => plain)).toEqual([]);
    const [kits, own] = [orderOf(looked, byHand), orderOf(hand, (id) => id)];
    expect(own.size).toBeGreaterThan(1000);
    expect([...kits].filter((pair) => !own.has(pair)).sort()).toEqual([]);
    expect([...own].filter((pair) => !kits.has(pair)).sort()).toEqual([]);
  });

  test("list what an inspector asks and nobody has said", () => {
    const codes = unknownOf(builtFrom(units, porch)).map(({ code }) => code);
    for (const code of ["ground", "frost", "bars", "structure", "soffit", "shore-ground"]) expect(codes).toContain(code);
    const { build } = looked;
    expect(build.steps.filter(({ holdPoint }) => holdPoint !== null).map(({ id }) => id)).toEqual(
      expect.arrayContaining(["footing-inspect", "column-inspect", "slab-inspect", "roof-inspect-frame"]),
    );
  });
});
