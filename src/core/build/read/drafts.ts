import type { Passage, PassageKind, Piece, Place, Step, Wait } from "../model";
import type { AmountDraft } from "./amounts";

/**
 * Members as read one by one: converted, with references still as written. Each depends on nothing but its own text, so it is
 * read once and kept for as long as the document holds that very object.
 */
export interface AimDraft {
  readonly place: string;
  readonly kind: PassageKind;
  readonly depth_mm: number;
  /** The piece that is carried, for a unit. */
  readonly piece: string | null;
}

/** One aim, or several of which any is enough. */
export interface ReachDraft {
  readonly any: readonly AimDraft[];
  readonly several: boolean;
}

export interface WayDraft {
  readonly id: string;
  readonly name: string;
  readonly passes: readonly PassageKind[];
  readonly depth_mm: number | null;
  readonly opening_mm: { readonly wide: number; readonly high: number } | null;
  readonly longest_mm: number | null;
  readonly bears_kg: number | null;
  readonly through: AimDraft | null;
}

export interface PlaceDraft extends Omit<Place, "id" | "ways" | "below" | "layerOf" | "group"> {
  readonly id: string;
  readonly ways: readonly WayDraft[];
  readonly below: readonly string[];
  readonly layerOf: string | null;
}

export interface PieceDraft {
  readonly id: string;
  readonly fixed: Pick<Piece, "name" | "fromStart" | "claimsToHoldItself" | "size_mm" | "mass_kg" | "sort" | "from">;
  readonly goesAfter: AmountDraft | null;
  readonly holdsItself: AmountDraft | null;
  readonly closes: readonly string[];
  readonly fills: readonly string[];
  readonly makes: readonly string[];
  readonly heldBy: readonly (readonly string[])[];
  readonly off: readonly ReachDraft[];
  readonly uses: readonly { readonly of: string; readonly number: number; readonly loss: number }[];
}

type StepFixed = Pick<
  Step,
  | "name"
  | "sort"
  | "work"
  | "hands"
  | "notAlone"
  | "unbroken"
  | "notBefore"
  | "deadline"
  | "fixed"
  | "weather"
  | "tools"
  | "materials"
  | "cautions"
  | "notes"
  | "pour"
  | "done"
  | "begun"
  | "from"
>;

export interface StepDraft {
  readonly id: string;
  readonly own: StepFixed;
  /** What is not written, and follows from a pour where the step has one. */
  readonly unsaid: { readonly sort: boolean; readonly work: boolean; readonly unbroken: boolean };
  readonly place: string | null;
  readonly calendar: string | null;
  readonly reaches: readonly ReachDraft[];
  readonly puts: readonly string[];
  readonly takes: readonly string[];
  readonly closes: readonly string[];
  readonly leansOn: readonly { readonly piece: string; readonly once: AmountDraft | null }[];
  readonly alone: readonly string[];
  readonly after: readonly string[];
  readonly needs: readonly string[];
  readonly equipment: readonly { readonly of: string; readonly number: number }[];
  readonly holdPoint: readonly string[] | null;
  readonly trial: {
    readonly rounds: number;
    readonly gap: AmountDraft | null;
    readonly decides: readonly string[];
    readonly what: string;
  } | null;
}

export interface WaitDraft extends Pick<Wait, "name" | "fromEnd" | "toEnd" | "visits" | "why"> {
  readonly id: string | null;
  readonly from: string;
  readonly to: string;
  readonly least: AmountDraft | null;
  readonly most: AmountDraft | null;
}

export interface ChoiceDraft {
  readonly id: string;
  readonly name: string;
  readonly either: readonly { readonly name: string; readonly waits: readonly WaitDraft[] }[];
}

export interface DeliveryDraft {
  readonly id: string;
  readonly name: string;
  readonly calendar: string | null;
  readonly promised: string | null;
  readonly lead: AmountDraft | null;
  readonly ordered: boolean;
  readonly brings: readonly { readonly of: string; readonly number: number }[];
  readonly notes: string;
}

export interface BookingDraft {
  readonly id: string;
  readonly name: string;
  readonly step: string;
  readonly calendar: string | null;
  readonly date: string | null;
  readonly lead: AmountDraft | null;
  readonly booked: boolean;
}

export interface PersonDraft {
  readonly id: string;
  readonly name: string;
  readonly calendar: string | null;
  readonly roles: readonly string[];
  readonly daysOffSpent: readonly string[];
  readonly daysOffBudget: number;
  readonly away: readonly string[];
}

export interface GroupDraft {
  readonly id: string;
  readonly name: string;
  readonly count: number;
  readonly members: readonly string[];
  /** By copy, then by member: what that copy has of its own. */
  readonly differences: ReadonlyMap<number, ReadonlyMap<string, Readonly<Record<string, unknown>>>>;
}

export type NeedKind = Passage["kind"];
