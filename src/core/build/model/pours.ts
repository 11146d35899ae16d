import type { PersonId, PieceId, StepId, StockId } from "../../base";
import type { BarSize, PouredShape } from "../../concrete";
import type { Amount, LocalMoment, Source } from "./amounts";
import type { FormSpec } from "./forms";

/** Whose formula gives the pressure of fresh concrete; chosen once for a build, never by the units shown. */
export type PressureDocument = "aci-us" | "aci-si" | "ciria" | "din";

/** I, II, III: Portland cements. blend: under 70 % slag or 40 % fly ash; slow blend: more than that. */
export type PourCement = "I" | "II" | "III" | "blend" | "slow blend";

export interface Mix {
  /** Specified at 28 days. */
  readonly strength_MPa: number;
  readonly cement: PourCement;
  /** Anything that delays the set, water reducers and superplasticizers included. */
  readonly retarder: boolean;
  readonly weight_kg_m3: number;
  readonly slump_mm: number;
  /** Cement in a volume of concrete; null where not said. */
  readonly cement_kg_m3: number | null;
  /** Largest aggregate. */
  readonly aggregate_mm: number | null;
  /** Bleeds little (silica fume, much fines): plastic cracks come at half the evaporation. */
  readonly lowBleed: boolean;
  /** For the DIN formula: class of consistency and end of setting. */
  readonly consistency: "F1" | "F2" | "F3" | "F4" | "F5" | "F6" | "SCC" | null;
  readonly setting_min: number | null;
  readonly from: Source | null;
}

/** Weather expected on the pour day, as entered; what the site's own date brings is a finding, never an iteration. */
export interface PourWeather {
  readonly concrete_C: number;
  readonly air_C: number | null;
  readonly humidity_percent: number | null;
  readonly wind_km_h: number | null;
}

/** `long` and `wide` are plan dimensions; a round one has its diameter in both. The shapes are those whose volume and faces are known. */
export type ElementShape = PouredShape;

export type FaceName = "a" | "b" | "ends" | "sides" | "edges" | "soffit" | "top";

/** What a face is cast against. A face that is not named is formed, a top is free, the underside of a footing or slab is earth. */
export interface Face {
  readonly face: FaceName;
  readonly against: "form" | "earth" | "old work" | "free";
  readonly visible: boolean;
}

/** Concrete left out (a rebate, a window, a block of foam), `number` of them; subtracted from the volume. */
export interface Rebate {
  readonly long_mm: number;
  readonly wide_mm: number;
  readonly deep_mm: number;
  readonly number: number;
}

/** The rate written as an act: passes of so much, so many minutes apart, kept by one named person with a stick and a watch. */
export interface HeldRate {
  readonly pass_mm: number;
  readonly every_min: number;
  readonly who: PersonId | null;
}

export interface BarSet {
  readonly name: string;
  /** Bar number of ASTM A615 (4 is half an inch), or a metric diameter ("12 mm"). */
  readonly size: BarSize;
  readonly number: number;
  readonly long_mm: number;
  readonly spacing_mm: number | null;
  readonly yield_MPa: number;
  readonly cover_mm: number | null;
  readonly exposure: "against ground" | "weather or ground" | "inside slab or wall" | "inside beam or column";
  /** Ties around the others; a mat is stood on while it is placed. */
  readonly sort: "bar" | "tie" | "mat";
  /** Free length between chairs or hangers. */
  readonly supported_mm: number | null;
  readonly from: Source | null;
}

export interface PourElement {
  /** Unique in its pour. */
  readonly id: string;
  readonly name: string;
  /** So many alike, each with a form of its own. */
  readonly number: number;
  readonly shape: ElementShape;
  readonly faces: readonly Face[];
  readonly rebates: readonly Rebate[];
  readonly held: HeldRate | null;
  readonly form: FormSpec | null;
  readonly bars: readonly BarSet[];
  /** The pieces of the build that are this element and its form, for drawing and for finding it from a step. */
  readonly pieces: readonly PieceId[];
}

/** A strength measured: a broken cylinder, a meter in the concrete. */
export interface Break {
  readonly at: LocalMoment;
  readonly strength_MPa: number;
  readonly by: Source;
}

export type RemovalSort = "sides" | "soffit" | "shores" | "backfill" | "load" | "anchors";

/** Something that waits for a pour: what comes off or onto it, in which step, and on which ground. */
export interface Removal {
  readonly sort: RemovalSort;
  readonly step: StepId;
  /** Kind, clear span and loads of a soffit, for the table of least days. */
  readonly soffit: "arch" | "beam" | "slab";
  readonly span_mm: number | null;
  readonly liveExceedsDead: boolean;
  readonly shoresStay: boolean;
  /** Share of the specified strength asked for, thousandths; null: what is usual for its sort. */
  readonly share: number | null;
  /** The drawing's days, or a shorter choice, with who said so. */
  readonly days: Amount | null;
  readonly saidBy: Source | null;
  /** Its place among the pour's removals as written, counted from 1: one entry may speak of many steps alike. */
  readonly entry?: number;
}

/** How it is kept wet or sealed, and warm. */
export interface Cure {
  readonly how: "wet" | "covered" | "compound" | "in the form" | null;
  readonly days: number | null;
  /** Blankets or heat that hold at least so much for so long after placing. */
  readonly held_C: number | null;
  readonly heldFor_min: number | null;
  readonly exposed: boolean;
}

export interface PourGround {
  readonly truck_kg: number | null;
  readonly slope_percent: number | null;
  /** none: somebody looked, and no wires hang there. */
  readonly wiresAbove_mm: number | "none" | null;
  readonly hoseReach_mm: number | null;
  readonly hoseNeeded_mm: number | null;
  readonly washout: string | null;
}

/** One placing of concrete: what the step that does it pours, into which elements, in this order. */
export interface Pour {
  readonly id: string;
  readonly name: string;
  readonly step: StepId;
  readonly mix: Mix;
  readonly weather: PourWeather;
  readonly placed: "chute" | "hose" | "from the base" | "by hand";
  /** What the hose, chute or mixer gives while it runs, m3/h. */
  readonly rate_m3_h: number;
  readonly vibrated_mm: number | null;
  readonly externalVibration: boolean;
  /** In the order of placing. */
  readonly elements: readonly PourElement[];
  /** Between the columns and what stands on them. */
  readonly pause: { readonly least_min: number; readonly most_min: number } | null;
  readonly truck_m3: number | null;
  readonly waste_percent: number | null;
  /** Left in line and hopper, and the grout that starts the pump. */
  readonly hopper_m3: number;
  readonly prime_m3: number;
  readonly cure: Cure;
  readonly breaks: readonly Break[];
  readonly removals: readonly Removal[];
  readonly ground: PourGround;
  /** Stock the concrete itself is bought as (sacks), null: ready-mixed. */
  readonly sacks: StockId | null;
  /** People who come for this pour alone, beside the hands of its step: they are asked for, and no other step counts on them. Left out: none. */
  readonly helpers?: number;
  readonly from: Source | null;
  /** Keys that are not written and were taken as usual ("mix.weight", "elements.columns.form.sheathing.class"). */
  readonly assumed: readonly string[];
}
