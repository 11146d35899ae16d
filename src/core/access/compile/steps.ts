import type { DetailValue, PieceId, Statement } from "../../base";
import { amountOf, type Build, type Reach, type Step } from "../../build";
import { needDetail } from "./facts";
import { never, type Program } from "./program";
import type { Reaching } from "./reach";
import { Stand } from "./stand";

/** The places a step must get to: its own, then those that taking its pieces down asks for. */
export function reachesOf(build: Build, s: number): readonly Reach[] {
  const { reaches, takes } = build.steps[s] as Step;
  let all = reaches;
  for (const id of takes) {
    const off = offOf(build, id);
    if (off.length > 0) all = [...all, ...off];
  }
  return all;
}

function offOf(build: Build, piece: PieceId): readonly Reach[] {
  return build.pieces[build.at.piece.get(piece) ?? -1]?.off ?? none;
}

const none: readonly never[] = [];

/** What steps must get to and what they lean on. */
export function compileSteps(program: Program, reaching: Reaching, asked: readonly (readonly Reach[])[]): void {
  const { build, facts } = program;
  const stand = new Stand(program);
  const said = (s: number, i: number) => reachStatement(build, s, i);
  build.steps.forEach((step, s) => {
    const own = asked[s] as readonly Reach[];
    for (let i = 0; i < own.length; i++) {
      const fact = facts.addLater(said, s, i, "steps", s * 1000 + Math.min(i, 599));
      reaching.ask(fact, s, own[i] as Reach);
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

/** The `i`-th of the places that a step must get to, counted from 1 among the step's own, or among those of the piece that it takes down. */
function reachStatement(build: Build, s: number, i: number): Statement & { readonly rule: "reach" | "off" } {
  const { id: step, reaches, takes } = build.steps[s] as Step;
  let piece: PieceId | null = null;
  let list = reaches;
  let k = i;
  for (let next = 0; k >= list.length; next++) {
    k -= list.length;
    piece = takes[next] as PieceId;
    list = offOf(build, piece);
  }
  const { any } = list[k] as Reach;
  const id = String(k + 1);
  const [only] = any;
  if (any.length === 1 && only !== undefined) {
    const { place, need } = only;
    const detail = { places: [place], needs: [need.kind], ...needDetail(need) };
    if (piece === null) return { rule: "reach", step, id, place, need: need.kind, detail };
    return { rule: "off", step, piece, id, place, need: need.kind, detail };
  }
  const detail: Record<string, DetailValue> = { places: any.map((a) => a.place), needs: any.map((a) => a.need.kind) };
  return piece === null ? { rule: "reach", step, id, detail } : { rule: "off", step, piece, id, detail };
}
