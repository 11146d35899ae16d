import { expect, test } from "vitest";
import { porch } from "../../../test/drawings/porch";
import { sheet } from "./sheet";

test("however many flags stand on one day, each has its own height and none stands over the dates", () => {
  const { build, plan } = porch();
  const first = build.deliveries[0]!;
  const dates = plan.deliveries[0]!;
  const many = Array.from({ length: 9 }, (_, index) => ({ ...first, id: `load-${index}` as typeof first.id }));
  const { head } = sheet({
    build: { ...build, deliveries: many },
    plan: { ...plan, deliveries: many.map(() => dates) },
    scale: "weekends",
    flagRows: 4,
    elevation: false,
  }).part;
  const flags = head.marks.filter(({ id }) => id.startsWith("flag deliveries load-"));
  const line = head.marks.find(({ id }) => id === "flags top")!;
  expect(new Set(flags.map(({ y0 }) => y0)).size).toBe(9);
  for (const flag of flags) expect(flag.y0).toBeGreaterThanOrEqual(line.y1);
});
