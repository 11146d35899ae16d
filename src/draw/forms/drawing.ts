import type { Display } from "../../core/base";
import type { PourElement } from "../../core/build";
import type { ElementSheet } from "../../core/pour";
import { lengthsTogether } from "../../words";
import { type Drawing, inOrder, layers, type Mark, path, words } from "../marks/mark";
import { textWidth, wrap } from "../text/measure";
import { bodyOf } from "./body";
import { columnSection } from "./column";
import { deckSection } from "./deck";
import { edgeSection } from "./edge";
import { formNotes } from "./notes";
import { figuresHeight, figuresWidth, pressureMarks } from "./pressure";
import type { At, Note, Room, Section, Solid, Tag } from "./section";
import { spread } from "./spread";
import { wallSection } from "./wall";

export interface FormAsked {
  readonly element: PourElement;
  readonly sheet: ElementSheet;
  readonly units: Display;
  /** How wide the drawing may be, px. */
  readonly width: number;
  /** Type size, px. */
  readonly text: number;
  /** Name of the person who holds the rate, where one is written. */
  readonly who?: string | null;
  /** False: the notes below it are shown elsewhere. */
  readonly notes?: boolean;
  /** How high the form itself may be drawn, px. */
  readonly high?: number;
}

/** px of the gaps between form, words and diagram. */
const gap = 16;
/** No form is drawn larger than this, px a mm. */
const largest = 0.6;
/** A diagram is no wider than this, takes this share where there is room, and is never narrower. */
const diagram = { most: 260, share: 0.27, least: 84 } as const;

/** One element of a pour: its form cut through, what each member carries, and the pressure beside it at the same scale on the same foot. */
export function formDrawing(asked: FormAsked): Drawing {
  const { width, text, sheet, units, element } = asked;
  const high = asked.high ?? 440;
  const pressure = sheet.pressure;
  const leastDiagram = pressure ? Math.max(diagram.least, width * diagram.share, figuresWidth(pressure, units, text) + 4) : 0;
  const broken = width < narrowest;
  const tagWide = widestTag(tagsOf(sectionOf(asked, { wide_mm: () => 3000, roomy: true }), broken), units, text);
  const formWide = Math.max(48, width - tagWide - leastDiagram - (tagWide > 0 ? gap : 0) - (pressure ? gap + 10 : 0) - 2);
  const section = sectionOf(asked, { wide_mm: (high_mm) => formWide / Math.min(largest, high / high_mm), roomy: formWide >= 200 });
  if (section === null) return { title: element.name, width, height: 0, parts: [] };
  const scale = Math.min(largest, high / (section.top_mm - section.bottom_mm), formWide / (section.right_mm - section.left_mm));
  // Signs that stand above the form, an arrow or a tie over the top, keep clear of the title, as does the head of what is laid on it.
  const laid = pressure ? (section.foot_mm + pressure.height_mm - section.top_mm) * scale : 0;
  const above = Math.max(0, laid, ...section.solids.flatMap(({ at }) => at.map(([, y, , dy = 0]) => (y - section.top_mm) * scale - dy)));
  const head = text * 2 + above;
  const toX = (x: number) => (x - section.left_mm) * scale;
  const toY = (y: number) => head + (section.top_mm - y) * scale;
  const place = ([x, y, dx = 0, dy = 0]: At): [number, number] => [toX(x) + dx, toY(y) + dy];
  const formEnd = toX(section.right_mm);
  const under = Math.max(toY(section.bottom_mm), toY(0) + 26);
  const tags = tagMarks(tagsOf(section, broken), { x: formEnd + gap, top: head, bottom: under, place, text, units });
  const tagsEnd = section.tags.length > 0 ? formEnd + gap + tagWide : formEnd;
  const axis = tagsEnd + gap;
  const foot = toY(section.foot_mm);
  const wide = pressure ? Math.min(diagram.most, width - axis - 10) : 0;
  const marks: Mark[] = [
    words("title form", "text", {
      text: element.form ? "The form, cut through" : "The concrete, cut through",
      x: 0,
      y: text,
      size: text,
      weight: 600,
    }),
    ...section.solids.map((one) => drawn(one, place)),
    ...tags.marks,
    ...(pressure
      ? [
          words("title pressure", "text", { text: titleOf(wide, text), x: axis, y: text, size: text, weight: 600 }),
          ...pressureMarks(pressure, { x: axis, wide, top: toY(section.foot_mm + pressure.height_mm), foot, text, units }),
        ]
      : []),
  ];
  const end = Math.max(under, tags.bottom, pressure ? foot + figuresHeight(pressure, text) : 0);
  const notes = noteMarks(
    asked.notes === false ? [] : [...formNotes(element, sheet, units, asked.who ?? null), ...section.notes],
    end + text * 0.8,
    width,
    text,
  );
  const height = notes.bottom + text * 0.5;
  return {
    title: `${element.name}: form and pressure`,
    width,
    height,
    parts: [{ name: "form", x: 0, y: 0, width, height, marks: inOrder([...marks, ...notes.marks]) }],
  };
}

