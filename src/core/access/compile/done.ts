import type { Program } from "./program";

/** What is done comes before what is not. Said only where something could ask for the other way round: nothing else can come between. */
export function compileDone(program: Program): void {
  const { build, facts, tooLate } = program;
  // Asking for them here adds none.
  const pairs = tooLate.slice();
  for (let i = 0; i < pairs.length; i += 2) {
    const [done, open] = [pairs[i] as number, pairs[i + 1] as number];
    const step = build.steps[done];
    if (step === undefined) continue;
    const detail = { date: step.done?.finish ?? "" };
    const fact = facts.add({ rule: "done", step: step.id, other: build.steps[open]?.id ?? "", detail }, "steps", done * 1000 + 800);
    program.clause(fact, -1, [program.before(done, open)]);
  }
}
