import type { Body } from "./body";
import { type At, depth, type Solid, solid, stroke } from "./section";

export type Side = "left" | "right";
export const outward = (side: Side): number => (side === "left" ? -1 : 1);

/** How far the sheathing stands over the concrete. */
export const over_mm = 50;

/** A layer of a form along one face, from `from` to `to` mm outside the concrete. */
export function layer(id: string, role: Solid["role"], body: Body, side: Side, from: number, to: number, reach = over_mm): Solid {
  const face = (y: number) => (side === "left" ? body.left_mm(Math.min(y, body.high_mm)) : body.right_mm(Math.min(y, body.high_mm)));
  const out = outward(side);
  const top = body.high_mm + reach;
  return solid(id, role, depth.side, [
    [face(0) + out * from, 0],
    [face(0) + out * to, 0],
    [face(top) + out * to, top],
    [face(top) + out * from, top],
  ]);
}

/** Where a face stands at a height, so many mm outside the concrete. */
export function outside_mm(body: Body, side: Side, y: number, by: number): number {
  return side === "left" ? body.left_mm(y) - by : body.right_mm(y) + by;
}

/** Earth or old work that one side is cast against. */
export function backing(body: Body, side: Side, what: "earth" | "old work", wide_mm: number): Solid {
  const out = outward(side);
  return solid(`backing ${side}`, what === "earth" ? "outline-earth" : "outline-closed", depth.ground, [
    [outside_mm(body, side, 0, 0), 0],
    [outside_mm(body, side, 0, 0) + out * wide_mm, 0],
    [outside_mm(body, side, body.high_mm, 0) + out * wide_mm, body.high_mm],
    [outside_mm(body, side, body.high_mm, 0), body.high_mm],
  ]);
}

/** The fresh concrete between two faces. */
export function concrete(body: Body): Solid {
  return solid("concrete", "outline-concrete", depth.concrete, [
    [body.left_mm(0), 0],
    [body.right_mm(0), 0],
    [body.right_mm(body.high_mm), body.high_mm],
    [body.left_mm(body.high_mm), body.high_mm],
  ]);
}

/** What it stands on: a heavy line and a strip of hatch below it. */
export function ground(from_mm: number, to_mm: number, y_mm = 0, name = "ground"): Solid[] {
  const under: At[] = [
    [from_mm, y_mm, 0, 0],
    [to_mm, y_mm, 0, 0],
    [to_mm, y_mm, 0, 9],
    [from_mm, y_mm, 0, 9],
  ];
  return [
    solid(`${name} hatch`, "closed-edge", depth.ground, under),
    stroke(`${name} line`, "ground-line", depth.sign, [
      [from_mm, y_mm],
      [to_mm, y_mm],
    ]),
  ];
}

/** A wedge of sealant where the form meets what it stands on. */
export function seal(id: string, x_mm: number, side: Side): Solid {
  const out = outward(side);
  return solid(id, "sign", depth.sign, [
    [x_mm, 0, 0, 0],
    [x_mm, 0, out * 7, 0],
    [x_mm, 0, 0, -7],
  ]);
}

/** A rod or strap from the form into what it stands on, with its anchor. */
export function holdDown(id: string, x_mm: number, from_mm: number): Solid[] {
  return [
    stroke(`${id} rod`, "tie", depth.sign, [
      [x_mm, from_mm],
      [x_mm, 0, 0, 20],
    ]),
    stroke(`${id} anchor`, "tie", depth.sign, [
      [x_mm, 0, -6, 20],
      [x_mm, 0, 6, 20],
    ]),
  ];
}

/** An arrow up: the form wants to rise. */
export function upArrow(id: string, x_mm: number, y_mm: number): Solid[] {
  return [
    stroke(`${id} shaft`, "lift", depth.sign, [
      [x_mm, y_mm, 0, 0],
      [x_mm, y_mm, 0, -26],
    ]),
    solid(`${id} head`, "sign-warn", depth.sign, [
      [x_mm, y_mm, -5, -24],
      [x_mm, y_mm, 5, -24],
      [x_mm, y_mm, 0, -34],
    ]),
  ];
}

/** Two slanting lines where something is shown shorter than it is. */
export function cut(id: string, x_mm: number, y0_mm: number, y1_mm: number): Solid[] {
  const zig = (dx: number): At[] => {
    const middle = (y0_mm + y1_mm) / 2;
    return [
      [x_mm, y0_mm, dx, 8],
      [x_mm, middle, dx, 7],
      [x_mm, middle, dx + 5, 3],
      [x_mm, middle, dx - 5, -3],
      [x_mm, middle, dx, -7],
      [x_mm, y1_mm, dx, -8],
    ];
  };
  return [
    solid(`${id} gap`, "plate", depth.cut, [...zig(-4), ...zig(4).reverse()]),
    stroke(`${id} one`, "cut-line", depth.cut, zig(-4)),
    stroke(`${id} two`, "cut-line", depth.cut, zig(4)),
  ];
}
