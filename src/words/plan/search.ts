import type { Display } from "../../core/base";
import type { Aim, Build } from "../../core/build";
import type { FinishBound, Sought } from "../../core/plan";
import { sentence, spelled } from "../text";
import { type Voice, voice } from "../voice";
import { aimNames } from "./aims";

/** "12,000" */
const figured = (count: number): string => String(count).replace(/\B(?=(\d{3})+$)/g, ",");

const triedWords = ({ tried }: Sought): string => `${figured(tried)} tried`;

/** "Looking for an earlier finish: 1,240 tried. It cannot be before Sat 12 Jun." */
export function lookingSentence(sought: Sought, build: Build, display?: Display): string {
  const say = voice(build, display);
  const { bound } = sought;
  return `Looking for an earlier finish: ${triedWords(sought)}.${bound === null ? "" : ` It cannot be before ${say.finish(bound.at)}.`}`;
}

/** The same while there is no plan yet. */
export const seekingSentence = (sought: Sought): string => `Looking for any plan that keeps all of this: ${triedWords(sought)}.`;

/** "A plan was found after all: it finishes Sat 9 Oct, 15:30." */
export const foundSentence = ({ finish }: Sought, build: Build): string =>
  `A plan was found after all: it finishes ${voice(build).finish(finish ?? 0)}.`;

/** "An earlier finish is there: Sat 9 Oct, 15:30, one site day sooner." */
export function earlierSentence({ finish, gain }: Sought, build: Build, display?: Display): string {
  const sooner = gain > 0 ? `, ${spelled(gain, "site day")} sooner` : ", sooner on the same site day";
  return `An earlier finish is there: ${voice(build, display).finish(finish ?? 0)}${sooner}.`;
}

/** What goes with an earlier finish of a build that aims at something else. */
export const givesUpSentence = (aim: Aim): string => `Taking it gives up what this build aims at: ${aimNames[aim.for]}.`;

/** What a search that has come to its end, or to the end of a rung, says of the plan it has. */
export function verdictSentence(sought: Sought, build: Build, display?: Display): string {
  const say = voice(build, display);
  const { proved, bound, gap, gain } = sought;
  if (sought.finish === null) return `No plan was found, ${triedWords(sought)}; none is ruled out either.`;
  const than = gain > 0 ? " than that" : "";
  if (proved === "any-order") return `No plan with these answers finishes earlier${than}.`;
  const apart = gap > 0 ? `, ${spelled(gap, "site day")} sooner` : ", on the same site day";
  const before = bound === null ? "" : `; ${proved === null ? "it" : "in another one it"} cannot be before ${say.finish(bound.at)}${apart}`;
  return proved === "this-order"
    ? `In ${gain > 0 ? "its" : "this"} order no plan finishes earlier${than}${before}.`
    : `Nothing earlier${than} was found, ${triedWords(sought)}${before}.`;
}

/** "Cannot finish before Sat 12 Jun: there are 41 hours of work for you and Ruth before “Pour the slab”." */
export function boundSentence(bound: FinishBound, build: Build, display?: Display): string {
  const say = voice(build, display);
  const by = bound.by === "tries" ? bound.beside : bound;
  const ruledOut = "every plan that would finish earlier has been ruled out";
  if (bound.by === "tries" && (by === null || by.by === "tries"))
    return sentence(`cannot finish before ${say.finish(bound.at)}: ${ruledOut}`);
  const why = by === null ? "" : whyOf(by, build, say);
  if (bound.by !== "tries") return sentence(`cannot finish before ${say.finish(bound.at)}: ${why}`);
  return sentence(`cannot finish before ${say.finish(bound.at)}: ${why}, and ${ruledOut}`);
}

function whyOf(bound: FinishBound, build: Build, say: Voice): string {
  switch (bound.by) {
    case "waits":
      return bound.first === bound.last
        ? `${job(bound.first, build, say)} takes until then`
        : `from ${job(bound.first, build, say)} to ${job(bound.last, build, say)} one waits for another, however many people there are`;
    case "date":
      return `${dated(bound, build, say)}${bound.job === bound.last ? "" : `, and what waits for it goes on to ${job(bound.last, build, say)}`}`;
    case "hands": {
      const before = bound.before < 0 ? "" : ` before ${job(bound.before, build, say)}`;
      const from = bound.from > 1440 ? `, none of it before ${say.day(bound.from)}` : "";
      return `there are ${figured(Math.round(bound.work_min / 60))} hours of work for ${say.people(bound.people)}${before}${from}`;
    }
    default:
      return "";
  }
}

/** A job counts steps first, then deliveries. */
function job(at: number, build: Build, say: Voice): string {
  const steps = build.steps.length;
  return at < steps ? say.step(build.steps[at]?.id) : say.thing("deliveries", build.deliveries[at - steps]?.id ?? "");
}

function dated(bound: Extract<FinishBound, { by: "date" }>, build: Build, say: Voice): string {
  const what = job(bound.job, build, say);
  const on = say.moment(bound.date);
  switch (bound.of) {
    case "promised":
      return `${say.day(bound.date)} is the day promised for ${what}`;
    case "lead":
      return `${say.day(bound.date)} is the earliest day for ${what}`;
    case "notice":
      return `${say.day(bound.date)} is the earliest day for what is to be booked for ${what}`;
    case "resumes":
      return `work goes on from ${on}`;
    case "done":
      return `${what} was begun ${on}`;
    case "not-before":
      return `${what} may not begin before ${on}`;
    default:
      return `${what} is set for ${on}`;
  }
}
