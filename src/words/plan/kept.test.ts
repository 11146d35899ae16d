import { expect, test } from "vitest";
import type { ElapsedMinute } from "../../core/base";
import { readDocument } from "../../core/build";
import { plan } from "../../core/plan";
import { faultsOf } from "../lint.testing";
import { wall } from "../wall.testing";
import { holderSentence } from "./holders";

test("a step that stays where it was kept says that nothing is gained by doing it earlier", () => {
  const build = readDocument(wall()).build!;
  const made = plan(build);
  const steps = made.steps.map((step, s) => (s === 1 ? { ...step, holder: { kind: "kept" as const, date: 0 as ElapsedMinute } } : step));
  const said = holderSentence(1, { ...made, steps }, build);
  expect(said).toContain("it stays where the kept plan has it, as nothing is gained by doing it earlier");
  expect(faultsOf(said, build)).toEqual([]);
});
