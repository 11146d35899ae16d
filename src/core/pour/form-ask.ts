import type { Finding, Severity } from "../base";
import type { Fastener, Lumber, Pour, PourElement, Sheathing } from "../build";
import { judged, type MemberCheck, tension } from "../concrete";
import type { PourCode } from "./codes";
import type { Upright } from "./element";
import type { Head } from "./form-head";
import { type Duration, durationOf } from "./form-stay";
import { type Skin, type Stuff, skinOf, stuffOf } from "./form-stuff";
import { pounds } from "./form-units";
import { type DetailOf, found } from "./found";
import { doubtsOfFastener } from "./guess";
import { type Judged, member } from "./members";
import type { FormSheet, MemberPart, MemberSheet } from "./result";

/** What a form is judged against. */
export interface FormAsk {
  readonly pour: Pour;
  readonly element: PourElement;
  readonly upright: Upright | null;
  readonly head: Head | null;
}

export interface FormJudged extends Omit<FormSheet, "members" | "first" | "proposed_mm"> {
  readonly members: readonly Judged[];
  readonly findings: readonly Finding[];
}

/** Gathers members and what is found about them. */
export class Tally {
  readonly members: Judged[] = [];
  readonly findings: Finding[] = [];

  /** How long its form is loaded. */
  readonly stays: Duration;

  constructor(readonly ask: FormAsk) {
    this.stays = durationOf(ask.pour, ask.element.form);
  }

  add(...judged: readonly (Judged | null)[]): void {
    for (const one of judged) if (one !== null) this.members.push(one);
  }

  say<Code extends PourCode>(code: Code, severity: Severity, detail: Omit<DetailOf<Code>, "element">): void {
    const { pour, element } = this.ask;
    this.findings.push(found(pour, code, severity, { element: element.id, ...detail } as unknown as DetailOf<Code>, "elements"));
  }

  /** Its lumber, or a finding that its size stands in no table. */
  stuff(part: MemberPart, lumber: Lumber, as: "beam" | "column", repetitive: boolean, weak = false): Stuff | null {
    const stuff = stuffOf(lumber, as, repetitive, this.stays, weak);
    if (stuff === null) this.say("form.size-unknown", "stop", { part, size: lumber.size });
    return stuff;
  }

  /** Its sheathing, or a finding that it stands in no table. */
  skin(sheathing: Sheathing): Skin | null {
    const skin = skinOf(sheathing, this.ask.pour, this.ask.element.id, this.stays);
    if (skin === null) this.say("form.ply-unknown", "stop", { ply: sheathing.ply ?? "", grain: sheathing.grain });
    return skin;
  }

  /** A bolt, tie, stake or anchor under its load; a finding where nothing says what it carries. */
  fastener(
    part: MemberPart,
    by: Fastener | null,
    load_kN: number,
    each: MemberSheet["each"] = [],
    unknown: Severity = "stop",
    more: readonly MemberCheck[] = [],
  ): void {
    if (by === null || !(by.carries_kN > 0)) {
      this.say("form.carries-unknown", unknown, { part, load_kN });
      return;
    }
    this.add(
      member({
        part,
        stuff: by.name,
        result: judged([{ ...tension(pounds(load_kN), pounds(by.carries_kN)), kind: part === "stakes" ? "sideways" : "tension" }, ...more]),
        span_mm: null,
        load: { value: load_kN, unit: "kN" },
        each,
        documents: [],
        doubts: doubtsOfFastener(by),
        source: by.from,
      }),
    );
  }
}

/** Slips of the pen: no part of a form is that long, heavy or strong, nor that small. */
const sane = { least: 1e-3, most: 1e6 } as const;

/** A figure of a form that is none to compute with, by the part and key where it stands. */
export function faultyFigure(form: object, path: readonly string[] = []): readonly string[] | null {
  for (const [key, value] of Object.entries(form)) {
    if (typeof value === "number") {
      if (!(value >= sane.least && value <= sane.most)) return [...path, key];
    } else if (value !== null && typeof value === "object") {
      const inner = faultyFigure(value, [...path, key]);
      if (inner !== null) return inner;
    }
  }
  return null;
}
