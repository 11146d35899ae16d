import { describe, expect, test } from "vitest";
import { smallCase, step } from "../../../../test/fixtures/small";
import type { Amount } from "../../build";
import { Groups } from "./groups";
import { always, never, Program } from "./program";

const { build } = smallCase({ steps: [step("a"), step("b"), step("c")] });
const hour = { on: { kind: "elapsed" }, amount: 60, text: "1 h", from: null } satisfies Amount;
const clausesOf = (program: Program) =>
  Array.from({ length: program.clauses }, (_, c) =>
    Array.from({ length: program.clauseStart.at(c + 1) - program.clauseStart.at(c) }, (_, i) =>
      program.options.at(program.clauseStart.at(c) + i),
    ),
  );

describe("links", () => {
  test("the same is one atom; one with an amount names its bare precedence; no step comes before itself", () => {
    const program = new Program(build);
    const at = program.amount(hour);
    const bare = program.before(0, 1);
    const late = program.before(0, 1, at);
    expect([program.before(0, 1), program.before(0, 1, at), program.before(1, 1)]).toEqual([bare, late, never]);
    expect(
      new Set([bare, late, program.before(0, 1, -1, at), program.before(0, 1, at, at), program.before(1, 0), program.before(0, 2)]).size,
    ).toBe(6);
    expect([program.bare.at(bare), program.bare.at(late), program.orders(late)]).toEqual([bare, bare, true]);
    expect([program.from.at(late), program.to.at(late), program.least.at(late), program.most.at(late)]).toEqual([0, 1, at, -1]);
    const timed = program.timed(0, 0, 1, 1, at, -1);
    expect([program.orders(timed), program.ends.at(timed), program.timed(0, 0, 1, 1, at, -1)]).toEqual([false, 1, timed]);
    expect(program.timed(0, 1, 1, 1, at, -1)).not.toBe(timed);
    expect(program.isSelector(program.selector())).toBe(true);
    expect([bare, late, timed].some((atom) => program.isSelector(atom))).toBe(false);
  });

  test("are finish to start, without amounts where none is said, whichever steps they bind and in whatever order they come up", () => {
    const program = new Program(build);
    const at = program.amount(hour);
    const links = [program.before(2, 1), program.before(2, 1, at), program.inside(program.node(), program.node())];
    expect(links.map((atom) => [program.ends.at(atom), program.least.at(atom), program.most.at(atom)])).toEqual([
      [2, -1, -1],
      [2, at, -1],
      [2, -1, -1],
    ]);
    const made = () => [
      program.timed(2, 0, 1, 1, at, -1),
      program.timed(2, 1, 1, 0, at, -1),
      program.before(2, 1, at),
      program.before(1, 2, at),
    ];
    expect(made()).toEqual(made());
  });

  test("equal amounts are one as long as they are the very same; none is -1", () => {
    const program = new Program(build);
    expect([program.amount(null), program.amount(hour), program.amount({ ...hour }), program.amount(hour)]).toEqual([-1, 0, 1, 0]);
    expect(program.amounts).toEqual([hour, hour]);
  });

  test("selectors are no links, and numbered on from the first of several", () => {
    const program = new Program(build);
    program.before(0, 1);
    const first = program.selectors(3);
    expect([first, program.atoms, program.selector()]).toEqual([1, 4, 4]);
    for (let atom = first; atom < program.atoms; atom++) {
      const columns = [program.from, program.to, program.least, program.most, program.bare];
      expect(columns.map((column) => column.at(atom))).toEqual([-1, -1, -1, -1, -1]);
    }
    program.oneOf(3, -1, first, 3, 1, 0);
    expect([clausesOf(program), program.asked.at(0), program.need.at(0)]).toEqual([[[1, 2, 3]], 1, 0]);
  });

  test("helping nodes come after the steps and before each other, never before themselves", () => {
    const program = new Program(build);
    const [outer, inner] = [program.node(), program.node()];
    expect([outer, inner, program.nodes]).toEqual([3, 4, 5]);
    expect(program.inside(outer, outer)).toBe(never);
    const atom = program.inside(outer, inner);
    expect([program.from.at(atom), program.to.at(atom), program.bare.at(atom), program.orders(atom)]).toEqual([3, 4, atom, true]);
  });
});

