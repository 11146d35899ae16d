import {
  across,
  allowed,
  along,
  alongBrace_lb,
  bendingSpan_in,
  type Diagram,
  grades,
  holdDown_lb,
  inertia_in4,
  lumberShearSpan_in,
  modulus_in3,
  mudsill_ft2,
  plyClasses,
  plywoodCarries_psf,
  reused,
  rollingShearSpan_in,
  type Section,
  sagSpan_in,
  sections,
  shore,
  slabBrace_lb_ft,
  slabForm_psf,
  thrust_lb_ft,
  thrustHeight_ft,
  uplift_lb_ft,
  windBrace_lb_ft,
} from "../../../src/core/concrete";
import { table, value } from "../published";

const section = (name: string) => sections[name] as Section;
const fir = grades["DF-L No 2"] as NonNullable<(typeof grades)[string]>;
const hem = grades["HF Sel"] as NonNullable<(typeof grades)[string]>;
const l360 = { kind: "ratio", of: 360 } as const;
const sixteenth = { kind: "fixed", inches: 1 / 16 } as const;
const ply = across["3/4"] as NonNullable<(typeof across)[string]>;

// The lecture's own plywood table for its wall and slab forms (sanded, not Plyform): I .197, S .412, Ib/Q 6.762.
const sanded = { i: 0.197, s: 0.412, r: 6.762 };
const wetStud = { duration: 1.25, wet: true, repetitive: true } as const;
const stud = allowed(fir, "2x4", wetStud);
const wale = allowed(fir, "2x4", { ...wetStud, repetitive: false });
const lumber = (name: string, n: number, load: number, f: ReturnType<typeof allowed>) => ({
  bend: () => bendingSpan_in(3, f.bending, modulus_in3(section(name)) * n, load),
  shear: () => lumberShearSpan_in(3, f.shear, section(name).wide_in * n, section(name).deep_in, load),
  l360: () => sagSpan_in(3, l360, f.elasticity, inertia_in4(section(name)) * n, load),
  fixed: () => sagSpan_in(3, sixteenth, f.elasticity, inertia_in4(section(name)) * n, load),
});
const studSpan = lumber("2x4", 1, 521.25, stud);
const waleSpan = lumber("2x4", 2, 2085, wale);
const reusedWet = { duration: 1, wet: true, repetitive: true } as const;
const batten = allowed(fir, "2x4 flat", reusedWet);
const battenSpan = lumber("2x4 flat", 1, 1125, batten);
const onEdge = lumber("2x4", 1, 1125, allowed(fir, "2x4", { ...reusedWet, repetitive: false }));
const joist = allowed(hem, "4x4", wetStud);
const joistSpan = lumber("4x4", 1, 240.67, joist);
const stringer = allowed(hem, "4x6", { ...wetStud, repetitive: false });
const stringerSpan = lumber("4x6", 1, 722, stringer);

const formPly = (plies: typeof ply, grain: "across" | "along", spacing: number, ratio: number) => () =>
  plywoodCarries_psf(plies, plyClasses.I, grain, spacing, 1.5, ratio).carries_psf;
const apa = (
  thick: string,
  grain: "across" | "along",
  ratio: number,
  cells: readonly (readonly [spacing: number, psf: number])[],
): [string, number, () => number, number][] =>
  cells.map(([spacing, psf]) => {
    const plies = (grain === "across" ? across : along)[thick] as typeof ply;
    return [`${thick}-${grain}-l${ratio}-${spacing}in`, psf, formPly(plies, grain, spacing, ratio), Math.max(4, psf * 0.012)];
  });

/** APA Table 7: the least of bending, shear and sag (l/360 and 1/4 in), dry, CD 1.25; 2 to 3 supports with single-span sag. */
function apaLumber(name: string, load: number, many: boolean): number {
  const f = allowed(fir, name, { duration: 1.25, wet: false, repetitive: false });
  const s = section(name);
  const spans = many ? 3 : 2;
  const sagSpans = many ? 3 : 1;
  return Math.min(
    bendingSpan_in(spans, f.bending, modulus_in3(s), load),
    lumberShearSpan_in(spans, f.shear, s.wide_in, s.deep_in, load),
    sagSpan_in(sagSpans, l360, f.elasticity, inertia_in4(s), load),
    sagSpan_in(sagSpans, { kind: "fixed", inches: 0.25 }, f.elasticity, inertia_in4(s), load),
  );
}
const names = ["2x4", "2x6", "2x8", "2x10", "4x4", "4x6", "4x8"];
const apaRows: readonly (readonly [load: number, few: readonly number[], many: readonly number[]])[] = [
  [200, [48, 73, 92, 113, 64, 97, 120], [56, 81, 103, 126, 78, 114, 140]],
  [400, [35, 52, 65, 80, 50, 79, 101], [39, 58, 73, 89, 60, 88, 116]],
  [600, [29, 42, 53, 65, 44, 64, 85], [32, 47, 60, 73, 49, 72, 95]],
  [800, [25, 36, 46, 56, 38, 56, 73], [27, 41, 52, 63, 43, 62, 82]],
  [1000, [22, 33, 41, 50, 34, 50, 66], [23, 36, 46, 56, 38, 56, 73]],
  [1200, [20, 30, 38, 46, 31, 45, 60], [20, 32, 42, 51, 35, 51, 67]],
  [1600, [16, 26, 33, 40, 27, 39, 52], [17, 26, 35, 45, 30, 44, 58]],
  [2000, [15, 23, 29, 36, 24, 35, 46], [15, 23, 31, 39, 25, 39, 52]],
  [3000, [12, 19, 24, 29, 19, 29, 38], [12, 19, 25, 32, 19, 30, 40]],
  [5000, [10, 15, 18, 23, 14, 22, 29], [10, 16, 21, 25, 14, 23, 30]],
];

