import type * as v from "valibot";
import type { Finding } from "../../base";
import { checkZone } from "../../clock";
import { bars } from "../codes";
import type { RawKept } from "../link/others";
import type { Aim, PressureDocument, Served, Site } from "../model";
import { head, kept, type ListName, listNames, served } from "../schema/document";
import { maybeMoment, readDate, readMoment } from "./dates";
import { Notes } from "./notes";
import { spot, temperature_C } from "./quantities";
import { readDays, readLowAndHigh } from "./temperatures";
import { isValid } from "./validate";

export interface Head {
  readonly id: string;
  readonly name: string;
  readonly site: Site;
  readonly start: string;
  readonly usual: string | null;
  readonly resumes: string | null;
  readonly pressure: PressureDocument | null;
  readonly aim: Aim | null;
}

/** Everything of the document that is no list; null when it cannot be read. */
export function readHead(document: Readonly<Record<string, unknown>>): { head: Head | null; findings: readonly Finding[] } {
  const notes = new Notes({});
  const listKeys: ReadonlySet<string> = new Set<ListName | "kept" | "served">([...listNames, "kept", "served"]);
  const plain = Object.fromEntries(Object.entries(document).filter(([key]) => !listKeys.has(key)));
  if (!isValid(head, plain, notes)) return { head: null, findings: notes.findings };
  const { site } = plain;
  notes.findings.push(...checkZone(site.zone, { key: "site" }));
  const read: Head = {
    id: plain.id ?? "build",
    name: plain.name ?? plain.id ?? "",
    site: {
      zone: site.zone,
      latitude: site.latitude,
      longitude: site.longitude,
      units: site.units ?? "us",
      sides: site.sides ?? [],
      usualTemperatures_C:
        site.usualTemperatures?.map((month, i) => readLowAndHigh(spot(notes, "site", `usualTemperatures.${i + 1}`), month)) ?? null,
      days_C: readDays(spot(notes, "site", "days"), site.days ?? []),
    },
    start: readDate(spot(notes, "start"), plain.start),
    usual: plain.usual ?? null,
    resumes: maybeMoment(spot(notes, "resumes"), plain.resumes),
    pressure: plain.pressure ?? null,
    aim: plain.aim === undefined ? null : readAim(plain.aim, notes),
  };
  return { head: notes.findings.some(bars) ? null : read, findings: notes.findings };
}

function readAim(raw: NonNullable<v.InferOutput<typeof head>["aim"]>, notes: Notes): Aim {
  return {
    for: raw.for,
    months: [...new Set(raw.months ?? [])].sort((a, b) => a - b),
    coldest_C: raw.coldest === undefined ? null : temperature_C(spot(notes, "aim", "coldest"), raw.coldest),
    weeksLater: raw.weeksLater ?? 0,
  };
}

interface ReadKept {
  readonly raw: RawKept | null;
  readonly findings: readonly Finding[];
}

const memory = new WeakMap<object, ReadKept>();

/** The plan kept on purpose, read once for each object. */
export function readKept(value: unknown): ReadKept {
  if (value === undefined) return { raw: null, findings: [] };
  const before = typeof value === "object" && value !== null ? memory.get(value) : undefined;
  if (before) return before;
  const notes = new Notes({ key: "kept" });
  const raw = isValid(kept, value, notes) ? keptOf(value, notes) : null;
  const read = { raw: notes.findings.some(bars) ? null : raw, findings: notes.findings };
  if (typeof value === "object" && value !== null) memory.set(value, read);
  return read;
}

interface ReadServed {
  readonly served: Served | null;
  readonly findings: readonly Finding[];
}

const servedBefore = new WeakMap<object, ReadServed>();

/** The order in which steps are served, read once for each object. What it names and nobody has any more is passed over. */
export function readServed(value: unknown): ReadServed {
  if (value === undefined) return { served: null, findings: [] };
  const before = typeof value === "object" && value !== null ? servedBefore.get(value) : undefined;
  if (before) return before;
  const notes = new Notes({ key: "served" });
  const raw = isValid(served, value, notes) ? servedOf(value, notes) : null;
  const read = { served: notes.findings.some(bars) ? null : raw, findings: notes.findings };
  if (typeof value === "object" && value !== null) servedBefore.set(value, read);
  return read;
}

function servedOf({ engine, rung, steps, from }: v.InferOutput<typeof served>, notes: Notes): Served {
  if (from === undefined) return { engine, rung, steps };
  const moments = Object.entries(from).map(([id, moment]) => [id, readMoment(spot(notes, "served", `from.${id}`), moment)]);
  return { engine, rung, steps, from: Object.fromEntries(moments) };
}

function keptOf(value: RawKept, notes: Notes): RawKept {
  const moment = (part: string, text: string): string => readMoment(spot(notes, "kept", part), text);
  const steps = Object.entries(value.steps).filter(([, ends]) => Array.isArray(ends) && ends.every((end) => typeof end === "string"));
  return {
    engine: value.engine,
    rung: value.rung,
    on: value.on === undefined ? undefined : readDate(spot(notes, "kept", "on"), value.on),
    finish: moment("finish", value.finish),
    steps: Object.fromEntries(
      steps.map(([id, [start, finish]]) => [id, [moment(`steps.${id}`, start), moment(`steps.${id}`, finish)] as const]),
    ),
  };
}
