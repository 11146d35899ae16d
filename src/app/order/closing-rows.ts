import { type Display, never } from "../../core/base";
import type { Build } from "../../core/build";
import { siteTime } from "../../core/clock";
import type { ClosingDate, Plan } from "../../core/plan";
import { clockLabel, dateLabel } from "../../draw";
import { pieceCloses, stepCautions } from "../../words";
import { shownName } from "../state/names";

interface ClosingStep {
  readonly id: string;
  readonly name: string;
  /** False: another order is possible too, this one is chosen. */
  readonly forced: boolean;
}

export interface ClosingRow {
  readonly key: string;
  readonly piece: { readonly id: string; readonly name: string };
  readonly step: { readonly id: string; readonly name: string };
  /** "Sat 19 Jun", "15:30"; empty while there are no dates. */
  readonly day: string;
  readonly time: string;
  readonly month: string;
  readonly closes: string;
  /** "closed for good", "opens again Sun 4 Jul", or empty. */
  readonly until: string;
  /** In this order: must be in, checked, seen by the inspector, photographed. */
  readonly before: readonly BeforeGroup[];
  /** What can hurt someone at the step that closes. */
  readonly cautions: readonly string[];
}

interface BeforeGroup {
  readonly what: string;
  readonly steps: readonly ClosingStep[];
}

const sorts = [
  { what: "done", of: ["work"] },
  { what: "in place", of: ["embed"] },
  { what: "checked", of: ["check"] },
  { what: "seen by the inspector", of: ["inspection"] },
  { what: "photographed", of: ["photograph"] },
] as const;

/** The closings in date order, each with what must come before it. Closings that nothing need come before are left out. */
export function closingRows(build: Build, plan: Plan, units?: Display): readonly ClosingRow[] {
  const time = siteTime(build.site.zone, build.start);
  const dated = plan.status === "planned";
  const closings = dated ? [...plan.closings].sort((a, b) => a.at - b.at) : plan.closings;
  return closings.flatMap((closing, index): ClosingRow[] => {
    const piece = build.pieces[closing.piece];
    const step = build.steps[closing.step];
    if (!piece || !step || closing.before.length === 0) return [];
    return [
      {
        key: `${piece.id} ${step.id} ${index}`,
        piece: { id: piece.id, name: shownName(piece) },
        step: { id: step.id, name: shownName(step) },
        day: dated ? dateLabel(time, closing.at) : "",
        time: dated ? clockLabel(time, closing.at) : "",
        month: dated ? monthAndYear(time.local(closing.at).date) : "",
        closes: pieceCloses(closing.piece, build, units),
        until: dated ? untilWhen(closing, (t) => dateLabel(time, t)) : "",
        before: groupsBefore(build, closing.before),
        cautions: stepCautions(build, step),
      },
    ];
  });
}

/** What must come before a closing, by sort; empty sorts are left out. */
export function groupsBefore(build: Build, before: ClosingDate["before"]): readonly BeforeGroup[] {
  return sorts.flatMap(({ what, of }) => {
    const steps = before
      .filter((entry) => (of as readonly string[]).includes(entry.what))
      .map((entry) => ({ id: build.steps[entry.step]?.id ?? "", name: shownName(build.steps[entry.step]), forced: entry.forced }));
    return steps.length > 0 ? [{ what, steps }] : [];
  });
}

function untilWhen(closing: ClosingDate, day: (t: number) => string): string {
  if (closing.forGood) return "for good";
  return closing.opensAgain === null || closing.opensAgain >= never ? "" : `opens again ${day(closing.opensAgain)}`;
}

const months = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

function monthAndYear(date: string): string {
  return `${months[Number(date.slice(5, 7)) - 1]} ${date.slice(0, 4)}`;
}
