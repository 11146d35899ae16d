import type { Aim, Build } from "../../build";
import { siteAir } from "../../pour";
import type { Solution } from "../../schedule";
import type { Bound } from "../bound";
import { stretchesOf } from "../stretches";
import { isRegular } from "./regular";

/** A plan by everything that a build can aim at. */
export interface Measured {
  readonly finish: number;
  readonly siteDays: number;
  /** Days on which each of those who are asked to come is there, added up: who goes by one calendar and comes on one day comes once. */
  readonly visits: number;
  /** Pours outside the months or on days that get colder than wanted. */
  readonly poursOutside: number;
  readonly pours: number;
  /** Minutes times people of the fullest week, Monday to Sunday, and weeks between first and last without work. */
  readonly fullest_min: number;
  readonly idleWeeks: number;
  /** What the aim asks to be low. */
  readonly cost: number;
}

/** Looks at plans of one build with one aim. */
export class Measure {
  /** By step: who comes for it, by calendar; empty: nobody who has to be asked. */
  private readonly visitor: readonly string[];
  private readonly regulars: number;
  private readonly isPour: readonly boolean[];

  constructor(
    private readonly bound: Bound,
    private readonly aim: Aim,
    finish: number,
  ) {
    const { build, clocks } = bound;
    this.visitor = build.steps.map((step) => {
      if (step.sort === "inspection") return step.calendar;
      return build.bookings.find((b) => b.step === step.id)?.calendar ?? "";
    });
    this.regulars = build.people.filter((p) => isRegular(build, clocks, p.id, finish)).length;
    this.isPour = build.steps.map((step) => step.sort === "pour" || step.pour !== null);
  }

  of(s: Solution): Measured {
    const { bound, aim } = this;
    const { build, clocks } = bound;
    const { time } = clocks;
    const work = new Map<number, number>();
    const visits = new Set<string>();
    const changes = new Map<number, [number, number][]>();
    let finish = 0;
    let poursOutside = 0;
    let pours = 0;
    for (let j = 0; j < build.steps.length; j++) {
      finish = Math.max(finish, s.finish[j]!);
      const hands = bound.crews.hands(j);
      if (this.visitor[j] !== "") visits.add(`${this.visitor[j]} ${time.dayOf(s.start[j]!)}`);
      if (this.isPour[j]) {
        pours++;
        if (!isGood(build, aim, time.dayOf(s.start[j]!), time.local(s.start[j]!).date)) poursOutside++;
      }
      if (hands === 0) continue;
      for (const [from, to] of stretchesOf(bound.problem, s, j)) {
        const day = time.dayOf(from);
        work.set(day, (work.get(day) ?? 0) + hands * (to - from));
        const on = changes.get(day) ?? [];
        on.push([from, hands], [to, -hands]);
        changes.set(day, on);
      }
    }
    let helped = 0;
    if (this.regulars > 0) for (const on of changes.values()) if (most(on) > this.regulars) helped++;
    const weeks = new Map<number, number>();
    // Weeks begin on Monday: day 0 of all counting was a Thursday.
    for (const [day, minutes] of work) {
      const week = Math.floor((time.first + day + 3) / 7);
      weeks.set(week, (weeks.get(week) ?? 0) + minutes);
    }
    const known = [...weeks.keys()];
    const span = known.length === 0 ? 0 : Math.max(...known) - Math.min(...known) + 1;
    const measured = {
      finish,
      siteDays: work.size,
      visits: visits.size + helped,
      poursOutside,
      pours,
      fullest_min: Math.max(0, ...weeks.values()),
      idleWeeks: span - known.length,
    };
    const squares = [...weeks.values()].reduce((sum, m) => sum + (m / 60) ** 2, 0);
    const cost = {
      "site-days": measured.siteDays,
      visits: measured.visits,
      pours: measured.poursOutside,
      // The fullest week first; of plans that have it alike, the evener one.
      weekends: measured.fullest_min * 1_000_000 + Math.round(squares),
    }[aim.for];
    return { ...measured, cost };
  }
}

/** Whether one would choose to pour on a day: by its month and by the usual or forecast low. */
export function isGood(build: Build, aim: Aim, day: number, date: string): boolean {
  if (aim.months.length > 0 && !aim.months.includes(Number(date.slice(5, 7)))) return false;
  return aim.coldest_C === null || siteAir(build).day(day).low_C >= aim.coldest_C;
}

/** The most people at once; who goes makes room before who comes. */
function most(changes: [number, number][]): number {
  let level = 0;
  let high = 0;
  for (const [, by] of changes.sort((a, b) => a[0] - b[0] || a[1] - b[1])) {
    level += by;
    high = Math.max(high, level);
  }
  return high;
}
