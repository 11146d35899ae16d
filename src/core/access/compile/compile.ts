import type { Build } from "../../build";
import type { RefusedLink } from "../result";
import { compileDone } from "./done";
import { compileHeld } from "./held";
import { compileHoldPoints } from "./hold-points";
import { Program } from "./program";
import { Reaching } from "./reach";
import { compileRefusals } from "./refusals";
import { compileSteps, reachesOf } from "./steps";
import { compileWaits } from "./waits";

/** The whole build as clauses. Statements come from here and nowhere else; see rules.ts. */
export function compile(build: Build, refuse: readonly (readonly RefusedLink[])[] = []): Program {
  const program = new Program(build);
  const reaching = new Reaching(program);
  const asked = build.steps.map((_, s) => reachesOf(build, s));
  compileSteps(program, reaching, asked);
  compileHoldPoints(program, reaching, asked);
  build.pieces.forEach((piece, p) => {
    if (piece.up < 0 || piece.down < 0 || program.isDone(piece.down)) return;
    const ids = { step: build.steps[piece.up]?.id ?? "", other: build.steps[piece.down]?.id ?? "" };
    const fact = program.facts.add({ rule: "up-down", piece: piece.id, ...ids }, "pieces", p * 1000 + 3);
    program.clause(fact, -1, [program.before(piece.up, piece.down)]);
  });
  compileHeld(program);
  compileWaits(program);
  compileDone(program);
  compileRefusals(program, refuse);
  return program;
}

/** What was asked, as one more statement. */
export function ask(program: Program, before: number, after: number): void {
  const id = (s: number): string => program.build.steps[s]?.id ?? "";
  const fact = program.facts.add({ rule: "asked", step: id(before), other: id(after) }, "choices", 2e6);
  program.clause(fact, -1, [program.before(before, after)]);
}
