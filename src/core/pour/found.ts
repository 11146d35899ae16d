import type { Finding, Severity } from "../base";
import type { Pour } from "../build";
import type { OutOfRange } from "../concrete";
import type { PourCode, pourCodes } from "./codes";

/** Detail of a code: exactly the keys its row of the table names. */
export type DetailOf<Code extends PourCode> = Readonly<
  Record<(typeof pourCodes)[Code][number], string | number | boolean | readonly string[] | readonly number[]>
>;

/** A finding of a pour. `key` is where in it the builder would change something. */
export function found<Code extends PourCode>(pour: Pour, code: Code, severity: Severity, detail: DetailOf<Code>, key?: string): Finding {
  return { code, severity, where: { list: "pours", id: pour.id, ...(key === undefined ? {} : { key }) }, detail };
}

/** One finding for each input that left its range. */
export function refused(pour: Pour, outOfRange: readonly OutOfRange[], element = "", severity: Severity = "look"): Finding[] {
  return outOfRange.map(({ outOfRange: range, given }) =>
    found(pour, "pour.out-of-range", severity, {
      element,
      what: range.name,
      given: Number.isFinite(given) ? given : "",
      least: range.least,
      most: range.most,
      unit: range.unit,
      source: range.source,
    }),
  );
}
