import type { DetailValue, Finding, Severity, Where } from "../base";

interface CodeEntry {
  readonly severity: Severity;
  /** True: the document cannot be read as a build while this stands. */
  readonly bars?: true;
  readonly detail: readonly string[];
}

/**
 * Every finding of this room, with the keys of its detail. `src/words` makes a sentence for each.
 * `value` is what was written, as text. `part` names the place inside the key ("2.depth": the second entry's depth), "" for the key itself.
 */
export const codes = {
  // the file
  "build.too-long": { severity: "stop", bars: true, detail: ["characters", "most"] },
  /** `found` is the text there ("" at the end), `wanted` one of: value, name, colon, comma-or-end, nothing, text, number. */
  "build.json": { severity: "stop", bars: true, detail: ["line", "column", "found", "wanted"] },
  "build.nested": { severity: "stop", bars: true, detail: ["line", "column", "most"] },
  "build.key-twice": { severity: "stop", bars: true, detail: ["line", "column", "name"] },
  "build.not-a-build": { severity: "stop", bars: true, detail: ["found"] },
  "build.newer": { severity: "look", detail: ["version", "known"] },
  "build.brought-up": { severity: "note", detail: ["version", "known"] },
  // its shape
  "build.missing": { severity: "stop", bars: true, detail: ["part"] },
  /** `wanted`: any of text, number, yes-or-no, list, object, nothing. */
  "build.type": { severity: "stop", bars: true, detail: ["part", "value", "wanted"] },
  "build.not-one-of": { severity: "stop", bars: true, detail: ["part", "value", "choices", "nearest"] },
  "build.unknown-key": { severity: "look", detail: ["part", "key", "nearest"] },
  "build.id": { severity: "stop", bars: true, detail: ["part", "value"] },
  "build.id-twice": { severity: "stop", bars: true, detail: ["first", "second"] },
  "build.empty": { severity: "stop", bars: true, detail: ["part"] },
  "build.more": { severity: "stop", bars: true, detail: ["count"] },
  // quantities
  /** `kind`: length, mass, temperature, speed, pressure, time, volume, volumeRate, density, massPerLength, force, ratio, amount. */
  "build.quantity": { severity: "stop", bars: true, detail: ["part", "value", "kind"] },
  "build.range": { severity: "stop", bars: true, detail: ["part", "value", "least", "most", "unit"] },
  "build.whole": { severity: "stop", bars: true, detail: ["part", "value"] },
  /** Leaves the range in which anything is computed of it: `name`, `least`, `most`, `unit` and `source` are the range as published. */
  "build.outside": { severity: "stop", bars: true, detail: ["part", "value", "name", "least", "most", "unit", "source"] },
  /** `table`: lumber, grade, plywood, plywood-along, bar. */
  "build.not-in-table": { severity: "stop", bars: true, detail: ["part", "value", "table", "choices", "nearest"] },
  "build.order-of-three": { severity: "stop", bars: true, detail: ["low", "likely", "high"] },
  "build.done-backwards": { severity: "stop", bars: true, detail: ["start", "finish"] },
  "build.days-of-work": { severity: "stop", bars: true, detail: ["part", "value"] },
  "build.two-clocks": { severity: "stop", bars: true, detail: ["part", "value", "calendar"] },
  "build.most-under-least": { severity: "stop", bars: true, detail: ["least", "most"] },
  // dates and calendars
  "build.date": { severity: "stop", bars: true, detail: ["part", "value"] },
  "build.moment": { severity: "stop", bars: true, detail: ["part", "value"] },
  "build.time-of-day": { severity: "stop", bars: true, detail: ["part", "value"] },
  "build.window": { severity: "stop", bars: true, detail: ["part", "value"] },
  "build.twelve-months": { severity: "stop", bars: true, detail: ["part", "count"] },
  "build.windows-overlap": { severity: "stop", bars: true, detail: ["part", "first", "second"] },
  "build.never-works": { severity: "stop", bars: true, detail: [] },
  "build.no-calendar": { severity: "stop", bars: true, detail: [] },
  "build.low-above-high": { severity: "stop", bars: true, detail: ["part", "low", "high"] },
  "build.not-rising": { severity: "stop", bars: true, detail: ["part", "first", "second"] },
  "build.before-start": { severity: "look", detail: ["value", "start"] },
  // references
  /** `sort`: place, way, piece, step, calendar, person, stock, equipment, delivery, group-member, copy. */
  "build.unknown-id": { severity: "stop", bars: true, detail: ["part", "sort", "value", "nearest"] },
  "build.which-copy": { severity: "stop", bars: true, detail: ["part", "value", "count"] },
  "build.not-a-pour": { severity: "stop", bars: true, detail: ["part", "value"] },
  "build.over-strength": { severity: "stop", bars: true, detail: ["part", "value", "pour", "percent"] },
  "build.no-size": { severity: "stop", bars: true, detail: ["part", "piece"] },
  "build.nobody-can": { severity: "look", detail: ["role", "wanted", "there", "nearest"] },
  "build.too-few": { severity: "look", detail: ["of", "wanted", "there"] },
  "build.too-many": { severity: "stop", bars: true, detail: ["what", "count", "most"] },
  // groups and trials
  "build.two-groups": { severity: "stop", bars: true, detail: ["member", "first", "second"] },
  "build.rounds-in-group": { severity: "stop", bars: true, detail: ["group"] },
  "build.closes-named": { severity: "stop", bars: true, detail: ["piece"] },
  // pours
  "build.above-form": { severity: "stop", bars: true, detail: ["part", "value", "most", "unit"] },
  "build.nothing-left": { severity: "stop", bars: true, detail: ["part"] },
  /** `form`: column, wall, deck, edge; `shape`: what it is to form. */
  "build.form-misfit": { severity: "stop", bars: true, detail: ["part", "form", "shape"] },
  "build.two-pours": { severity: "stop", bars: true, detail: ["step", "first", "second"] },
  /** A step that says a strength or cement of its own beside that of its pour. */
  "build.two-mixes": { severity: "stop", bars: true, detail: ["step"] },
  /** A strength measured before the concrete is placed: `by` is what says when that is, of start, fixed. */
  "build.break-before-pour": { severity: "stop", detail: ["part", "value", "poured", "by"] },
  /** The same by the plan that was kept, which may be an old one. */
  "build.break-before-kept": { severity: "look", detail: ["part", "value", "poured"] },
  /** Lifts nothing while its pour has no fixed date. */
  "build.break-undated": { severity: "look", detail: ["part", "step"] },
  /** `by`: same (one step), written (the pour waits for it), fixed. */
  "build.removal-before-pour": { severity: "stop", detail: ["part", "step", "pour", "by"] },
  /** Table of least days read at its longest span. */
  "build.no-span": { severity: "look", detail: ["part", "step"] },
  // pieces, holding, ways, waits
  "build.put-up-twice": { severity: "stop", bars: true, detail: ["piece", "first", "second"] },
  "build.taken-down-twice": { severity: "stop", bars: true, detail: ["piece", "first", "second"] },
  "build.put-up-but-stood": { severity: "stop", bars: true, detail: ["piece", "step"] },
  "build.nothing-put-up": { severity: "stop", bars: true, detail: ["piece", "step"] },
  "build.never-stands": { severity: "look", detail: ["used"] },
  "build.goes-and-taken": { severity: "stop", bars: true, detail: ["step"] },
  "build.hold-ring": { severity: "stop", detail: ["ring"] },
  "build.held-by-nothing": { severity: "look", detail: [] },
  "build.holder-goes": { severity: "stop", detail: ["holder"] },
  "build.holds-without-amount": { severity: "look", detail: [] },
  "build.leans-on-own": { severity: "stop", detail: ["piece"] },
  "build.no-way": { severity: "stop", detail: ["part", "place"] },
  "build.way-ring": { severity: "stop", detail: ["ring"] },
  "build.below-ring": { severity: "stop", detail: ["ring"] },
  "build.wait-ring": { severity: "stop", detail: ["ring", "waits"] },
} as const satisfies Readonly<Record<string, CodeEntry>>;

export type BuildCode = keyof typeof codes;
export type DetailKey<C extends BuildCode> = (typeof codes)[C]["detail"][number];
export type DetailOf<C extends BuildCode> = Readonly<Record<DetailKey<C>, DetailValue>>;

/** A finding of this room; its detail has exactly the keys that its code lists. */
export function found<C extends BuildCode>(code: C, where: Where, detail: DetailOf<C>): Finding {
  return { code, severity: codes[code].severity, where, detail };
}

/** Whether a finding keeps the document from being read as a build at all. A stop found by another room's check does. */
export function bars(finding: Finding): boolean {
  const entry: CodeEntry | undefined = (codes as Readonly<Record<string, CodeEntry>>)[finding.code];
  return entry ? entry.bars === true : finding.severity === "stop";
}
