import type { Build } from "../../src/core/build";
import { type Either, type Rule, type Rules, rulesOf } from "./rules";
import type { Done } from "./state";

export interface Verdict {
  readonly valid: boolean;
  /** Everything the order breaks, in the order of its steps. */
  readonly broken: readonly (Rule | Either)[];
}

/**
 * Walks through the steps in the given order and asks every rule when its turn comes. Shares nothing with the access room but the document's types.
 * @param order positions of all steps, each once
 */
export function judge(build: Build, order: readonly number[], { rules, choices }: Rules = rulesOf(build)): Verdict {
  const broken: (Rule | Either)[] = [];
  const turn = new Map(order.map((step, i) => [step, i]));
  let done: Done = 0;
  for (const step of order) {
    broken.push(...rules.filter((r) => r.at === step && !r.holds(done)));
    done |= 1 << step;
  }
  broken.push(...choices.filter((c) => !c.options.some((pairs) => pairs.every(([from, to]) => turn.get(from)! < turn.get(to)!))));
  return { valid: broken.length === 0 && turn.size === build.steps.length, broken };
}
