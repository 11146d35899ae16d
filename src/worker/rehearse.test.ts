import { expect, test } from "vitest";
import { readDocument } from "../core/build";
import { plan } from "../core/plan";
import { type Rehearsal, rehearse, rehearsed } from "./rehearse";

const [small, large] = rehearsed;

/** Nothing is asked until after so many looks; time passes by a minute a look at the clock. */
function rehearsal(builds: Rehearsal["builds"], looks = Number.POSITIVE_INFINITY): Rehearsal & { readonly waits_ms: number[] } {
  let looked = 0;
  let time_ms = 0;
  const waits_ms: number[] = [];
  return {
    builds,
    asked: () => looked++ >= looks,
    later: (work, wait_ms) => {
      waits_ms.push(wait_ms);
      setTimeout(work, 0);
    },
    now: () => {
      time_ms += 60_000;
      return time_ms;
    },
    waits_ms,
  };
}

test("the builds that are rehearsed can be read and planned, the smaller first", async () => {
  const builds = await Promise.all(rehearsed.map(async ({ load }) => readDocument(await load())));
  for (const { build, findings } of builds) {
    expect(findings.filter((f) => f.severity === "stop")).toEqual([]);
    expect(plan(build!).status).toBe("planned");
  }
  const [few, many] = builds.map(({ build }) => build!.steps.length);
  expect(few).toBeLessThan(many!);
});

test("while nothing is asked all are planned, with quiet after each", async () => {
  const calm = rehearsal([small!, large!]);
  expect(await rehearse(calm)).toEqual({ read: 2, planned: 2 });
  expect(calm.waits_ms).toEqual([0, 0, 300_000, 0, 0, 300_000]);
});

test("a question cuts the rehearsal short, wherever it is", async () => {
  const ends: [looks: number, read: number, planned: number][] = [
    [0, 0, 0],
    [1, 1, 0],
    [2, 1, 1],
    [3, 1, 1],
    [4, 2, 1],
    [5, 2, 2],
  ];
  for (const [looks, read, planned] of ends) expect(await rehearse(rehearsal([small!, small!], looks))).toEqual({ read, planned });
});

test("without a build, or with one that cannot be read, it ends", async () => {
  expect(await rehearse(rehearsal([{ load: () => Promise.reject(new Error("no network")) }, small!]))).toEqual({ read: 0, planned: 0 });
  expect(await rehearse(rehearsal([{ load: async () => "no build" }, small!]))).toEqual({ read: 1, planned: 0 });
});
