import type { ElapsedMinute } from "../base";
import { byKey } from "../schedule";
import type { Bound } from "./bound";
import type { ClosingDate, DeliveryDates, SiteDay, StepDates, Visit } from "./plan";

interface Draft {
  from: number;
  to: number;
  readonly steps: number[];
  readonly deliveries: number[];
  readonly closings: number[];
  /** The first minute of the day after. */
  readonly midnight: number;
  wanted: number;
  site: boolean;
}

/** No site has half as many people. */
const most = 1 << 16;

/** Every local date on which something happens, in order, with who is wanted and who is there. */
export function siteDays(
  bound: Bound,
  steps: readonly StepDates[],
  deliveries: readonly DeliveryDates[],
  closings: readonly ClosingDate[],
  visits: readonly Visit[],
): SiteDay[] {
  const { clocks } = bound;
  const { time } = clocks;
  const drafts = new Map<number, Draft>();
  const of = (t: number): Draft => {
    const day = time.dayOf(t);
    let draft = drafts.get(day);
    if (draft === undefined) {
      draft = { from: t, to: t, steps: [], deliveries: [], closings: [], midnight: time.startOf(day + 1), wanted: 0, site: false };
      drafts.set(day, draft);
    }
    return draft;
  };
  // Most instants fall on the day of the one before.
  let last: Draft | null = null;
  const on = (t: number, until: number): Draft => {
    const draft: Draft = last !== null && last.from <= t && t < last.midnight ? last : of(t);
    draft.from = Math.min(draft.from, t);
    draft.to = Math.max(draft.to, until);
    last = draft;
    return draft;
  };
  // Changes in the number of people at work: when, `most` for each minute, and by how many, above half of it.
  const changes: number[] = [];
  for (const s of byKey(steps.length, (i) => steps[i]!.start)) {
    const hands = bound.crews.hands(s);
    for (const [from, to] of steps[s]!.pieces) {
      for (let a = from as number; ; ) {
        const draft = on(a, a);
        const b = Math.min(to, draft.midnight);
        draft.to = Math.max(draft.to, b);
        if (draft.steps[draft.steps.length - 1] !== s) draft.steps.push(s);
        if (bound.build.steps[s]!.done !== null) draft.site = true;
        if (hands > 0) {
          draft.site = true;
          changes.push(a * most + most / 2 + hands, b * most + most / 2 - hands);
        }
        if (b >= to) break;
        a = b;
      }
    }
  }
  deliveries.forEach((d, i) => void on(d.arrives, d.arrives).deliveries.push(i));
  closings.forEach((c, i) => void on(c.at, c.at).closings.push(i));
  for (const v of visits) on(v.at, v.at + v.lasts);
  const there = peopleByDay(bound, drafts);
  const days = [...drafts].sort(([a], [b]) => a - b);
  countWanted(days, changes);
  return days.map(([day, draft]) => {
    const sun = clocks.sun(day);
    return {
      date: time.dateOf(day),
      from: draft.from as ElapsedMinute,
      to: draft.to as ElapsedMinute,
      steps: draft.steps,
      deliveries: draft.deliveries,
      closings: draft.closings,
      peopleWanted: draft.wanted,
      peopleThere: there.get(day) ?? 0,
      sunrise: sun.rise,
      sunset: sun.set,
      site: draft.site,
    };
  });
}

/** The most people that are there at once, day by day. */
function peopleByDay(bound: Bound, drafts: ReadonlyMap<number, Draft>): Map<number, number> {
  const { build, clocks } = bound;
  const days = [...drafts.keys()];
  const there = new Map<number, number>();
  if (days.length === 0) return there;
  const first = clocks.time.startOf(Math.min(...days));
  const last = clocks.time.startOf(Math.max(...days) + 1);
  const { times, levels } = clocks.there(
    build.people.map((p) => p.id),
    first,
    last,
  );
  for (let i = 0; i < times.length; i++) {
    const until = clocks.time.dayOf((times[i + 1] ?? last) - 1);
    for (let day = clocks.time.dayOf(times[i]!); levels[i]! > 0 && day <= until; day++)
      there.set(day, Math.max(there.get(day) ?? 0, levels[i]!));
  }
  return there;
}

/** The most people that are at work at once, day by day. Nobody's work is told as one over midnight. */
function countWanted(days: readonly (readonly [number, Draft])[], changes: readonly number[]): void {
  let level = 0;
  let k = 0;
  for (const change of new Float64Array(changes).sort()) {
    const at = Math.floor(change / most);
    const by = change - at * most - most / 2;
    level += by;
    if (by < 0) continue;
    while (at >= days[k]![1].midnight) k++;
    days[k]![1].wanted = Math.max(days[k]![1].wanted, level);
  }
}
