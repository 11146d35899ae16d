import { type DocumentEdit, writtenId } from "../../base";
import type { Amount, Build, Membership, Passage, Piece, Reach, Step } from "../../build";

/** An id of the document's own kind that nothing in the build has yet. */
export function freeId(build: Build, wanted: string): string {
  const taken = new Set([build.places, build.pieces, build.steps].flatMap((list) => list.map((one) => writtenId(one.id))));
  const base = writtenId(wanted);
  for (let n = 1; ; n++) {
    const id = n === 1 ? base : `${base}-${n}`;
    if (!taken.has(id)) return id;
  }
}

type List = "places" | "pieces" | "steps";

export const edit = (list: List, id: string, keys: readonly string[], value?: unknown): DocumentEdit => ({
  path: [list, `id=${writtenId(id)}`, ...keys],
  ...(value === undefined ? {} : { value }),
});

/** A new member, in the same group as the one it belongs to. */
export function add(list: List, member: { readonly id: string }, group: Membership | null): DocumentEdit[] {
  const own: DocumentEdit = { path: [list, `id=${member.id}`], value: member };
  return group === null ? [own] : [own, { path: ["groups", `id=${group.group}`, "members", `id=${member.id}`], value: member.id }];
}

/** `step` comes after `first`. */
export const after = (step: string, first: string): DocumentEdit =>
  edit("steps", step, ["after", `id=${writtenId(first)}`], writtenId(first));

const own = (is: string) => ({ is, from: "own guess" });

/** An hour of somebody's work, to be looked at by the builder: nobody has said how long it takes. */
export const anHour = own("1 h");

/** A share of the step's work, as an own guess. */
export function share({ work }: Step, part: number): unknown {
  const text = (minutes: number): string => `${Math.max(1, Math.round(minutes * part))} min`;
  if (work.low_min === work.high_min) return own(text(work.likely_min));
  return { low: text(work.low_min), likely: text(work.likely_min), high: text(work.high_min), from: "own guess" };
}

/** Who does it and on which days: as the step it is taken from. */
export function crewOf(step: Step, build: Build): Record<string, unknown> {
  return {
    ...(step.place === null ? {} : { place: writtenId(step.place) }),
    hands: step.hands.map(({ role, number }) => ({ role, number })),
    ...(step.calendar === build.usual ? {} : { calendar: step.calendar }),
  };
}

/** One pair of hands on the usual calendar: for small work that nobody in particular does. */
export const onePair = { hands: [{ role: "hands", number: 1 }] };

/** A name inside another: an ordinary word at its front small, with an article before it where none is. */
export function the(name: string): string {
  const [first = ""] = name.split(/[\s,.;:]/);
  const inside = /^[A-Z][a-z]+(-[a-z]+)*$/.test(first) ? name.charAt(0).toLowerCase() + name.slice(1) : name;
  return /^(the|a|an|my|our|your|each|both|all|\d.*|.*'s?)$/i.test(first) ? inside : `the ${inside}`;
}

/** Sides of a piece as they are written. */
export const writtenSize = ({ long, wide, thick }: NonNullable<Piece["size_mm"]>): Record<string, string> => ({
  long: `${long} mm`,
  wide: `${wide} mm`,
  thick: `${thick} mm`,
});

/** A second piece like this one, as the document says it. Stock is not taken twice. */
export function writtenPiece(piece: Piece, id: string): Record<string, unknown> {
  const ways = (refs: Piece["closes"]) => refs.map((ref) => `${writtenId(ref.place)}.${ref.way}`);
  const own = (reach: Reach) =>
    JSON.parse(JSON.stringify(writtenReach(reach)).replaceAll(`"piece":"${writtenId(piece.id)}"`, `"piece":"${id}"`));
  return {
    sort: piece.sort,
    ...(piece.closes.length === 0 ? {} : { closes: ways(piece.closes) }),
    ...(piece.makes.length === 0 ? {} : { makes: ways(piece.makes) }),
    ...(piece.fills.length === 0 ? {} : { fills: piece.fills.map(writtenId) }),
    ...(piece.heldBy.length === 0 ? {} : { heldBy: piece.heldBy.map((set) => set.map(writtenId)) }),
    ...(piece.holdsItself === null ? {} : { holdsItself: writtenAmount(piece.holdsItself) }),
    ...(piece.goesAfter === null ? {} : { goesAfter: writtenAmount(piece.goesAfter) }),
    ...(piece.off.length === 0 ? {} : { off: piece.off.map(own) }),
    ...(piece.size_mm === null ? {} : { size: writtenSize(piece.size_mm) }),
    ...(piece.mass_kg === null ? {} : { weight: `${piece.mass_kg} kg` }),
  };
}

export const writtenAmount = ({ on, text, from }: Amount): unknown =>
  from === null && on.kind !== "working"
    ? text
    : { is: text, ...(on.kind === "working" ? { on: on.calendar } : {}), ...(from === null ? {} : { from }) };

export function writtenReach(reach: Reach): unknown {
  const [only, ...others] = reach.any.map(({ place, need }) => ({ place: writtenId(place), ...writtenNeed(need) }));
  return others.length === 0 ? only : { any: [only, ...others] };
}

export function writtenNeed(need: Passage): Record<string, unknown> {
  if (need.kind === "hand" || need.kind === "arm") return { need: need.kind, depth: `${need.depth_mm} mm` };
  return need.kind === "unit" && need.piece !== null ? { need: need.kind, piece: writtenId(need.piece) } : { need: need.kind };
}
