import { expect, test } from "vitest";
import { porch } from "../../../test/drawings/porch";
import { sheet, sheetBase, sheetBaseSlices, sheetSlices } from "./sheet";
import type { Slices } from "./slices";

const { build, plan } = porch();

function counted<T>(slices: Slices<T>): { made: T; count: number } {
  for (let count = 1; ; count += 1) {
    const { done, value } = slices.next();
    if (done) return { made: value, count };
  }
}

test.each(["weekends", "whole"] as const)("a sheet made in slices is the one made at once: %s", (scale) => {
  const asked = { build, plan, scale, dayWidth: 40, slack: true, today: 20_000 };
  const base = counted(sheetBaseSlices(asked));
  const { axis } = sheetBase(asked);
  const sight = scale === "whole" ? null : { from: axis.t(100), to: axis.t(700) };
  const { made, count } = counted(sheetSlices({ ...asked, sight }, base.made));
  expect(count).toBeGreaterThan(8);
  const { structure: _, axis: __, ...atOnce } = sheet({ ...asked, sight });
  const { structure: ___, axis: ____, ...inSlices } = made;
  expect(inSlices).toEqual(atOnce);
});

test("what is made for one width of a day and window leaves nothing behind in another", () => {
  const at = (dayWidth: number, from: number) =>
    sheet({ build, plan, scale: "weekends", dayWidth, sight: { from, to: from + 60_000 } }).part.body.marks;
  const first = at(40, 0);
  at(90, 30_000);
  at(40, 60_000);
  expect(at(40, 0)).toEqual(first);
});
