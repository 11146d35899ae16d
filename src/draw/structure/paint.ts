import type { SolidState } from "../../core/plan";
import { type Mark, path, round, type Subject, shape } from "../marks/mark";
import type { Role } from "../marks/roles";
import type { Fit, Ground } from "./frame";
import type { Matter } from "./matter";
import type { Painted } from "./painted";
import { type Flat, overlap } from "./view";

/** How one body is drawn on the day. */
export interface BodyLook {
  readonly id: string;
  readonly matter: Matter;
  readonly state: SolidState;
  readonly form: boolean;
  /** Neither before it comes nor after it has gone. */
  readonly passing: boolean;
  readonly lit: boolean;
}

/** later: to come, behind what is there. solid: hides what is behind it. open: a frame that is seen through. dug: the edge of a hole. */
export type Way = "later" | "solid" | "open" | "dug" | "none";

export function wayOf({ matter, state, passing }: BodyLook): Way {
  if (state === "gone") return "none";
  if (matter === "hole") return state === "stands" ? "dug" : "solid";
  if (state === "not yet") return passing ? "none" : "later";
  return matter === "frame" ? "open" : "solid";
}

const faces: Readonly<Record<SolidState, Role>> = {
  "not yet": "body-later",
  formed: "body-formed",
  "bars in": "body-bars",
  poured: "body-poured",
  curing: "body-curing",
  stripped: "body-stripped",
  carrying: "body-carrying",
  "under way": "body-under-way",
  stands: "body-stands",
  gone: "body-later",
};

/** Whether the way it is drawn tells earth by its texture. */
export function faceRole({ matter, state }: Pick<BodyLook, "matter" | "state">): Role {
  if (matter === "hole" && state === "not yet") return "body-earth";
  if (state !== "stands") return faces[state];
  if (matter === "earth") return "body-earth";
  return matter === "concrete" ? "body-carrying" : "body-stands";
}

/** Lines seen through the ground are broken. */
const belows = {
  "body-later-edge": "body-later-below",
  "body-edge": "body-edge-below",
  "body-edge-form": "body-edge-form-below",
  "body-open": "body-edge-below",
  "body-dug": "body-dug",
} as const satisfies Partial<Record<Role, Role>>;

const layer = { ground: 0, later: 1, there: 2, lit: 3 } as const;
/** More bits than this would reach the next layer. */
const step = 1 / 100_000;

/**
 * The marks of all bodies, those to come first and filled with paper, so that of them too only what can be seen is drawn; then what is there, from the farthest to the
 * nearest. What is to come and stands before something that is there is drawn over it once more, as lines.
 */
export function bodyMarks(painted: readonly Painted[], bodies: readonly BodyLook[], fit: Fit): Mark[] {
  const ways = bodies.map(wayOf);
  return painted.flatMap((bit, index): Mark[] => {
    const body = bodies[bit.body] as BodyLook;
    const of: Subject = { list: "solids", id: body.id };
    const name = (what: string) => `${what} ${body.id} ${index}`;
    const at = (base: number) => base + index * step;
    const outline = (role: keyof typeof belows, base: number) =>
      lines(name(role), bit.below ? belows[role] : role, at(base), bit.edges, fit, of);
    switch (ways[bit.body]) {
      case "none":
      case undefined:
        return [];
      case "dug":
        return outline("body-dug", layer.ground);
      case "open":
        return [...outline("body-open", layer.there), ...braces(bit, name("brace"), at(layer.there), fit, of)];
      case "later": {
        const before = bit.over.some((other) => {
          const behind = painted[other] as Painted;
          return ways[behind.body] === "solid" && overlap(bit.outline, behind.outline, 1);
        });
        return [
          ...area(name("later"), "body-later", at(layer.later), bit, fit, of),
          ...outline("body-later-edge", layer.later),
          ...(before ? outline("body-later-edge", layer.there).map((mark) => ({ ...mark, id: `${mark.id} before` })) : []),
        ];
      }
      default:
        return [
          ...area(name("face"), faceRole(body), at(layer.there), bit, fit, of),
          ...(faceRole(body) === "body-earth" ? area(name("sod"), "body-earth-top", at(layer.there), bit, fit, of, 0) : []),
          ...([1, 2] as const).flatMap((shade) =>
            area(name(`shade ${shade}`), shade === 1 ? "body-shade" : "body-shade-deep", at(layer.there), bit, fit, of, shade),
          ),
          ...(bit.below ? area(name("below"), "body-below", at(layer.there), bit, fit, of) : []),
          ...outline(body.form ? "body-edge-form" : "body-edge", layer.there),
        ];
    }
  });
}

