import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { type Build, read, readDocument } from "../../src/core/build";
import { type Plan, plan, statesAt } from "../../src/core/plan";
import {
  bodiesOf,
  bodyAt,
  type Drawing,
  dark,
  type Mark,
  structureCover,
  structureDrawing,
  structureTwin,
  svgText,
  type Turn,
} from "../../src/draw";
import { troubles } from "./checks";
import { keepForLooking } from "./gallery";

type Text = Extract<Mark, { shape: "text" }>;

function example(name: string): { build: Build; planned: Plan } {
  const build = read(readFileSync(`src/examples/${name}.json`, "utf8")).build!;
  return { build, planned: plan(build) };
}
const cellar = example("bank-cellar");
const wall = example("garden-wall");
/** The instant at a share of the build's time. */
const at = ({ planned }: { planned: Plan }, share: number) => Math.round(planned.finish * share);
const desk = { width: 640, text: 14 } as const;

/** Texts that the line from a name to its body runs through. */
function struck(drawing: Drawing): string[] {
  const marks = drawing.parts.flatMap((part) => part.marks);
  const texts = marks.filter((mark): mark is Text => mark.shape === "text");
  return marks
    .filter((mark) => mark.shape === "path" && mark.role === "leader")
    .flatMap((mark) => {
      const [[x0, y0], [x1, y1]] = [...(mark as Extract<Mark, { shape: "path" }>).d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(
        ([, x, y]) => [Number(x), Number(y)],
      ) as [[number, number], [number, number]];
      return texts
        .filter((text) =>
          Array.from({ length: 200 }, (_, i) => i / 199).some((t) => {
            const [x, y] = [x0 + (x1 - x0) * t, y0 + (y1 - y0) * t];
            return x > text.x0 + 0.5 && x < text.x1 - 0.5 && y > text.y0 + 1 && y < text.y1 - 1;
          }),
        )
        .map((text) => `${mark.id} runs through "${text.text}"`);
    });
}

async function drawn(name: string, drawing: Drawing): Promise<void> {
  const svg = svgText(drawing);
  keepForLooking(name, svg);
  keepForLooking(`${name}-dark`, svgText(drawing, { palette: dark }));
  expect(troubles(drawing)).toEqual([]);
  expect(struck(drawing)).toEqual([]);
  await expect(svg).toMatchFileSnapshot(`./${name}.svg`);
}

describe("the structure", () => {
  test("of the cellar while its walls cure", () =>
    drawn("structure-walls", structureDrawing(cellar.build, cellar.planned, at(cellar, 0.3), desk)));

  test("of the cellar with a porch formed, from behind", () =>
    drawn(
      "structure-porch-turned",
      structureDrawing(cellar.build, cellar.planned, at(cellar, 0.75), { ...desk, turn: 3, lit: new Set(["porch"]) }),
    ));

  test("of the garden wall on a phone", () =>
    drawn("structure-phone", structureDrawing(wall.build, wall.planned, at(wall, 0.5), { width: 358, text: 16, lit: new Set(["wall"]) })));

  test("of a build that has no dates, as it will stand", async () => {
    const { build, planned } = example("impossible");
    await drawn("structure-undated", structureDrawing(build, planned, null, desk));
  });

  test("is sound on many days, in four views, at many widths", () => {
    const lit = new Set(["vault", "wall-left"]);
    for (const one of [cellar, wall])
      for (let share = 0; share <= 1; share += 0.1)
        for (const turn of [0, 1, 2, 3] as Turn[])
          for (const asked of [desk, { width: 300, text: 14 }, { width: 358, text: 16 }, { width: 1200, text: 14, high: 320 }]) {
            const drawing = structureDrawing(one.build, one.planned, at(one, share), { ...asked, turn, lit });
            expect(troubles(drawing, asked.text)).toEqual([]);
            expect(struck(drawing)).toEqual([]);
            for (const mark of drawing.parts[0]!.marks) expect(mark.x1).toBeLessThanOrEqual(asked.width + 2);
          }
  });

  test("tells every state by a texture or line of its own, never by colour alone", () => {
    const { build, planned } = cellar;
    const roleOf = new Map<string, Set<string>>();
    for (let t = 0; t <= planned.finish; t += 720) {
      const states = statesAt(build, planned, t);
      const { marks } = structureDrawing(build, planned, t, { ...desk, labels: false, key: false }).parts[0]!;
      build.solids.forEach((solid, index) => {
        const face = marks.find((mark) => /^(face|later) /.test(mark.id) && mark.of?.id === solid.id);
        if (solid.pour === null || !face) return;
        const { state } = states[index]!;
        roleOf.set(state, (roleOf.get(state) ?? new Set()).add(face.role));
      });
    }
    expect(Object.fromEntries([...roleOf].map(([state, roles]) => [state, [...roles]]))).toEqual({
      "not yet": ["body-later"],
      formed: ["body-formed"],
      "bars in": ["body-bars"],
      poured: ["body-poured"],
      curing: ["body-curing"],
      stripped: ["body-stripped"],
      carrying: ["body-carrying"],
    });
  });

  test("what a form stands round is drawn with a heavy line, what is below ground with a broken one", () => {
    const { marks } = structureDrawing(cellar.build, cellar.planned, at(cellar, 0.3), desk).parts[0]!;
    const edges = (id: string) => [
      ...new Set(marks.filter((mark) => mark.of?.id === id && /^body-edge/.test(mark.id)).map(({ role }) => role)),
    ];
    expect(edges("wall-left")).toEqual(["body-edge-form"]);
    expect(edges("footing-left")).toEqual(["body-edge-below"]);
    expect(edges("bank-left")).toEqual(["body-edge"]);
  });

  test("a pointer finds the body in front, on its face and on its name; beside them nothing", () => {
    const drawing = structureDrawing(cellar.build, cellar.planned, at(cellar, 1), desk);
    const label = drawing.parts[0]!.marks.find((mark): mark is Text => mark.shape === "text" && mark.text === "Shed roof")!;
    expect(bodyAt(drawing, [(label.x0 + label.x1) / 2, label.y - 3])).toBe("roof");
    // The end of the line from its name lies on the face that is named.
    const dot = (id: string) => drawing.parts[0]!.marks.find((mark) => mark.id === `leader end ${id}`)!;
    for (const mark of drawing.parts[0]!.marks.filter(({ role }) => role === "leader-dot"))
      expect(bodyAt(drawing, [(mark.x0 + mark.x1) / 2, (mark.y0 + mark.y1) / 2])).toBe(mark.of!.id);
    expect(dot("roof")).toBeDefined();
    expect(bodyAt(drawing, [2, 2])).toBeNull();
  });

  test("does not move while days go by: the same body keeps its place", () => {
    const places = [0, 0.4, 1].map((share) =>
      structureDrawing(cellar.build, cellar.planned, at(cellar, share), { ...desk, labels: false }).bodies.map(({ middle }) => middle),
    );
    expect(places[1]).toEqual(places[0]);
    expect(places[2]).toEqual(places[0]);
  });

  test("the same build gives the same drawing", () => {
    const again = example("bank-cellar");
    const svg = (one: typeof again) => svgText(structureDrawing(one.build, one.planned, at(one, 0.5), desk));
    expect(svg(again)).toBe(svg(cellar));
  });
});

describe("where no bodies are written", () => {
  const without = (name: string, lists: Record<string, unknown>): Build => {
    const document = { ...(read(readFileSync(`src/examples/${name}.json`, "utf8")).document as object), solids: [], ...lists };
    return readDocument(document).build!;
  };

  test("the elements of the pours stand side by side, and that is said", async () => {
    const build = without("bank-cellar", {});
    const drawing = structureDrawing(build, plan(build), at(cellar, 0.4), desk);
    expect(drawing.from).toBe("pours");
    await drawn("structure-pours", drawing);
    expect(drawing.parts[0]!.marks.some((mark) => mark.shape === "text" && mark.text.startsWith("No bodies are written"))).toBe(true);
    const { solids } = bodiesOf(build);
    expect(solids.find(({ id }) => id === "vault barrel 0")).toMatchObject({
      shape: "vault",
      form: ["lagging", "ribs", "posts"],
      pieces: ["vault-concrete"],
    });
    // No two of them over the same ground.
    const grounds = solids.map(
      ({ at_mm: { x, y }, size_mm: { long, wide } }) => [x - long / 2, x + long / 2, y - wide / 2, y + wide / 2] as const,
    );
    grounds.forEach((a, i) => {
      for (const b of grounds.slice(i + 1)) expect(a[0] < b[1] && b[0] < a[1] && a[2] < b[3] && b[2] < a[3]).toBe(false);
    });
  });

  test("without pours the outlines of the places, with a depth that is made up", () => {
    const build = readDocument({
      ...(read(readFileSync("test/fixtures/cases/shores-deck-slab.json", "utf8")).document as object),
      solids: [],
      pours: [],
      places: [{ id: "slab", name: "Slab", elevation: { x: "0 m", y: "2 m", wide: "3 m", high: "200 mm", shape: "box" } }],
      pieces: [],
      steps: [],
      waits: [],
    } as never).build;
    expect(build).not.toBeNull();
    const drawing = structureDrawing(build!, null, null, desk);
    expect([drawing.from, drawing.bodies.length]).toEqual(["outlines", 1]);
    expect(bodiesOf(build!).solids[0]).toMatchObject({ name: "Slab", at_mm: { x: 1500, z: 2000 }, size_mm: { long: 3000, high: 200 } });
  });

  test("with nothing at all it says so, and the cover is empty", () => {
    const empty = { places: [], pieces: [], steps: [], waits: [], pours: [], deliveries: [], stock: [], equipment: [] };
    const build = without("garden-wall", empty);
    const drawing = structureDrawing(build, null, null, desk);
    expect(drawing.from).toBe("nothing");
    expect(troubles(drawing)).toEqual([]);
    expect(structureCover(build).parts).toEqual([]);
  });
});

describe("the cover", () => {
  test("of the cellar: small, without a word, without scaffold or holes", async () => {
    const cover = structureCover(cellar.build);
    await drawn("structure-cover", cover);
    expect([cover.width, cover.height]).toEqual([160, 110]);
    const { marks } = cover.parts[0]!;
    expect(marks.filter((mark) => mark.shape === "text")).toEqual([]);
    expect(marks.filter((mark) => /scaffold|shore|cut/.test(mark.of?.id ?? ""))).toEqual([]);
    for (const mark of marks) expect([mark.x0 >= 0, mark.x1 <= 160, mark.y0 >= 0, mark.y1 <= 110]).toEqual([true, true, true, true]);
  });

  test("fits the room it is given", () => {
    for (const [width, high] of [
      [80, 200],
      [300, 60],
    ] as const)
      for (const mark of structureCover(wall.build, { width, high }).parts[0]!.marks) {
        expect(mark.x0).toBeGreaterThanOrEqual(0);
        expect(mark.x1).toBeLessThanOrEqual(width);
        expect(mark.y1).toBeLessThanOrEqual(high);
      }
  });
});

test("the twin says of every body how far it has got, since when, and what comes next", () => {
  const rows = structureTwin(wall.build, wall.planned, at(wall, 0.5));
  expect(rows.map(({ name, state, form, next }) => [name, state, form, next?.state ?? ""])).toEqual([
    ["Footing trench", "dug", "", ""],
    ["Footing", "curing", "", "carrying"],
    ["Wall", "bars in", "", "poured"],
    ["Planter", "not yet", "", "under way"],
  ]);
  const many = structureTwin(cellar.build, cellar.planned, at(cellar, 0.3)).map(({ name }) => name);
  expect(many).toContain("Footing (4)");
  // Two columns that got so far on different days have a row each.
  expect(new Set(structureTwin(cellar.build, cellar.planned, at(cellar, 0.75)).map(({ key }) => key)).size).toBeGreaterThan(15);
});
