import { type DetailValue, type Display, type ElapsedMinute, formatLength, formatMass, formatWork } from "../core/base";
import type { Build } from "../core/build";
import { type SiteTime, siteTime } from "../core/clock";
import { dateWords, finishWords, momentWords, writtenDate, writtenDue } from "./dates";
import { listed, lower, quoted, readable, spelled, spelledFigure } from "./text";

export type Detail = Readonly<Record<string, DetailValue>>;

/**
 * How things of one build are named. Steps stand in quotes, as they are written ("“Tie the bars”"); pieces, places, deliveries and stock run in the
 * sentence ("the footing steel"). Without a build, what is named by its id is named by that id in plain words.
 */
export interface Voice {
  readonly build: Build | null;
  readonly display: Display;
  step(id: string | undefined): string;
  steps(ids: readonly string[], joint?: string): string;
  piece(id: string | undefined): string;
  pieces(ids: readonly string[], joint?: string): string;
  place(id: string | undefined): string;
  /** "the way from the north into the pier steel" of "pier-bars.north", or of its place and its name. */
  way(full: string): string;
  /** "from the north", "by the garage door" */
  by(full: string): string;
  /** "the way from the north", "the way by the garage door"; of one that nobody has named yet "the way in" */
  theWay(full: string): string;
  /** Any thing of the build by its list. */
  thing(list: string, id: string): string;
  /** A calendar, person, stock, equipment, delivery or booking, whichever has the id. */
  any(id: string): string;
  role(role: string, number: number): string;
  /** An amount as written ("70 % of pour-slab") in words. */
  amount(text: string): string;
  moment(t: ElapsedMinute | number): string;
  finish(t: ElapsedMinute | number): string;
  day(t: ElapsedMinute | number): string;
  written(date: string): string;
  /** "by Sat 19 Jun, 7:30", "by the end of Sat 19 Jun": of a latest date as written. */
  due(date: string): string;
  /** People inside a sentence: "you and Ruth". */
  people(ids: readonly string[]): string;
  /** What must get there: "an arm with a tool, 58 in deep". */
  need(kind: string | undefined, detail?: Detail): string;
  /** "reach the pier steel with an arm and a tool, 58 in deep": what a step must do there. */
  gets(place: string | undefined, kind: string | undefined, detail: Detail): string;
  /** "An arm with a tool, 58 in deep, gets to the pier steel": to be followed by how. */
  canGet(place: string | undefined, kind: string | undefined, detail: Detail): string;
  length(length_mm: number): string;
  /** A text as written, run into a sentence: an ordinary word at its front is small, a person's name is not. */
  inside(text: string): string;
}

const listOf: Readonly<Record<string, keyof Build>> = {
  steps: "steps",
  pieces: "pieces",
  places: "places",
  calendars: "calendars",
  people: "people",
  equipment: "equipment",
  stock: "stock",
  waits: "waits",
  choices: "choices",
  deliveries: "deliveries",
  bookings: "bookings",
  groups: "groups",
  pours: "pours",
};

/** Positions by id, where the build keeps them. */
function indexOf({ at }: Build, list: string): ReadonlyMap<string, number> | undefined {
  return {
    steps: at.step,
    pieces: at.piece,
    places: at.place,
    calendars: at.calendar,
    people: at.person,
    equipment: at.equipment,
    stock: at.stock,
    deliveries: at.delivery,
    bookings: at.booking,
    pours: at.pour,
  }[list];
}

/** Names that stand in quotes, as written: they may be anything. */
const asWritten = new Set(["steps", "calendars"]);
/** Names that stand for themselves, without an article. */
const proper = new Set(["people", "waits", "choices", "groups"]);
/** What a person may be called where one speaks to the builder; inside a sentence it is no name. */
const pronoun = /^(you|yourself|we|us)$/i;

