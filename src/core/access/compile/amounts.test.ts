import { describe, expect, test } from "vitest";
import { smallCase, step } from "../../../../test/fixtures/small";
import type { Amount } from "../../build";
import { fromPour, otherPour, pourAt, since, until } from "./amounts";
import { never, Program } from "./program";

const strength = { on: { kind: "strength", pour: "pour" as never }, amount: 750, text: "75 % of pour", from: null } satisfies Amount;
const days = { on: { kind: "elapsed" }, amount: 2880, text: "2 d", from: null } satisfies Amount;

const names = ["pour", "other", "strike"];
const { build } = smallCase({
  steps: [step("pour", { sort: "pour", pour: { strength: "28 MPa" } }), step("other"), step("strike")],
});
const [pour, other, strike] = names.map((id) => build.at.step.get(id) ?? -1) as [number, number, number];

/** Links as "from +least .. most < to", ends by their first letter where they are not finish to start. */
function told(program: Program, atoms: readonly number[]): string[] {
  const amount = (index: number) => program.amounts[index]?.text ?? "-";
  return atoms.map((a) => {
    const ends = ["ss", "sf", "fs", "ff"][program.ends.at(a)];
    const [from, to] = [names[program.from.at(a)], names[program.to.at(a)]];
    return `${from} ${amount(program.least.at(a))} ${amount(program.most.at(a))} ${to} ${ends}`;
  });
}

describe("an amount that is the strength of a pour", () => {
  test("counts from that pour, which may be the first step of the build", () => {
    expect([pourAt(build, strength), pourAt(build, days), pourAt(build, null)]).toEqual([pour, -1, -1]);
    expect([otherPour(build, strength, other), otherPour(build, strength, pour), otherPour(build, days, other)]).toEqual([pour, -1, -1]);
    expect(otherPour(build, strength, pour, 0)).toBe(pour);
  });

  test("since another step: a bare precedence and a link from the pour; since the pour itself: one link", () => {
    const program = new Program(build);
    expect(told(program, since(program, other, strike, strength))).toEqual(["other - - strike fs", "pour 75 % of pour - strike fs"]);
    expect(told(program, since(program, pour, strike, strength))).toEqual(["pour 75 % of pour - strike fs"]);
    expect(told(program, since(program, other, strike, days))).toEqual(["other 2 d - strike fs"]);
    expect(told(program, since(program, other, strike, null))).toEqual(["other - - strike fs"]);
  });

  test("of a wait is a precedence where it is a least to a start, and binds time only otherwise; no pour waits for itself", () => {
    const program = new Program(build);
    expect(told(program, [fromPour(program, pour, strike, 0, strength, null)])).toEqual(["pour 75 % of pour - strike fs"]);
    expect(told(program, [fromPour(program, pour, strike, 1, strength, null)])).toEqual(["pour 75 % of pour - strike ff"]);
    expect(told(program, [fromPour(program, pour, strike, 0, null, strength)])).toEqual(["pour - 75 % of pour strike fs"]);
    expect(fromPour(program, pour, pour, 0, strength, null)).toBe(never);
    expect(program.orders(fromPour(program, pour, strike, 0, null, strength))).toBe(false);
    expect(program.orders(fromPour(program, pour, strike, 0, strength, null))).toBe(true);
  });
});

test("what goes at an amount is used until just before it, on a clock that grows by steps; other amounts as they are", () => {
  expect(until(strength)).toEqual({ ...strength, amount: 749 });
  expect(until(strength)).toBe(until(strength));
  expect(until(days)).toBe(days);
});
