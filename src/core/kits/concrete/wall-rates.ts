import type { RateName } from "../rates";

/** Rates of every wall. */
export const wallRates: readonly RateName[] = [
  "panel",
  "coat",
  "tie-bars",
  "scaffold",
  "scaffold-down",
  "set-panel",
  "seal",
  "embed",
  "close-panel",
  "check",
  "strip-panel",
  "roughen",
  "photograph",
  "clean",
  "trial",
];