const firShore = (feet: number) => () => {
  const f = allowed(fir, "4x4", { duration: 1.25, wet: false, repetitive: false });
  return value(shore(feet * 12, 3.5, 12.25, f.compression, f.elasticityMin)).carries_lb;
};
const sp = () => value(shore(144, 3.5, 19.25, 1750, 510e3));
const tall = () => {
  const f = allowed(hem, "4x6", { duration: 1.25, wet: true, repetitive: false });
  return value(shore(168, 3.5, 19.25, f.compression, f.elasticityMin));
};
const six: Diagram = { height_ft: 6, weight_pcf: 150, most_psf: 900 };

export const rows = [
  ...table("wall-form", "university form design lecture, week 7: 15 ft wall, 10 ft/h, 80 °F, wet", "read", 0.02, [
    ["ply-bending", 9.2, () => bendingSpan_in(3, 1787.5, sanded.s, 1042.5)],
    ["ply-rolling", 7.13, () => rollingShearSpan_in(3, 55, sanded.r, 1042.5)],
    ["ply-l360", 11.1, () => sagSpan_in(3, l360, 1.5e6, sanded.i, 1042.5)],
    ["ply-sixteenth", 13.25, () => sagSpan_in(3, sixteenth, 1.5e6, sanded.i, 1042.5)],
    ["stud-Fb", 1649.5, () => stud.bending, 0.1],
    ["stud-Fv", 218.25, () => stud.shear],
    ["stud-E", 1.44e6, () => stud.elasticity, 1],
    ["stud-bending", 34.09, studSpan.bend],
    ["stud-shear", 36.3, studSpan.shear],
    ["stud-l360", 41.5, studSpan.l360],
    ["stud-sixteenth", 35.63, studSpan.fixed],
    ["bearing-psi", 231.7, () => (1042.5 * 1) / 4.5, 0.05],
    ["bearing-allowed", 418.75, () => stud.bearing, 0.01],
    ["wale-Fb", 1434, () => wale.bending, 0.5],
    ["wale-bending", 22.48, waleSpan.bend],
    ["wale-shear", 21.65, waleSpan.shear],
    ["wale-l360", 32.94, waleSpan.l360, 0.025],
    ["wale-sixteenth", 29.96, waleSpan.fixed, 0.025],
  ]),
  ...table("sp4-wall", "second wall in the manner of SP-4: 600 psf, single use 1931 psi", "read", 0.02, [
    ["ply-bending", 12.61, () => bendingSpan_in(3, 1931, sanded.s, 600)],
    ["ply-l360", 13.35, () => sagSpan_in(3, l360, 1.5e6, sanded.i, 600), 0.02],
    ["ply-sixteenth", 15.22, () => sagSpan_in(3, sixteenth, 1.5e6, sanded.i, 600), 0.02],
  ]),
  ...table("column-form", "university form design lecture, week 8: 20 x 20 in, 10 ft, full head 1500 psf", "read", 0.02, [
    ["ply-reused-Fb", 1544, () => reused(plyClasses.I).bending],
    ["ply-reused-Fs", 57.6, () => reused(plyClasses.I).rolling],
    ["ply-bending", 7.49, () => bendingSpan_in(3, 1544, ply.modulus_in3, 1500)],
    ["ply-rolling", 5.52, () => rollingShearSpan_in(3, 57.6, ply.rolling_in2, 1500)],
    ["ply-l360", 10.19, () => sagSpan_in(3, l360, 1.65e6, ply.inertia_in4, 1500)],
    ["ply-sixteenth", 12.42, () => sagSpan_in(3, sixteenth, 1.65e6, ply.inertia_in4, 1500)],
    ["batten-Fb", 1451.6, () => batten.bending, 0.05],
    ["batten-Fv", 174.6, () => batten.shear],
    ["batten-bending", 14.25, battenSpan.bend],
    ["batten-shear", 13.86, battenSpan.shear],
    ["batten-l360", 18.25, battenSpan.l360],
    ["batten-sixteenth", 19.24, battenSpan.fixed],
    ["on-edge-bending", 19.35, onEdge.bend],
    ["on-edge-shear", 17.86, onEdge.shear],
    ["on-edge-l360", 32.1, onEdge.l360, 0.05],
    ["on-edge-sixteenth", 29.4, onEdge.fixed, 0.05],
  ]),
  ...table("slab-form", "university form design lecture, week 9: 10 in slab, hem-fir", "read", 0.02, [
    ["load-psf", 180.5, () => slabForm_psf(10, 5.5), 0.01],
    ["ply-bending", 16.75, () => bendingSpan_in(3, 1025, sanded.s, 180.5)],
    ["ply-rolling", 41.21, () => rollingShearSpan_in(3, 55, sanded.r, 180.5)],
    ["ply-l360", 18.99, () => sagSpan_in(3, l360, 1.3e6, sanded.i, 180.5)],
    ["ply-sixteenth", 19.82, () => sagSpan_in(3, sixteenth, 1.3e6, sanded.i, 180.5)],
    ["joist-Fb", 2566, () => joist.bending, 1],
    ["joist-Fv", 181.9, () => joist.shear, 0.05],
    ["joist-bending", 95.58, joistSpan.bend, 0.04],
    ["joist-shear", 130.4, joistSpan.shear, 0.06],
    ["joist-l360", 71.21, joistSpan.l360, 0.1],
    ["joist-sixteenth", 53.42, joistSpan.fixed, 0.05],
    ["stringer-Fb", 1934, () => stringer.bending, 1],
    ["stringer-bending", 75.28, stringerSpan.bend, 0.05],
    ["stringer-shear", 75.6, stringerSpan.shear, 0.06],
    ["stringer-l360", 77.59, stringerSpan.l360, 0.1],
    ["stringer-sixteenth", 56.97, stringerSpan.fixed, 0.05],
    ["shore-slenderness", 48, () => tall().slenderness],
    ["shore-Fc", 1650, () => allowed(hem, "4x6", { duration: 1.25, wet: true, repetitive: false }).compression, 0.5],
    ["shore-Cp", 0.1101, () => tall().stability, 0.0001],
    ["shore-allowed", 181.7, () => tall().allowed_psi, 0.1],
    ["shore-carries", 3498, () => tall().carries_lb, 2],
  ]),
  ...table("uw-slab", "a second university's slab form: 8 in, 50 live, 8 forms", "read", 0.06, [
    ["load", 158, () => slabForm_psf(8, 8)],
    ["ply-bending", 22, () => bendingSpan_in(3, 1545, sanded.s, 158)],
    ["ply-l360", 20.8, () => sagSpan_in(3, l360, 1.5e6, sanded.i, 158)],
    ["ply-sixteenth", 21.2, () => sagSpan_in(3, sixteenth, 1.5e6, sanded.i, 158), 0.1],
    ["ply-rolling", 48, () => rollingShearSpan_in(3, 57, sanded.r, 158), 1],
  ]),
  ...table("apa", "APA Concrete Forming V345, worked example", "read-2nd", 1, [
    ["bending", 412, () => plywoodCarries_psf(ply, plyClasses.I, "across", 16, 1.5, 360).bending_psf],
    ["shear", 714, () => plywoodCarries_psf(ply, plyClasses.I, "across", 16, 1.5, 360).rolling_psf],
    ["sag", 370, () => plywoodCarries_psf(ply, plyClasses.I, "across", 16, 1.5, 360).sag_psf],
  ]),
  ...table("apa-3", "APA V345 Table 3 and 4 (rounded to 5 psf)", "read-2nd", 5, [
    ...apa("3/4", "across", 360, [
      [8, 1580],
      [12, 730],
      [16, 370],
      [19.2, 225],
      [24, 120],
    ]),
    ...apa("3/4", "across", 270, [
      [8, 1580],
      [12, 730],
      [16, 410],
      [19.2, 285],
      [24, 160],
    ]),
    ...apa("5/8", "across", 360, [
      [8, 1260],
      [12, 575],
      [16, 265],
      [19.2, 160],
    ]),
    ...apa("5/8", "across", 270, [
      [16, 325],
      [19.2, 210],
      [24, 110],
    ]),
    ...apa("1/2", "across", 360, [
      [12, 405],
      [16, 175],
    ]),
    ...apa("1/2", "across", 270, [
      [12, 430],
      [16, 230],
    ]),
    ...apa("1-1/8", "across", 360, [
      [12, 1370],
      [16, 740],
      [19.2, 485],
      [24, 275],
      [32, 130],
    ]),
    ...apa("1-1/8", "across", 270, [
      [16, 770],
      [19.2, 535],
      [24, 340],
      [32, 170],
    ]),
    ...apa("3/4", "along", 360, [
      [8, 895],
      [12, 460],
      [16, 200],
      [19.2, 145],
    ]),
    ...apa("3/4", "along", 270, [
      [12, 490],
      [16, 270],
      [19.2, 155],
      [24, 100],
    ]),
  ]),
  ...table(
    "apa-7",
    "APA V345 Table 7, Douglas fir-larch No 2, dry, CD 1.25, l/360 and 1/4 in",
    "read-2nd",
    1,
    apaRows.flatMap(([load, few, many]) =>
      names.flatMap((name, i) => [
        [`${name}-${load}-few`, few[i] as number, () => apaLumber(name, load, false)] as [string, number, () => number],
        [`${name}-${load}-many`, many[i] as number, () => apaLumber(name, load, true)] as [string, number, () => number],
      ]),
    ),
  ),
  ...table("shore", "NDS 3.7, lecture example: southern pine No 2 4x6, 12 ft, dry", "read", 0.01, [
    ["slenderness", 41.14, () => sp().slenderness],
    ["Cp", 0.1372, () => sp().stability, 0.0001],
    ["allowed", 240, () => sp().allowed_psi, 0.1],
    ["carries", 4621, () => sp().carries_lb, 2],
  ]),
  ...table("shore", "NDS 3.7, Douglas fir-larch No 2 4x4, dry, CD 1.25", "computed", 1, [
    ["6ft", 11590, firShore(6), 116],
    ["8ft", 7150, firShore(8), 72],
    ["10ft", 4730, firShore(10), 48],
    ["12ft", 3340, firShore(12), 34],
    ["14ft", 2480, firShore(14), 25],
  ]),
  ...table("brace", "university form design lecture: slab and wall bracing, ACI 347 2.2.3", "read", 0.5, [
    ["slab-60ft", 138, () => slabBrace_lb_ft(115, 60)],
    ["slab-80ft", 184, () => slabBrace_lb_ft(115, 80)],
    ["slab-100ft", 230, () => slabBrace_lb_ft(115, 100)],
    ["slab-90ft", 207, () => slabBrace_lb_ft(115, 90)],
    ["brace-828-at-45", 1171, () => alongBrace_lb(828, 10, 10)],
    ["wall-brace", 512.4, () => alongBrace_lb(windBrace_lb_ft(10, 20) * 4, Math.sqrt(16 ** 2 - 10 ** 2), 10), 0.3],
    ["small-deck-100-governs", 100, () => slabBrace_lb_ft(90, 20)],
  ]),
  ...table("form-loads", "statics of the pressure diagram", "computed", 0.5, [
    ["uplift-6ft-1in8", 337.5, () => uplift_lb_ft(six, 1 / 8), 0.01],
    ["uplift-both-faces-8ft", 5400, () => 2 * 8 * uplift_lb_ft(six, 1 / 8), 0.1],
    ["hold-down", 4440, () => holdDown_lb(5400, 960)],
    ["one-sided-6ft", 2700, () => thrust_lb_ft(six, 0, 6)],
    ["one-sided-acts-at-ft", 2, () => thrustHeight_ft(six), 0.001],
    ["bolt-12in-square", 450, () => (900 * 1 * 1) / 2],
    ["mudsill-1500", 2.1, () => mudsill_ft2(3160, 1500), 0.05],
    ["mudsill-700", 4.5, () => mudsill_ft2(3160, 700), 0.05],
  ]),
  ...table("section", "NDS Supplement dressed sizes", "read", 0.005, [
    ["2x4-S", 3.063, () => modulus_in3(section("2x4"))],
    ["2x4-I", 5.359, () => inertia_in4(section("2x4"))],
    ["2x6-S", 7.563, () => modulus_in3(section("2x6"))],
    ["2x6-I", 20.8, () => inertia_in4(section("2x6"))],
    ["2x8-S", 13.14, () => modulus_in3(section("2x8"))],
    ["2x8-I", 47.63, () => inertia_in4(section("2x8"))],
    ["2x10-S", 21.39, () => modulus_in3(section("2x10"))],
    ["2x10-I", 98.93, () => inertia_in4(section("2x10"))],
    ["4x4-S", 7.146, () => modulus_in3(section("4x4"))],
    ["4x4-I", 12.51, () => inertia_in4(section("4x4"))],
    ["4x6-S", 17.65, () => modulus_in3(section("4x6"))],
    ["4x6-I", 48.53, () => inertia_in4(section("4x6"))],
    ["2x4-flat-S", 1.3125, () => modulus_in3(section("2x4 flat")), 0.0001],
    ["2x4-flat-I", 0.984, () => inertia_in4(section("2x4 flat")), 0.001],
  ]),
];