export function voice(build: Build | null, display: Display = build?.site.units ?? "us"): Voice {
  const time: SiteTime | null = build === null ? null : siteTime(build.site.zone, build.start);
  const people = build?.people.map((person) => person.name) ?? [];

  const nameOf = (list: string, id: string): string => {
    const members = (build?.[listOf[list] ?? "steps"] ?? []) as readonly { readonly id: string; readonly name: string }[];
    const index = build === null ? undefined : indexOf(build, list);
    const at = (one: string) => (index === undefined ? members.find((member) => member.id === one) : members[index.get(one) ?? -1]);
    const found = at(id) ?? at(`${id}#1`);
    if (found === undefined || found.name === "" || found.name === found.id.split("#")[0] || found.name === found.id) return readable(id);
    const copy = id.split("#")[1];
    return copy === undefined ? found.name : `${found.name} (${copy})`;
  };
  const the = (name: string): string => {
    // "inside the wall form" is no name that an article can stand before.
    if (name.includes(",") || (/^\S+ (the|a|an|my|our) /i.test(name) && prepositions.has(lower(name).split(" ")[0] ?? "")))
      return quoted(name);
    const text = lower(name, people);
    if (/^(the|a|an|his|her|their|our|all|both|every|no) /.test(text) || people.some((person) => text.startsWith(person))) return text;
    return `the ${text}`;
  };
  const thing = (list: string, id: string): string => {
    const name = nameOf(list, id);
    if (asWritten.has(list)) return quoted(name);
    if (list === "people" && pronoun.test(name)) return "you";
    return proper.has(list) ? name : the(name);
  };
  const any = (id: string): string => {
    const lists = ["steps", "calendars", "people", "stock", "equipment", "deliveries", "bookings", "pieces", "places"];
    const list = lists.find((one) =>
      ((build?.[listOf[one] as keyof Build] ?? []) as readonly { id: string }[]).some((member) => member.id === id),
    );
    return list === undefined ? readable(id) : thing(list, id);
  };
  const wayName = (full: string): string => {
    const [place = "", way = ""] = full.split(".");
    const found = build?.places[build.at.place.get(place) ?? -1]?.ways.find((one) => one.id === way || one.full === full);
    return found === undefined || found.name === "" ? readable(way) : found.name;
  };
  const by = (full: string): string => {
    const name = lower(wayName(full));
    return prepositions.has(name.split(" ")[0] ?? "") ? name : `by ${the(name)}`;
  };

  const theWay = (full: string): string => (lower(wayName(full)) === "way in" ? "the way in" : `the way ${by(full)}`);

  const need = (kind: string | undefined, detail: Detail = {}) => needWords(kind, detail, display, (id) => thing("pieces", id));

  return {
    build,
    display,
    step: (id) => (id === undefined ? "a step" : thing("steps", id)),
    steps: (ids, joint = "and") =>
      listed(
        ids.map((id) => thing("steps", id)),
        joint,
      ),
    piece: (id) => (id === undefined ? "a piece" : thing("pieces", id)),
    pieces: (ids, joint = "and") =>
      listed(
        ids.map((id) => thing("pieces", id)),
        joint,
      ),
    place: (id) => (id === undefined ? "a place" : thing("places", id)),
    theWay,
    way: (full) => `${theWay(full)} to ${thing("places", full.split(".")[0] ?? "")}`,
    by,
    thing,
    any,
    role: (role, number) =>
      role === "hands"
        ? number === 1
          ? "one pair of hands"
          : spelled(number, "person", "people")
        : `${spelledFigure(number)} for the ${readable(role)}`,
    amount: (text) => amountWords(text, any, display),
    moment: (t) => (time === null ? "" : momentWords(time, t)),
    finish: (t) => (time === null ? "" : finishWords(time, t)),
    day: (t) => (time === null ? "" : dateWords(time, t)),
    due: (date) => (build === null ? `by ${date}` : writtenDue(date, build.site.zone, build.start)),
    people: (ids) => listed([...new Set(ids.map((id) => thing("people", id)))]),
    written: (date) => (build === null ? date : writtenDate(date, build.site.zone, build.start)),
    need,
    gets: (place, kind, detail) => getsWords(place === undefined ? "it" : thing("places", place), kind, need(kind, detail)),
    canGet: (place, kind, detail) => {
      const where = place === undefined ? "it" : thing("places", place);
      if (kind === "sight") return `${where} can be seen`;
      const what = need(kind, detail);
      return `${what}${what.includes(",") ? "," : ""} ${kind === "unit" ? "can be got" : "gets"} to ${where}`;
    },
    inside: (text) => lower(text, people),
    length: (length_mm) => formatLength(length_mm, display),
  };
}

