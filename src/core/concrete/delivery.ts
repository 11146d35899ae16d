/** How the concrete of a pour comes: loads, when each is wanted, how long it stands. Own arithmetic on trade limits, each marked. */

const yd3_m3 = 0.9144 ** 3;

/** A truck carries 9 to 11 yd3 (from memory); the smaller is taken where none is written. */
export const usualTruck_m3 = 9 * yd3_m3;

/** Own bounds: from a trailer to the largest mixer on the road. */
export const truckRanges = {
  us: { name: "load of a truck", least: 0.25, most: 20, unit: "yd³", source: "own bounds" },
  si: { name: "load of a truck", least: 0.2, most: 15, unit: "m³", source: "own bounds" },
} as const;

/** Plants charge for loads under about 4 yd3 (from memory). */
export const shortLoad_m3 = 4 * yd3_m3;

/**
 * Minutes a truck may stand: the classic 90 of ASTM C94 (read; dropped in C94-21, where the purchaser or else the producer states a limit on the ticket) less
 * half an hour on the road (common practice, no source).
 */
export const stands_min = 60;

export interface Load {
  readonly load_m3: number;
  /** Wanted so many minutes after the first concrete. */
  readonly after_min: number;
  /** From its arrival until it is empty. */
  readonly stands_min: number;
}

/** A pause of so long once so much is placed. */
export interface PauseAt {
  readonly after_m3: number;
  readonly lasts_min: number;
}

const equal = (volume_m3: number, truck_m3: number): number[] => {
  const count = Math.max(1, Math.ceil(volume_m3 / truck_m3 - 1e-9));
  return Array.from({ length: count }, () => volume_m3 / count);
};

function timed(sizes: readonly number[], rate_m3_h: number, pause: PauseAt | null): Load[] {
  const after = (volume_m3: number, reached: boolean): number => {
    const waited = pause !== null && (reached ? volume_m3 >= pause.after_m3 - 1e-9 : volume_m3 > pause.after_m3 + 1e-9);
    return (volume_m3 / rate_m3_h) * 60 + (waited ? pause.lasts_min : 0);
  };
  let before_m3 = 0;
  return sizes.map((load_m3) => {
    const from_min = after(before_m3, true);
    const to_min = after(before_m3 + load_m3, false);
    before_m3 += load_m3;
    return { load_m3, after_min: Math.round(from_min), stands_min: Math.round(to_min - from_min) };
  });
}

/**
 * Equal loads, so that no truck brings a rest, spaced by the rate. Where a pause would keep a truck standing longer than `stands_min`, what goes in before it
 * and after it is ordered apart.
 */
export function loads(order_m3: number, truck_m3: number, rate_m3_h: number, pause: PauseAt | null): Load[] {
  const through = timed(equal(order_m3, truck_m3), rate_m3_h, pause);
  if (pause === null || pause.lasts_min === 0 || through.every((load) => load.stands_min <= stands_min)) return through;
  if (pause.after_m3 <= 0 || pause.after_m3 >= order_m3) return through;
  return timed([...equal(pause.after_m3, truck_m3), ...equal(order_m3 - pause.after_m3, truck_m3)], rate_m3_h, pause);
}
