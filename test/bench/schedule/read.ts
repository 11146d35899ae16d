import { type Clock, type ElapsedMinute, never, notEver } from "../../../src/core/base";
import type { Problem } from "../../../src/core/schedule";
import { constant, elapsed, type JobSpec, type LinkSpec, problemOf, repeating } from "../../schedule/problem-of";
import type { Calendar, ClockRow, LagRow, PlainRow, Row } from "./files";

/** A row of a file as the scheduler's own problem; a unit of the file's time is a minute. */
export function problemOfRow(row: Row, calendars: readonly Calendar[]): Problem {
  if (row.kind === "plain") return plain(row);
  return row.kind === "lags" ? lags(row) : clocks(row, calendars);
}

function plain(row: PlainRow): Problem {
  return problemOf({
    jobs: row.dur.map((amount) => ({ amount })),
    links: row.succ.flatMap((list, from) => list.map((to): LinkSpec => ({ from, to, least: 0 }))),
    capacities: capacitiesOf(row.cap),
    demands: demandsOf(row.req),
    horizon: row.dur.reduce((a, b) => a + b, 0),
  });
}

function lags(row: LagRow): Problem {
  const longest = [...row.dur];
  for (const [i, , lag] of row.arcs) longest[i] = Math.max(longest[i]!, lag);
  return problemOf({
    jobs: row.dur.map((amount) => ({ amount })),
    links: row.arcs.map(
      ([i, j, lag]): LinkSpec => (lag >= 0 ? { from: i, to: j, ends: "SS", least: lag } : { from: j, to: i, ends: "SS", most: -lag }),
    ),
    capacities: capacitiesOf(row.cap),
    demands: demandsOf(row.req),
    // If there is a schedule at all, there is one in which nothing is put off by more than this (every job by its longest wait).
    horizon: longest.reduce((a, b) => a + b, 0),
  });
}

function clocks(row: ClockRow, calendars: readonly Calendar[]): Problem {
  const list: Clock[] = [elapsed, ...calendars.map(calendarClock)];
  const jobs = row.acts.map((act): JobSpec => {
    if (act.kind === "dummy") return { amount: 0 };
    if (act.kind !== "cure") return { clock: 1 + act.cal, amount: act.work, unbroken: act.kind === "solid" };
    return { clock: list.push(cureClock(act.cureHours!)) - 1, amount: 1 };
  });
  return problemOf({
    clocks: list,
    jobs,
    links: row.arcs.map(([from, to, least, most]): LinkSpec => ({ from, to, least, ...(most === null ? {} : { most }) })),
    capacities: capacitiesOf(row.cap),
    demands: demandsOf(row.acts.map((a) => a.req)),
    horizon: row.horizon,
  });
}

/** Held through pauses. */
function capacitiesOf(cap: readonly number[]): Problem["capacities"] {
  return cap.map((number, r) => constant(`r${r}`, "equipment", number, "span"));
}

function demandsOf(req: readonly (readonly number[])[]): (readonly [number, number, number])[] {
  return req.flatMap((list, job) => list.flatMap((number, r) => (number > 0 ? [[job, r, number] as const] : [])));
}

function calendarClock(c: Calendar): Clock {
  if (c.days.length === 7 && c.from === 0 && c.to === 24) return elapsed;
  return repeating(
    c.name,
    7 * 24,
    c.days.map((d) => [24 * d + c.from, 24 * d + c.to] as const),
  );
}

/** One cure: what begins at `t` lasts as long as the table says of that day, and from then on gathers one an hour. A run is a stretch of days alike. */
function cureClock(hours: readonly number[]): Clock {
  const lasts = (t: number): number => hours[Math.min(hours.length - 1, Math.max(0, Math.floor(t / 24)))]!;
  const end = (t: number, amount: number): number => (amount <= 0 ? t : t + lasts(t) + amount - 1);
  const longest = Math.max(...hours);
  const advance = (t: ElapsedMinute, amount: number): ElapsedMinute => (t >= never ? never : (end(t, amount) as ElapsedMinute));
  const retreat = (t: ElapsedMinute, amount: number): ElapsedMinute => {
    if (t <= notEver || amount <= 0) return t;
    let s = t as number;
    while (end(s, amount) > t && s > t - longest - amount) s--;
    return s as ElapsedMinute;
  };
  return {
    id: "cure",
    fromBeginning: true,
    reading: (t) => t,
    advance,
    retreat,
    limit: (t, amount) => (t >= never ? never : ((end(t, amount + 1) - 1) as ElapsedMinute)),
    unlimit: (t, amount) => (t <= notEver ? notEver : ((retreat(t, amount + 1) + 1) as ElapsedMinute)),
    begin: (t) => t,
    runEnd: (t) => {
      let day = Math.floor(t / 24);
      while (day < hours.length && lasts(24 * (day + 1)) === lasts(t)) day++;
      return (day >= hours.length ? never : 24 * (day + 1)) as ElapsedMinute;
    },
  };
}