describe("clauses", () => {
  test("what never holds is left out, and what always holds needs no clause", () => {
    const program = new Program(build);
    const [x, y] = [program.selector(), program.selector()];
    program.clause(7, -1, [x, never, y], 2, 1);
    program.clause(7, -1, [x, always]);
    program.must(8, x, never, y);
    program.must(8, x, y, never);
    program.must(8, x, always, y);
    program.must(8, x, y, always);
    program.each(9, y, [x, always, never], 1);
    program.each(9, y, [x]);
    program.clause(9, y, [x]);
    expect(clausesOf(program)).toEqual([[x, y], [y], [y], [x], [], [x], [x]]);
    const told = (list: { at(i: number): number }) => Array.from({ length: program.clauses }, (_, c) => list.at(c));
    expect(told(program.fact)).toEqual([7, 8, 8, 9, 9, 9, 9]);
    expect(told(program.guard)).toEqual([-1, x, x, y, y, y, y]);
    expect(told(program.asked)).toEqual([2, -1, -1, 1, 1, -1, -1]);
    expect(told(program.need)).toEqual([1, -1, -1, -1, -1, -1, -1]);
  });

  test("two options together are one as well", () => {
    const program = new Program(build);
    const [x, y] = [program.selector(), program.selector()];
    const settled = [program.both(0, x, never), program.both(0, never, y), program.both(0, never, always), program.both(0, always, never)];
    expect(settled).toEqual([never, never, never, never]);
    expect([program.both(0, x, always), program.both(0, always, y), program.both(0, always, always)]).toEqual([x, y, always]);
    expect([program.clauses, program.atoms]).toEqual([0, 2]);
    const both = program.both(5, x, y, 1);
    expect([program.isSelector(both), x === both, y === both]).toEqual([true, false, false]);
    expect(clausesOf(program)).toEqual([[x], [y]]);
    expect([0, 1].map((c) => [program.guard.at(c), program.fact.at(c), program.asked.at(c), program.need.at(c)])).toEqual([
      [both, 5, 1, -1],
      [both, 5, 1, -1],
    ]);
    program.together(6, [x, y]);
    expect([2, 3].map((c) => [program.asked.at(c), program.need.at(c)])).toEqual([
      [-1, -1],
      [-1, -1],
    ]);
    program.both(7, x, y);
    expect([4, 5].map((c) => [program.asked.at(c), program.need.at(c)])).toEqual([
      [-1, -1],
      [-1, -1],
    ]);
  });

  test("options together are one: itself where it is alone, a selector where there are several", () => {
    const program = new Program(build);
    const [x, y] = [program.selector(), program.selector()];
    expect([program.together(0, [x]), program.together(0, [x, always]), program.together(0, [always, always])]).toEqual([x, x, always]);
    expect([program.together(0, [never]), program.together(0, [x, never]), program.together(0, [always])]).toEqual([never, never, always]);
    expect(program.clauses).toBe(0);
    const both = program.together(5, [x, always, y], 1, 2);
    expect(program.isSelector(both)).toBe(true);
    expect([x, y]).not.toContain(both);
    expect(clausesOf(program)).toEqual([[x], [y]]);
    expect([0, 1].map((c) => [program.guard.at(c), program.fact.at(c), program.asked.at(c), program.need.at(c)])).toEqual([
      [both, 5, 1, 2],
      [both, 5, 1, 2],
    ]);
  });
});

test("groups keep the order of their clauses", () => {
  const groups = new Groups();
  for (const [clause, guard] of [-1, 5, -1, 2, 5, 5].entries()) groups.add(clause, guard);
  const members = (guard: number) => {
    const list: number[] = [];
    for (let c = groups.first(guard); c >= 0; c = groups.next(c)) list.push(c);
    return list;
  };
  expect([-1, 0, 2, 5, 6, 99].map(members)).toEqual([[0, 2], [], [3], [1, 4, 5], [], []]);
});
