import type { PassageKind, Reach } from "../../build";
import { Closing } from "./closing";
import type { Program } from "./program";
import type { Reaching } from "./reach";

const none: readonly never[] = [];

/** What somebody does who only sets what closes or fills a place: from outside, by what passes without a person. A person or a machine in the place works there. */
const forSetting: readonly PassageKind[] = ["sight", "hand", "arm", "hose", "unit"];

/**
 * An inspection that stops the work: whoever works at the place does so before it or while the place is closed, nothing fills the place before it, and it sees
 * the place, whether or not its step says so.
 */
export function compileHoldPoints(program: Program, reaching: Reaching, asked: readonly (readonly Reach[])[]): void {
  const { build, facts } = program;
  const held = new Set<string>();
  for (const { holdPoint } of build.steps) for (const place of holdPoint?.places ?? none) held.add(place);
  if (held.size === 0) return;
  const workers = workersOf(asked, held);
  build.steps.forEach((step, h) => {
    if (step.holdPoint === null) return;
    for (const place of new Set(step.holdPoint.places)) {
      const q = build.at.place.get(place);
      if (q === undefined) continue;
      const fact = facts.add({ rule: "hold-point", step: step.id, place }, "steps", h * 1000 + 700);
      const closing = new Closing(program, q);
      if (!step.reaches.some(({ any }) => any.every((a) => a.place === place)))
        reaching.ask(fact, h, { any: [{ place, need: { kind: "sight" } }] });
      for (const { step: s, needs } of workers.get(place) ?? []) {
        if (s === h || closing.fills.includes(s) || (closing.by.includes(s) && needs.every((need) => forSetting.includes(need)))) continue;
        program.clause(fact, -1, [program.before(s, h), ...closing.closedAt(s, fact)], h);
      }
      for (const up of closing.fills) if (!program.isDone(up)) program.clause(fact, -1, [program.before(h, up)], h);
    }
  });
}

interface Worker {
  readonly step: number;
  readonly needs: PassageKind[];
}

/** Steps by place that do more there than look, each with what must get there. */
function workersOf(asked: readonly (readonly Reach[])[], held: ReadonlySet<string>): Map<string, Worker[]> {
  const workers = new Map<string, Worker[]>();
  asked.forEach((list, step) => {
    for (const { any } of list) {
      for (const { place, need } of any) {
        if (need.kind === "sight" || !held.has(place)) continue;
        const there = workers.get(place);
        const last = there?.at(-1);
        if (last?.step === step) last.needs.push(need.kind);
        else if (there === undefined) workers.set(place, [{ step, needs: [need.kind] }]);
        else there.push({ step, needs: [need.kind] });
      }
    }
  });
  return workers;
}
