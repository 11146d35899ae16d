import type { Aim } from "../../build";
import type { Solution } from "../../schedule";
import type { Bound } from "../bound";
import { stretchesOf } from "../stretches";
import { isGood } from "./measure";

/** Some steps that would begin no earlier than an instant. */
export interface Move {
  readonly steps: readonly number[];
  readonly from: number;
}

/** Further days (visits, weeks) that a move is tried with. */
const furthest = 4;
const farthestPour_days = 400;

/** What may bring a plan nearer to an aim, the cheapest first. */
export function movesFor(bound: Bound, aim: Aim, s: Solution): Move[] {
  switch (aim.for) {
    case "site-days":
      return together(bound, workDays(bound, s));
    case "visits":
      return visitMoves(bound, s);
    case "pours":
      return pourMoves(bound, aim, s);
    case "weekends":
      return weekMoves(bound, s);
  }
}

type ByDay = ReadonlyMap<number, { readonly steps: readonly number[]; readonly minutes: number }>;

/** Steps with people at work, by day. */
function workDays({ build, crews, problem, clocks }: Bound, s: Solution): ByDay {
  const days = new Map<number, { steps: number[]; minutes: number }>();
  build.steps.forEach((_, j) => {
    if (crews.hands(j) === 0) return;
    for (const [from, to] of stretchesOf(problem, s, j)) {
      const day = clocks.time.dayOf(from);
      const known = days.get(day) ?? { steps: [], minutes: 0 };
      if (known.steps[known.steps.length - 1] !== j) known.steps.push(j);
      known.minutes += to - from;
      days.set(day, known);
    }
  });
  return days;
}

/** All of a day to one of the next days on which there is something already; days with little first. */
function together({ clocks: { time } }: Bound, days: ByDay): Move[] {
  const order = [...days.keys()].sort((a, b) => a - b);
  const cheap = [...days].sort(([a, x], [b, y]) => x.minutes - y.minutes || a - b);
  return cheap.flatMap(([day, { steps }]) => {
    const at = order.indexOf(day);
    return order.slice(at + 1, at + 1 + furthest).map((to) => ({ steps, from: time.startOf(to) }));
  });
}

/** Whoever comes on a day comes on one of their next days instead; so do all who come only when more people are wanted than are always there. */
function visitMoves(bound: Bound, s: Solution): Move[] {
  const { build, clocks, crews } = bound;
  const comers = new Map<string, Map<number, { steps: number[]; minutes: number }>>();
  const put = (who: string, j: number): void => {
    const day = clocks.time.dayOf(s.start[j]!);
    const days = comers.get(who) ?? new Map<number, { steps: number[]; minutes: number }>();
    const known = days.get(day) ?? { steps: [], minutes: 0 };
    known.steps.push(j);
    known.minutes++;
    days.set(day, known);
    comers.set(who, days);
  };
  build.steps.forEach((step, j) => {
    if (step.sort === "inspection") put(step.calendar, j);
    const booking = build.bookings.find((b) => b.step === step.id);
    if (booking !== undefined && step.sort !== "inspection") put(booking.calendar, j);
    if (crews.hands(j) > 0) put("", j);
  });
  return [...comers.values()].flatMap((days) => together(bound, days));
}

/** Each pour on a day that is not good goes to the next good ones. */
function pourMoves({ build, clocks: { time } }: Bound, aim: Aim, s: Solution): Move[] {
  return build.steps.flatMap((step, j): Move[] => {
    if (step.sort !== "pour" && step.pour === null) return [];
    const day = time.dayOf(s.start[j]!);
    if (isGood(build, aim, day, time.dateOf(day))) return [];
    const out: Move[] = [];
    let before = false;
    for (let d = day + 1; d <= day + farthestPour_days && out.length < furthest; d++) {
      const good = isGood(build, aim, d, time.dateOf(d));
      if (good && !before) out.push({ steps: [j], from: time.startOf(d) });
      before = good;
    }
    return out;
  });
}

/** Steps that begin in the fullest weeks go to one of the next weeks. */
function weekMoves({ build, crews, clocks: { time } }: Bound, s: Solution): Move[] {
  const weeks = new Map<number, { steps: number[]; minutes: number }>();
  build.steps.forEach((_, j) => {
    if (crews.hands(j) === 0) return;
    const week = Math.floor((time.first + time.dayOf(s.start[j]!) + 3) / 7);
    const known = weeks.get(week) ?? { steps: [], minutes: 0 };
    known.steps.push(j);
    known.minutes += crews.hands(j) * (s.finish[j]! - s.start[j]!);
    weeks.set(week, known);
  });
  const full = [...weeks].sort(([a, x], [b, y]) => y.minutes - x.minutes || a - b);
  return full.flatMap(([week, { steps }]) =>
    [1, 2, 3].flatMap((by) => steps.toReversed().map((j) => ({ steps: [j], from: time.startOf((week + by) * 7 - 3 - time.first) }))),
  );
}
