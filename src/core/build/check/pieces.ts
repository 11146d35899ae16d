import { type Where, writtenId } from "../../base";
import type { Names } from "../link/names";
import type { Piece, Step } from "../model";
import { rings, ungrounded } from "./ring";

const at = (piece: { id: string }, key?: string): Where => ({ list: "pieces", id: writtenId(piece.id), ...(key ? { key } : {}) });

const joined = new WeakMap<Piece, Piece>();

/** The piece with its two steps; the same object as before where they are the same. */
function withSteps(piece: Piece, up: number, down: number): Piece {
  const before = joined.get(piece);
  if (before?.up === up && before.down === down) return before;
  const now = { ...piece, up, down };
  joined.set(piece, now);
  return now;
}

/** Finds the step that puts each piece up and the one that takes it down. */
export function joinSteps(loose: readonly Piece[], steps: readonly Step[], positions: ReadonlyMap<string, number>, names: Names): Piece[] {
  const ups = new Int32Array(loose.length).fill(-1);
  const downs = new Int32Array(loose.length).fill(-1);
  const join = (id: string, i: number, ends: Int32Array, key: "puts" | "takes"): void => {
    const at = positions.get(id);
    if (at === undefined) return;
    const other = steps[ends[at] as number];
    if (!other) ends[at] = i;
    else if (ends[at] !== i) {
      const code = key === "puts" ? "build.put-up-twice" : "build.taken-down-twice";
      const second = steps[i]?.id ?? "";
      names.say(code, { list: "steps", id: writtenId(second), key }, { piece: id, first: other.id, second });
    }
  };
  steps.forEach((step, i) => {
    for (const id of step.puts) join(id, i, ups, "puts");
    for (const id of step.takes) join(id, i, downs, "takes");
  });
  const pieces = loose.map((piece, i) => withSteps(piece, ups[i] as number, downs[i] as number));
  for (const piece of pieces) checkEnds(piece, steps, names);
  return pieces;
}

function checkEnds(piece: Piece, steps: readonly Step[], names: Names): void {
  const up = steps[piece.up];
  const down = steps[piece.down];
  if (up && piece.fromStart)
    names.say("build.put-up-but-stood", { list: "steps", id: writtenId(up.id), key: "puts" }, { piece: piece.id, step: up.id });
  if (down && !up && !piece.fromStart) {
    names.say("build.nothing-put-up", { list: "steps", id: writtenId(down.id), key: "takes" }, { piece: piece.id, step: down.id });
  }
  if (down && piece.goesAfter) names.say("build.goes-and-taken", at(piece, "goesAfter"), { step: down.id });
}

const nobody: readonly (readonly number[])[] = [];

/** Pieces that hold each other with nothing on firm ground among them, and holders that go by themselves. */
export function checkHolding(pieces: readonly Piece[], positions: ReadonlyMap<string, number>, names: Names): void {
  const sets = pieces.map((piece) =>
    piece.heldBy.length === 0 ? nobody : piece.heldBy.map((set) => set.map((id) => positions.get(id) ?? -1).filter((i) => i >= 0)),
  );
  const loose = ungrounded(pieces.length, (i) => (pieces[i]?.fromStart ? [] : (sets[i] ?? [])));
  const heldBy = (i: number): number[] => (loose[i] ? (sets[i] ?? []).flat().filter((holder) => loose[holder]) : []);
  for (const ring of loose.includes(1) ? rings(pieces.length, heldBy) : []) {
    const first = pieces[ring[0] ?? -1];
    if (first) names.say("build.hold-ring", at(first, "heldBy"), { ring: ring.map((i) => pieces[i]?.id ?? "") });
  }
  for (const piece of pieces) {
    for (const set of piece.heldBy) {
      for (const id of set)
        if (pieces[positions.get(id) ?? -1]?.goesAfter) names.say("build.holder-goes", at(piece, "heldBy"), { holder: id });
    }
  }
}

/** A piece that no step puts up and that does not stand from the start never stands. */
export function checkStanding(pieces: readonly Piece[], steps: readonly Step[], names: Names): void {
  const users = new Map<string, string[]>();
  const use = (id: string, user: string): void => void users.set(id, [...(users.get(id) ?? []), user]);
  const idle = new Set(pieces.filter((piece) => piece.up < 0 && !piece.fromStart && piece.down < 0).map((piece) => String(piece.id)));
  if (idle.size === 0) return;
  for (const step of steps) for (const lean of step.leansOn) if (idle.has(lean.piece)) use(lean.piece, step.id);
  for (const piece of pieces) for (const holder of piece.heldBy.flat()) if (idle.has(holder)) use(holder, piece.id);
  for (const piece of pieces)
    if (idle.has(piece.id)) names.say("build.never-stands", at(piece), { used: [...new Set(users.get(piece.id) ?? [])] });
}

export function checkLeaning(steps: readonly Step[], names: Names): void {
  for (const step of steps) {
    for (const lean of step.leansOn) {
      if (step.puts.includes(lean.piece))
        names.say("build.leans-on-own", { list: "steps", id: writtenId(step.id), key: "leansOn" }, { piece: lean.piece });
    }
  }
}
