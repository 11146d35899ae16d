import type { DetailValue } from "../../base";
import type { Amount, Wait } from "../../build";
import { never, type Program } from "./program";

/** No time at all, for a link between ends that has no amount of its own and yet does not order. */
const noTime: Amount = { on: { kind: "elapsed" }, amount: 0, text: "0 min", from: null };

/** Written waits and choices. Only a wait from a finish to a start that asks for more than a most is a precedence; the rest bind time. */
export function compileWaits(program: Program): void {
  const { build, facts } = program;
  build.waits.forEach((wait, i) => {
    const fact = facts.add(
      { rule: "wait", id: wait.id, step: wait.from, other: wait.to, detail: { plain: wait.plain, ...amounts(wait) } },
      "waits",
      i,
    );
    program.clause(fact, -1, [linkOf(program, wait)]);
  });
  build.choices.forEach((choice, i) => {
    const fact = facts.add({ rule: "choice", id: choice.id, detail: { either: choice.either.map((e) => e.name) } }, "choices", i);
    const selectors = choice.either.map(() => program.selector());
    program.clause(fact, -1, selectors);
    choice.either.forEach(({ waits }, e) => {
      for (const wait of waits) program.clause(fact, selectors[e] as number, [linkOf(program, wait)], build.at.step.get(wait.from));
    });
  });
}

/** Amounts and ends, as written, where they are not the usual ones. */
export function amounts({ least, most, fromEnd, toEnd }: Wait): Record<string, DetailValue> {
  return {
    ...(least === null ? {} : { least: least.text }),
    ...(most === null ? {} : { most: most.text }),
    ...(fromEnd === "finish" ? {} : { fromEnd }),
    ...(toEnd === "start" ? {} : { toEnd }),
  };
}

function linkOf(program: Program, wait: Wait): number {
  const from = program.build.at.step.get(wait.from);
  const to = program.build.at.step.get(wait.to);
  if (from === undefined || to === undefined) return never;
  const least = program.amount(wait.least);
  const most = program.amount(wait.most);
  const usual = wait.fromEnd === "finish" && wait.toEnd === "start";
  if (usual && !(least < 0 && most >= 0)) return program.before(from, to, least, most);
  const atLeast = least < 0 && most < 0 ? program.amount(noTime) : least;
  return program.timed(from, wait.fromEnd === "finish" ? 1 : 0, to, wait.toEnd === "finish" ? 1 : 0, atLeast, most);
}
