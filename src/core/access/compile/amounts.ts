import { type Amount, type Build, pourOf } from "../../build";
import type { Program } from "./program";

const finish = 1;
const start = 0;

/** The step whose concrete gathers the strength or the warm time that the amount names; -1 where it is an amount of something else. */
export function pourAt(build: Build, amount: Amount | null): number {
  const pour = amount === null ? null : pourOf(amount.on);
  return pour === null ? -1 : (build.at.step.get(pour) ?? -1);
}

/** The pour that an amount said of an end of step `from` is counted from instead; -1 where it is counted from that end. */
export function otherPour(build: Build, amount: Amount | null, from: number, fromEnd = finish): number {
  const pour = pourAt(build, amount);
  return pour === from && fromEnd === finish ? -1 : pour;
}

/**
 * Links that all hold when `from` is finished and the amount has passed before step t starts. Strength and warm time are those of the pour they name, whatever step
 * they are said of: then the amount runs from that pour's finish, and `from` comes before t besides.
 */
export function since(program: Program, from: number, t: number, amount: Amount | null): number[] {
  const pour = otherPour(program.build, amount, from);
  if (pour < 0) return [program.before(from, t, program.amount(amount))];
  const passed = program.before(pour, t, program.amount(amount));
  return [program.before(from, t), passed];
}

/** A link that counts an amount from the finish of another pour than the wait's own first step. */
export function fromPour(program: Program, pour: number, t: number, toEnd: number, least: Amount | null, most: Amount | null): number {
  if (least === null || toEnd !== start) return program.timed(pour, finish, t, toEnd, program.amount(least), program.amount(most));
  return program.before(pour, t, program.amount(least), program.amount(most));
}

const untils = new WeakMap<Amount, Amount>();

/**
 * What must not be passed while something that goes once `amount` has passed is used. Strength grows by whole thousandths and warm time stands still in the
 * cold: at most one less, for at the next it has gone.
 */
export function until(amount: Amount): Amount {
  if (pourOf(amount.on) === null) return amount;
  let known = untils.get(amount);
  if (known === undefined) {
    known = { ...amount, amount: amount.amount - 1 };
    untils.set(amount, known);
  }
  return known;
}
