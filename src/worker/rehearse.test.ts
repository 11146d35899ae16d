import { expect, test } from "vitest";
import { readDocument } from "../core/build";
import { plan } from "../core/plan";
import { orderWithDates } from "../core/plan/order";
import { buildClocks } from "../core/pour";
import { type Rehearsal, rehearse, rehearsed } from "./rehearse";

const small = rehearsed[0]!;

/** Nothing is asked until after so many looks; a second passes between two looks at the clock. */
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
      time_ms += 1000;
      return time_ms;
    },
    waits_ms,
  };
}

test("the builds that are rehearsed can be read and planned, the smallest first", async () => {
  const builds = await Promise.all(rehearsed.map(async ({ load }) => readDocument(await load())));
  for (const { build, findings } of builds) {
    expect(findings.filter((f) => f.severity === "stop")).toEqual([]);
    expect(plan(build!).status).toBe("planned");
  }
  const [few, many, same] = builds.map(({ build }) => build!.steps.length);
  expect(few).toBeLessThan(many!);
  expect(same).toBe(many);
});

test("the last waits for its people: its finish is not shown to be the earliest at once, as those of the others are", async () => {
  const results = await Promise.all(
    rehearsed.map(async ({ load }) => {
      const build = readDocument(await load()).build!;
      return orderWithDates(build, buildClocks(build)).result!;
    }),
  );
  expect(results.map(({ status }) => status)).toEqual(["proved", "proved", "planned"]);
});

test("while nothing is asked all are read and planned, as often as they say, with quiet after each", async () => {
  const calm = rehearsal([small, { ...small, times: 2 }]);
  expect(await rehearse(calm)).toEqual({ read: 3, planned: 3 });
  expect(calm.waits_ms).toEqual([0, 0, 2000, 0, 0, 2000, 0, 0, 2000]);
});

test("on a slow device it ends when it has worked for four seconds", async () => {
  expect(await rehearse(rehearsal([{ ...small, times: 9 }]))).toEqual({ read: 4, planned: 4 });
});

test("a question cuts the rehearsal short, wherever it is", async () => {
  const ends: [looks: number, read: number, planned: number][] = [
    [0, 0, 0],
    [1, 1, 0],
    [2, 1, 1],
    [3, 2, 1],
    [4, 2, 2],
    [5, 3, 2],
    [6, 3, 3],
  ];
  for (const [looks, read, planned] of ends)
    expect(await rehearse(rehearsal([small, { ...small, times: 2 }], looks))).toEqual({ read, planned });
});

test("without a build, or with one that cannot be read, it ends", async () => {
  const missing = { load: () => Promise.reject(new Error("no network")), times: 1 };
  expect(await rehearse(rehearsal([missing, small]))).toEqual({ read: 0, planned: 0 });
  expect(await rehearse(rehearsal([{ load: async () => "no build", times: 2 }, small]))).toEqual({ read: 1, planned: 0 });
});
