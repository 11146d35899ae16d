/** Quantities and times of a pour day. Sources beside each; US units where the rule of thumb or table is in them. */

/** Sacks of 94 lb in a cubic yard, lb/yd3 (a sack-mix number is sacks of cement in a cubic yard: common practice, no source). */
export function cement_lb_yd3(sacks: number): number {
  return 94 * sacks;
}

/** Waste on the volume (NAVEDTRA 14070, read): 10 % up to 200 yd3, 5 % above. */
export function withWaste_yd3(net_yd3: number): number {
  return net_yd3 * (net_yd3 <= 200 ? 1.1 : 1.05);
}

/** Rise, ft/h, of a pour of `rate_yd3_h` into `plan_ft2` (27 ft3 in a yd3). */
export function rise_ft_h(rate_yd3_h: number, plan_ft2: number): number {
  return (27 * rate_yd3_h) / plan_ft2;
}

const interpolate = (table: readonly (readonly [x: number, y: number])[], x: number): number => {
  const first = table[0] as readonly [number, number];
  const last = table[table.length - 1] as readonly [number, number];
  if (x <= first[0]) return first[1];
  if (x >= last[0]) return last[1];
  const above = table.findIndex(([at]) => at >= x);
  const [x1, y1] = table[above] as readonly [number, number];
  const [x0, y0] = table[above - 1] as readonly [number, number];
  return y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
};

/** Typical initial set, h, by concrete temperature °F (from memory; the ends read). Between rows straight lines; beyond them the end rows. */
const setting: readonly (readonly [F: number, h: number])[] = [
  [30, 19],
  [40, 44 / 3],
  [50, 32 / 3],
  [60, 8],
  [70, 6],
  [80, 4],
  [90, 8 / 3],
  [100, 5 / 3],
];

export function initialSet_h(concrete_F: number): number {
  return interpolate(setting, concrete_F);
}

/** The latest a next lift still knits, h: half the initial set, the careful end of "half to two thirds" (from memory). */
export function coldJoint_h(concrete_F: number): number {
  return initialSet_h(concrete_F) / 2;
}

/** Hours from placing until it takes the float: survey of contractors in ASCC position statement 15 (read): 50, 70 and 90 °F. */
const floating: readonly (readonly [F: number, h: number])[] = [
  [50, 4.25],
  [70, 2.75],
  [90, 1.75],
];

/** Between the survey's temperatures straight lines; colder and warmer it goes with the initial set (own extension, from memory). */
export function floatAfter_h(concrete_F: number): number {
  const surveyed_F = Math.min(90, Math.max(50, concrete_F));
  return (interpolate(floating, surveyed_F) * initialSet_h(concrete_F)) / initialSet_h(surveyed_F);
}

/** The largest aggregate, in: 3/4 of the clear space between bars, 1/5 of the narrowest form, 1/3 of a slab (ACI 318 26.4.2.1, from memory). */
export function largestAggregate_in(given: {
  readonly clear_in?: number;
  readonly narrowest_in?: number;
  readonly slab_in?: number;
}): number {
  const limits = [
    given.clear_in === undefined ? Number.MAX_VALUE : 0.75 * given.clear_in,
    given.narrowest_in === undefined ? Number.MAX_VALUE : given.narrowest_in / 5,
    given.slab_in === undefined ? Number.MAX_VALUE : given.slab_in / 3,
  ];
  return Math.min(...limits);
}

/** The largest aggregate a hose takes: a third of its diameter (ACI 304.2R, from memory), so a pumped mix takes a smaller aggregate. */
export function pumpedAggregate_in(hose_in: number): number {
  return hose_in / 3;
}

/** The usual hose of a trailer or boom pump on small work, in (common practice, no source). */
export const usualHose_in = 3;

/** Pumped mixes usually have at least 5.5 sacks (from memory). */
export const pumpedSacks = 5.5;
