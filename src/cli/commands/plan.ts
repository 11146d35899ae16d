import type { Build } from "../../core/build";
import { siteTime } from "../../core/clock";
import { type Plan, plan } from "../../core/plan";
import { chainSentences, clockWords, closedWords, counted, dateWords, peopleWords, voice, workOn, workWords } from "../../words";
import { type Outcome, outcome, type Ports } from "../fault";
import { findingLines, inGravity } from "../findings";
import { openBuild } from "../open";
import { planJson } from "../plan-json";
import { assumptionLines, cautionLines, holdPointLines } from "./cautions";
import { searched, searchedJson, searchedLines } from "./searched";

export interface PlanAsked {
  readonly json?: boolean;
  /** How far to look for an earlier finish. */
  readonly search?: string;
}

/** The plan by site day, what has to be ordered and booked, the finish and the chain that sets it. 1 when there is none. */
export async function planCommand(file: string, asked: PlanAsked, ports: Ports): Promise<Outcome> {
  const { build, read } = await openBuild(file, ports);
  const found = asked.search === undefined ? null : searched(build, read.document, asked.search);
  const made = found?.made ?? plan(build);
  const code = made.status === "planned" ? 0 : 1;
  if (asked.json) {
    const json = { ...planJson(build, made), ...(found === null ? {} : { search: searchedJson(found, build) }) };
    return { text: `${JSON.stringify(json, null, 2)}\n`, code };
  }
  if (code === 1) return outcome([...inGravity(made.findings).flatMap((finding) => findingLines(finding, build)), "There is no plan."], 1);
  if (build.steps.length === 0) return outcome([build.name, "", "There is nothing to do yet: the build has no steps."], 0);
  return outcome([
    build.name,
    "",
    ...dayLines(build, made),
    ...orderLines(build, made),
    `Finish: ${voice(build).finish(made.finish)}. ${workWords(made.handMinutes)} of work in all.`,
    ...(found === null ? [] : searchedLines(found, build)),
    "",
    "What sets the finish, from first to last:",
    ...chainSentences(made, build).map((line) => `  ${line}`),
    "",
    ...holdPointLines(build, made),
    ...cautionLines(build),
    ...assumptionLines(made),
  ]);
}

function dayLines(build: Build, made: Plan): string[] {
  const time = siteTime(build.site.zone, build.start);
  const say = voice(build);
  return made.days.flatMap((day) => {
    const start = time.minuteOf(day.date) ?? day.from;
    const end = time.startOf(time.dayOf(start) + 1);
    const rows: { at: number; line: string }[] = [];
    const clock = (t: number) => (t === end ? "24:00" : clockWords(time.local(t).minute));
    for (const { step, stretches } of workOn(made, time, day)) {
      const { people, finish } = made.steps[step]!;
      const who = peopleWords(people, build);
      for (const [from, to] of stretches) {
        const span = `${clock(from)}-${clock(to)}`.padEnd(12);
        rows.push({
          at: from,
          line: `  ${span} ${say.step(build.steps[step]?.id)}${who === "" ? "" : `, ${who}`}${to < finish ? ", goes on" : ""}`,
        });
      }
    }
    for (const index of day.deliveries) {
      const at = made.deliveries[index]?.arrives ?? start;
      const { id = "", promised = null } = build.deliveries[index] ?? {};
      // Without a promised hour none is known.
      rows.push({ at, line: `  ${(promised?.includes("T") ? clock(at) : "").padEnd(12)} delivery: ${say.any(id)}` });
    }
    for (const { at, lasts, who, for: what } of made.visits) {
      if (at < start || at >= end) continue;
      const span = `${clock(at)}-${clock(at + lasts)}`.padEnd(12);
      rows.push({ at, line: `  ${span} visit${what === "" ? "" : `: ${what}`}${who === "" ? "" : `, ${who}`}` });
    }
    for (const index of day.closings) {
      const closing = made.closings[index];
      if (closing === undefined) continue;
      rows.push({ at: closing.at, line: `  ${clock(closing.at).padEnd(12)} closes ${closedWords(closing, build)}` });
    }
    rows.sort((a, b) => a.at - b.at);
    const people =
      day.site && day.peopleWanted > 0 ? `, ${day.peopleWanted} of ${counted(day.peopleThere, "person", "people")} wanted` : "";
    return rows.length === 0 ? [] : [`${dateWords(time, start)}${people}`, ...rows.map(({ line }) => line), ""];
  });
}

function orderLines(build: Build, made: Plan): string[] {
  const time = siteTime(build.site.zone, build.start);
  const say = voice(build);
  const rows: { at: number; line: string }[] = [];
  build.deliveries.forEach((delivery, i) => {
    const by = made.deliveries[i]?.orderBy;
    if (!delivery.ordered && by !== null && by !== undefined) rows.push({ at: by, line: `order ${say.any(delivery.id)}` });
  });
  build.bookings.forEach((booking, i) => {
    const by = made.bookings[i]?.bookBy;
    if (!booking.booked && by !== null && by !== undefined) rows.push({ at: by, line: `book ${say.any(booking.id)}` });
  });
  if (rows.length === 0) return [];
  return [
    "Order and book by:",
    ...rows.sort((a, b) => a.at - b.at).map(({ at, line }) => `  ${dateWords(time, at).padEnd(12)} ${line}`),
    "",
  ];
}
