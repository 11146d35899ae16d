import { describe, expect, test } from "vitest";
import { type Build, readDocument } from "../core/build";
import { examples } from "../examples";
import { buildCautions, pieceCautions, stepCautions } from "./index";
import { faultsOf } from "./lint.testing";
import { type Raw, wall } from "./wall.testing";

const read = (document: unknown): Build => readDocument(document).build as Build;
const stepOf = (build: Build, id: string) => build.steps[build.at.step.get(id) as number]!;
const of = (build: Build, id: string) => stepCautions(build, stepOf(build, id)).join(" ");

/** The wall with what hurts people: a cut, a form of that sort, a shore under a lid, a scaffold. */
function dangerous(): Build {
  const raw = wall({
    pieces: [
      { id: "cut", name: "The cut", sort: "hole", makes: ["drain.down"] },
      { id: "shores", name: "Shores", sort: "shore" },
      { id: "lid", name: "Lid", sort: "concrete", heldBy: [["shores"]], holdsItself: "70 % of lid-pour" },
      { id: "scaffold", name: "Scaffold", sort: "scaffold" },
    ],
    steps: [
      { id: "dig", name: "Dig", work: "2 h", puts: ["cut"] },
      { id: "lay", name: "Lay the drain", work: "2 h", reaches: [{ place: "drain", need: "person" }] },
      { id: "look", name: "Look down", work: "1 h", reaches: [{ place: "drain", need: "sight" }] },
      { id: "shovel", name: "Square it up", work: "1 h", leansOn: [{ piece: "cut" }] },
      { id: "shore", name: "Set the shores", work: "2 h", puts: ["shores", "scaffold"] },
      {
        id: "lid-pour",
        name: "Pour the lid",
        sort: "pour",
        work: "2 h",
        puts: ["lid"],
        leansOn: [{ piece: "shores" }],
        pour: { strength: "3000 psi" },
      },
      { id: "unshore", name: "Take the shores out", work: "1 h", takes: ["shores"], after: ["lid-pour"] },
      { id: "load", name: "Stack on the lid", work: "1 h", leansOn: [{ piece: "lid", once: "70 % of lid-pour" }] },
    ],
  });
  (raw.places as Raw[]).push({ id: "drain", name: "Drain", ways: [{ id: "down", name: "down the cut", passes: ["person", "sight"] }] });
  for (const piece of raw.pieces as Raw[]) if (piece.id === "north-form") piece.sort = "form";
  return read(raw);
}

describe("cautions follow from the build, with not one written down", () => {
  const build = dangerous();

  test("shores, what is over people, cuts, scaffolds and forms that are filled", () => {
    expect(of(build, "shore")).toMatch(/^Shores carry .* qualified .*guards/);
    expect(of(build, "lid-pour")).toContain("Nobody under it");
    expect(of(build, "dig")).toContain("5 ft (1.5 m) or deeper");
    expect(of(build, "pour")).toContain("Fresh concrete presses hard on a form");
    expect(of(build, "tie")).toBe("");
  });

  test("a cut, also for whoever goes down into it or works on what was dug, not for whoever only looks in", () => {
    for (const id of ["lay", "shovel"]) expect(of(build, id), id).toContain("5 ft (1.5 m) or deeper");
    expect(of(build, "look")).toBe("");
  });

  test("time at warmth that stands for strength as well", () => {
    const raw = wall({ waits: [{ id: "warm", from: "pour", to: "strip", least: "28 warm days of pour" }] });
    expect(of(read(raw), "strip")).toContain("expected, not shown");
  });

  test("a strength that is waited for is expected, not shown: where something leans on it, and where shores go", () => {
    for (const id of ["load", "unshore"]) expect(of(build, id)).toContain("expected, not shown: have it tested or ask your engineer");
    expect(of(build, "strip")).not.toContain("expected");
  });

  test("a piece tells its own", () => {
    const piece = (id: string) => pieceCautions(build, build.pieces[build.at.piece.get(id) as number]!);
    expect(piece("shores")).toHaveLength(1);
    expect(piece("lid").join(" ")).toMatch(/expected, not shown.*Nobody under it/);
    expect(piece("wall")).toEqual([]);
  });

  test("of a whole build each stands once, with its steps, and what was written comes too", () => {
    const written = read(wall({ steps: [{ id: "cap", name: "Cap the ends", work: "1 h", cautions: ["Cap every end"] }] }));
    expect(buildCautions(written)).toEqual([{ says: "Cap every end.", steps: ["“Cap the ends”"] }]);
    const all = buildCautions(build);
    expect(new Set(all.map(({ says }) => says)).size).toBe(all.length);
    expect(all.find(({ says }) => says.startsWith("The strength"))?.steps).toEqual(["“Take the shores out”", "“Stack on the lid”"]);
  });
});

test.each(examples.map(({ id, load }) => [id, load] as const))("the cautions of %s are fit to read", async (_, load) => {
  const build = read(await load());
  const all = buildCautions(build);
  expect(all.length).toBeGreaterThan(0);
  expect(all.flatMap(({ says }) => faultsOf(says, build).map((fault) => `${fault}: ${says}`))).toEqual([]);
});