/** Below this the name of a part stands over its figure instead of before it, px. */
const narrowest = 480;

function tagsOf(section: Section | null, broken: boolean): readonly Tag[] {
  const tags = section?.tags ?? [];
  if (!broken) return tags;
  return tags.map((tag) => ({
    ...tag,
    lines: tag.lines.flatMap((line) => {
      const [, name, figure] = /^(\D+?) (\d+ of 100|more than 10 times)$/.exec(line.text) ?? [];
      return name === undefined || figure === undefined
        ? [line]
        : [
            { ...line, text: name },
            { ...line, text: figure },
          ];
    }),
  }));
}

const titleOf = (wide: number, text: number): string => {
  const long = "Pressure of the fresh concrete";
  return textWidth(long, text, 600) <= wide + 8 ? long : "Pressure";
};

function sectionOf({ element, sheet }: FormAsked, room: Room): Section | null {
  const form = element.form;
  const body = bodyOf(element);
  if (form?.kind === "column" && body) return columnSection(element, form, sheet.form, body, room);
  if (form?.kind === "wall" && body) return wallSection(element, form, sheet.form, body, room);
  if (form?.kind === "deck" || body === null) return deckSection(element.shape, form?.kind === "deck" ? form : null, sheet.form, room);
  return edgeSection(element, form?.kind === "edge" ? form : null, sheet.form, body, room);
}

function drawn(one: Solid, place: (at: At) => [number, number]): Mark {
  const points = one.at.map(place);
  return path(one.id, one.role, one.layer, points, { closed: one.closed });
}

/** Heights above the foot, all in one unit. */
function heightsOf(tags: readonly Tag[], units: Display): (tag: Tag) => string {
  const write = lengthsTogether(
    tags.flatMap(({ height_mm }) => height_mm ?? []),
    units,
  );
  return ({ height_mm }) => (height_mm === null ? "" : write(height_mm));
}
const between = 10;

function widths(tags: readonly Tag[], units: Display, text: number) {
  const heightText = heightsOf(tags, units);
  const heights = Math.max(0, ...tags.map((tag) => textWidth(heightText(tag), text)));
  const lines = Math.max(
    0,
    ...tags.flatMap((tag) => tag.lines.map((line) => textWidth(line.text, text, line.first || line.over ? 600 : 400))),
  );
  return { heights, lines };
}

function widestTag(tags: readonly Tag[], units: Display, text: number): number {
  const { heights, lines } = widths(tags, units, text);
  return heights + (heights > 0 && lines > 0 ? between : 0) + lines;
}

interface TagPlace {
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
  readonly text: number;
  readonly units: Display;
  place(at: At): [number, number];
}

function tagMarks(tags: readonly Tag[], { x, top, bottom, place, text, units }: TagPlace): { marks: Mark[]; bottom: number } {
  const { heights } = widths(tags, units, text);
  const heightText = heightsOf(tags, units);
  const row = text * 1.25;
  const wishes = tags.map((tag) => ({ y: place(tag.at)[1], high: Math.max(1, tag.lines.length) * row + 2 }));
  const middles = spread(wishes, top, bottom);
  const linesX = x + (heights > 0 ? heights + between : 0);
  const marks = tags.flatMap((tag, index): Mark[] => {
    const middle = middles[index] as number;
    const [fromX, fromY] = place(tag.at);
    const first = middle - ((Math.max(1, tag.lines.length) - 1) * row) / 2;
    const base = first + text * 0.26;
    return [
      path(`leader ${tag.id}`, "leader", layers.rule, [
        [fromX, fromY],
        [x - 4, first],
      ]),
      ...(tag.height_mm === null
        ? []
        : [words(`height ${tag.id}`, "text-soft", { text: heightText(tag), x: x + heights, y: base, size: text, anchor: "end" })]),
      ...tag.lines.map((line, at) =>
        words(`line ${tag.id} ${at}`, line.over ? "text-warn" : "text", {
          text: line.text,
          x: linesX,
          y: base + at * row,
          size: text,
          weight: line.first || line.over ? 600 : 400,
        }),
      ),
    ];
  });
  return {
    marks,
    bottom: Math.max(0, ...tags.map((_, index) => (middles[index] as number) + (wishes[index] as { high: number }).high / 2)),
  };
}

function noteMarks(notes: readonly Note[], top: number, width: number, text: number): { marks: Mark[]; bottom: number } {
  let y = top;
  const marks = notes.flatMap((note, index) =>
    wrap(note.text, width, text, note.loud ? 600 : 400).map((line, at) => {
      y += text * 1.35;
      return words(`note ${index} ${at}`, note.loud ? "text-warn" : at === 0 && index === 0 ? "text" : "text-soft", {
        text: line,
        x: 0,
        y,
        size: text,
        weight: note.loud ? 600 : 400,
      });
    }),
  );
  return { marks, bottom: y };
}
