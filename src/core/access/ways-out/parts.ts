import { type DocumentEdit, writtenId } from "../../base";
import type { Build, Piece, Reach, Way } from "../../build";
import { passes } from "../passes";
import { type Blocked, type Candidate, pieceOf, visitors } from "./candidate";
import { add, edit, freeId, writtenAmount, writtenPiece, writtenReach, writtenSize } from "./written";

type Size = NonNullable<Piece["size_mm"]>;

/** Most parts that one piece is cut into: beyond that it is another piece of work. */
const mostParts = 8;

/** Ways to cut along the three sides into equal parts, fewest parts first. */
const cuts = [1, 2, 3, 4]
  .flatMap((long) => [1, 2, 3, 4].flatMap((wide) => [1, 2, 3, 4].map((thick) => ({ long, wide, thick, parts: long * wide * thick }))))
  .filter(({ parts }) => parts > 1 && parts <= mostParts)
  .sort((a, b) => a.parts - b.parts);

/**
 * A piece that must pass as one is made in equal parts, as few as get through some way of the place. Each part is a piece of its own with its size and weight; the same steps
 * bring them in, put them up and take them down, and whoever leans on the whole or is held by it needs them all.
 */
export function inParts(blocked: Blocked): Candidate[] {
  return visitors(blocked).flatMap(({ step, says }) => {
    const { build } = blocked;
    const piece = pieceOf(blocked, typeof says.detail?.unit === "string" ? says.detail.unit : undefined);
    const place = build.places[build.at.place.get(says.place ?? "") ?? -1];
    if (piece === undefined || place === undefined) return [];
    return place.ways.flatMap((way): Candidate[] => {
      const cut = fittingCut(piece, way);
      if (cut === null) return [];
      const detail = { step: step.id, piece: piece.id, place: place.id, way: way.full, parts: cut.parts };
      return [{ kind: "split", detail, edits: editsOf(build, piece, cut) }];
    });
  });
}

interface Cut {
  readonly parts: number;
  readonly size: Size;
  readonly mass_kg: number;
}

/** Up to the next tenth: a part is never told smaller or lighter than it comes out. */
const tenth = (value: number): number => Math.ceil(10 * value - 1e-6) / 10;

function fittingCut(piece: Piece, way: Way): Cut | null {
  const { size_mm: whole, mass_kg: weight, id } = piece;
  if (whole === null || weight === null) return null;
  for (const { long, wide, thick, parts } of cuts) {
    const size = { long: tenth(whole.long / long), wide: tenth(whole.wide / wide), thick: tenth(whole.thick / thick) };
    const mass_kg = tenth(weight / parts);
    const unit = { kind: "unit", long_mm: size.long, wide_mm: size.wide, thick_mm: size.thick, mass_kg, piece: id } as const;
    if (passes(way, unit)) return { parts, size, mass_kg };
  }
  return null;
}

function editsOf(build: Build, piece: Piece, { parts, size, mass_kg }: Cut): DocumentEdit[] {
  const sized = { size: writtenSize(size), weight: { is: `${mass_kg} kg`, from: "own guess" } };
  const name = (n: number) => `${piece.name}, part ${n} of ${parts}`;
  const edits = [
    edit("pieces", piece.id, ["name"], name(1)),
    ...Object.entries(sized).map(([key, value]) => edit("pieces", piece.id, [key], value)),
  ];
  for (let n = 2; n <= parts; n++) {
    const id = freeId(build, `${writtenId(piece.id)}-part-${n}`);
    edits.push(
      ...add("pieces", { id, ...{ name: name(n) }, ...writtenPiece(piece, id), ...sized }, piece.group),
      ...alongside(build, piece, id),
    );
  }
  return edits;
}

/** Whatever is done with the piece is done with the other part too. */
function alongside(build: Build, piece: Piece, id: string): DocumentEdit[] {
  const edits: DocumentEdit[] = [];
  const seen = new Set<string>();
  for (const step of build.steps) {
    if (seen.has(writtenId(step.id))) continue;
    const before = edits.length;
    if (step.puts.includes(piece.id)) edits.push(edit("steps", step.id, ["puts", `id=${id}`], id));
    if (step.takes.includes(piece.id)) edits.push(edit("steps", step.id, ["takes", `id=${id}`], id));
    for (const { piece: on, once } of step.leansOn)
      if (on === piece.id)
        edits.push(edit("steps", step.id, ["leansOn", "+999"], { piece: id, ...(once === null ? {} : { once: writtenAmount(once) }) }));
    for (const reach of step.reaches)
      if (bringsIn(reach, piece)) edits.push(edit("steps", step.id, ["reaches", "+999"], reachOf(reach, piece, id)));
    if (edits.length > before) seen.add(writtenId(step.id));
  }
  for (const other of build.pieces) {
    other.heldBy.forEach((set, i) => {
      if (set.includes(piece.id)) edits.push(edit("pieces", other.id, ["heldBy", String(i), `id=${id}`], id));
    });
  }
  return edits;
}

const bringsIn = ({ any }: Reach, piece: Piece): boolean => any.some(({ need }) => need.kind === "unit" && need.piece === piece.id);

const reachOf = ({ any }: Reach, piece: Piece, id: string): unknown =>
  writtenReach({
    any: any.map(({ place, need }) => ({
      place,
      need: need.kind === "unit" && need.piece === piece.id ? { ...need, piece: id as never } : need,
    })),
  });
