import type { Build } from "../../core/build";
import { siteTime } from "../../core/clock";
import type { Plan, SiteDay } from "../../core/plan";
import { clockLabel, dateLabel, dayLabel, nameOf } from "../../draw";
import { begunBefore, workOn } from "../../words";
import { shownName } from "../state/names";
import { whoWords } from "./next";

interface Job {
  readonly step: string;
  readonly name: string;
  readonly time: string;
  readonly who: string;
  readonly where: string;
  /** "closes 15:30" */
  readonly closes: string | null;
  readonly onChain: boolean;
}

interface LastChance {
  readonly piece: string;
  readonly step: string;
  readonly name: string;
  readonly at: string;
  readonly before: readonly string[];
}

interface Coming {
  readonly list: "deliveries" | "bookings";
  readonly id: string;
  readonly name: string;
  readonly when: string;
  readonly late: boolean;
}

interface DayCard {
  readonly date: string;
  readonly name: string;
  readonly people: string;
  /** More wanted than there. */
  readonly short: boolean;
  readonly jobs: readonly Job[];
  readonly chances: readonly LastChance[];
}

/** Site days that follow each other, with what comes in the days before them. */
export interface Weekend {
  readonly key: string;
  readonly title: string;
  readonly past: boolean;
  readonly coming: readonly Coming[];
  readonly days: readonly DayCard[];
}

/** The plan as a column of weekends: jobs, people, deliveries, last chances. Days with nothing on them are left out. `today`: an instant. */
export function weekends(build: Build, plan: Plan, today: number): Weekend[] {
  const time = siteTime(build.site.zone, build.start);
  const days = plan.days.filter((day) => day.steps.length > 0).sort((a, b) => a.from - b.from);
  const runs: SiteDay[][] = [];
  for (const day of days) {
    const run = runs[runs.length - 1];
    const last = run?.[run.length - 1];
    if (run && last && time.dayOf(day.from) - time.dayOf(last.from) <= 1) run.push(day);
    else runs.push([day]);
  }
  const coming = comingOf(build, plan);
  let since = Number.NEGATIVE_INFINITY;
  return runs.map((run) => {
    const last = run[run.length - 1]!;
    const until = run === runs[runs.length - 1] ? Number.POSITIVE_INFINITY : time.startOf(time.dayOf(last.from) + 1);
    const here = coming.filter(({ at }) => at >= since && at < until);
    since = until;
    const names = [run[0]!, last].map((day) => dateLabel(time, day.from));
    return {
      key: run[0]!.date,
      title: names[0] === names[1] ? names[0]! : `${dayLabel(time, run[0]!.from)} to ${names[1]}`,
      past: last.to <= today,
      coming: here.map(({ at: _, ...one }) => one),
      days: run.map((day) => dayCard(build, plan, day)),
    };
  });
}

function comingOf(build: Build, plan: Plan): (Coming & { readonly at: number })[] {
  const time = siteTime(build.site.zone, build.start);
  const deliveries = build.deliveries.flatMap((delivery, index) => {
    const dates = plan.deliveries[index];
    if (!dates) return [];
    return [
      {
        list: "deliveries" as const,
        id: delivery.id as string,
        name: delivery.name,
        when: dateLabel(time, dates.arrives),
        late: dates.arrives > dates.neededBy,
        at: dates.arrives as number,
      },
    ];
  });
  const bookings = build.bookings.flatMap((booking, index) => {
    const dates = plan.bookings[index];
    if (!dates) return [];
    return [
      {
        list: "bookings" as const,
        id: booking.id as string,
        name: booking.name,
        when: `${dateLabel(time, dates.at)}, ${clockLabel(time, dates.at)}`,
        late: false,
        at: dates.at as number,
      },
    ];
  });
  return [...deliveries, ...bookings].sort((a, b) => a.at - b.at);
}

function dayCard(build: Build, plan: Plan, day: SiteDay): DayCard {
  const time = siteTime(build.site.zone, build.start);
  const closings = day.closings.flatMap((index) => plan.closings[index] ?? []);
  const jobs = workOn(plan, time, day).map(({ step: index, stretches, goesOn, unfinished }): Job => {
    const step = build.steps[index]!;
    const closing = closings.find((one) => one.step === index);
    const [start, end] = [stretches[0]![0], stretches[stretches.length - 1]![1]];
    return {
      step: step.id,
      name: nameOf(step),
      time:
        begunBefore(step, build)?.span ??
        `${goesOn ? "goes on" : clockLabel(time, start)} to ${unfinished ? "the next day" : clockLabel(time, end)}`,
      who: whoWords(build, plan, index),
      where: shownName(build.places[build.at.place.get(step.place ?? "") ?? -1]),
      closes: closing ? `closes ${clockLabel(time, closing.at)}` : null,
      onChain: plan.steps[index]!.onChain,
    };
  });
  const chances = closings
    .filter(({ before }) => before.length > 0)
    .map(
      (closing): LastChance => ({
        piece: build.pieces[closing.piece]?.name ?? "",
        step: build.steps[closing.step]!.id,
        name: nameOf(build.steps[closing.step]!),
        at: clockLabel(time, closing.at),
        before: closing.before.map(({ step }) => nameOf(build.steps[step]!)),
      }),
    );
  return {
    date: day.date,
    name: dateLabel(time, day.from),
    people: day.peopleWanted === 0 ? "nobody of yours needed" : `${day.peopleWanted} wanted, ${day.peopleThere} there`,
    short: day.peopleWanted > day.peopleThere,
    jobs,
    chances,
  };
}
