/**
 * When forms may come off. ACI 347 table of minimum times above 50 °F, days colder than that not counted (read in a trade article); halves and the
 * "not under 3 days" of its footnote as printed there. DIN 1045-3 and others differ and are not offered. Strength that is expected is not strength that
 * is shown: soffits, shores and loads wait for evidence, the drawing's days, or `withoutEvidence_days`.
 */
export type Soffit = "arch" | "beam" | "slab" | "pan joist";

export interface Removal {
  readonly days: number;
  readonly halvedWithShores: boolean;
}

/** Hours until forms of vertical faces may come off: walls, columns, beam sides (ACI 347: 12 h; the article gives 12 to 24). */
export const sides_h = 12;

/**
 * Minimum days for a soffit of clear span `span_ft`, live load in design less or more than dead load.
 * @param joist_in width of pan joists; used only for them
 */
export function soffit_days(kind: Soffit, span_ft: number, liveExceedsDead: boolean, joist_in = 0): Removal {
  if (kind === "pan joist") return { days: joist_in <= 30 ? 3 : 4, halvedWithShores: false };
  if (kind === "arch") return { days: liveExceedsDead ? 7 : 14, halvedWithShores: false };
  const row = span_ft < 10 ? 0 : span_ft <= 20 ? 1 : 2;
  const table =
    kind === "beam"
      ? [
          [7, 4],
          [14, 7],
          [21, 14],
        ]
      : [
          [4, 3],
          [7, 4],
          [10, 7],
        ];
  return { days: (table[row] as number[])[liveExceedsDead ? 1 : 0] as number, halvedWithShores: !liveExceedsDead };
}

/** Days when the forms come off without disturbing the shores: half where the table allows it, a slab under 10 ft not under 3. */
export function soffitShoresStay_days(kind: Soffit, span_ft: number, liveExceedsDead: boolean): number {
  const { days, halvedWithShores } = soffit_days(kind, span_ft, liveExceedsDead);
  if (!halvedWithShores) return days;
  const half = days / 2;
  return kind === "slab" && span_ft < 10 ? Math.max(3, half) : half;
}

/** Days at or above 50 °F counted from daily means, °F; a colder day does not count. */
export function countedDays(dailyMeans_F: readonly number[]): number {
  return dailyMeans_F.filter((t) => t >= 50).length;
}

/** Without evidence of strength: the longest of the table, the curve, and 28 days at or above 50 °F (own rule on the safe side). */
export function withoutEvidence_days(table_days: number, curve_days: number): number {
  return Math.max(table_days, curve_days, 28);
}
