import {
  formatDensity,
  formatElapsed,
  formatFigure,
  formatForce,
  formatLength,
  formatMass,
  formatMassPerLength,
  formatPressure,
  formatSpeed,
  formatTemperature,
  formatVolume,
  formatVolumeRate,
  formatWork,
} from "../../core/base";
import { counted, listed, quoted } from "../text";
import { figure, list, text } from "../voice";
import type { Sayings } from "./sayings";

const kinds: Readonly<Record<string, string>> = {
  length: "a length; write it with its unit, like 58 in, 4 ft 10 in or 1.2 m",
  mass: "a weight; write it with its unit, like 80 lb or 36 kg",
  temperature: "a temperature; write it with its scale, like 40 °F or 5 °C",
  speed: "a speed; write it with its unit, like 20 mph or 30 km/h",
  pressure: "a strength; write it with its unit, like 3000 psi or 20 MPa",
  volume: "a volume; write it with its unit, like 9 yd3 or 7 m3",
  volumeRate: "a rate; write it with its unit, like 5 yd3/h or 4 m3/h",
  density: "a unit weight; write it with its unit, like 150 lb/ft3 or 2400 kg/m3",
  massPerLength: "a weight along a length; write it with its unit, like 40 lb/ft or 60 kg/m",
  force: "a force; write it with its unit, like 2000 lb or 9 kN",
  ratio: "a batter; write its run and its rise, like 1:8",
  time: "a time; write it with its unit, like 90 min, 6 h or 3 d",
  work: "a time; write it with its unit, like 90 min or 6 h",
  amount:
    "an amount to wait for; write a time (24 h), days of an office (3 days of it), a strength (70 % of its pour) or warmth (3 warm days of its pour)",
};

const wanted: Readonly<Record<string, string>> = {
  text: "a text in quotes",
  number: "a number",
  "yes-or-no": "true or false",
  list: "a list in square brackets",
  object: "an object in curly brackets",
  nothing: "null",
};

const expected: Readonly<Record<string, string>> = {
  value: "a value",
  name: "a name in double quotes",
  colon: "a colon",
  "comma-or-end": "a comma or the closing bracket",
  nothing: "nothing more",
  number: "a number",
};

/** A bound of a range in the units on screen. */
function bound(value: number, unit: string, display: "us" | "metric"): string {
  if (Math.abs(value) >= Number.MAX_SAFE_INTEGER) return "no limit";
  if (unit === "mm") return formatLength(value, display);
  if (unit === "kg") return formatMass(value, display);
  if (unit === "C") return formatTemperature(value, display);
  if (unit === "km/h") return formatSpeed(value, display);
  if (unit === "MPa") return formatPressure(value, display);
  if (unit === "m3") return formatVolume(value, display);
  if (unit === "m3/h") return formatVolumeRate(value, display);
  if (unit === "kg/m3") return formatDensity(value, display);
  if (unit === "kg/m") return formatMassPerLength(value, display);
  if (unit === "kN") return formatForce(value, display);
  // Work is said in hours, never in days.
  if (unit === "min of work") return formatWork(value);
  if (unit === "min") return formatElapsed(value);
  return unit === "" || unit === "year" ? formatFigure(value, 2) : `${formatFigure(value, 2)} ${unit}`;
}

/** What was written, named where it is no text. */
function shown(value: string): string {
  const named: Readonly<Record<string, string>> = { null: "nothing", "{…}": "an object", "[…]": "a list" };
  return named[value] ?? quoted(value);
}

/** Whether a text is a number in quotes. */
const isNumber = (value: string): boolean => value.trim() !== "" && Number.isFinite(Number(value));

const position = (detail: Parameters<typeof figure>[0]): string => `Line ${figure(detail, "line")}, column ${figure(detail, "column")}`;

