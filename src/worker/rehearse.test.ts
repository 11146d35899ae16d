import { expect, test } from "vitest";
import { readDocument } from "../core/build";
import { plan } from "../core/plan";
import { examples } from "../examples";
import { rehearse } from "./rehearse";

const small = examples[0]!;
const later = (work: () => void): void => void setTimeout(work, 0);

/** Nothing is asked until after so many looks. */
function askedAfter(looks: number): () => boolean {
  let looked = 0;
  return () => looked++ >= looks;
}

test("the small build is planned whole while nothing is asked", async () => {
  const document = await small.load();
  const { build, findings } = readDocument(document);
  expect(findings.filter((f) => f.severity === "stop")).toEqual([]);
  expect(plan(build!).status).toBe("planned");
  expect(await rehearse({ load: small.load, asked: () => false, later })).toBe("planned");
});

test("a question cuts the rehearsal short", async () => {
  expect(await rehearse({ load: small.load, asked: askedAfter(0), later })).toBe("nothing");
  expect(await rehearse({ load: small.load, asked: askedAfter(1), later })).toBe("read");
});

test("without a small build, or with one that cannot be read, it ends", async () => {
  expect(await rehearse({ load: () => Promise.reject(new Error("no network")), asked: () => false, later })).toBe("nothing");
  expect(await rehearse({ load: async () => "no build", asked: () => false, later })).toBe("read");
});
