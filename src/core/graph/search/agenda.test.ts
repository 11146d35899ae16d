import { expect, test } from "vitest";
import { clauses } from "../../../../test/fixtures/clauses";
import { Agenda } from "./agenda";
import { Clauses } from "./clauses";
import { fails, holds } from "./problem";
import { chosen, Trail } from "./trail";

// Variables 0 and 1 are selectors, 2 to 5 what the clauses ask for.
const problem = clauses(
  null,
  [
    { literals: [holds(2)], statement: 0 },
    { literals: [holds(3), fails(0)], statement: 1, guard: 0 },
    { literals: [holds(4), fails(1)], statement: 2, guard: 1 },
    { literals: [holds(5), fails(1)], statement: 3, guard: 1 },
    { literals: [holds(5)], statement: 4 },
  ],
  Array.from({ length: 6 }, (): [number, number] => [-1, -1]),
);

const made = (active: (clause: number) => boolean = () => true) => {
  const trail = new Trail(problem.variables);
  const known = new Clauses(problem);
  const agenda = new Agenda(problem, active);
  return {
    trail,
    agenda,
    next: () => agenda.next(known, trail),
    settle: () => agenda.settle(known, trail),
    begin: () => {
      agenda.keep();
      trail.marks.push(trail.length);
    },
  };
};

test("clauses of the selectors that hold come first, in the order they came to hold, then those without a guard", () => {
  const { trail, next } = made();
  expect(next()).toBe(0);
  trail.give(holds(1), chosen);
  trail.give(holds(0), chosen);
  expect(next()).toBe(2);
  trail.give(holds(4), chosen);
  expect(next()).toBe(3);
  trail.give(holds(5), chosen);
  expect(next()).toBe(1);
  trail.give(holds(3), chosen);
  expect(next()).toBe(0);
  trail.give(holds(2), chosen);
  expect(next()).toBe(-1);
});

test("the clauses of a selector that fails, and those not active, do not matter", () => {
  const { trail, next } = made((clause) => clause !== 0 && clause !== 2);
  trail.give(fails(0), chosen);
  trail.give(holds(1), chosen);
  expect(next()).toBe(3);
  trail.give(holds(5), chosen);
  expect(next()).toBe(-1);
});

test("going back to a level asks again for what was met since", () => {
  const { trail, agenda, next, begin } = made();
  begin();
  trail.give(holds(1), chosen);
  expect(next()).toBe(2);
  begin();
  trail.give(holds(4), chosen);
  expect(next()).toBe(3);
  begin();
  trail.give(holds(5), chosen);
  expect(next()).toBe(0);
  trail.takeBack();
  agenda.goBack(2);
  trail.marks.length = 2;
  expect(next()).toBe(3);
  trail.takeBack();
  agenda.goBack(1);
  trail.marks.length = 1;
  expect(next()).toBe(2);
  trail.takeBack();
  agenda.goBack(0);
  agenda.goBack(0);
  trail.marks.length = 0;
  expect(next()).toBe(0);
});

test("what is met before anything is decided is left out, and only that", () => {
  const { trail, settle, next } = made();
  trail.give(holds(2), 0);
  settle();
  expect(next()).toBe(4);
  trail.give(holds(5), 4);
  settle();
  expect(next()).toBe(-1);
});
