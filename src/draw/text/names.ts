import type { Amount, Build, Membership, Wait } from "../../core/build";

/** Name of a thing; copies of one are told apart by their number. */
export function nameOf(one: { readonly name: string; readonly group: Membership | null }): string {
  return one.group ? `${one.name} (${one.group.copy})` : one.name;
}

/** An amount as one says it, without ids: "7 d", "70 %", "3 days, Utility office". */
export function amountLabel(build: Build, amount: Amount): string {
  if (amount.on.kind === "elapsed") return amount.text;
  const plain = amount.text.replace(/ of \S+$/, "");
  if (amount.on.kind === "strength") return plain;
  return `${plain}, ${build.calendars[build.at.calendar.get(amount.on.calendar) ?? -1]?.name ?? "working time"}`;
}

/** A wait's own name, or null where the build gives it none worth reading. */
export function waitName(wait: Wait | null): string | null {
  if (!wait || wait.plain || wait.name === "" || wait.name.includes(wait.from) || wait.name === wait.id) return null;
  return wait.name;
}
