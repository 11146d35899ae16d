import { formatFigure, formatLength, formatTemperature, formatVolumeRate } from "../../core/base";
import { listed, quoted } from "../text";
import { figure, list, text } from "../voice";
import type { Sayings } from "./sayings";

const tables: Readonly<Record<string, string>> = {
  lumber: "is not a size in the table of sawn lumber; give what it measures, or a size that is",
  grade: "is not in the table of species and grades",
  plywood: "is not a thickness in the table of form plywood",
  "plywood-along": "is not a thickness in the table of form plywood laid the weak way",
  bar: "is not a bar size",
};

const forms: Readonly<Record<string, string>> = {
  column: "a form with bands",
  wall: "a form with studs and wales",
  deck: "a deck on shores",
  edge: "a board along the edge",
};

const fitting: Readonly<Record<string, string>> = {
  column: "a form with bands",
  pier: "a form with bands",
  wall: "a form with studs and wales",
  slab: "a board along the edge",
  footing: "a board along the edge or a form with studs and wales",
  "deck slab": "a deck on shores",
  barrel: "a deck on shores",
  stair: "a deck on shores",
};

/** An end of a published range, as printed, or in the unit on screen where the range is our own. */
function end(value: number, unit: string, display: "us" | "metric"): string {
  if (unit === "°C" && display === "us") return formatTemperature(value, display);
  if (unit === "m³/h") return formatVolumeRate(value, display);
  return `${formatFigure(value, 2)}${unit === "" ? "" : ` ${unit}`}`;
}

/** What is wrong in a pour as it is written. */
export const pourSayings = {
  "build.outside": ({ at, detail, voice }) => {
    const [unit, name, source] = [text(detail, "unit"), text(detail, "name"), text(detail, "source")];
    const [least, most] = [figure(detail, "least"), figure(detail, "most")].map((value) => end(value, unit, voice.display));
    const value = text(detail, "value");
    return `${at}: ${value === "" ? "this" : quoted(value)} is outside what can be computed; the ${name} can be from ${least} to ${most}; source: ${source}`;
  },
  "build.not-in-table": ({ at, detail }) => {
    const near = text(detail, "nearest");
    const choices = list(detail, "choices");
    const instead = near === "" ? `; it can be ${listed(choices, "or")}` : `; ${quoted(near)} may be meant`;
    return `${at}: ${quoted(text(detail, "value"))} ${tables[text(detail, "table")] ?? "is not in the table"}${instead}`;
  },
  "build.low-above-high": ({ at, detail }) =>
    `${at}: the low of ${text(detail, "low")} is above the high of ${text(detail, "high")}; the low has to be the lower`,
  "build.not-rising": ({ at, detail }) =>
    `${at}: ${text(detail, "second")} comes after ${text(detail, "first")} here and should be larger; write them in rising order, each once`,
  "build.above-form": ({ at, detail, voice }) =>
    `${at}: ${quoted(text(detail, "value"))} is above the top of the form, which is ${formatLength(figure(detail, "most"), voice.display)} high; lower it or take it out before the form is made lower`,
  "build.nothing-left": ({ at }) => `${at}: with these dimensions no concrete is left; look at the batter and at what is left out of it`,
  "build.form-misfit": ({ at, detail }) =>
    `${at}: ${forms[text(detail, "form")] ?? "this form"} does not form a ${text(detail, "shape")}; that takes ${fitting[text(detail, "shape")] ?? "another"}`,
  "build.two-pours": ({ at, detail, voice }) =>
    `${at}: ${voice.step(text(detail, "step"))} has another pour already; put all its elements into one, or give this one a step of its own`,
  "build.two-mixes": ({ at, detail, voice }) =>
    `${at}: ${voice.step(text(detail, "step"))} says a strength or cement of its own, and it differs from this mix; take it out of the step`,
  "build.break-before-pour": ({ at, detail, voice }) =>
    `${at}: a result of ${voice.written(text(detail, "value"))} cannot be of this pour, ${
      text(detail, "by") === "start" ? "as the build begins" : "which is fixed for"
    } ${text(detail, "by") === "start" ? "on " : ""}${voice.written(text(detail, "poured"))}; correct one of the two dates`,
  "build.break-before-kept": ({ at, detail, voice }) =>
    `${at}: by the kept plan the pour ends on ${voice.written(text(detail, "poured"))}, after this result of ${voice.written(text(detail, "value"))}, so it is not counted; correct the date, or fix the day of the pour`,
  "build.break-undated": ({ at, detail, voice }) =>
    `${at}: this result is not counted while nothing says when the concrete was placed; give ${voice.step(text(detail, "step"))} its fixed date`,
  "build.removal-before-pour": ({ at, detail, voice }) => {
    const [step, pour, by] = [voice.step(text(detail, "step")), voice.step(text(detail, "pour")), text(detail, "by")];
    if (by === "same") return `${at}: ${step} is the pour itself; name the step that takes off or puts on`;
    const why = by === "fixed" ? "by their fixed dates" : "as the waits are written";
    return `${at}: ${step} comes before ${pour} ${why}, and it has to come after it`;
  },
  "build.no-span": ({ at, detail, voice }) =>
    `${at}: no clear span is given, so the days before ${voice.step(text(detail, "step"))} are those of the longest spans; give the clear span`,
} satisfies Sayings;
