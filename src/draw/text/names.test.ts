import { expect, test } from "vitest";
import { porch } from "../../../test/drawings/porch";
import type { Amount, Wait } from "../../core/build";
import { amountLabel, nameOf, waitName } from "./names";

const { build } = porch();
const amount = (on: unknown, text: string) => ({ on, amount: 1, text, from: null }) as Amount;

test("copies and rounds are told apart", () => {
  expect(nameOf({ id: "cage#2", name: "Cage" })).toBe("Cage (2)");
  expect(nameOf({ id: "cage", name: "Cage" })).toBe("Cage");
});

test("amounts are said without ids", () => {
  expect(amountLabel(build, amount({ kind: "elapsed" }, "7 d"))).toBe("7 d");
  expect(amountLabel(build, amount({ kind: "strength", pour: "pour" }, "70 % of pour"))).toBe("70 %");
  expect(amountLabel(build, amount({ kind: "days", calendar: "office" }, "3 days of office"))).toBe("3 days, working time");
});

test("a wait without a name of its own is not called by its ids", () => {
  const wait = { id: "w", from: "seal", to: "pour", plain: false };
  expect(waitName({ ...wait, name: "seal pour" } as unknown as Wait)).toBeNull();
  expect(waitName({ ...wait, name: "sealant" } as unknown as Wait)).toBe("sealant");
  expect(waitName(null)).toBeNull();
});
