import type { Cure, FormSpec, Mix, Pour, PourElement, PourWeather, Removal } from "../model";
import type { AmountDraft } from "./amounts";

/** A pour as read by itself: references as written, and null for what the site's units decide where nothing is written. */
export interface PourDraft
  extends Pick<Pour, "name" | "vibrated_mm" | "externalVibration" | "truck_m3" | "waste_percent" | "breaks" | "ground" | "from"> {
  readonly id: string;
  readonly step: string;
  readonly mix: MixDraft;
  readonly weather: Omit<PourWeather, "concrete_C"> & { readonly concrete_C: number | null };
  readonly placed: Pour["placed"] | null;
  readonly rate_m3_h: number | null;
  readonly elements: readonly ElementDraft[];
  readonly pause: Pour["pause"];
  readonly hopper_m3: number | null;
  readonly prime_m3: number | null;
  readonly cure: Cure;
  readonly removals: readonly RemovalDraft[];
  readonly sacks: string | null;
  readonly helpers?: number;
}

export interface MixDraft extends Omit<Mix, "cement" | "retarder" | "weight_kg_m3" | "slump_mm"> {
  readonly cement: Mix["cement"] | null;
  readonly retarder: boolean | null;
  readonly weight_kg_m3: number | null;
  readonly slump_mm: number | null;
}

export interface ElementDraft extends Omit<PourElement, "held" | "pieces" | "bars"> {
  readonly held: { readonly pass_mm: number; readonly every_min: number; readonly who: string | null } | null;
  readonly bars: readonly (Omit<PourElement["bars"][number], "yield_MPa"> & { readonly yield_MPa: number | null })[];
  readonly pieces: readonly string[];
  /** What is taken as usual in its form, as keys ("form.sheathing.class"). */
  readonly assumed: readonly string[];
}

export interface RemovalDraft extends Omit<Removal, "step" | "days" | "soffit" | "entry"> {
  readonly step: string;
  readonly soffit: Removal["soffit"] | null;
  readonly days: AmountDraft | null;
}

/** A form with what was taken as usual in it. */
export interface ReadForm {
  readonly form: FormSpec;
  readonly assumed: readonly string[];
}
