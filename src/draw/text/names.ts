import type { Amount, Build, Step, Wait } from "../../core/build";

/** Name of a thing; copies of one, and the rounds of a trial, are told apart by the number in their id. */
export function nameOf(one: { readonly id: string; readonly name: string }): string {
  const copy = /#(\d+)$/.exec(one.id)?.[1];
  return copy === undefined ? one.name : `${one.name} (${copy})`;
}

/** What stands at a step: its name, and that it is done. */
export const stepLabel = (step: Step): string => (step.done === null ? nameOf(step) : `${nameOf(step)}, done`);

/** An amount as one says it, without ids: "7 d", "70 %", "3 days, Utility office". */
export function amountLabel(build: Build, amount: Amount): string {
  if (amount.on.kind === "elapsed") return amount.text;
  const plain = amount.text.replace(/ of \S+$/, "");
  if (amount.on.kind === "strength" || amount.on.kind === "warm") return plain;
  return `${plain}, ${build.calendars[build.at.calendar.get(amount.on.calendar) ?? -1]?.name ?? "working time"}`;
}

/** A wait's own name, or null where the build gives it none worth reading. */
export function waitName(wait: Wait | null): string | null {
  if (!wait || wait.plain || wait.name === "" || wait.name === wait.id || wait.name === `${wait.from} ${wait.to}`) return null;
  return wait.name;
}
