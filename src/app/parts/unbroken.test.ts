import { expect, test } from "vitest";
import { unbroken } from "./unbroken";

test("a figure keeps its unit beside it, and other words break as they will", () => {
  expect(unbroken("the lowest, 8 in above the foot, 137 of 100")).toBe("the lowest, 8\u00a0in above the foot, 137 of 100");
  expect(unbroken("7 ft 4 1/2 in high, 0.2 yd³ each")).toBe("7\u00a0ft 4 1/2\u00a0in high, 0.2\u00a0yd³ each");
  expect(unbroken("1.5 m, 900 mm, 0.54 m³, 20 °C")).toBe("1.5\u00a0m, 900\u00a0mm, 0.54\u00a0m³, 20\u00a0°C");
  expect(unbroken("16.7 % (500 psi) expected")).toBe("16.7\u00a0% (500\u00a0psi) expected");
  expect(unbroken("2 inspections, 3 feet, 4 months")).toBe("2 inspections, 3 feet, 4 months");
});
