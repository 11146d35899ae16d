/** Layers and hands of placing. Rules of the trade, each marked; own arithmetic. */
import { foot_m2, type PouredShape } from "./volume";

/** A layer is at most 20 in deep (ACI 309, from memory). */
const layer_mm = 508;

/** A slab is placed in strips of about 6 ft across its shorter side (common practice, no source). */
const strip_mm = 1829;

/** Minutes until concrete meets the layer or strip placed before it: the time of one layer of a standing element, one strip of a laid one. */
export function layer_min(shape: PouredShape, rate_m3_h: number): number {
  return (layer_m3(shape) / rate_m3_h) * 60;
}

function layer_m3(shape: PouredShape): number {
  switch (shape.kind) {
    case "column":
    case "pier":
    case "wall":
      return (foot_m2(shape) * Math.min(shape.high_mm, layer_mm)) / 1e3;
    case "barrel":
      // Both haunches rise together, so that the centering is not pushed aside.
      return (2 * layer_mm * shape.thick_mm * shape.long_mm) / 1e9;
    case "stair":
      return (shape.wide_mm * strip_mm * (shape.thick_mm + shape.riser_mm / 2)) / 1e9;
    default: {
      const [short, long] = [Math.min(shape.long_mm, shape.wide_mm), Math.max(shape.long_mm, shape.wide_mm)];
      return (short * Math.min(strip_mm, long) * shape.thick_mm) / 1e9;
    }
  }
}

const pourRoles = ["hose", "chute", "mixer", "carry", "vibrator", "spread", "screed", "watch"] as const;
export type PourRole = (typeof pourRoles)[number];
export type Placed = "chute" | "hose" | "from the base" | "by hand";

/** The fastest rise for which ACI 347R-14 gives a lower figure than full head, 15 ft/h or 4.5 m/h (4.2.2.1): what is let down a chute is throttled to it (common practice, no source). */
export const throttled = { us: { rise_m_h: 15 * 0.3048, lift_mm: 406.4 }, si: { rise_m_h: 4.5, lift_mm: 400 } } as const;

/** A chute, or a gang with buckets, can wait between lifts; a hose cannot. */
export const canWait = (placed: Placed): boolean => placed === "chute" || placed === "by hand";

/** From the start of one lift to the next at the throttled rise, whole minutes, rounded up. */
export const everyLift_min = ({ rise_m_h, lift_mm }: { readonly rise_m_h: number; readonly lift_mm: number }): number =>
  Math.ceil((lift_mm / 1000 / rise_m_h) * 60 - 1e-9);

export interface RoleHands {
  readonly role: PourRole;
  readonly number: number;
}

/** From this area on the hose of a slab takes two (common practice, no source). */
const longHose_m2 = 20;

/** One mixer and who feeds it give about so much; slower than half of it the same hand brings it to the form (common practice, no source). */
const mixer_m3_h = 0.5;

/**
 * Who it takes to place it (common practice, no source): a pumped slab five or six. What stands takes three: one at the hose, one with the vibrator, one who
 * watches form and height. A footing is struck off by who spreads it. Where a pour has several, the larger crew. Mixed by hand it comes slowly: one places.
 * @param floated_m2 what is screeded and floated, 0 where nothing is
 */
export function handsFor(placed: Placed, stands: boolean, floated_m2: number, rate_m3_h: number): RoleHands[] {
  const slow = placed === "by hand" && rate_m3_h < mixer_m3_h;
  const screed: RoleHands[] = floated_m2 > 0 ? [{ role: "screed", number: 2 }] : [];
  if (slow) return [...bring(placed, floated_m2, rate_m3_h), { role: "vibrator", number: 1 }, ...screed];
  const place: RoleHands[] =
    floated_m2 > 0 || !stands
      ? [{ role: "spread", number: 1 }, { role: "vibrator", number: 1 }, ...screed]
      : [
          { role: "vibrator", number: 1 },
          { role: "watch", number: 1 },
        ];
  return [...bring(placed, floated_m2, rate_m3_h), ...place];
}

function bring(placed: Placed, floated_m2: number, rate_m3_h: number): RoleHands[] {
  if (placed === "chute") return [{ role: "chute", number: 1 }];
  if (placed !== "by hand") return [{ role: "hose", number: placed === "hose" && floated_m2 >= longHose_m2 ? 2 : 1 }];
  const mixers = Math.max(1, Math.ceil(rate_m3_h / mixer_m3_h - 1e-9));
  return rate_m3_h < mixer_m3_h / 2
    ? [{ role: "mixer", number: 1 }]
    : [
        { role: "mixer", number: mixers },
        { role: "carry", number: mixers },
      ];
}
