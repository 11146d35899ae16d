import type { Fastener } from "../build";
import { bearing, type MemberCheck } from "../concrete";
import type { Tally } from "./form-ask";
import type { Stuff } from "./form-stuff";
import { inches, pounds } from "./form-units";
import type { MemberPart } from "./result";

/**
 * A washer or plate of a rod or tie on the wood it pulls against, across its grain: load over its area against Fc⊥ (NDS 3.10.2). Where its size is not written the
 * area it needs is said instead.
 */
export function washerChecks(
  tally: Tally,
  part: MemberPart,
  by: Fastener | null,
  on: MemberPart,
  wood: Stuff,
  load_kN: number,
): MemberCheck[] {
  if (by === null) return [];
  const load_lb = pounds(load_kN);
  if (by.washer_mm == null) {
    const area_mm2 = (load_lb / wood.allowed.bearing) * 25.4 ** 2;
    tally.say("form.washer-unknown", "note", { part, on, load_kN, area_mm2 });
    return [];
  }
  return [bearing(load_lb, inches(by.washer_mm) ** 2, wood.allowed.bearing)];
}
