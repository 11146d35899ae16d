export { byKey } from "./by-key";
export { fitFinish, fitStart, fitWhole, lastStart } from "./job";
export { type Earliest, earliest, latest, type Net, netOf } from "./network";
export * from "./problem";
export { type Proof, proofOf } from "./proof";
export { type Runs, runsOf } from "./runs";
export { solve } from "./solve";
export { type Broken, verify } from "./verify";
export { cannotHold, witness } from "./witness";
