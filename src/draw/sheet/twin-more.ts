import type { Build } from "../../core/build";
import { siteTime } from "../../core/clock";
import type { Plan } from "../../core/plan";
import { amountLabel, nameOf, waitName } from "../text/names";
import { clockLabel, dateLabel, momentLabel, spanLabel } from "../time/labels";
import { awaited } from "./awaited";
import type { TwinRow } from "./twin";

type Row = Omit<TwinRow, "key">;

/** What is waited for, between which steps, from when until when. */
export function waitRows(build: Build, plan: Plan): Row[] {
  const time = siteTime(build.site.zone, build.start);
  return awaited(build, plan).map(({ from, to, wait, amount, begins, ready }) => {
    const name = waitName(wait);
    const much = amountLabel(build, amount);
    const [starts, holds] = [build.steps[from]!, build.steps[to]];
    return {
      list: "waits",
      id: starts.id,
      at: begins,
      name: `wait: ${name === null ? much : `${name}, ${much}`}`,
      place: "",
      when: spanLabel(time, begins, ready),
      hands: "",
      notes: [`from ${nameOf(starts)}`, ...(holds ? [`holds ${nameOf(holds)}`] : []), `ready ${momentLabel(time, ready)}`],
    };
  });
}

/** Who looks in when, and why. */
export function visitRows(build: Build, plan: Plan): Row[] {
  const time = siteTime(build.site.zone, build.start);
  return plan.visits.map(({ from, at, who, for: why }) => ({
    list: "visits",
    id: build.steps[from]!.id,
    at,
    name: `look in: ${why === "" ? nameOf(build.steps[from]!) : why}`,
    place: "",
    when: `${dateLabel(time, at)}, ${clockLabel(time, at)}`,
    hands: build.people[build.at.person.get(who) ?? -1]?.name ?? "",
    notes: [`after ${nameOf(build.steps[from]!)}`],
  }));
}

/** Hands wanted and there, daylight. */
export function dayRows(build: Build, plan: Plan): Row[] {
  const time = siteTime(build.site.zone, build.start);
  return plan.days.map((day) => ({
    list: "days",
    id: day.date,
    at: day.from,
    name: dateLabel(time, day.from),
    place: "",
    when: dateLabel(time, day.from),
    // A day with only a visit or an inspection wants nobody of the crew.
    hands: day.peopleWanted + day.peopleThere === 0 ? "" : `${day.peopleWanted} wanted, ${day.peopleThere} there`,
    notes:
      day.sunrise === null || day.sunset === null ? [] : [`daylight ${clockLabel(time, day.sunrise)} to ${clockLabel(time, day.sunset)}`],
  }));
}
