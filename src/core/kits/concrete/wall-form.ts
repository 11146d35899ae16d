import { pointCoefficients, pointMember } from "../../concrete";
import type { Making } from "../making";
import { brace } from "./column-form";
import { type Beam, beamOf, beamUnder, fullHead, heights_in, type Lumber, lumber, onTape_in, sags } from "./lay";

/** Studs on edge, wales in pairs, and how far apart ties or strongbacks stand; from light to heavy. */
const designs = [
  { stud: "2x4", every_in: 12, wale: "2x4", apart_in: 24 },
  { stud: "2x4", every_in: 8, wale: "2x4", apart_in: 24 },
  { stud: "2x4", every_in: 8, wale: "2x6", apart_in: 24 },
  { stud: "2x4", every_in: 6, wale: "2x6", apart_in: 18 },
  { stud: "2x6", every_in: 6, wale: "2x6", apart_in: 18 },
  { stud: "2x6", every_in: 6, wale: "2x8", apart_in: 12 },
  { stud: "2x6", every_in: 4, wale: "2x8", apart_in: 12 },
] as const;

/** A tie as sold for walls, with its safety in it: 2,250 lb snap ties by sellers' sheets (from memory). */
const tie = { us: { carries: "2250 lb", lb: 2250 }, metric: { carries: "10 kN", lb: 2248 } };

/** Plywood of 3/4 in over studs at a pressure, in. */
const plySpan_in = (psf: number): number => Math.min(12, 12 * Math.sqrt(330 / Math.max(330, psf)));

/** What a wale carries of what it may, however it runs over its supports; points where few studs stand between. */
function waleAcross(wale: Beam, apart_in: number, every_in: number, tie_lb: number) {
  const points = ([1, 2, 3] as const).map((spans) => pointCoefficients(spans, Math.min(1, every_in / apart_in)));
  return (line_lb_ft: number): number => {
    const each_lb = (line_lb_ft * every_in) / 12;
    const pointed = points.map((by) => pointMember(wale.section, wale.pieces, wale.allowed, apart_in, each_lb, by, sags).governs.of100);
    return Math.max(beamUnder(wale, apart_in, line_lb_ft).governs.of100, ...pointed, (100 * line_lb_ft * (apart_in / 12)) / tie_lb);
  };
}

export interface WallSize {
  readonly high_mm: number;
  /** Run over rise by which both faces together lean over the concrete: they lift the form. */
  readonly lean: number;
  /** One face is formed, against earth or old work: nothing stands opposite. */
  readonly oneSided: boolean;
}

/** A wall's form for full head: the first design, from light to heavy, whose wales can be laid so that everything carries. */
export function wallForm(making: Making, { high_mm, lean, oneSided }: WallSize, from: Lumber): object {
  const diagram = fullHead(high_mm);
  const ties = making.either(tie.us, tie.metric);
  const step_in = making.either(0.5, 10 / 25.4);
  const tried = designs.map((light) => {
    const design = {
      ...light,
      apart_in: onTape_in(making, oneSided ? backsApart_in(high_mm, from) * making.either(1, metricCloser(high_mm)) : light.apart_in),
    };
    const every_in = onTape_in(making, Math.min(design.every_in, plySpan_in(diagram.most_psf)));
    const up = { ...beamOf(making, design.stud, 1, from), spacing_mm: every_in * 25.4 };
    const across = waleAcross(beamOf(making, design.wale, 2, from), design.apart_in, every_in, oneSided ? 1e6 : ties.lb);
    return { design, every_in, at: heights_in({ diagram, up, across, first_in: 8, widest_in: 36, step_in }) };
  });
  const found = tried.find(({ at }) => at !== null) ?? (tried[tried.length - 1] as (typeof tried)[number]);
  const at_in = found.at ?? Array.from({ length: Math.max(1, Math.floor(high_mm / 25.4 / 6)) }, (_, index) => 4 + 6 * index);
  const apart = making.mm(found.design.apart_in * 25.4);
  const thrust_lb_ft = (150 * (high_mm / 304.8) ** 2) / 2;
  return {
    kind: "wall",
    sheathing: { kind: "plywood", ply: "3/4", class: "I", grain: "across", reused: true },
    studs: { stuff: lumber(making, found.design.stud, from), spacing: making.mm(found.every_in * 25.4) },
    wales: { stuff: lumber(making, found.design.wale, from, { pieces: 2 }), at: at_in.map((at) => making.mm(at * 25.4)) },
    ...(oneSided
      ? oneSidedParts(making, high_mm, found.design.apart_in, thrust_lb_ft, from)
      : {
          ties: { by: { name: "wall tie with its wedges", carries: ties.carries, from: "own guess" }, spacing: apart },
          brace: brace(making, high_mm, from, 900, "stake"),
        }),
    weight: making.either(`${Math.round((high_mm / 304.8) * 7)} lb/ft`, `${Math.round((high_mm / 1000) * 34)} kg/m`),
    footSealed: true,
    ...(lean > 0 || oneSided ? { holdDown: holdDown(making, lean * thrust_lb_ft + (oneSided ? 1.4 * thrust_lb_ft : 0)) } : {}),
  };
}

