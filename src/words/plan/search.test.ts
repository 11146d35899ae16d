import { describe, expect, test } from "vitest";
import type { ElapsedMinute } from "../../core/base";
import { readDocument } from "../../core/build";
import type { FinishBound, Sought } from "../../core/plan";
import {
  boundSentence,
  earlierSentence,
  foundSentence,
  givesUpSentence,
  lookingSentence,
  seekingSentence,
  verdictSentence,
} from "../index";
import { faultsOf } from "../lint.testing";
import { wall } from "../wall.testing";

const build = readDocument(wall()).build!;
const day = 1440;
const at = (14 * day + 540) as ElapsedMinute;
const date = (4 * day) as ElapsedMinute;
const delivery = build.steps.length;

const hands: FinishBound = { by: "hands", at, people: ["ruth"], work_min: 62_000, there_min: 61_000, from: date, until: at, before: 2 };
const bounds: readonly (readonly [FinishBound, string])[] = [
  [
    { by: "waits", at, first: 0, last: 3 },
    "Cannot finish before Sat 20 Mar, 10:00: from “Tie the bars” to “Strip the form” one waits for another, however many people there are.",
  ],
  [{ by: "waits", at, first: 3, last: 3 }, "Cannot finish before Sat 20 Mar, 10:00: “Strip the form” takes until then."],
  [
    { by: "date", at, job: delivery, of: "promised", date, last: 3 },
    "Cannot finish before Sat 20 Mar, 10:00: Wed 10 Mar is the day promised for the bars, and what waits for it goes on to “Strip the form”.",
  ],
  [
    { by: "date", at, job: delivery, of: "lead", date, last: 0 },
    "Cannot finish before Sat 20 Mar, 10:00: Wed 10 Mar is the earliest day for the bars, and what waits for it goes on to “Tie the bars”.",
  ],
  [
    { by: "date", at, job: 3, of: "not-before", date, last: 3 },
    "Cannot finish before Sat 20 Mar, 10:00: “Strip the form” may not begin before Wed 10 Mar.",
  ],
  [
    { by: "date", at, job: 3, of: "booking", date, last: 3 },
    "Cannot finish before Sat 20 Mar, 10:00: “Strip the form” is set for Wed 10 Mar.",
  ],
  [{ by: "date", at, job: 3, of: "resumes", date, last: 3 }, "Cannot finish before Sat 20 Mar, 10:00: work goes on from Wed 10 Mar."],
  [{ by: "date", at, job: 3, of: "done", date, last: 3 }, "Cannot finish before Sat 20 Mar, 10:00: “Strip the form” was begun Wed 10 Mar."],
  [
    hands,
    "Cannot finish before Sat 20 Mar, 10:00: there are 1,033 hours of work for Ruth before “Pour the wall”, none of it before Wed 10 Mar.",
  ],
  [
    { by: "tries", at, beside: { ...hands, before: -1, from: 0 as ElapsedMinute } },
    "Cannot finish before Sat 20 Mar, 10:00: there are 1,033 hours of work for Ruth, and every plan that would finish earlier has been ruled out.",
  ],
  [{ by: "tries", at, beside: null }, "Cannot finish before Sat 20 Mar, 10:00: every plan that would finish earlier has been ruled out."],
];

test.each(bounds)("a bound says why nothing finishes before it: %o", (bound, said) => {
  expect(boundSentence(bound, build)).toBe(said);
  expect(faultsOf(said, build)).toEqual([]);
});

describe("a search says", () => {
  const sought: Sought = {
    tried: 12_345,
    rung: 10_000,
    done: false,
    finishWas: (at + 7 * day) as ElapsedMinute,
    finish: at,
    bound: hands,
    proved: null,
    ruledOut: null,
    gain: 2,
    gap: 1,
  };
  const same: Sought = { ...sought, finishWas: at, gain: 0, gap: 0 };
  const none: Sought = { ...sought, finish: null, finishWas: null, bound: null, gain: 0, gap: 0 };
  test.each([
    [lookingSentence(sought, build), "Looking for an earlier finish: 12,345 tried. It cannot be before Sat 20 Mar, 10:00."],
    [seekingSentence(none), "Looking for any plan that keeps all of this: 12,345 tried."],
    [earlierSentence(sought, build), "An earlier finish is there: Sat 20 Mar, 10:00, two site days sooner."],
    [earlierSentence({ ...sought, gain: 0 }, build), "An earlier finish is there: Sat 20 Mar, 10:00, sooner on the same site day."],
    [foundSentence(sought, build), "A plan was found after all: it finishes Sat 20 Mar, 10:00."],
    [verdictSentence({ ...same, proved: "any-order" }, build), "No plan with these answers finishes earlier."],
    [verdictSentence({ ...sought, proved: "any-order" }, build), "No plan with these answers finishes earlier than that."],
    [
      verdictSentence({ ...sought, proved: "this-order" }, build),
      "In its order no plan finishes earlier than that; in another one it cannot be before Sat 20 Mar, 10:00, one site day sooner.",
    ],
    [
      verdictSentence({ ...same, proved: "this-order" }, build),
      "In this order no plan finishes earlier; in another one it cannot be before Sat 20 Mar, 10:00, on the same site day.",
    ],
    [verdictSentence(same, build), "Nothing earlier was found, 12,345 tried; it cannot be before Sat 20 Mar, 10:00, on the same site day."],
    [
      givesUpSentence({ for: "visits", months: [], coldest_C: null, weeksLater: 0 }),
      "Taking it gives up what this build aims at: fewest visits of those who are asked to come.",
    ],
    [verdictSentence(none, build), "No plan was found, 12,345 tried; none is ruled out either."],
  ])("%s", (said, wanted) => {
    expect(said).toBe(wanted);
    expect(faultsOf(said, build)).toEqual([]);
  });
});
