import type { CalendarId, ChoiceId, DeliveryId, EquipmentId, PieceId, PlaceId, StepId, WaitId } from "../../base";
import type { Amount, LocalMoment, Source } from "./amounts";
import type { PourCement, RemovalSort } from "./pours";
import type { Membership, Reach } from "./structure";

export interface HandsNeed {
  /** "hands" is anybody. */
  readonly role: string;
  readonly number: number;
}

export type StepSort = "work" | "embed" | "check" | "photograph" | "inspection" | "pour" | "office";

export interface Step {
  readonly id: StepId;
  readonly name: string;
  readonly sort: StepSort;
  /** The lane it is drawn in. */
  readonly place: PlaceId | null;
  /** Minutes on its calendar with the people it asks for; of a step that is begun, what is left of them. */
  readonly work: { readonly low_min: number; readonly likely_min: number; readonly high_min: number };
  readonly hands: readonly HandsNeed[];
  readonly notAlone: boolean;
  readonly calendar: CalendarId;
  readonly unbroken: boolean;
  readonly reaches: readonly Reach[];
  readonly puts: readonly PieceId[];
  readonly takes: readonly PieceId[];
  readonly leansOn: readonly { readonly piece: PieceId; readonly once: Amount | null }[];
  readonly alone: readonly PlaceId[];
  readonly needs: readonly DeliveryId[];
  readonly equipment: readonly { readonly of: EquipmentId; readonly number: number }[];
  readonly notBefore: LocalMoment | null;
  readonly deadline: LocalMoment | null;
  readonly fixed: LocalMoment | null;
  readonly weather: {
    readonly lowest_C: number | null;
    readonly highest_C: number | null;
    readonly wind_km_h: number | null;
    readonly dry: boolean;
  } | null;
  readonly tools: readonly string[];
  readonly materials: readonly string[];
  readonly cautions: readonly string[];
  readonly notes: string;
  readonly holdPoint: { readonly places: readonly PlaceId[] } | null;
  /** `round` counts from 1; a trial in several rounds is as many steps, "id#1" and on. */
  readonly trial: { readonly rounds: number; readonly round: number; readonly decides: readonly StepId[]; readonly what: string } | null;
  /** Taken from the pour of this step where one is written. */
  readonly pour: { readonly strength_MPa: number; readonly cement: PourCement } | null;
  /** When it was really begun and finished; null: not done yet. A done step does not move. */
  readonly done: { readonly start: LocalMoment; readonly finish: LocalMoment } | null;
  /** Part of it is done: how much it is in all. Null where it is not begun, or done. */
  readonly begun: { readonly whole_min: number } | null;
  readonly from: Source | null;
  readonly group: Membership | null;
}

/** `from` finishes (or starts) ... before `to` starts (or finishes). Least and most on one clock; visits while it runs. */
export interface Wait {
  readonly id: WaitId;
  readonly name: string;
  readonly from: StepId;
  readonly to: StepId;
  readonly fromEnd: "start" | "finish";
  readonly toEnd: "start" | "finish";
  readonly least: Amount | null;
  readonly most: Amount | null;
  readonly visits: { readonly every_min: number; readonly lasts_min: number; readonly who: string; readonly for: string } | null;
  readonly why: string;
  /** Written as a step's `after`, with no entry of its own. */
  readonly plain: boolean;
  /** Made from what a pour says of its forms and loads; on which ground. */
  readonly removal?: {
    readonly pour: string;
    readonly sort: RemovalSort;
    readonly ground: "table" | "curve" | "28 days" | "days" | "12 h" | "shown";
  };
}

/** Either all waits of one alternative hold, or all of another. */
export interface Choice {
  readonly id: ChoiceId;
  readonly name: string;
  readonly either: readonly { readonly name: string; readonly waits: readonly Wait[] }[];
}
