import type { Build, Solid } from "../../core/build";
import type { Plan, SolidState } from "../../core/plan";
import { bodiesSentence } from "../../words";
import { type Bounds, type Drawing, inOrder, type Mark, words } from "../marks/mark";
import { lastOf } from "../sheet/remembered";
import { wrap } from "../text/measure";
import { type BodiesFrom, bodiesOf } from "./fallback";
import { fitOf, groundOf } from "./frame";
import { type KeyEntry, keyEntries, keyMarks } from "./key";
import { chosenMarks, columnsOf, labelMarks, labelsOf } from "./labels";
import { bodyLooks } from "./looks";
import { type BodyLook, bodyMarks, groundMarks, litMarks, wayOf } from "./paint";
import { type Painted, paintedOf } from "./painted";
import { type Flat, holds, outlineOf, type Turn } from "./view";

export interface StructureAsked {
  /** px. */
  readonly width: number;
  /** How high the bodies may be drawn, px; usual: three quarters of the width. */
  readonly high?: number;
  /** Type size, px; usual 14. */
  readonly text?: number;
  /** Which of the four views; usual 0, the front. */
  readonly turn?: Turn;
  /** Ids of bodies that are chosen. */
  readonly lit?: ReadonlySet<string>;
  /** Names beside the drawing; usual: where it is at least 480 px wide, else only of what is chosen. */
  readonly labels?: boolean;
  /** What the textures tell, below; usual: with a plan that has dates. */
  readonly key?: boolean;
}

/** One body on the drawing, for pointers, keys and readers. */
export interface DrawnBody {
  readonly id: string;
  readonly name: string;
  readonly state: SolidState;
  readonly form: boolean;
  readonly hole: boolean;
  /** Whether anything of it is drawn on this day. */
  readonly shown: boolean;
  /** The outline round all of it as path data, px in the drawing; empty where it is not shown. */
  readonly d: string;
  /** Middle of its outline, px. */
  readonly middle: Flat;
}

export interface StructureDrawing extends Drawing {
  /** In the order of the document. */
  readonly bodies: readonly DrawnBody[];
  readonly from: BodiesFrom;
  /** Outlines to be pointed at, what is on top first, px. */
  readonly hits: readonly Hit[];
}

interface Hit {
  readonly id: string;
  readonly outline: readonly Flat[];
}

/** The body that is seen at a point of the drawing, or whose name stands there, px; null where there is none. */
export function bodyAt(drawing: StructureDrawing, [x, y]: Flat): string | null {
  const name = drawing.parts[0]?.marks.find(
    (mark) => mark.shape === "text" && mark.of?.list === "solids" && x >= mark.x0 && x <= mark.x1 && y >= mark.y0 && y <= mark.y1,
  );
  // Drawn with y downwards, an outline that ran anticlockwise runs the other way.
  return name?.of?.id ?? drawing.hits.find(({ outline }) => holds([...outline].reverse(), [x, y]))?.id ?? null;
}

/** Narrower than this there is no room for names beside the bodies. px */
const namesFrom = 480;

/**
 * The build as a draughtsman would draw it in the round, each body by how far it has got at an instant (minutes since the build's epoch). Without a plan, or with
 * one that has no dates, as it will stand; without an instant as it stands at the end. Same build, same drawing.
 */
export function structureDrawing(build: Build, plan: Plan | null, minute: number | null, asked: StructureAsked): StructureDrawing {
  const { width, text = 14, turn = 0, lit = new Set() } = asked;
  const { solids, from } = bodiesOf(build);
  const isKeyed = (asked.key ?? plan?.status === "planned") && plan !== null && solids.length > 0;
  return drawn({
    title: `${build.name}: structure`,
    from,
    named: solids.map(({ id, name }) => ({ id, name })),
    painted: paintedOf(build, solids, turn),
    looks: bodyLooks(build, solids, plan, minute, lit),
    key: isKeyed ? keyEntries(build, plan, solids) : null,
    turn,
    width,
    high: asked.high ?? width * 0.75,
    text,
    isNamed: asked.labels ?? width >= namesFrom,
  });
}

type Named = Pick<Solid, "id" | "name">;

/** All that a drawing shows. */
interface Shown {
  readonly title: string;
  readonly from: BodiesFrom;
  readonly named: readonly Named[];
  readonly painted: readonly Painted[];
  readonly looks: readonly BodyLook[];
  readonly key: readonly KeyEntry[] | null;
  readonly turn: Turn;
  readonly width: number;
  readonly high: number;
  readonly text: number;
  readonly isNamed: boolean;
}

