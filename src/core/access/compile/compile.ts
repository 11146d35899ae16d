import type { Build } from "../../build";
import { compileHeld } from "./held";
import { compileHoldPoints } from "./hold-points";
import { Program } from "./program";
import { Reaching } from "./reach";
import { compileSteps } from "./steps";
import { compileWaits } from "./waits";

/** Pairs of steps, each the first before the second, that may not all be taken. */
export type RefusedSet = readonly (readonly [from: number, to: number])[];

/** The whole build as clauses. Statements come from here and nowhere else; see rules.ts. */
export function compile(build: Build, refuse: readonly RefusedSet[] = []): Program {
  const program = new Program(build);
  compileSteps(program, new Reaching(program));
  compileHoldPoints(program);
  build.pieces.forEach((piece, p) => {
    if (piece.up < 0 || piece.down < 0) return;
    const ids = { step: build.steps[piece.up]?.id ?? "", other: build.steps[piece.down]?.id ?? "" };
    const fact = program.facts.add({ rule: "up-down", piece: piece.id, ...ids }, "pieces", p * 1000 + 3);
    program.clause(fact, -1, [program.before(piece.up, piece.down)]);
  });
  compileHeld(program);
  compileWaits(program);
  refuse.forEach((set, i) => {
    refuseSet(program, set, i);
  });
  return program;
}

/** One of the pairs is the other way round. */
function refuseSet(program: Program, set: RefusedSet, number: number): void {
  const id = (s: number): string => program.build.steps[s]?.id ?? "";
  const detail = { before: set.map(([s]) => id(s)), after: set.map(([, t]) => id(t)) };
  const fact = program.facts.add({ rule: "refused", id: String(number + 1), detail }, "choices", 1e6 + number);
  program.refused++;
  program.clause(
    fact,
    -1,
    set.map(([s, t]) => program.before(t, s)),
  );
}

/** What was asked, as one more statement. */
export function ask(program: Program, before: number, after: number): void {
  const id = (s: number): string => program.build.steps[s]?.id ?? "";
  const fact = program.facts.add({ rule: "asked", step: id(before), other: id(after) }, "choices", 2e6);
  program.clause(fact, -1, [program.before(before, after)]);
}
