import type { DetailValue, Statement } from "../../base";
import { amountOf, type Build, type Reach, type Step } from "../../build";
import { needDetail } from "./facts";
import { never, type Program } from "./program";
import type { Reaching } from "./reach";
import { Stand } from "./stand";

export interface AskedReach {
  readonly reach: Reach;
  /** The piece that is taken down, for what taking it down must get to. */
  readonly piece: string | null;
  /** Counted from 1 among the step's reaches, or among the piece's. */
  readonly number: number;
}

/** The places a step must get to: its own, then those that taking its pieces down asks for. */
export function reachesOf(build: Build, s: number): AskedReach[] {
  const step = build.steps[s] as Step;
  const asked: AskedReach[] = step.reaches.map((reach, i) => ({ reach, piece: null, number: i + 1 }));
  for (const id of step.takes) {
    const off = build.pieces[build.at.piece.get(id) ?? -1]?.off ?? [];
    for (let i = 0; i < off.length; i++) asked.push({ reach: off[i] as Reach, piece: id, number: i + 1 });
  }
  return asked;
}

/** What steps must get to and what they lean on. */
export function compileSteps(program: Program, reaching: Reaching, asked: readonly (readonly AskedReach[])[]): void {
  const { build, facts } = program;
  const stand = new Stand(program);
  const said = (s: number, i: number) => reachStatement((build.steps[s] as Step).id, asked[s]?.[i] as AskedReach);
  build.steps.forEach((step, s) => {
    const own = asked[s] as readonly AskedReach[];
    for (let i = 0; i < own.length; i++) {
      const fact = facts.addLater(said, s, i, "steps", s * 1000 + Math.min(i, 599));
      program.clause(fact, -1, reaching.options(s, (own[i] as AskedReach).reach), s);
    }
    for (let i = 0; i < step.leansOn.length; i++) {
      const { piece, once } = step.leansOn[i] as Step["leansOn"][number];
      const p = build.at.piece.get(piece);
      if (p === undefined) continue;
      const detail: Record<string, DetailValue> = once === null ? {} : { once: amountOf(once) };
      const fact = facts.add({ rule: "leans", step: step.id, piece, detail }, "steps", s * 1000 + 600 + Math.min(i, 99));
      program.each(fact, -1, stand.there(p, s, once), s);
      program.must(fact, -1, stand.stillThere(p, s), never, s);
    }
  });
}

function reachStatement(step: string, { reach, piece, number }: AskedReach): Statement & { readonly rule: "reach" | "off" } {
  const id = String(number);
  const [only] = reach.any;
  if (reach.any.length === 1 && only !== undefined) {
    const { place, need } = only;
    const detail = { places: [place], needs: [need.kind], ...needDetail(need) };
    if (piece === null) return { rule: "reach", step, id, place, need: need.kind, detail };
    return { rule: "off", step, piece, id, place, need: need.kind, detail };
  }
  const detail: Record<string, DetailValue> = { places: reach.any.map((a) => a.place), needs: reach.any.map((a) => a.need.kind) };
  return piece === null ? { rule: "reach", step, id, detail } : { rule: "off", step, piece, id, detail };
}