// Most changes of a build change no body on the day that is drawn.
const drawn = lastOf((shown: Shown): StructureDrawing => {
  const { named, painted, looks, width, high, text, isNamed } = shown;
  const all = labelsOf(painted, named, looks);
  const names = isNamed ? all : [];
  const ground = groundOf(painted, shown.turn);
  const xs = painted.flatMap(({ outline }) => outline.map(([x]) => x));
  const columns = columnsOf(names, (Math.min(...xs) + Math.max(...xs)) / 2, high, text);
  const row = isNamed ? 0 : Math.ceil(text * 1.4);
  const room = { width: Math.max(80, width - columns.leftWide - columns.rightWide), high, left: columns.leftWide, top: row };
  const fit = fitOf(painted, ground, room);
  const marks: Mark[] = ground
    ? [
        ...groundMarks(ground, fit),
        ...bodyMarks(painted, looks, fit),
        ...litMarks(painted, looks, fit),
        ...labelMarks(columns, fit, width, text),
        ...(isNamed ? [] : chosenMarks(all, boxesOf(named, painted, fit.place), fit, width, text)),
      ]
    : [];
  let bottom = ground ? fit.top + fit.height + 10 : 0;
  if (shown.key) {
    const key = keyMarks(shown.key, { top: bottom, width, text });
    marks.push(...key.marks);
    bottom = key.bottom;
  }
  const caption = captionMarks(bodiesSentence[shown.from], bottom, width, text);
  marks.push(...caption.marks);
  return {
    title: shown.title,
    width,
    height: caption.bottom,
    parts: [{ name: "structure", x: 0, y: 0, width, height: caption.bottom, marks: inOrder(marks) }],
    bodies: drawnBodies(named, painted, looks, fit.place),
    from: shown.from,
    hits: hitsOf(painted, looks, fit.place),
  };
});

/** What each body takes on the drawing, by its id. */
function boxesOf(solids: readonly Named[], painted: readonly Painted[], place: (p: Flat) => Flat): Map<string, Bounds> {
  const boxes = new Map<string, Bounds>();
  solids.forEach(({ id }, index) => {
    const points = painted.filter(({ body }) => body === index).flatMap(({ outline }) => outline.map(place));
    const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
    if (points.length > 0) boxes.set(id, { x0: Math.min(...xs), x1: Math.max(...xs), y0: Math.min(...ys), y1: Math.max(...ys) });
  });
  return boxes;
}

function captionMarks(sentence: string, top: number, width: number, text: number): { marks: Mark[]; bottom: number } {
  const lines = sentence === "" ? [] : wrap(sentence, width, text);
  return {
    marks: lines.map((line, index) =>
      words(`caption ${index}`, "text-soft", { text: line, x: 0, y: top + (index + 0.8) * text * 1.3, size: text }),
    ),
    bottom: top + lines.length * text * 1.3,
  };
}

/** What is there from the nearest to the farthest, then what is to come; the edge of a hole is no target. */
function hitsOf(painted: readonly Painted[], looks: readonly BodyLook[], place: (p: Flat) => Flat): Hit[] {
  const nearestFirst = [...painted].reverse().map((bit) => ({ bit, look: looks[bit.body] as (typeof looks)[number] }));
  return (["there", "later"] as const).flatMap((when) =>
    nearestFirst.flatMap(({ bit, look }) => {
      const way = wayOf(look);
      const isWanted = when === "later" ? way === "later" : way === "solid" || way === "open";
      return isWanted ? [{ id: look.id, outline: bit.outline.map(place) }] : [];
    }),
  );
}

function drawnBodies(
  solids: readonly Named[],
  painted: readonly Painted[],
  looks: readonly BodyLook[],
  place: (p: Flat) => Flat,
): DrawnBody[] {
  return solids.map((solid, index): DrawnBody => {
    const look = looks[index] as (typeof looks)[number];
    const shown = wayOf(look) !== "none";
    const outline = outlineOf(painted.filter(({ body }) => body === index).flatMap((bit) => bit.outline.map(place)));
    const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
    return {
      id: solid.id,
      name: solid.name,
      state: look.state,
      form: look.form,
      hole: look.matter === "hole",
      shown,
      d: shown ? `${outline.map(([x, y], i) => `${i === 0 ? "M" : "L"}${x.toFixed(1)} ${y.toFixed(1)}`).join("")}Z` : "",
      middle: [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2],
    };
  });
}
