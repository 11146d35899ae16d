import { tzOffset } from "@date-fns/tz";

const minutesOfBlock = 366 * 1440;

/** Offsets of one block of 366 days: `offsets[i]` minutes from `from[i]` on (UTC minutes since 1970). */
interface Block {
  readonly from: readonly number[];
  readonly offsets: readonly number[];
}

/**
 * A time zone's wall clock, in whole minutes. Reads the platform's zone data through tzOffset only: what the zone library's date objects
 * answer for a repeated hour depends on the zone of the machine they run on, so that rule is made here.
 *
 * A wall time in the spring gap stands for the first minute after the gap; one in the repeated autumn hour for the first of the two. So
 * later wall times never come before earlier ones, and windows that meet on the wall meet on the clock.
 */
export interface Zone {
  readonly name: string;
  /** Minutes east of UTC at a UTC minute. */
  offsetAt(utc_min: number): number;
  /** The UTC minute of a wall time given as minutes since 1970-01-01 on the wall. */
  utcOf(wall_min: number): number;
  /** True where the wall clock never shows this time (spring gap). */
  skips(wall_min: number): boolean;
}

const made = new Map<string, Zone>();

/** The zone of an IANA name; the same object for the same name. @throws RangeError for a name the platform does not know: see `checkZone`. */
export function zone(name: string): Zone {
  const known = made.get(name);
  if (known !== undefined) return known;
  if (!isZone(name)) throw new RangeError(`no time zone ${name}`);
  const fresh = makeZone(name);
  made.set(name, fresh);
  return fresh;
}

export function isZone(name: string): boolean {
  return /^(UTC|[A-Z][A-Za-z_]+(\/[A-Za-z0-9_+-]+)+)$/.test(name) && Number.isFinite(tzOffset(name, new Date(0)));
}

function makeZone(name: string): Zone {
  const blocks = new Map<number, Block>();
  const read = (utc_min: number): number => Math.round(tzOffset(name, new Date(utc_min * 60_000)));
  const blockAt = (utc_min: number): Block => {
    const index = Math.floor(utc_min / minutesOfBlock);
    let block = blocks.get(index);
    if (block === undefined) {
      block = scan(read, index * minutesOfBlock, (index + 1) * minutesOfBlock);
      blocks.set(index, block);
    }
    return block;
  };
  // The stretch of one offset that was asked for last: most questions are about the same.
  let [stretchFrom, stretchTo, stretchOffset] = [0, 0, 0];
  const offsetAt = (utc_min: number): number => {
    if (utc_min >= stretchFrom && utc_min < stretchTo) return stretchOffset;
    const { from, offsets } = blockAt(utc_min);
    let i = from.length - 1;
    while (i > 0 && (from[i] as number) > utc_min) i -= 1;
    stretchFrom = from[i] as number;
    stretchTo = from[i + 1] ?? (Math.floor(utc_min / minutesOfBlock) + 1) * minutesOfBlock;
    stretchOffset = offsets[i] as number;
    return stretchOffset;
  };
  const resolve = (wall_min: number): { utc_min: number; skipped: boolean } => {
    const before = offsetAt(wall_min - 1440);
    const after = offsetAt(wall_min + 1440);
    const first = wall_min - before;
    if (before === after || offsetAt(first) === before) return { utc_min: first, skipped: false };
    const second = wall_min - after;
    if (offsetAt(second) === after) return { utc_min: second, skipped: false };
    return { utc_min: changeBetween(read, second, first), skipped: true };
  };
  return {
    name,
    offsetAt,
    utcOf: (wall_min) => {
      // No offset is a day long: in the midst of such a stretch there is one answer.
      if (wall_min - 1440 >= stretchFrom && wall_min + 1440 < stretchTo) return wall_min - stretchOffset;
      return resolve(wall_min).utc_min;
    },
    skips: (wall_min) => resolve(wall_min).skipped,
  };
}

/** Weekly samples: no zone has changed its offset twice within a week since 1970. */
function scan(read: (utc_min: number) => number, start: number, end: number): Block {
  const from = [start];
  const offsets = [read(start)];
  for (let at = start; at < end; at += 7 * 1440) {
    const next = Math.min(at + 7 * 1440, end - 1);
    const offset = read(next);
    if (offset === offsets[offsets.length - 1]) continue;
    from.push(changeBetween(read, at, next));
    offsets.push(offset);
  }
  return { from, offsets };
}

/** The first minute with the later offset, given that the offset at `low` differs from that at `high`. */
function changeBetween(read: (utc_min: number) => number, low: number, high: number): number {
  const target = read(high);
  let a = low;
  let b = high;
  while (b - a > 1) {
    const middle = Math.floor((a + b) / 2);
    if (read(middle) === target) b = middle;
    else a = middle;
  }
  return b;
}
