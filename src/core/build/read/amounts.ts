import { isWithin, limits, parseQuantity } from "../../base";
import { shown } from "./notes";
import { elapsed_min, refusesDays, type Spot } from "./quantities";

export type RawAmount = string | { readonly is: string; readonly on?: string; readonly from?: string };

/** An amount read as far as one member tells: whose days or strength it speaks of is looked up when the build is put together. */
export type AmountDraft = { readonly text: string; readonly from: string | null } & (
  | { readonly kind: "elapsed"; readonly amount: number }
  | { readonly kind: "working"; readonly amount: number; readonly calendar: string }
  | { readonly kind: "days"; readonly amount: number; readonly calendar: string }
  | { readonly kind: "share"; readonly amount: number; readonly pour: string }
  | { readonly kind: "warm"; readonly amount: number; readonly pour: string }
  | { readonly kind: "stress"; readonly stress_MPa: number; readonly pour: string }
);

const ofSomething = /^(.+?) of ([a-z][a-z0-9#-]*)$/;

/** Percent to thousandths of the specified strength, rounded up: a threshold is never lowered by rounding. */
export const thousandths = (share: number): number => Math.ceil(share * 1000 - 1e-6);

function ofClock(at: Spot, text: string, figure: string, of: string, from: string | null): AmountDraft {
  const refuse = (least: number, most: number, unit: string): void =>
    at.notes.say("build.range", at.key, { part: at.part, value: shown(text), least, most, unit });
  if (figure.endsWith("%")) {
    const share = Number(figure.slice(0, -1));
    const { least, most, unit } = limits.strengthShare;
    if (!isWithin(limits.strengthShare, share)) refuse(least, most, unit);
    return { kind: "share", amount: thousandths(share / 100), pour: of, text, from };
  }
  const [, count, unit] = /^(\d+) warm (day|hour)s?$/.exec(figure) ?? [];
  if (count !== undefined) {
    const amount = Number(count) * (unit === "day" ? 1440 : 60);
    if (!isWithin(limits.elapsed, amount)) refuse(limits.elapsed.least, limits.elapsed.most, limits.elapsed.unit);
    return { kind: "warm", amount, pour: of, text, from };
  }
  if (/ days?$/.test(figure)) {
    const days = Number.parseInt(figure, 10);
    const { least, most, unit } = limits.officeDays;
    if (!isWithin(limits.officeDays, days)) refuse(least, most, unit);
    return { kind: "days", amount: days, calendar: of, text, from };
  }
  const stress_MPa = parseQuantity("pressure", figure);
  if (stress_MPa === null) at.notes.say("build.quantity", at.key, { part: at.part, value: shown(text), kind: "amount" });
  else if (!(stress_MPa > 0 && stress_MPa <= limits.strength.most)) refuse(0, limits.strength.most, limits.strength.unit);
  return { kind: "stress", stress_MPa: stress_MPa ?? 0, pour: of, text, from };
}

/** Reads an amount on a clock that has passed the schema. */
export function readAmount(at: Spot, raw: RawAmount): AmountDraft {
  const text = (typeof raw === "string" ? raw : raw.is).trim();
  const on = typeof raw === "string" ? undefined : raw.on;
  const from = typeof raw === "string" ? null : (raw.from ?? null);
  const [, figure, of] = ofSomething.exec(text) ?? [];
  if (figure !== undefined && of !== undefined) {
    if (on !== undefined) at.notes.say("build.two-clocks", at.key, { part: at.part, value: shown(text), calendar: on });
    return ofClock(at, text, figure, of, from);
  }
  if (on === undefined) return { kind: "elapsed", amount: elapsed_min(at, text), text, from };
  if (refusesDays(at, text)) return { kind: "working", amount: 0, calendar: on, text, from };
  return { kind: "working", amount: elapsed_min(at, text), calendar: on, text, from };
}

export const maybeAmount = (at: Spot, raw: RawAmount | undefined): AmountDraft | null => (raw === undefined ? null : readAmount(at, raw));
