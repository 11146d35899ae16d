import type { Display } from "../../core/base";
import type { Aim, Build } from "../../core/build";
import type { Aimed, Measured } from "../../core/plan";
import { counted, sentence, spelled, spelledFigure } from "../text";
import { voice, workWords } from "../voice";

/** What a builder can aim at, as a choice. */
export const aimNames: Readonly<Record<Aim["for"], string>> = {
  "site-days": "fewest site days",
  visits: "fewest visits of those who are asked to come",
  pours: "pours in good months and on warm days",
  weekends: "steady weeks, none too full",
};

const mostNamed = 3;

/** What a search for an aim found: what is gained, what it does to the finish, and which steps wait for it. */
export function aimSentences(aimed: Aimed, aim: Aim, build: Build, display?: Display): string[] {
  const { before, after, served } = aimed;
  if (before === null || after === null) return aimed.done ? ["The build has no dates yet, so there is nothing to choose among."] : [];
  if (aim.for === "pours" && aim.months.length === 0 && aim.coldest_C === null)
    return ["Say in which months, or how warm a day has to be, to pour."];
  if (served === null) return [sentence(`nothing better was found: ${asItStands(aim, before)}`)];
  const say = voice(build, display);
  const finish =
    after.finish === before.finish
      ? `the finish stays ${say.finish(after.finish)}`
      : `the finish is ${say.finish(after.finish)} instead of ${say.finish(before.finish)}`;
  return [sentence(`${gained(aim, before, after)}; ${finish}`), ...waitSentences(served.from ?? {}, build, display)];
}

/** "67 schedules tried" */
export const aimProgress = ({ tried }: Aimed): string => `${counted(tried, "schedule")} tried`;

function waitSentences(from: Readonly<Record<string, string>>, build: Build, display?: Display): string[] {
  const say = voice(build, display);
  const all = Object.entries(from);
  if (all.length === 0) return [];
  const named = all.slice(0, mostNamed).map(([id, moment]) => `${say.step(id)} until ${say.written(moment.slice(0, 10))}`);
  const rest = all.length - named.length;
  const more = rest > 0 ? `; and ${spelledFigure(rest)} more` : "";
  return [sentence(`${spelled(all.length, "step waits", "steps wait")} on purpose for it: ${named.join("; ")}${more}`)];
}

function asItStands(aim: Aim, m: Measured): string {
  switch (aim.for) {
    case "site-days":
      return `${spelled(m.siteDays, "site day")} as it stands`;
    case "visits":
      return `${spelled(m.visits, "visit")} as it stands`;
    case "pours":
      return poursWords(m);
    case "weekends":
      return `the fullest week holds ${workWords(m.fullest_min)} of work as it stands`;
  }
}

function gained(aim: Aim, before: Measured, after: Measured): string {
  switch (aim.for) {
    case "site-days":
      return `${spelled(after.siteDays, "site day")} instead of ${spelledFigure(before.siteDays)}`;
    case "visits":
      return `${spelled(after.visits, "visit")} instead of ${spelledFigure(before.visits)}`;
    case "pours":
      return `${poursWords(after)}, instead of ${spelledFigure(before.poursOutside)}${after.poursOutside === 0 ? " not" : ""}`;
    case "weekends": {
      const fullest =
        after.fullest_min === before.fullest_min
          ? `the fullest week holds ${workWords(after.fullest_min)} of work as before, and the others are evener`
          : `the fullest week holds ${workWords(after.fullest_min)} of work instead of ${workWords(before.fullest_min)}`;
      const idle = (m: Measured): string => spelled(m.idleWeeks, "week without work", "weeks without work");
      return after.idleWeeks === before.idleWeeks
        ? fullest
        : `${fullest}, with ${idle(after)} instead of ${spelledFigure(before.idleWeeks)}`;
    }
  }
}

function poursWords({ pours, poursOutside }: Measured): string {
  if (pours === 0) return "there is no pour";
  if (poursOutside === 0) return pours === 1 ? "the pour falls on a day as wanted" : `all ${spelled(pours, "pour")} fall on days as wanted`;
  return `${spelled(poursOutside, "pour")} of ${spelledFigure(pours)} ${poursOutside === 1 ? "does" : "do"} not fall on a day as wanted`;
}
