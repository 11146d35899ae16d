import type { StepId } from "../base";
import type { ClockRef } from "./model";

/** The step whose concrete gathers what is counted, from that step's finish on, whatever else the amount is said of; null: it counts from where it stands. */
export function pourOf(on: ClockRef): StepId | null {
  return on.kind === "strength" || on.kind === "warm" ? on.pour : null;
}
