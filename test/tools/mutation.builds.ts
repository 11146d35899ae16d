import { describe, expect, test } from "vitest";
import { access } from "../../src/core/access";
import { readDocument } from "../../src/core/build";
import { brute } from "../oracle/brute";
import { faultsOfAnswers, faultsOfBlock, faultsOfClosings, faultsOfOrder } from "../oracle/check-access";
import { checkWaysOut } from "../oracle/check-ways-out";
import { drawFromStart } from "../oracle/draw";
import { randomDocument } from "../oracle/random-builds";

/** The first of the builds that `shard` judges, one test each, so that a mutant of access is tried on those builds only that come across it. */
const builds = 80;

describe("random builds, judged by going through all orders", () => {
  test.each([...Array(builds).keys()])("build %i", (start) => {
    const document = randomDocument(start);
    const { build } = readDocument(document);
    if (build === null) throw new Error("cannot be read");
    const known = brute(build);
    const result = access(build);
    expect(faultsOfOrder(build, result, known, drawFromStart(start))).toEqual([]);
    const pairs = build.steps.map((_, a) => [a, (a + 1) % build.steps.length] as const);
    expect(faultsOfAnswers(build, result, known, pairs)).toEqual([]);
    if (result.possible) expect(faultsOfClosings(build, result, known)).toEqual([]);
    else {
      expect(result.findings.filter((f) => f.because !== undefined).flatMap((f) => faultsOfBlock(build, f))).toEqual([]);
      expect(checkWaysOut(document, build, result.findings).faults).toEqual([]);
    }
  });
});
