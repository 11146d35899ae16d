import type { Display, DocumentEdit } from "../base";
import type { FormSpec, HeldRate, Lumber } from "../build";
import { across, along } from "../concrete";
import type { Fix, MemberPart } from "./result";

/** A change to try: the form, or the held rate, as it would then be read. */
export interface Trial {
  readonly kind: Fix["kind"];
  readonly part: MemberPart;
  readonly detail: Fix["detail"];
  readonly form: FormSpec;
  readonly held?: HeldRate;
  readonly edits: readonly DocumentEdit[];
}

/** Closer spacings in the order tried: sheets are 96 in (2440 mm) long, and supports that divide them waste nothing (read in a lecture). */
const spacings_mm: Readonly<Record<Display, readonly number[]>> = {
  us: [48, 32, 24, 19.2, 16, 12, 9.6, 8, 6, 4].map((length) => length * 25.4),
  metric: [1220, 813, 610, 488, 407, 305, 244, 203, 152, 100],
};
export const closer = (spacing_mm: number, display: Display): readonly number[] =>
  spacings_mm[display].filter((other) => other < spacing_mm - 1);

/** Spacings of ties, shores, stringers and braces: every two inches down, or 5 cm. */
export function downFrom(spacing_mm: number, display: Display, least_mm: number): readonly number[] {
  const step = display === "us" ? 50.8 : 50;
  const out: number[] = [];
  for (let at = Math.ceil(spacing_mm / step - 1e-9) * step - step; at >= least_mm && out.length < 40; at -= step) out.push(at);
  return out;
}

const metricDepths = ["45x95", "45x145", "45x195", "45x220"];

/** Heavier lumber in the order of its price: another beside it, then deeper. */
export function heavier(lumber: Lumber): readonly { readonly size: string; readonly pieces: number }[] {
  const depths = lumber.size.startsWith("45x") ? metricDepths : ["2x4", "2x6", "2x8", "2x10"];
  const from = depths.indexOf(lumber.size);
  const deeper = from < 0 ? [] : depths.slice(from + 1);
  return [
    ...(lumber.pieces < 2 ? [{ size: lumber.size, pieces: 2 }] : []),
    ...deeper.map((size) => ({ size, pieces: lumber.pieces })),
    ...(lumber.pieces < 2 ? deeper.map((size) => ({ size, pieces: 2 })) : []),
  ];
}

/** Thicker plywood of the same table, thinnest first. */
export function thicker(ply: string, grain: "across" | "along"): readonly string[] {
  const table = grain === "across" ? across : along;
  const own = table[ply]?.thick_in ?? 0;
  return Object.entries(table)
    .filter(([, { thick_in }]) => thick_in > own)
    .sort(([, a], [, b]) => a.thick_in - b.thick_in)
    .map(([name]) => name);
}

/** In the order told: cheapest first, and slower placing last of all. Common practice, no source. */
export const order: readonly Fix["kind"][] = [
  "hold down",
  "braces",
  "band more",
  "bands as proposed",
  "closer members",
  "closer wales",
  "brace shores",
  "closer ties",
  "closer shores",
  "bigger mudsills",
  "bigger bolts",
  "stronger ties",
  "heavier bands",
  "thicker sheathing",
  "held rate",
];
