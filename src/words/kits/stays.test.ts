import { expect, test } from "vitest";
import { buildOf } from "../../../test/fixtures/make";
import { faultsOf } from "../lint.testing";
import { staysSentence } from "./stays";

const build = buildOf({ steps: ["a", "b", "c", "d", "e"].map((id) => ({ id, name: `Step ${id}`, work: "1 h" })) });
const step = (id: string) => ({ list: "steps", id, keys: ["work", "leansOn"] }) as const;

test("what stays is named with what of it, and much of it is counted", () => {
  expect(staysSentence([], build)).toBe("");
  const one = staysSentence([step("a")], build);
  expect(one).toBe(
    "“Step a” (work and leans on) stays in part as written, changed by hand or put in by an older version of this kit; see whether that still fits the new answers.",
  );
  expect(faultsOf(one, build)).toEqual([]);
  expect(staysSentence(["a", "b", "c", "d", "e"].map(step), build)).toContain("“Step c” (work and leans on) and 2 more stay in part");
});
