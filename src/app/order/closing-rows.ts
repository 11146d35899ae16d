import { never } from "../../core/base";
import type { Build, Piece } from "../../core/build";
import { siteTime } from "../../core/clock";
import type { ClosingDate, Plan } from "../../core/plan";
import { clockLabel, dateLabel } from "../../draw";
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
  readonly before: readonly { readonly what: string; readonly steps: readonly ClosingStep[] }[];
}

const sorts = [
  { what: "done", of: ["work"] },
  { what: "in place", of: ["embed"] },
  { what: "checked", of: ["check"] },
  { what: "seen by the inspector", of: ["inspection"] },
  { what: "photographed", of: ["photograph"] },
] as const;

/** The closings in date order, each with what must come before it. Closings that nothing need come before are left out. */
export function closingRows(build: Build, plan: Plan): readonly ClosingRow[] {
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
        closes: closesWhat(build, piece),
        until: dated ? untilWhen(closing, (t) => dateLabel(time, t)) : "",
        before: sorts.flatMap(({ what, of }) => {
          const steps = closing.before
            .filter((entry) => (of as readonly string[]).includes(entry.what))
            .map((entry) => ({ id: build.steps[entry.step]?.id ?? "", name: shownName(build.steps[entry.step]), forced: entry.forced }));
          return steps.length > 0 ? [{ what, steps }] : [];
        }),
      },
    ];
  });
}

/** "Pier cage: north, south; Joint" of the ways it closes, and the places it fills. */
export function closesWhat(build: Build, piece: Piece): string {
  const byPlace = new Map<string, string[]>();
  for (const ref of piece.closes) byPlace.set(ref.place, [...(byPlace.get(ref.place) ?? []), ref.way]);
  const closed = [...byPlace].map(([place, ways]) => {
    const known = build.places[build.at.place.get(place) ?? -1];
    if (!known || ways.length === known.ways.length) return known ? shownName(known) : place;
    const names = ways.map((way) => known.ways.find((candidate) => candidate.id === way || candidate.full === way)?.name ?? way);
    return `${shownName(known)} (${names.join(", ")})`;
  });
  const filled = piece.fills.map((place) => shownName(build.places[build.at.place.get(place) ?? -1]) || place);
  return [closed.length > 0 ? `closes ${closed.join("; ")}` : "", filled.length > 0 ? `fills ${filled.join("; ")}` : ""]
    .filter((part) => part !== "")
    .join("; ");
}

function untilWhen(closing: ClosingDate, day: (t: number) => string): string {
  if (closing.forGood) return "for good";
  return closing.opensAgain === null || closing.opensAgain >= never ? "" : `opens again ${day(closing.opensAgain)}`;
}

const months = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

function monthAndYear(date: string): string {
  return `${months[Number(date.slice(5, 7)) - 1]} ${date.slice(0, 4)}`;
}
