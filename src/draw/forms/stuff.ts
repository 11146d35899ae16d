import type { Lumber, Sheathing } from "../../core/build";

const inch_mm = 25.4;

/** Dressed size of a nominal one, in: the American softwood standard PS 20, from memory. */
const dressed = (nominal: number): number => (nominal < 2 ? nominal - 0.25 : nominal <= 6 ? nominal - 0.5 : nominal - 0.75);

/** Width and depth of one piece as it lies, mm: `wide` along the form, `deep` away from it. */
export function lumberSize_mm(lumber: Lumber): { readonly wide: number; readonly deep: number } {
  const named = /^(\d+(?:\.\d+)?)x(\d+(?:\.\d+)?)/.exec(lumber.size);
  const [wide, deep] = lumber.measured_mm
    ? [lumber.measured_mm.wide, lumber.measured_mm.deep]
    : [dressed(Number(named?.[1] ?? 2)) * inch_mm, dressed(Number(named?.[2] ?? 4)) * inch_mm];
  const turned = lumber.flat && wide < deep;
  return turned ? { wide: deep, deep: wide } : { wide, deep };
}

/** How thick a sheathing is, mm. */
export function sheathingThick_mm({ ply, boards }: Sheathing): number {
  if (boards) {
    const { wide, deep } = lumberSize_mm(boards);
    return Math.min(wide, deep);
  }
  const parts = /^(?:(\d+)-)?(\d+)(?:\/(\d+))?$/.exec(ply ?? "3/4");
  const [, whole = "0", above = "3", below = "1"] = parts ?? [];
  return (Number(whole) + Number(above) / Number(below)) * inch_mm;
}
