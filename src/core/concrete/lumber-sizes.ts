/** Sawn sizes: dressed sections (NDS Supplement Table 1A; those not printed in the lectures that were read are from memory) and what a piece measures. */
export interface Section {
  readonly name: string;
  /** Across the load, and along it, in. */
  readonly wide_in: number;
  readonly deep_in: number;
}

const dressed = [
  ["1x2", 0.75, 1.5],
  ["1x3", 0.75, 2.5],
  ["1x4", 0.75, 3.5],
  ["1x6", 0.75, 5.5],
  ["1x8", 0.75, 7.25],
  ["1x10", 0.75, 9.25],
  ["1x12", 0.75, 11.25],
  ["2x2", 1.5, 1.5],
  ["2x3", 1.5, 2.5],
  ["2x4", 1.5, 3.5],
  ["2x6", 1.5, 5.5],
  ["2x8", 1.5, 7.25],
  ["2x10", 1.5, 9.25],
  ["2x12", 1.5, 11.25],
  ["3x4", 2.5, 3.5],
  ["3x6", 2.5, 5.5],
  ["4x4", 3.5, 3.5],
  ["4x6", 3.5, 5.5],
  ["4x8", 3.5, 7.25],
  ["4x10", 3.5, 9.25],
  ["4x12", 3.5, 11.25],
  ["6x6", 5.5, 5.5],
  ["6x8", 5.5, 7.5],
] as const;

/** Planed structural sizes as European yards stock them, mm by mm: preferred sizes of EN 1313-1, target sizes by EN 336 at 20 % of moisture (from memory). */
const planed_mm = [
  [45, 70],
  [45, 95],
  [45, 120],
  [45, 145],
  [45, 170],
  [45, 195],
  [45, 220],
  [45, 245],
  [70, 70],
  [95, 95],
  [145, 145],
] as const;

const sizes = [
  ...dressed,
  ...planed_mm.map(([wide, deep]) => [`${wide}x${deep}`, wide / 25.4, deep / 25.4] as const),
] as const satisfies readonly (readonly [name: string, wide_in: number, deep_in: number])[];

/** Every size on edge ("2x4") and, where it differs, laid flat ("2x4 flat"). */
export const sections: Readonly<Record<string, Section>> = Object.fromEntries(
  sizes.flatMap(([name, wide_in, deep_in]): [string, Section][] => [
    [name, { name, wide_in, deep_in }],
    ...(wide_in === deep_in
      ? []
      : ([[`${name} flat`, { name: `${name} flat`, wide_in: deep_in, deep_in: wide_in }]] as [string, Section][])),
  ]),
);

/** The section of a trade size, or of what was measured in its place, on edge or flat; null for a size that stands in no table and was not measured. */
export function sectionOf(
  size: string,
  flat: boolean,
  measured_in: { readonly wide: number; readonly deep: number } | null,
): Section | null {
  if (measured_in === null) return sections[flat ? `${size} flat` : size] ?? sections[size] ?? null;
  const thin = Math.min(measured_in.wide, measured_in.deep);
  const thick = Math.max(measured_in.wide, measured_in.deep);
  return flat ? { name: `${size} flat`, wide_in: thick, deep_in: thin } : { name: size, wide_in: thin, deep_in: thick };
}

/** The same piece turned on its other face. */
export function turned(s: Section): Section {
  return { name: s.name, wide_in: s.deep_in, deep_in: s.wide_in };
}

export const area_in2 = (s: Section) => s.wide_in * s.deep_in;
export const modulus_in3 = (s: Section) => (s.wide_in * s.deep_in ** 2) / 6;
export const inertia_in4 = (s: Section) => (s.wide_in * s.deep_in ** 3) / 12;
