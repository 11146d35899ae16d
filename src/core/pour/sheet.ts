import type { Finding } from "../base";
import type { Build, FormSpec, Pour, PourElement } from "../build";
import { aciRanges_si } from "../concrete";
import { barFindings } from "./bars-findings";
import { pourDay } from "./day";
import { faultyDimension, measures, sidesAreFormed, uprightIn } from "./element";
import { fixesOf } from "./fixes";
import { footingFindings } from "./footing-load";
import type { FormAsk } from "./form-ask";
import { type Head, headOf } from "./form-head";
import { judgeForm, mostOf } from "./form-judge";
import { formSheet } from "./form-sheet";
import { found, refused } from "./found";
import { hoseRise_m_h, pressureOf } from "./pressure";
import { fastest_m_h } from "./pressure-fastest";
import type { ElementSheet, PourDay, PourSheet, Pressure } from "./result";
import { staysUnsaid } from "./stays";

interface Made {
  readonly sheet: ElementSheet;
  readonly findings: readonly Finding[];
}

const nothing = { volume_m3: 0, plan_m2: 0, mass_kg: 0, formArea_m2: 0, pressure: null, form: null, fixes: [] } as const;

const isWeight = (weight_kg_m3: number): boolean => weight_kg_m3 >= aciRanges_si.density.least && weight_kg_m3 <= aciRanges_si.density.most;

function elementSheet(build: Build, pour: Pour, at: number): Made {
  const element = pour.elements[at] as PourElement;
  const what = faultyDimension(element.shape);
  if (what !== null) {
    const finding = found(pour, "pressure.no-dimension", "stop", { element: element.id, what }, "elements");
    return { sheet: { element: at, ...nothing }, findings: [finding] };
  }
  if (!isWeight(pour.mix.weight_kg_m3)) {
    const heavy = { outOfRange: aciRanges_si.density, given: pour.mix.weight_kg_m3 };
    return { sheet: { element: at, ...nothing }, findings: refused(pour, [heavy], element.id, "stop") };
  }
  const upright = uprightIn(pour, element);
  const presses = upright !== null && sidesAreFormed(element);
  const pressed = presses ? pressureOf(build, pour, element, upright) : null;
  const designed = pressed === null ? null : pressed.pressure.design === "held" ? pressed.pressure.held : pressed.pressure.hose;
  const head = designed === null || upright === null ? null : headOf(upright.high_mm, designed, upright.over_mm);
  const ask: FormAsk = { pour, element, upright, head };
  const judged = judgeForm(ask, element.form);
  const { sheet: form, findings } = formSheet(ask, element.form, judged, build.site.units);
  const pressure = pressed === null ? null : withFastest(build, ask, element.form, pressed.pressure);
  const fixes = element.form === null || form === null ? [] : fixesOf(build, ask, element.form, form, pressure);
  const small = pressure === null ? [] : heldSmall(pour, ask, pressure, mostOf(judged));
  return {
    sheet: { element: at, ...measures(element, pour.mix.weight_kg_m3), pressure, form, fixes },
    findings: [...(pressed?.findings ?? []), ...findings, ...small],
  };
}

function withFastest(build: Build, ask: FormAsk, form: FormSpec | null, pressure: Pressure): Pressure {
  if (form === null || ask.upright === null) return pressure;
  const full: Head = headOf(ask.upright.high_mm, pressure.hose, ask.upright.over_mm);
  return { ...pressure, fastest_m_h: fastest_m_h(build, ask.pour, ask.upright, ask, form, full) };
}

/** Judged by a held rate although a hose fills it in minutes: what it would carry then stands beside it. */
function heldSmall(pour: Pour, ask: FormAsk, pressure: Pressure, held_of100: number): Finding[] {
  const { upright, element } = ask;
  if (pressure.design !== "held" || !pressure.hose.why.includes("short and small in plan") || upright === null) return [];
  const hose_min = (upright.high_mm / 1000 / hoseRise_m_h(pour, element)) * 60;
  const hose_of100 = mostOf(judgeForm({ ...ask, head: headOf(upright.high_mm, pressure.hose, upright.over_mm) }, element.form));
  return [found(pour, "pressure.held-small", "look", { element: element.id, hose_min, held_of100, hose_of100 }, "elements")];
}

interface Kept {
  readonly key: string;
  readonly sheet: PourSheet;
}

const kept = new WeakMap<Pour, Kept>();

/** What a pour's forms are judged by besides the pour itself. */
function settingsOf(build: Build, p: number): string {
  const pour = build.pours[p] as Pour;
  const who = pour.elements.map(({ held }) => (held?.who == null ? "" : (build.people[build.at.person.get(held.who) ?? -1]?.name ?? "")));
  const first = build.people[0];
  return JSON.stringify([p, build.pressure, build.site.units, first?.id ?? "", first?.name ?? "", who]);
}

/** The elements of a pour, kept while the pour and what governs it are the same: they are most of the work. */
const forms = new WeakMap<Pour, { readonly key: string; readonly made: readonly Made[] }>();

function madeOf(build: Build, pour: Pour, key: string): readonly Made[] {
  const known = forms.get(pour);
  if (known?.key === key) return known.made;
  const made = pour.elements.map((_, at) => elementSheet(build, pour, at));
  forms.set(pour, { key, made });
  return made;
}

/**
 * Everything of one pour that needs no date: pressure, forms, what gives first and what would make it hold, and its day. The same object comes back while the pour,
 * the build's settings and what its day reads of the rest of the build are the same.
 * @param p position in `build.pours`
 */
export function pourSheet(build: Build, p: number): PourSheet {
  const pour = build.pours[p] as Pour;
  const settings = settingsOf(build, p);
  const made = madeOf(build, pour, settings);
  const { day, findings: ofDay } = pourDay(build, p);
  const others = [
    ...pour.elements.flatMap((element) => barFindings(build, pour, element)),
    ...footingFindings(build, p),
    ...staysUnsaid(pour),
    ...ofDay,
  ];
  const key = keyOf(settings, day, others);
  const known = kept.get(pour);
  if (known?.key === key) return known.sheet;
  const findings = [...assumedOf(pour, made), ...made.flatMap((one) => one.findings), ...others];
  const sheet: PourSheet = {
    pour: p,
    elements: made.map((one) => one.sheet),
    day,
    findings,
    ready: !findings.some(({ severity }) => severity === "stop"),
  };
  kept.set(pour, { key, sheet });
  return sheet;
}

/** What a pressure rests on and nobody wrote down: of full head its weight, of a lower one also what its formula asks about. */
function assumedOf(pour: Pour, made: readonly Made[]): Finding[] {
  const pressures = made.flatMap(({ sheet }) => (sheet.pressure === null ? [] : [sheet.pressure]));
  const rests = new Set(
    pressures.some(({ design }) => design === "held")
      ? ["mix.weight", "mix.slump", "mix.cement", "mix.retarder", "weather.concrete"]
      : ["mix.weight"],
  );
  const keys = pressures.length === 0 ? [] : pour.assumed.filter((key) => rests.has(key));
  return keys.length === 0 ? [] : [found(pour, "pressure.assumed", "look", { keys }, "mix")];
}

const keyOf = (settings: string, day: PourDay | null, findings: readonly Finding[]): string => JSON.stringify([settings, day, findings]);

/** Sheets of all pours of a build, in document order. */
export function pourSheets(build: Build): readonly PourSheet[] {
  return build.pours.map((_, p) => pourSheet(build, p));
}
