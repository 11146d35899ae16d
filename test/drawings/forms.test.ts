import { describe, expect, test } from "vitest";
import { type Drawing, dark, formDrawing, formTwin, type Mark, svgText } from "../../src/draw";
import { troubles } from "./checks";
import { all, column, oneSided } from "./form-sheets";
import { keepForLooking } from "./gallery";

type Text = Extract<Mark, { shape: "text" }>;
type Point = readonly [number, number];

/** The corners of a mark's outline, for those that are drawn as lines. */
function pointsOf(mark: Mark): Point[] {
  if (mark.shape === "rect")
    return [
      [mark.x0, mark.y0],
      [mark.x1, mark.y0],
      [mark.x1, mark.y1],
      [mark.x0, mark.y1],
      [mark.x0, mark.y0],
    ];
  if (mark.shape !== "path") return [];
  const points = [...mark.d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]): Point => [Number(x), Number(y)]);
  return mark.d.endsWith("Z") && points[0] ? [...points, points[0]] : points;
}

/** Whether a stroke runs through a box: clipped against it side by side (Liang and Barsky, 1984). */
function crosses([x0, y0]: Point, [x1, y1]: Point, box: Text): boolean {
  let [from, to] = [0, 1];
  const sides: readonly Point[] = [
    [x0 - x1, x0 - (box.x0 + 1)],
    [x1 - x0, box.x1 - 1 - x0],
    [y0 - y1, y0 - (box.y0 + 1)],
    [y1 - y0, box.y1 - 1 - y0],
  ];
  for (const [p, q] of sides) {
    if (p === 0 && q < 0) return false;
    if (p < 0) from = Math.max(from, q / p);
    if (p > 0) to = Math.min(to, q / p);
  }
  return from <= to;
}

/** Texts that a line runs through. */
function struck(drawing: Drawing): string[] {
  return drawing.parts.flatMap(({ marks }) => {
    const texts = marks.filter((mark): mark is Text => mark.shape === "text");
    return marks.flatMap((mark) => {
      const points = pointsOf(mark);
      return points
        .slice(1)
        .flatMap((point, index) =>
          texts.filter((text) => crosses(points[index] as Point, point, text)).map((text) => `${mark.id} runs through "${text.text}"`),
        );
    });
  });
}

const widths = { desk: { width: 600, text: 14 }, phone: { width: 358, text: 16 } };

describe.each(Object.keys(all))("the form of the %s", (name) => {
  const one = all[name]!;

  test.each(["desk", "phone"] as const)("on a %s", async (where) => {
    const asked = { ...one, units: "us", who: "Kim", ...widths[where] } as const;
    const drawing = formDrawing(asked);
    const svg = svgText(drawing);
    keepForLooking(`form-${name}-${where}`, svg);
    expect(troubles(drawing, where === "phone" ? 16 : 13)).toEqual([]);
    expect(struck(drawing)).toEqual([]);
    expect(drawing.width).toBe(asked.width);
    if (where === "desk") await expect(svg).toMatchFileSnapshot(`./form-${name}.svg`);
  });

  test.each([320, 480, 760, 1100])("is sound %i px wide, in either units", (width) => {
    for (const units of ["us", "metric"] as const) {
      const drawing = formDrawing({ ...one, units, width, text: 14 });
      expect(troubles(drawing)).toEqual([]);
      expect(struck(drawing)).toEqual([]);
      for (const mark of drawing.parts[0]!.marks) expect(mark.x1).toBeLessThanOrEqual(width + 0.5);
    }
  });
});

describe("form and pressure", () => {
  const drawing = formDrawing({ ...column, units: "us", width: 600, text: 14 });
  const mark = (id: string) => drawing.parts[0]!.marks.find((one) => one.id === id)!;

  test("stand at one scale on one foot", () => {
    const [concrete, diagram] = [mark("concrete"), mark("pressure head")];
    expect(diagram.y0).toBeCloseTo(concrete.y0, 6);
    expect(diagram.y1).toBeCloseTo(concrete.y1, 6);
  });

  test("the dashed line leaves full head at the depth of its own most, and is as much shorter as it is less", () => {
    const [head, held] = [mark("pressure head"), mark("pressure held")];
    expect(held.x0).toBe(held.x1);
    expect((held.x0 - head.x0) / (head.x1 - head.x0)).toBeCloseTo(63.5 / 72, 6);
    expect((held.y0 - head.y0) / (head.y1 - head.y0)).toBeCloseTo(63.5 / 72, 6);
    expect(held.y1).toBeCloseTo(head.y1, 6);
  });

  test("what gives first is marked by weight, warning colour and words", () => {
    expect(mark("band 0").role).toBe("timber-over");
    expect(mark("band 1").role).toBe("timber");
    const lines = drawing.parts[0]!.marks.filter((one): one is Text => one.shape === "text" && one.id.startsWith("line tag bands 0"));
    expect(lines.map(({ text, weight, role }) => [text, weight, role])).toEqual([
      ["101 of 100", 600, "text-warn"],
      ["gives first", 600, "text-warn"],
    ]);
  });

  test("dark", () => {
    keepForLooking("form-column-dark", svgText(drawing, { palette: dark }));
    expect(svgText(drawing, { palette: dark })).toContain(dark.warn);
  });
});

test("the face that has a form stands on the left, with its brace", () => {
  const turned = { ...oneSided, element: { ...oneSided.element, faces: [{ face: "a", against: "earth", visible: false }] } } as const;
  const [one, other] = [oneSided, turned].map((drawable) => svgText(formDrawing({ ...drawable, units: "us", width: 600, text: 14 })));
  expect(other).toBe(one);
  const marks = formDrawing({ ...turned, units: "us", width: 600, text: 14 }).parts[0]!.marks;
  const at = (id: string) => marks.find((mark) => mark.id === id)!;
  expect(at("brace").x1).toBeLessThan(at("concrete").x0);
  expect(at("backing right").x0).toBeCloseTo(at("concrete").x1, 6);
});

test("the twin says the same in rows: every member, and every band at its height", () => {
  const rows = formTwin(column.sheet, "us");
  expect(rows.map(({ name, height, carries }) => [name, height, carries])).toEqual([
    ["Sheathing, 3/4 in", "", "71 of 100"],
    ["Battens, 2x4", "", "83 of 100"],
    ["Bands, two 2x4", "4 in", "101 of 100, gives first"],
    ["Bands, two 2x4", "12 in", "89 of 100"],
    ["Bands, two 2x4", "20 in", "82 of 100"],
    ["Bands, two 2x4", "29 in", "75 of 100"],
    ["Bands, two 2x4", "40 in", "64 of 100"],
    ["Bands, two 2x4", "51 in", "46 of 100"],
    ["Bands, two 2x4", "64 in", "19 of 100"],
    ["Corner bolts, 2x4", "4 in", "62 of 100"],
    ["Corner bolts, 2x4", "12 in", "60 of 100"],
    ["Corner bolts, 2x4", "20 in", "58 of 100"],
    ["Corner bolts, 2x4", "29 in", "50 of 100"],
    ["Corner bolts, 2x4", "40 in", "40 of 100"],
    ["Corner bolts, 2x4", "51 in", "30 of 100"],
    ["Corner bolts, 2x4", "64 in", "10 of 100"],
  ]);
});
