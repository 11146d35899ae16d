import { writtenId } from "../../core/base";
import type { Build, Pour } from "../../core/build";
import { siteTime } from "../../core/clock";
import type { Plan } from "../../core/plan";
import type { ElementSheet, PourSheet } from "../../core/pour";
import { dateLabel } from "../../draw";
import { of100, partWords, spelled, volumeWords } from "../../words";
import { shownName } from "../state/names";

interface ElementRow {
  readonly id: string;
  readonly name: string;
  /** What gives first, or what is missing. */
  readonly says: string;
  readonly over: boolean;
  /** Of what may be carried, by what gives first; null without a form or figures. */
  readonly of100: number | null;
}

export interface PourRow {
  readonly id: string;
  readonly name: string;
  /** Of its step in the plan; empty while there are no dates. */
  readonly date: string;
  readonly line: string;
  /** How many things stand in the way. */
  readonly stops: number;
  readonly elements: readonly ElementRow[];
}

/** A step that pours, without a word about what. */
export interface BareStep {
  readonly id: string;
  readonly name: string;
  readonly date: string;
}

type Units = "us" | "metric";

export interface Dated {
  readonly plan: Plan | null;
  readonly planOf: Build | null;
}

/** Day of a step by its id, or of its first copy; null while the plan has none. */
function startOf({ plan, planOf }: Dated, step: string): number | null {
  if (plan === null || planOf === null || plan.status !== "planned") return null;
  const index = planOf.at.step.get(step) ?? planOf.at.step.get(`${step}#1`);
  return index === undefined ? null : (plan.steps[index]?.start ?? null);
}

function dateOf(dated: Dated, step: string): string {
  const start = startOf(dated, step);
  return start === null || dated.planOf === null ? "" : dateLabel(siteTime(dated.planOf.site.zone, dated.planOf.start), start);
}

function elementRow(pour: Pour, sheet: ElementSheet): ElementRow {
  const element = pour.elements[sheet.element];
  const first = sheet.form?.members[sheet.form.first];
  const over = first !== undefined && first.of100 > 100;
  const says =
    first !== undefined
      ? `${partWords(first.part).replace(/^the /, "")} ${of100(first.of100)}`
      : element?.form
        ? "no figures"
        : sheet.pressure === null
          ? "no form"
          : "no form written";
  const number = element && element.number > 1 ? `, ${element.number} alike` : "";
  return { id: element?.id ?? "", name: `${element?.name ?? ""}${number}`, says, over, of100: first?.of100 ?? null };
}

/** "5.4 yd³, one truck, six hands"; empty where the day cannot be worked out. */
function dayLine({ day }: PourSheet, units: Units): string {
  if (day === null) return "";
  const hands = day.hands.reduce((sum, { number }) => sum + number, 0);
  return [
    volumeWords(day.order_m3, units),
    ...(day.trucks.length > 0 ? [spelled(day.trucks.length, "truck")] : []),
    ...(hands > 0 ? [spelled(hands, "hand")] : []),
  ].join(", ");
}

/** Every pour with its elements, in the order of the dates. */
export function pourRows(build: Build, sheets: readonly PourSheet[], dated: Dated, units: Units): PourRow[] {
  const starts = new Map(build.pours.map((pour) => [pour.id, startOf(dated, pour.step) ?? Number.POSITIVE_INFINITY]));
  return sheets
    .flatMap((sheet): PourRow[] => {
      const pour = build.pours[sheet.pour];
      if (pour === undefined) return [];
      return [
        {
          id: pour.id,
          name: shownName(pour),
          date: dateOf(dated, pour.step),
          line: dayLine(sheet, units),
          stops: sheet.findings.filter(({ severity }) => severity === "stop").length,
          elements: sheet.elements.map((element) => elementRow(pour, element)),
        },
      ];
    })
    .sort((a, b) => (starts.get(a.id) ?? 0) - (starts.get(b.id) ?? 0));
}

/** Steps of sort pour that no pour is written for. A group's step stands once. */
export function bareSteps(build: Build, dated: Dated): BareStep[] {
  const written = new Set(build.pours.map(({ step }) => writtenId(step)));
  const seen = new Set<string>();
  return build.steps.flatMap((step) => {
    const id = writtenId(step.id);
    if (step.sort !== "pour" || written.has(id) || seen.has(id)) return [];
    seen.add(id);
    return [{ id, name: step.name, date: dateOf(dated, step.id) }];
  });
}
