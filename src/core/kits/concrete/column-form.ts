import type { Making } from "../making";
import { bandAcross, beamOf, fullHead, heights_in, type Lumber, lumber, onTape_in } from "./lay";

/** From light to heavy: battens laid flat or on edge, their spacing, and the bands. */
const designs = [
  { batten: "2x4 flat", every_in: 8, band: "2x4", pieces: 1 },
  { batten: "2x4 flat", every_in: 6, band: "2x4", pieces: 2 },
  { batten: "2x4", every_in: 8, band: "2x6", pieces: 1 },
  { batten: "2x4", every_in: 7, band: "2x6", pieces: 2 },
  { batten: "2x4", every_in: 6, band: "2x8", pieces: 2 },
  { batten: "2x4", every_in: 5, band: "2x10", pieces: 2 },
  { batten: "2x4", every_in: 4, band: "2x12", pieces: 2 },
] as const;

/** 3/4 in plywood between battens at a pressure (its spans by the table of APA V345 with class I, some kept back). */
const plySpan_in = (psf: number): number => Math.min(12, 12 * Math.sqrt(330 / Math.max(330, psf)));

const ply_in = 0.71875;
const bolt = { us: { carries: "2000 lb", lb: 2000 }, metric: { carries: "8.9 kN", lb: 2000 } };

interface ColumnSize {
  readonly side_mm: number;
  readonly high_mm: number;
  readonly perimeter_mm: number;
}

/** A raking brace from a stake or the like, 2x4 while it is short, then 4x4: a thin one buckles. */
export function brace(
  making: Making,
  high_mm: number,
  from: Lumber,
  spacing_mm: number,
  lands: string,
  carries = making.either("1000 lb", "4.4 kN"),
): object {
  const rise_mm = Math.max(200, 0.65 * high_mm);
  const run_mm = Math.max(200, 0.5 * high_mm);
  const size = Math.hypot(rise_mm, run_mm) > 1700 ? "4x4" : "2x4";
  return {
    stuff: lumber(making, size, from),
    spacing: making.laid(spacing_mm, "down"),
    run: making.laid(run_mm, "up"),
    rise: making.laid(rise_mm, "up"),
    lands,
    foot: { name: "ground screw, or two stakes", carries, from: "own guess" },
  };
}

/** A column's form for full head: the first design, from light to heavy, whose bands can be laid so that everything carries. */
export function columnForm(making: Making, { side_mm, high_mm, perimeter_mm }: ColumnSize, from: Lumber): object {
  const diagram = fullHead(high_mm);
  const side_in = side_mm / 25.4;
  const bolts = making.either(bolt.us, bolt.metric);
  const step_in = making.either(0.5, 10 / 25.4);
  const tried = designs.map((design) => {
    const every_in = onTape_in(making, Math.min(design.every_in, plySpan_in(diagram.most_psf)));
    const up = { ...beamOf(making, design.batten, 1, from), spacing_mm: every_in * 25.4 };
    const band = beamOf(making, design.band, design.pieces, from);
    const across = bandAcross(band, side_in, ply_in + up.section.deep_in, bolts.lb);
    return { design, every_in, at: heights_in({ diagram, up, across, first_in: 4, widest_in: 24, step_in }) };
  });
  const found = tried.find(({ at }) => at !== null) ?? (tried[tried.length - 1] as (typeof tried)[number]);
  const at_in = found.at ?? Array.from({ length: Math.floor((high_mm / 25.4 - 4) / 4) + 1 }, (_, index) => 4 + 4 * index);
  const [batten, flat] = found.design.batten.split(" ");
  return {
    kind: "column",
    sheathing: { kind: "plywood", ply: "3/4", class: "I", grain: "across", reused: true },
    battens: { stuff: lumber(making, batten as string, from, flat ? { flat: true } : {}), spacing: making.mm(found.every_in * 25.4) },
    bands: {
      stuff: lumber(making, found.design.band, from, found.design.pieces > 1 ? { pieces: found.design.pieces } : {}),
      at: at_in.map((at) => making.mm(at * 25.4)),
      bolt: {
        name: making.either("1/2 in rod with plate washers", "12 mm rod with plate washers"),
        carries: bolts.carries,
        washer: making.either("3 in", "75 mm"),
        from: "own guess",
      },
    },
    weight: making.either(
      `${Math.round(((perimeter_mm * high_mm) / 92_903) * 6)} lb`,
      `${Math.round(((perimeter_mm * high_mm) / 1e6) * 30)} kg`,
    ),
    footSealed: true,
    brace: brace(making, high_mm, from, 1200, "stake"),
  };
}
