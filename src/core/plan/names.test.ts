import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buildOf } from "../../../test/fixtures/make";
import { bandedDocument } from "../../../test/schedule/random-document";
import { type Build, readDocument } from "../build";
import { clocksOf } from "../clock";
import { anybody } from "./crews";
import { namesOf } from "./names";
import { orderWithDates } from "./order";
import { byStart, stretchesOf } from "./stretches";

/** Names for a build's plan, and what is wrong with them, stretch by stretch; null without a plan. */
function named(build: Build) {
  const clocks = clocksOf(build);
  const { bound, result } = orderWithDates(build, clocks);
  const solution = result?.solution;
  if (bound === null || solution === undefined || solution === null) return null;
  const stretches = Array.from({ length: bound.problem.jobs }, (_, j) => stretchesOf(bound.problem, solution, j));
  const found = namesOf(build, clocks, byStart(bound.problem, solution), stretches);
  const faults: string[] = [];
  found.seats.forEach((seats, i) => {
    const person = build.people[i]!;
    seats.forEach((seat, k) => {
      if (k > 0 && seats[k - 1]!.to > seat.from) faults.push(`${person.id} is twice at work at ${seat.from}`);
      if (seat.role !== anybody && !person.roles.includes(seat.role)) faults.push(`${person.id} is no ${seat.role}`);
      if (clocks.person(person.id).reading(seat.to as never) - clocks.person(person.id).reading(seat.from as never) < seat.to - seat.from)
        faults.push(`${person.id} is not there at ${seat.from}`);
    });
  });
  build.steps.forEach((step, s) => {
    for (const [from, to] of stretches[s]!) {
      if (from === to) continue;
      for (const role of new Set(step.hands.map((h) => h.role))) {
        const wanted = step.hands.filter((h) => h.role === role).reduce((sum, h) => sum + h.number, 0) * (to - from);
        const held = found.seats.flat().filter((x) => x.job === s && x.role === role && x.from < to && x.to > from);
        const sum = held.reduce((total, x) => total + Math.min(to, x.to) - Math.max(from, x.from), 0);
        if (sum !== wanted) faults.push(`${step.id} has ${sum} of ${wanted} minutes of ${role} from ${from}`);
      }
    }
  });
  return { ...found, faults };
}

describe("names", () => {
  it("fill every role at every minute, nobody twice, in random builds with people enough", () => {
    let people = 0;
    let handed = 0;
    fc.assert(
      fc.property(fc.nat(1_000_000), (n) => {
        const { build, findings } = readDocument(bandedDocument(n));
        if (build === null || build.people.length === 0 || findings.some((f) => f.severity === "stop")) return;
        const found = named(build);
        if (found === null) return;
        expect(found.faults).toEqual([]);
        people += found.seats.flat().length;
        handed += found.short.length;
      }),
      { numRuns: 300, seed: 3 },
    );
    expect(people).toBeGreaterThan(1000);
    expect(handed).toBeLessThan(people / 100);
  });

  it("leave the only carpenter to the step that asks for one, whatever stands first in the document", () => {
    const build = buildOf({
      people: [{ id: "owen", name: "Owen", roles: ["carpenter"] }, ...["lena", "tom", "ruth"].map((id) => ({ id, name: id }))],
      steps: [
        { id: "sheathe", name: "Sheathe", work: "3 h", hands: 2 },
        {
          id: "rail",
          name: "Rail",
          work: "3 h",
          hands: [
            { role: "carpenter", number: 1 },
            { role: "hands", number: 1 },
          ],
        },
      ],
    });
    const found = named(build)!;
    expect(found.faults).toEqual([]);
    expect(found.people[1]).toContain(0);
    expect(new Set(found.people.flat()).size).toBe(4);
  });
});
