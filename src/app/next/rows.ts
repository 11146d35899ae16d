import { formatWork } from "../../core/base";
import type { Build } from "../../core/build";
import { siteTime } from "../../core/clock";
import type { DayRow, DaySheet, Plan } from "../../core/plan";
import { clockLabel, dateLabel } from "../../draw";
import { begunBefore, listed, stepCautions } from "../../words";
import { whoWords } from "../dates/next";
import { groupsBefore } from "../order/closing-rows";
import { shownName } from "../state/names";

/** One step on the sheet of a day, in words. */
export interface JobRow {
  readonly step: string;
  readonly name: string;
  readonly time: string;
  readonly who: string;
  readonly where: string;
  readonly needs: string;
  readonly cautions: readonly string[];
  /** What it closes, with what has to be in and seen before. */
  readonly closes: readonly { readonly name: string; readonly before: readonly { readonly what: string; readonly steps: string }[] }[];
  readonly holdPoint: string;
  readonly done: boolean;
  /** What a tick writes down: as planned. */
  readonly planned: { readonly start: string; readonly finish: string };
}

export function jobRows(build: Build, plan: Plan, sheet: DaySheet): readonly JobRow[] {
  return sheet.rows.map((row) => jobRow(build, plan, row));
}

/** What is ticked is known by when it was begun and finished alone: of a day that it only runs through or over, midnight is no time of it. */
function spanOf(row: Pick<DayRow, "from" | "to" | "began" | "goesOn" | "done">, clock: (t: DayRow["from"]) => string): string {
  if (row.done && (row.began || row.goesOn))
    return [row.began ? "" : `from ${clock(row.from)}`, row.goesOn ? "" : `until ${clock(row.to)}`].join("");
  return row.from === row.to ? clock(row.from) : `${clock(row.from)} to ${clock(row.to)}`;
}

function jobRow(build: Build, plan: Plan, row: DayRow): JobRow {
  const step = build.steps[row.step]!;
  const dates = plan.steps[row.step]!;
  const time = siteTime(build.site.zone, build.start);
  const place = step.place === null ? undefined : build.places[build.at.place.get(step.place) ?? -1];
  const equipment = step.equipment.map(({ of, number }) => {
    const name = build.equipment[build.at.equipment.get(of) ?? -1]?.name ?? of;
    return number > 1 ? `${number} × ${name}` : name;
  });
  const needs = [...step.tools, ...equipment, ...step.materials];
  const span = spanOf(row, (t) => clockLabel(time, t));
  const left = step.begun === null ? "" : `${formatWork(step.work.likely_min)} left`;
  const more = [row.began ? "goes on" : "", left, row.goesOn ? "not finished this day" : ""].filter((part) => part !== "");
  return {
    step: step.id,
    name: shownName(step),
    time: begunBefore(step, build)?.span ?? [span, ...more].filter((part) => part !== "").join(", "),
    who: whoWords(build, plan, row.step),
    where: place === undefined ? "" : shownName(place),
    needs: needs.length === 0 ? "" : listed(needs),
    cautions: stepCautions(build, step),
    closes: row.closes.map((c) => {
      const closing = plan.closings[c]!;
      return {
        name: shownName(build.pieces[closing.piece]),
        before: groupsBefore(build, closing.before).map(({ what, steps }) => ({ what, steps: listed(steps.map(({ name }) => name)) })),
      };
    }),
    holdPoint:
      step.holdPoint === null ? "" : listed(step.holdPoint.places.map((id) => shownName(build.places[build.at.place.get(id) ?? -1]))),
    done: row.done,
    planned: { start: time.momentOf(dates.start), finish: time.momentOf(Math.max(dates.start, Math.min(dates.finish, row.to))) },
  };
}

/** "Sat 26 Jun" of a local date. */
export function dateName(build: Build, date: string): string {
  const time = siteTime(build.site.zone, build.start);
  const day = time.dayOfDate(date);
  return day === null ? date : dateLabel(time, time.startOf(day));
}
