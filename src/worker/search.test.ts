import { expect, test } from "vitest";
import { realistic } from "../../test/bench/realistic";
import { plan } from "../core/plan";
import { search } from "./search";

/** A clock that goes on by so much at every look. */
const clock = (step_ms: number): (() => number) => {
  let now_ms = 0;
  return () => {
    now_ms += step_ms;
    return now_ms;
  };
};

/** Where there is a plan no ways out are tried. */
const none = () => null;

test("a portion ends with its time, the next goes on, and together they come to what one long one does", () => {
  const build = realistic(60, 1);
  const tried: number[] = [];
  let answer = search(build, none, { upTo: 1000 }, clock(30));
  while (answer.sought.rung < 1000) {
    tried.push(answer.sought.tried);
    answer = search(build, none, { upTo: 1000 }, clock(30));
  }
  expect(tried.length).toBeGreaterThan(5);
  expect(tried).toEqual([...tried].sort((a, b) => a - b));
  const again = realistic(60, 1);
  expect(search(again, none, { upTo: 1000 }, clock(0))).toEqual(answer);
  expect(plan({ ...build, served: answer.served }).finish).toBe(answer.sought.finish);
});

test("another build starts afresh, and nothing is done beyond the rung asked for", () => {
  const build = realistic(60, 1);
  const reached = search(build, none, { upTo: 1000 }, clock(0));
  expect(search(build, none, { upTo: 1000 }, clock(0))).toEqual(reached);
  expect(search(realistic(60, 1), none, { upTo: 1000 }, clock(1000)).sought.tried).toBeLessThan(reached.sought.tried);
});
