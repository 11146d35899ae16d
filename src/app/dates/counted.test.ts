import { expect, test } from "vitest";
import { counted } from "./counted";

test("the scale is named by what is in sight", () => {
  expect(counted(10, "weekends")).toBe("ten weekends");
  expect(counted(1, "weeks")).toBe("one week");
  expect(counted(14, "weekends")).toBe("14 weekends");
});