const prepositions = new Set(
  "above across along around at behind below beside between by down from in inside into off on out outside over past round standing through to under up with within".split(
    " ",
  ),
);

/** "70 % of pour-slab" is "70 % of the strength of “Pour the slab”"; "3 days of county" and "8 h of weekends" name the calendar; "28 warm days of" a pour say how warm; "24 h" stays. */
function amountWords(text: string, any: (id: string) => string, display: Display): string {
  const of = /^(.*?) of ([a-z][a-z0-9-]*(?:#\d+)?)$/.exec(text);
  if (of !== null) {
    const [, amount = "", id = ""] = of;
    const days = /^(\d+) days?$/.exec(amount);
    const warm = /^(\d+) warm (days?|hours?)$/.exec(amount);
    if (warm !== null) return `${warm[1]} ${warm[2]} at ${display === "us" ? "50 °F" : "10 °C"} or warmer`;
    if (days !== null) return `${days[1]} ${days[1] === "1" ? "day" : "days"} of ${any(id)}`;
    return `${amount} of ${/^[\d.]+ *(min|h|d|wk)\b/.test(amount) ? "" : "the strength of "}${any(id)}`;
  }
  return text
    .replace(/^1 d$/, "a day")
    .replace(/^(\d+) d$/, "$1 days")
    .replace(/^1 wk$/, "a week")
    .replace(/^(\d+) wk$/, "$1 weeks");
}

function needWords(kind: string | undefined, detail: Detail, display: Display, piece: (id: string) => string): string {
  const depth_mm = typeof detail.depth_mm === "number" ? detail.depth_mm : 0;
  const deep = depth_mm > 0 ? `, ${formatLength(depth_mm, display)} deep` : "";
  switch (kind) {
    case "sight":
      return "an eye";
    case "hand":
      return `a hand${deep}`;
    case "arm":
      return `an arm with a tool${deep}`;
    case "hose":
      return "a hose or a vibrator";
    case "machine":
      return "a machine";
    case "unit": {
      const sides = [detail.long_mm, detail.wide_mm, detail.thick_mm].filter(
        (side): side is number => typeof side === "number" && side > 0,
      );
      const size = sides.length === 0 ? "" : `, ${sides.map((side) => formatLength(side, display)).join(" by ")}`;
      const mass = typeof detail.mass_kg === "number" && detail.mass_kg > 0 ? `, ${formatMass(detail.mass_kg, display)}` : "";
      return typeof detail.unit === "string" && detail.unit !== "" ? `${piece(detail.unit)} whole${size}${mass}` : `a unit${size}${mass}`;
    }
    default:
      return "a person";
  }
}

function getsWords(where: string, kind: string | undefined, need: string): string {
  if (kind === "sight") return `see ${where}`;
  if (kind === "hand" || kind === "arm") return `reach ${where} with ${need.replace("an arm with a tool", "an arm and a tool")}`;
  if (kind === "hose" || kind === "machine") return `get ${need} to ${where}`;
  if (kind === "unit") return `get ${need}${need.includes(",") ? "," : ""} through to ${where}`;
  return `get to ${where}`;
}

/** Working minutes in words: "5 h 30 min". */
export const workWords = (minutes: number): string => formatWork(minutes);
/** Readers of a finding's detail; what is missing reads as nothing. */
export const text = (detail: Detail, key: string): string => {
  const value = detail[key];
  return typeof value === "string" ? value : typeof value === "number" ? String(value) : "";
};
export const figure = (detail: Detail, key: string): number => (typeof detail[key] === "number" ? (detail[key] as number) : 0);
export const list = (detail: Detail, key: string): readonly string[] => {
  const value = detail[key];
  return Array.isArray(value) ? value.map(String) : typeof value === "string" && value !== "" ? [value] : [];
};

/** When a step's hours end for good, and for want of what. */
export const hoursEndWords = (detail: Detail, voice: Voice): string =>
  `${detail.people === true ? "the people it asks for are there together" : "its calendar is open"} for the last time on ${voice.day(figure(detail, "lastAt"))}`;