/** Faults of the file and of its shape. */
export const fileSayings = {
  "build.too-long": ({ detail }) =>
    `The file is too long: ${formatFigure(Math.ceil(figure(detail, "characters") / 1e5) / 10, 1)} million characters, where ${formatFigure(figure(detail, "most") / 1e6, 1)} million are read at most`,
  "build.json": ({ detail }) => {
    const [found, want] = [text(detail, "found"), text(detail, "wanted")];
    const cut = "; it may have been cut off on its way, so fetch or send it again";
    if (want === "text" && found === "") return `${position(detail)}: the file ends inside a text, before its closing quote${cut}`;
    if (want === "text")
      return found.startsWith("\\")
        ? `${position(detail)}: a backslash stands alone in a text; write it twice where a backslash is meant`
        : `${position(detail)}: a text goes over the end of its line; close its quote before, or write \\n for a new line`;
    const should = `${expected[want] ?? "something else"} should be`;
    return `${position(detail)}: ${found === "" ? `the file ends where ${should}${cut}` : `there is ${quoted(found)} where ${should}`}`;
  },
  "build.nested": ({ detail }) =>
    `${position(detail)}: brackets inside brackets go deeper than ${figure(detail, "most")} levels; no build needs that`,
  "build.key-twice": ({ detail }) => `${position(detail)}: ${quoted(text(detail, "name"))} is written twice in one object; keep one`,
  "build.not-a-build": ({ detail }) =>
    `This is no build: a build begins with its format's version, "batterboard": 1${text(detail, "found") === "" ? "" : `, and here that is ${text(detail, "found") === "1" ? "a text; write it without quotes" : shown(text(detail, "found"))}`}`,
  "build.newer": ({ detail }) =>
    `This build was written by a newer program (format ${figure(detail, "version")}; this one knows ${figure(detail, "known")}), so it is open for reading only and nothing in it is changed`,
  "build.brought-up": ({ detail }) =>
    `This build was written in an older format (${figure(detail, "version")}) and was brought up to ${figure(detail, "known")}; saving writes the new one`,
  "build.missing": ({ at }) => `${at}: this is missing and has to be there`,
  "build.type": ({ at, detail }) =>
    `${at}: ${shown(text(detail, "value"))} stands where ${listed(
      list(detail, "wanted").map((one) =>
        one === "number" && isNumber(text(detail, "value")) ? "a number without quotes" : (wanted[one] ?? one),
      ),
      "or",
    )} should be`,
  "build.not-one-of": ({ at, detail }) =>
    `${at}: ${quoted(text(detail, "value"))} is not known here; ${
      text(detail, "nearest") === ""
        ? `it can be ${listed(list(detail, "choices").map(quoted), "or")}`
        : `${quoted(text(detail, "nearest"))} may be meant`
    }`,
  "build.unknown-key": ({ at, detail }) =>
    `${at}: nothing reads ${quoted(text(detail, "key"))}; if ${quoted(text(detail, "nearest"))} is meant, write it so, else it is kept as it is`,
  "build.id": ({ at, detail }) =>
    `${at}: ${quoted(text(detail, "value"))} cannot be an id; use small letters, digits and dashes, beginning with a letter, like “tie-bars”`,
  "build.id-twice": ({ at, detail }) =>
    `${at}: numbers ${figure(detail, "first")} and ${figure(detail, "second")} have the same id; give one of them another`,
  "build.empty": ({ at }) => `${at}: the list is empty and needs at least one entry`,
  "build.more": ({ detail }) => `${counted(figure(detail, "count"), "more fault")} of the same file, not shown`,
  "build.quantity": ({ at, detail, where }) => {
    const kind = text(detail, "kind") === "time" && where.key === "work" ? "work" : text(detail, "kind");
    return `${at}: ${quoted(text(detail, "value"))} is not ${kinds[kind] ?? "a quantity"}`;
  },
  "build.range": ({ at, detail, voice, where }) => {
    const unit = text(detail, "unit") === "min" && where.key === "work" ? "min of work" : text(detail, "unit");
    const [least, most] = [figure(detail, "least"), figure(detail, "most")];
    const upTo =
      Math.abs(most) >= Number.MAX_SAFE_INTEGER
        ? `${bound(least, unit, voice.display)} or more`
        : `from ${bound(least, unit, voice.display)} to ${bound(most, unit, voice.display)}`;
    return `${at}: ${quoted(text(detail, "value"))} cannot be meant; it can be ${upTo}`;
  },
  "build.whole": ({ at, detail }) => `${at}: ${quoted(text(detail, "value"))} should be a whole number`,
  "build.order-of-three": ({ at, detail }) =>
    `${at}: low, likely and high should rise, and ${text(detail, "low")}, ${text(detail, "likely")}, ${text(detail, "high")} do not`,
  "build.done-backwards": ({ at, detail }) =>
    `${at}: finished ${quoted(text(detail, "finish"))} is before begun ${quoted(text(detail, "start"))}; put the finish after the start`,
  "build.days-of-work": ({ at, detail, where }) =>
    where.key === "work"
      ? `${at}: ${quoted(text(detail, "value"))} of work can be read two ways; write working time in hours, like 16 h`
      : `${at}: ${quoted(text(detail, "value"))} of a calendar can be read two ways; write “days” for days of that calendar, like 2 days, or hours, like 16 h`,
  "build.two-clocks": ({ at, detail, voice }) =>
    `${at}: ${quoted(text(detail, "value"))} already says what it counts, so it cannot also run on ${voice.thing("calendars", text(detail, "calendar"))}; keep one`,
  "build.most-under-least": ({ at, detail, voice }) =>
    `${at}: at least ${voice.amount(text(detail, "least"))} and at most ${voice.amount(text(detail, "most"))} cannot both be kept; the most has to be the larger`,
} satisfies Sayings;