/** Straps or cast-in loops so close that each takes no more than 2,000 lb. */
function holdDown(making: Making, up_lb_ft: number): object {
  const spacing_mm = Math.min(1200, Math.max(150, Math.floor((2000 / Math.max(1, up_lb_ft)) * 12) * 25.4));
  return {
    by: { name: "loop or strap cast into the footing", carries: making.either("2000 lb", "8.9 kN"), from: "own guess" },
    spacing: making.laid(spacing_mm, "down"),
  };
}

/** Two of these side by side, by the height they stand against; salvaged ones one size up. */
const backs = [
  ["2x6", 900],
  ["2x8", 1300],
  ["2x10", 1900],
  ["2x12", Number.POSITIVE_INFINITY],
] as const;

/** The deepest planed piece is 245 mm where the trade size has 11 1/4 in: those stand closer. */
const metricCloser = (high_mm: number): number => (high_mm > 1900 ? 0.75 : 1);

/** How far apart strongbacks and rakers stand against nothing but themselves, in: closer the higher. */
const backsApart_in = (high_mm: number, from: Lumber): number => {
  const apart = high_mm > 2400 ? 12 : high_mm > 1500 ? 16 : 24;
  return from === "salvaged" ? Math.max(9, apart * 0.6) : apart;
};

/** Strongbacks, and rakers that take the whole thrust to the footing: the engineer's, here only so that the sums have something to judge. */
function oneSidedParts(making: Making, high_mm: number, apart_in: number, thrust_lb_ft: number, from: Lumber): object {
  const [run_mm, rise_mm] = [high_mm * 0.75, high_mm * 0.55];
  const each_lb = Math.max(400, thrust_lb_ft * (apart_in / 12));
  const along_lb = (each_lb * (high_mm / 3 / rise_mm) * Math.hypot(run_mm, rise_mm)) / run_mm;
  const written = (lb: number) =>
    making.either(`${Math.ceil((lb * 1.2) / 100) * 100} lb`, `${(Math.ceil(lb * 1.2 * 0.0444822) / 10).toFixed(1)} kN`);
  const index = backs.findIndex(([, upTo_mm]) => high_mm <= upTo_mm);
  const back = (backs[Math.min(backs.length - 1, index + (from === "salvaged" ? 1 : 0))] as (typeof backs)[number])[0];
  return {
    strongbacks: {
      stuff: lumber(making, back, from, { pieces: 2 }),
      spacing: making.mm(apart_in * 25.4),
      top: { name: "head of the raker", carries: written(each_lb), washer: making.either("4 in", "100 mm"), from: "own guess" },
      foot: { name: "kicker bolted to the footing", carries: written(each_lb), washer: making.either("4 in", "100 mm"), from: "own guess" },
    },
    brace: {
      stuff: lumber(making, Math.hypot(run_mm, rise_mm) > 2000 ? "6x6" : "4x4", from),
      spacing: making.mm(apart_in * 25.4),
      run: making.laid(run_mm, "up"),
      rise: making.laid(rise_mm, "up"),
      lands: "footing",
      foot: { name: "loop cast into the footing", carries: written(Math.max(along_lb, each_lb) * 1.5), from: "own guess" },
    },
  };
}
