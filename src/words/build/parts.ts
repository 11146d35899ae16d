import { listed, quoted, readable, spelled, spelledFigure } from "../text";
import { type Detail, figure, list, text, type Voice } from "../voice";
import type { Sayings } from "./sayings";

const sorts: Readonly<Record<string, string>> = {
  place: "no place",
  way: "no way in",
  piece: "no piece",
  step: "no step",
  calendar: "no calendar",
  person: "no person",
  stock: "neither stock nor equipment",
  equipment: "no equipment",
  delivery: "no delivery",
  booking: "no booking",
  "group-member": "no member of the group",
  copy: "no copy of the group",
};

/** One that names itself has a sentence of its own; several go round. */
const ring = (detail: Detail, one: (name: string) => string, many: (names: string) => string, name: (id: string) => string): string => {
  const ids = list(detail, "ring");
  return ids.length === 1 ? one(name(ids[0] ?? "")) : many(around(ids, name));
};

/** "a, then b, then a again" of a ring. */
function around(ring: readonly string[], name: (id: string) => string): string {
  const names = ring.map(name);
  return `${listed(names, "then")}, then ${names[0]} again`;
}

const twice = (voice: Voice, first: string, second: string): string =>
  first === second ? `${voice.step(first)} does so twice` : `${voice.step(first)} and ${voice.step(second)} both do`;

