import type { GainCurve } from "./gain";

/** A strength that was shown: age in days at 20 °C (equivalent age), share of the specified strength. */
export interface Shown {
  readonly age_days: number;
  readonly share: number;
}

/** S = Su k t / (1 + k t), the hyperbola of ASTM C1074 (from memory). */
export interface Hyperbola {
  readonly ultimate: number;
  readonly k_per_day: number;
}

/**
 * Least squares through results, by way of t/S = t/Su + 1/(k Su), which is a straight line: late results weigh most. Null without two ages, or where they
 * do not rise towards an end as strength does.
 */
export function fitHyperbola(shown: readonly Shown[]): Hyperbola | null {
  const used = shown.filter(({ age_days, share }) => age_days > 0 && share > 0);
  const n = used.length;
  const x = used.reduce((sum, p) => sum + p.age_days, 0) / n;
  const y = used.reduce((sum, p) => sum + p.age_days / p.share, 0) / n;
  const across = used.reduce((sum, p) => sum + (p.age_days - x) ** 2, 0);
  if (n < 2 || across < 1e-9) return null;
  const slope = used.reduce((sum, p) => sum + (p.age_days - x) * (p.age_days / p.share - y), 0) / across;
  const start = y - slope * x;
  return slope > 0 && start > 0 ? { ultimate: 1 / slope, k_per_day: slope / start } : null;
}

/**
 * What is expected once results are in. One result (or results that no curve fits) only lowers the published curve, by the lowest ratio shown. Two or more
 * give their own hyperbola; it counts above the published curve only where at least two results lie above that, and after the last result only as far as
 * the published curve or that last result goes. Results that nobody stands for shape nothing: they lower what comes of the others, by the lowest of their ratios to
 * it. Own rule, on the safe side.
 */
export function fittedCurve(published: GainCurve, shown: readonly Shown[], guessed: readonly Shown[] = []): GainCurve {
  const curve = fitted(published, shown);
  const under = ratioTo(curve, guessed);
  return under < 1 ? lowered(curve, under) : curve;
}

/** The lowest of them over what a curve says of their age; 1 where none lies under it. */
function ratioTo(curve: GainCurve, shown: readonly Shown[]): number {
  return Math.min(
    1,
    ...shown.filter(({ age_days, share }) => age_days > 0 && share > 0).map(({ age_days, share }) => share / curve.share(age_days)),
  );
}

function fitted(published: GainCurve, shown: readonly Shown[]): GainCurve {
  const used = shown.filter(({ age_days, share }) => age_days > 0 && share > 0);
  const fit = fitHyperbola(used);
  if (fit === null) return lowered(published, ratioTo(published, used));
  const { ultimate, k_per_day: k } = fit;
  const own: GainCurve = {
    share: (age) => (age <= 0 ? 0 : (ultimate * k * age) / (1 + k * age)),
    age_days: (share) => (share <= 0 ? 0 : share >= ultimate ? null : share / (k * (ultimate - share))),
  };
  const above = used.filter(({ age_days, share }) => share > published.share(age_days)).length;
  const trusted = above >= 2 ? own.share(Math.max(...used.map(({ age_days }) => age_days))) : 0;
  return {
    share: (age) => Math.min(own.share(age), Math.max(published.share(age), trusted)),
    age_days: (share) => (share <= trusted ? own.age_days(share) : later(own.age_days(share), published.age_days(share))),
  };
}

function lowered({ share, age_days }: GainCurve, ratio: number): GainCurve {
  return { share: (age) => ratio * share(age), age_days: (wanted) => age_days(wanted / ratio) };
}

function later(a: number | null, b: number | null): number | null {
  return a === null || b === null ? null : Math.max(a, b);
}