/** The outline of what is chosen, over all else: it may stand behind something. */
export function litMarks(painted: readonly Painted[], bodies: readonly BodyLook[], fit: Fit): Mark[] {
  return painted.flatMap((bit, index) => {
    const body = bodies[bit.body] as BodyLook;
    if (!body.lit) return [];
    const of: Subject = { list: "solids", id: body.id };
    return [
      // What lies in the ground is told from what stands on it, chosen or not.
      ...(bit.below ? [] : area(`wash ${body.id} ${index}`, "body-lit-wash", layer.lit, bit, fit, of)),
      ...lines(`lit ${body.id} ${index}`, bit.below ? "body-lit-below" : "body-lit", layer.lit + 0.5, bit.edges, fit, of),
    ];
  });
}

function area(id: string, role: Role, at: number, bit: Painted, fit: Fit, of: Subject, shade?: number): Mark[] {
  const shown = bit.faces.filter((face) => shade === undefined || face.shade === shade);
  if (shown.length === 0) return [];
  const points = shown.map((face) => face.points.map(fit.place));
  const d = points.map((one) => `${one.map(([x, y], i) => `${i === 0 ? "M" : "L"}${round(x)} ${round(y)}`).join("")}Z`).join("");
  return [shape(id, role, at, d, boundsOf(points.flat()), of)];
}

function lines(id: string, role: Role, at: number, edges: readonly (readonly [Flat, Flat])[], fit: Fit, of: Subject): Mark[] {
  if (edges.length === 0) return [];
  const placed = edges.map(([a, b]) => [fit.place(a), fit.place(b)] as const);
  const d = placed.map(([a, b]) => `M${round(a[0])} ${round(a[1])}L${round(b[0])} ${round(b[1])}`).join("");
  return [shape(id, role, at, d, boundsOf(placed.flat()), of)];
}

/** A frame is told from a body by the cross on each of its faces. */
function braces(bit: Painted, id: string, at: number, fit: Fit, of: Subject): Mark[] {
  const crosses = bit.faces.flatMap(({ points }): [Flat, Flat][] =>
    points.length === 4
      ? [
          [points[0] as Flat, points[2] as Flat],
          [points[1] as Flat, points[3] as Flat],
        ]
      : [],
  );
  return lines(id, "body-later-edge", at, crosses, fit, of);
}

const boundsOf = (points: readonly Flat[]) => ({
  x0: Math.min(...points.map(([x]) => x)),
  y0: Math.min(...points.map(([, y]) => y)),
  x1: Math.max(...points.map(([x]) => x)),
  y1: Math.max(...points.map(([, y]) => y)),
});

/** The edge of the ground, level with the datum, with a drafter's short slants under its near sides. */
export function groundMarks(ground: Ground, fit: Fit): Mark[] {
  const near = ground.near.map(fit.place) as [Flat, Flat, Flat];
  const slants: [Flat, Flat][] = [];
  for (const [from, to] of [
    [near[0], near[1]],
    [near[1], near[2]],
  ] as const) {
    const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const count = Math.floor(long / 9);
    for (let i = 1; i < count; i += 1) {
      if (i % 5 > 2) continue;
      const [x, y] = [from[0] + ((to[0] - from[0]) * i) / count, from[1] + ((to[1] - from[1]) * i) / count];
      slants.push([
        [x, y],
        [x - 5, y + 6],
      ]);
    }
  }
  const d = slants.map(([a, b]) => `M${round(a[0])} ${round(a[1])}L${round(b[0])} ${round(b[1])}`).join("");
  return [
    path("ground", "body-later-edge", layer.ground, ground.corners.map(fit.place), { closed: true }),
    path("ground near", "body-edge", layer.ground, near),
    ...(slants.length > 0 ? [shape("ground slants", "ground-hatch", layer.ground, d, boundsOf(slants.flat()))] : []),
  ];
}