/** Dates, references, groups and what pieces, ways and waits say of each other. */
export const partSayings = {
  "build.date": ({ at, detail }) => `${at}: ${quoted(text(detail, "value"))} is not a date of the calendar; write it like 2027-06-26`,
  "build.moment": ({ at, detail }) => {
    // Of a time in a field of its own the builder has not seen the date before it.
    const [, time] = /^\d{4}-\d{2}-\d{2}T(?!\d{2}:\d{2}$)(.*)$/.exec(text(detail, "value")) ?? [];
    return time === undefined
      ? `${at}: ${quoted(text(detail, "value"))} is not a time of day on a date; write a date, like 2027-06-26, or a date and time, like 2027-06-26T07:30`
      : `${at}: ${quoted(time)} is not a time of day; write it like 07:30 or 14:00`;
  },
  "build.time-of-day": ({ at, detail }) => `${at}: ${quoted(text(detail, "value"))} is not a time of day; write it like 15:00`,
  "build.window": ({ at, detail }) =>
    `${at}: ${quoted(text(detail, "value"))} is not a stretch of a day; write its begin and its end, the earlier first, like 7:30-12:00`,
  "build.twelve-months": ({ at, detail }) =>
    `${at}: there should be one low and one high for each of twelve months, and there are ${figure(detail, "count")}`,
  "build.windows-overlap": ({ at, detail }) =>
    `${at}: ${text(detail, "first")} and ${text(detail, "second")} overlap; let one end before the other begins`,
  "build.never-works": ({ at }) => `${at}: this calendar has not one working minute; give a weekday its hours, like sat: 7:30-17:00`,
  "build.no-calendar": () => "The build has no calendar; write at least one, with the days and hours on which work is done",
  "build.before-start": ({ at, detail, voice }) =>
    `${at}: ${voice.written(text(detail, "value"))} lies before the build begins on ${voice.written(text(detail, "start"))}, and counts from then; let the build begin by that day, or write a later one`,
  "build.unknown-id": ({ at, detail }) => {
    const near = text(detail, "nearest");
    return `${at}: there is ${sorts[text(detail, "sort")] ?? "nothing"} ${quoted(text(detail, "value"))}${near === "" ? "; write one that exists, or add it" : `; is ${quoted(near)} meant?`}`;
  },
  "build.which-copy": ({ at, detail }) =>
    `${at}: there are ${figure(detail, "count")} of ${quoted(readable(text(detail, "value")))}; say which, by its number after a #`,
  "build.not-a-pour": ({ at, voice, detail }) =>
    `${at}: ${voice.step(text(detail, "value"))} pours nothing, so no strength can be awaited of it; name the step that pours, or give that step its strength`,
  "build.over-strength": ({ at, detail, voice }) =>
    `${at}: ${voice.amount(text(detail, "value"))} is ${figure(detail, "percent")} % of what ${voice.step(text(detail, "pour"))} is to reach; ask for less, or for a stronger mix`,
  "build.no-size": ({ at, detail, voice }) =>
    `${at}: ${voice.piece(text(detail, "piece"))} has no size, so nobody can tell what it fits through; give its length, width and thickness`,
  "build.nobody-can": ({ at, detail }) => {
    const [role, near, there] = [text(detail, "role"), text(detail, "nearest"), figure(detail, "there")];
    const of = role === "hands" ? "people" : `people for the ${readable(role)}`;
    return `${at}: ${spelled(figure(detail, "wanted"), "is", "are")} wanted of the ${of}, and the build names ${there === 0 ? "none" : spelledFigure(there)}${near === "" ? "" : `; is ${quoted(near)} meant?`}`;
  },
  "build.too-few": ({ at, detail, voice }) =>
    `${at}: ${figure(detail, "wanted")} of ${voice.any(text(detail, "of"))} ${figure(detail, "wanted") === 1 ? "is" : "are"} wanted, and there are never more than ${figure(detail, "there")}`,
  "build.too-many": ({ detail }) =>
    `The build has ${figure(detail, "count")} ${readable(text(detail, "what"))}; up to ${figure(detail, "most")} are read`,
  "build.two-groups": ({ at, detail }) =>
    `${at}: ${quoted(readable(text(detail, "member")))} is in two groups, ${quoted(readable(text(detail, "first")))} and ${quoted(readable(text(detail, "second")))}; keep it in one`,
  "build.rounds-in-group": ({ at, detail }) =>
    `${at}: a trial in rounds cannot be one of many alike, and this one is in the group ${quoted(readable(text(detail, "group")))}; take it out of the group`,
  "build.closes-named": ({ at, detail, voice }) =>
    `${at}: what this step closes would become a piece of its own name, and there is one already, ${voice.piece(text(detail, "piece"))}; let that piece close it`,
  "build.put-up-twice": ({ detail, voice }) =>
    `One step puts up ${voice.piece(text(detail, "piece"))}, no more, and ${twice(voice, text(detail, "first"), text(detail, "second"))}; make two pieces of it or drop one`,
  "build.taken-down-twice": ({ detail, voice }) =>
    `One step takes down ${voice.piece(text(detail, "piece"))}, no more, and ${twice(voice, text(detail, "first"), text(detail, "second"))}; drop one`,
  "build.put-up-but-stood": ({ detail, voice }) =>
    `${voice.step(text(detail, "step"))} puts up ${voice.piece(text(detail, "piece"))}, which is said to be there from the start; drop one of the two`,
  "build.nothing-put-up": ({ detail, voice }) =>
    `${voice.step(text(detail, "step"))} takes down ${voice.piece(text(detail, "piece"))}, and nothing puts it up; name the step that does, or say that it is there from the start`,
  "build.never-stands": ({ at, detail }) =>
    `${at}: no step puts this up and it is not there from the start${list(detail, "used").length === 0 ? "" : `, yet ${spelled(list(detail, "used").length, "thing")} of the build ${list(detail, "used").length === 1 ? "rests" : "rest"} on it`}`,
  "build.goes-and-taken": ({ at, detail, voice }) =>
    `${at}: this goes by itself, and ${voice.step(text(detail, "step"))} takes it down too; keep one of the two`,
  "build.hold-ring": ({ detail, voice }) =>
    ring(
      detail,
      (one) => `Nothing can hold itself, and ${one} is said to be held by just that; name what holds it on firm ground`,
      (many) => `These hold each other and nothing holds them: ${many}; let one be held by something on firm ground`,
      voice.piece,
    ),
  "build.held-by-nothing": ({ at }) =>
    `${at}: this says when it holds itself, but nothing need hold it before; say what holds it until then, or leave this out`,
  "build.holder-goes": ({ at, detail, voice }) =>
    `${at}: ${voice.piece(text(detail, "holder"))} cannot hold anything: what goes by itself holds nothing; name something that stays`,
  "build.holds-without-amount": ({ at }) =>
    `${at}: said like this it is worth nothing; say from when on, like 70 % of its pour, and until then name what holds it`,
  "build.leans-on-own": ({ at, detail, voice }) =>
    `${at}: a step cannot lean on ${voice.piece(text(detail, "piece"))}, which it puts up itself`,
  "build.no-way": ({ at, detail, voice }) =>
    `${at}: ${voice.place(text(detail, "place"))} has no way in, so nobody can ever get there; give it one`,
  "build.way-ring": ({ detail, voice }) =>
    ring(
      detail,
      (one) => `The only way to ${one} leads through that place itself, so nobody gets in; give it a way from outside`,
      (many) => `These are each reached only through the other, so nobody gets in: ${many}; give one of them a way from outside`,
      voice.place,
    ),
  "build.below-ring": ({ detail, voice }) =>
    ring(
      detail,
      (one) => `No place lies below itself, and ${one} is said to; drop that`,
      (many) => `Each of these is said to lie below the other: ${many}; drop one`,
      voice.place,
    ),
  "build.wait-ring": ({ detail, voice }) =>
    ring(
      detail,
      (one) => `${one} is said to wait for itself, so it can never begin; drop that link`,
      (many) => `Each of these waits for the other, so none can ever begin: ${many}; drop one of the links`,
      voice.step,
    ),
} satisfies Sayings;
