import type { Amount } from "./model";

/** An amount with the calendar it is counted on ("8 h of weekends"), where it is one of working time; else as written. */
export const amountOf = ({ on, text }: Amount): string => (on.kind === "working" ? `${text} of ${on.calendar}` : text);

/** A wait for concrete to carry or to cure: nothing proposes to do without it, for what it holds up falls on somebody. */
export const isCure = (amount: Amount | null): boolean => amount?.on.kind === "strength" || amount?.on.kind === "warm";
