import { findingSentence } from "../../words";
import type { Desk } from "../state";

/** Why what is tried out leaves no dates; empty where it does leave some, or nothing is tried out. */
export function whyNot({ trial, units }: Pick<Desk, "trial" | "units">): string {
  if (!trial || trial.plan.status === "planned") return "";
  const stop = trial.plan.findings.find(({ severity }) => severity === "stop");
  return stop ? findingSentence(stop, trial.build, units) : (trial.sentences[0] ?? "");
}
