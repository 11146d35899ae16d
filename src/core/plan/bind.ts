import type { Access } from "../access";
import { type ElapsedMinute, never } from "../base";
import type { Build, LocalMoment } from "../build";
import type { Clocks } from "../clock";
import { IntList } from "../graph";
import type { Capacity } from "../schedule";
import { type Bound, ClockList, type DateOf, furthest } from "./bound";
import { leftOver } from "./busy";
import { bookedFrom, comesFrom } from "./comes";
import { crewsOf } from "./crews";
import { fixesOf, together } from "./fixes";
import { doneAt, handsDone } from "./history";
import { linksOf } from "./links";
import { fromMoment, isDate, startWithin, untilMoment } from "./moments";
import { peopleThere } from "./people-there";
import { placeNeeds } from "./places";
import { storeNeeds } from "./stores";

/** Jobs, clocks, links, windows, capacities and stocks of a build in the order that access gave. People are counted up to `seen` only. */
export function bind(build: Build, access: Access, clocks: Clocks, seen: ElapsedMinute, crews = crewsOf(build, clocks)): Bound {
  const list = new ClockList();
  const { links, row } = linksOf(build, access, clocks, list);
  const steps = build.steps.length;
  const jobs = steps + build.deliveries.length;
  const clock = new Int32Array(jobs);
  const amount = new Int32Array(jobs);
  const unbroken = new Uint8Array(jobs);
  const release = new Int32Array(jobs);
  const due = new Int32Array(jobs).fill(never);
  const fixed = new Int32Array(jobs).fill(-1);
  const rank = new Int32Array(jobs);
  const releaseOf: (DateOf | null)[] = new Array(jobs).fill(null);
  const dueOf: (DateOf | null)[] = new Array(jobs).fill(null);
  const fixedOf: (DateOf | null)[] = new Array(jobs).fill(null);

  const notBefore = (j: number, t: ElapsedMinute, of: DateOf): void => {
    if (t <= release[j]!) return;
    release[j] = t;
    releaseOf[j] = of;
  };
  const dueBy = (j: number, t: ElapsedMinute, of: DateOf): void => {
    if (t >= due[j]!) return;
    due[j] = Math.max(0, t);
    dueOf[j] = of;
  };
  const fix = (j: number, moment: LocalMoment, of: DateOf): void => {
    const from = fromMoment(clocks, moment);
    const window = isDate(moment) ? startWithin(list.list[clock[j]!]!, amount[j]!, from, untilMoment(clocks, moment)) : null;
    if (window !== null) {
      notBefore(j, window.release, of);
      dueBy(j, window.due, of);
    } else if (fixed[j]! < 0) {
      fixed[j] = Math.max(0, from);
      fixedOf[j] = of;
    }
  };

  build.steps.forEach((step, s) => {
    if (step.done !== null) {
      const { start, finish } = doneAt(step.done);
      clock[s] = list.of(clocks.elapsed);
      fixed[s] = Math.max(0, fromMoment(clocks, start));
      fixedOf[s] = "done";
      amount[s] = Math.max(0, fromMoment(clocks, finish) - fixed[s]!);
      unbroken[s] = 1;
      return;
    }
    clock[s] = list.of(crews.clock(s));
    amount[s] = step.work.likely_min;
    unbroken[s] = step.unbroken ? 1 : 0;
    if (build.resumes !== null) notBefore(s, fromMoment(clocks, build.resumes), "resumes");
    if (step.notBefore !== null) notBefore(s, fromMoment(clocks, step.notBefore), "not-before");
    if (step.deadline !== null) dueBy(s, untilMoment(clocks, step.deadline), "deadline");
  });
  // Dates that contradict each other are told by clashes.ts; the first counts here.
  for (const [s, fixes] of fixesOf(build))
    if (build.steps[s]!.done === null) for (const f of together(fixes)) fix(s, f.moment, f.booking < 0 ? "fixed" : "booking");
  for (const booking of build.bookings) {
    const s = build.at.step.get(booking.step)!;
    const from = build.steps[s]!.done === null ? bookedFrom(build, clocks, booking) : null;
    if (from !== null) notBefore(s, from, "notice");
  }
  build.deliveries.forEach((delivery, d) => {
    const j = steps + d;
    clock[j] = list.of(clocks.calendar(delivery.calendar));
    const comes = comesFrom(build, clocks, delivery);
    if (comes !== null) notBefore(j, comes.at, comes.by);
  });

  for (let k = 0; k < access.order.length; k++) rank[access.order[k]!] = k;
  for (let j = steps; j < jobs; j++) rank[j] = j;

  const stores = storeNeeds(build);
  const places = placeNeeds(build);
  const busy = handsDone(build);
  const capacities: Capacity[] = crews.pools.map((pool) => leftOver(peopleThere(pool, clocks, seen), pool, build, clocks, busy));
  const demands = new IntList(6 * jobs);
  const demand = (job: number, capacity: number, number: number): void => {
    demands.push(job);
    demands.push(capacity);
    demands.push(number);
  };
  for (let s = 0; s < steps; s++) {
    const row = crews.demand(s);
    for (let c = 0; c < row.length; c++) if (row[c]! > 0) demand(s, c, row[c]!);
  }
  for (const part of [stores, places]) {
    const base = capacities.length;
    capacities.push(...part.capacities);
    for (const [job, capacity, number] of part.demands) demand(job, base + capacity, number);
  }
  const problem = {
    jobs,
    clocks: list.list,
    clock,
    amount,
    unbroken,
    release,
    due,
    fixed,
    links,
    capacities,
    demands: demands.packed(),
    stocks: stores.stocks,
    spans: stores.spans,
    rank,
    horizon: furthest,
  };
  return { build, access, clocks, crews, problem, places, stores, row, releaseOf, dueOf, fixedOf };
}
