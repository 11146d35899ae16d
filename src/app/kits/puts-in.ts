import { writtenId } from "../../core/base";
import type { Build, Part } from "../../core/build";
import { counted } from "../../words";

/** What a part comes to in a build that holds it. */
export interface PutsIn {
  /** Without copies: as they are written. */
  readonly steps: number;
  /** Work times people, as likely. */
  readonly hours: number;
  readonly pours: number;
  /** Names, in document order. */
  readonly deliveries: readonly string[];
  readonly holdPoints: readonly string[];
  readonly bookings: readonly string[];
}

/** Counted from the build as read: what the part made and is still there. */
export function putsIn(build: Build, part: Part): PutsIn {
  const mine = (list: string): ((member: { readonly id: string }) => boolean) => {
    const ids = new Set(part.made[list] ?? []);
    return ({ id }) => ids.has(writtenId(id));
  };
  const steps = build.steps.filter(mine("steps"));
  const once = (members: readonly { readonly name: string }[]): readonly string[] => [...new Set(members.map(({ name }) => name))];
  const minutes = steps.reduce((sum, step) => sum + step.work.likely_min * step.hands.reduce((hands, need) => hands + need.number, 0), 0);
  return {
    steps: new Set(steps.map(({ id }) => writtenId(id))).size,
    hours: Math.round(minutes / 60),
    pours: build.pours.filter(mine("pours")).length,
    deliveries: once(build.deliveries.filter(mine("deliveries"))),
    holdPoints: once(steps.filter((step) => step.holdPoint !== null)),
    bookings: once(build.bookings.filter(mine("bookings"))),
  };
}

/** The first step of a part in a build, to be looked at; null where it has none left. */
export function firstStepOf(build: Build, part: Part): string | null {
  const ids = new Set(part.made.steps ?? []);
  return build.steps.find(({ id }) => ids.has(writtenId(id)))?.id ?? null;
}

export interface PutsInLine {
  readonly what: string;
  /** Empty where the names say it. */
  readonly says: string;
  readonly names: readonly string[];
}

/** The counts in the order in which a builder asks for them; what there is none of is left out, but for hold points: none is an answer too. */
export function putsInLines({ steps, hours, pours, deliveries, holdPoints, bookings }: PutsIn): readonly PutsInLine[] {
  const line = (what: string, names: readonly string[]): readonly PutsInLine[] => (names.length === 0 ? [] : [{ what, says: "", names }]);
  return [
    { what: "work", says: `${counted(steps, "step")}, ${counted(hours, "hour")} of work`, names: [] },
    ...(pours === 0 ? [] : [{ what: "concrete", says: `${counted(pours, "pour")}, with the form and its figures`, names: [] }]),
    ...line("to order", deliveries),
    ...line("to ask for", bookings),
    { what: "hold points", says: holdPoints.length === 0 ? "none" : "", names: holdPoints },
  ];
}
