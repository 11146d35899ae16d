import type { Clock } from "../base";
import { type GainTable, gainClock } from "./gain";

/** Portland cements of ACI 209R's table; I is the ordinary one, III gains early. */
export type Cement = "I" | "III";

/**
 * ACI 209R-92, equation 2-1 and table 2.2.1, moist cured: f(t) = t / (a + b t) f28, t in days. Constants in hundredths, from memory.
 * Measured mixes lie about 9 % lower at 7 days with type I, so what follows is *expected*, never *shown*.
 */
const constants: Readonly<Record<Cement, { readonly a: number; readonly b: number }>> = {
  I: { a: 400, b: 85 },
  III: { a: 230, b: 92 },
};

/** More than this the curve never reaches in a builder's lifetime; thousandths of f28. */
const most = 1200;
const longest_min = 10 * 366 * 1440;

const tables = new Map<Cement, GainTable>();

/**
 * Minutes at a constant 20 C until n thousandths of the 28 day strength are expected, each rounded up to a whole minute when the table is made. From
 * t = a x / (1 - b x) with x = n / 1000, in whole numbers: 1440 a n / (100 000 - b n) minutes with a and b in hundredths.
 */
export function strengthGain(cement: Cement): GainTable {
  const known = tables.get(cement);
  if (known !== undefined) return known;
  const { a, b } = constants[cement];
  const minutes: number[] = [];
  for (let n = 0; n <= most && 100_000 - b * n > 0; n += 1) {
    const needed = Math.ceil((1440 * a * n) / (100_000 - b * n));
    if (needed > longest_min) break;
    minutes.push(needed);
  }
  const table = { id: `strength-at-20-C ${cement}`, minutes: Int32Array.from(minutes) };
  tables.set(cement, table);
  return table;
}

const clocks = new Map<Cement, Clock>();

/** Thousandths of the 28 day strength expected after a pour's finish, at a constant 20 C. Begins where it is asked from: see `gainClock`. */
export function strengthClock(cement: Cement): Clock {
  const known = clocks.get(cement);
  if (known !== undefined) return known;
  const fresh = gainClock(strengthGain(cement));
  clocks.set(cement, fresh);
  return fresh;
}
