import type { Draw } from "./draw";
import type { Loose, Size } from "./random-builds";
import { needFor, plainNeed } from "./random-needs";

export interface DrawnWay {
  readonly full: string;
  readonly passes: readonly string[];
  readonly written: Loose;
}

export interface DrawnPlace {
  readonly id: string;
  readonly ways: readonly DrawnWay[];
}

export const named = (name: string, count: number) => Array.from({ length: count }, (_, i) => `${name}-${i + 1}`);
export const between = (draw: Draw, [least, most]: readonly [number, number]) => least + draw.below(most - least + 1);
const kinds = [
  ["person"],
  ["person", "unit"],
  ["machine", "unit"],
  ["arm"],
  ["hand", "hose"],
  ["sight"],
  ["unit"],
  ["arm", "sight", "hose"],
];

export function drawPlaces(draw: Draw, size: Size): DrawnPlace[] {
  const ids = named("place", between(draw, size.places));
  const places = ids.map((id) => ({ id, ways: named("way", draw.pick([2, 1, 3])).map((name) => drawWay(draw, id, name)) }));
  for (const place of places) {
    const others = places.filter((p) => p !== place);
    for (const way of place.ways)
      if (others.length > 0 && draw.chance(30)) way.written.through = drawThrough(draw, size, draw.pick(others));
  }
  return places;
}

function drawThrough(draw: Draw, size: Size, outer: DrawnPlace): unknown {
  const { need, depth } = draw.chance(size.careless) ? plainNeed(draw, "") : needFor(draw, draw.pick(outer.ways), null);
  if (need === "person" && draw.chance(50)) return outer.id;
  return { place: outer.id, need, ...(depth === undefined ? {} : { depth }) };
}

function drawWay(draw: Draw, place: string, name: string): DrawnWay {
  const passes = draw.pick(kinds);
  const limited = passes.includes("hand") || passes.includes("arm");
  const unit = passes.includes("unit");
  const written = {
    id: name,
    name,
    passes,
    ...(limited && draw.chance(60) ? { depth: draw.pick(["1000 mm", "500 mm"]) } : {}),
    ...(unit && draw.chance(50)
      ? {
          opening: draw.pick([
            { wide: "900 mm", high: "600 mm" },
            { wide: "500 mm", high: "900 mm" },
          ]),
        }
      : {}),
    ...(unit && draw.chance(25) ? { longest: "2000 mm" } : {}),
    ...(unit && draw.chance(25) ? { bears: "50 kg" } : {}),
  };
  return { full: `${place}.${name}`, passes, written };
}
