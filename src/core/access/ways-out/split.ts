import type { Piece, Step } from "../../build";
import { withoutReach } from "./bench";
import { type Blocked, type Candidate, type Maker, pieceOf, saying, stepOf, visitors } from "./candidate";
import { notPutBy } from "./face-off";
import { add, crewOf, edit, freeId, share, writtenId, writtenReach } from "./written";

/** Split a step that does several of the things that cannot go together: one of them becomes a step of its own, with half of the work. */
export const split: Maker = (blocked) => [...partsPut(blocked), ...partsTaken(blocked), ...partsReached(blocked), ...smallerUnits(blocked)];

function piecesSpokenOf(blocked: Blocked): Piece[] {
  const ids = new Set(blocked.because.flatMap((s) => [...(s.piece === undefined ? [] : [s.piece]), ...(s.pieces ?? [])]));
  return [...ids].flatMap((id) => pieceOf(blocked, id) ?? []);
}

const doesMore = (step: Step): boolean => step.puts.length + step.takes.length + step.reaches.length > 1;

function part(blocked: Blocked, step: Step, what: Record<string, unknown>, other: string): Pick<Candidate, "kind" | "detail" | "edits"> {
  const member = {
    id: freeId(blocked.build, `${writtenId(step.id)}-part`),
    name: `${step.name}, other part`,
    sort: step.sort === "pour" ? "work" : step.sort,
    ...crewOf(step, blocked.build),
    work: share(step, 0.5),
    ...what,
  };
  const half = edit("steps", step.id, ["work"], share(step, 0.5));
  return { kind: "split", detail: { step: step.id, other }, edits: [...add("steps", member, step.group), half] };
}

function partsPut(blocked: Blocked): Candidate[] {
  return piecesSpokenOf(blocked).flatMap((piece) => {
    const step = blocked.build.steps[piece.up];
    if (step === undefined || step.sort === "pour" || !(step.puts.length > 1 || asksOf(blocked, step))) return [];
    const reaches = step.reaches.length === 0 ? {} : { reaches: step.reaches.map(writtenReach) };
    const made = part(blocked, step, { ...reaches, puts: [writtenId(piece.id)] }, "");
    return [{ ...made, detail: { step: step.id, piece: piece.id }, edits: [notPutBy(step, piece), ...made.edits] }];
  });
}

/** Whether the block also asks something else of the step than what it puts up. */
const asksOf = ({ because }: Blocked, step: Step): boolean =>
  because.some((s) => s.step === step.id && (s.rule === "reach" || s.rule === "off" || s.rule === "leans" || s.rule === "up-down"));

function partsTaken(blocked: Blocked): Candidate[] {
  return piecesSpokenOf(blocked).flatMap((piece) => {
    const step = blocked.build.steps[piece.down];
    if (step === undefined || !doesMore(step)) return [];
    const reaches = step.reaches.length === 0 ? {} : { reaches: step.reaches.map(writtenReach) };
    const made = part(blocked, step, { ...reaches, takes: [writtenId(piece.id)] }, "");
    const notTaken = edit("steps", step.id, ["takes", `id=${writtenId(piece.id)}`]);
    return [{ ...made, detail: { step: step.id, piece: piece.id }, edits: [notTaken, ...made.edits] }];
  });
}

function partsReached(blocked: Blocked): Candidate[] {
  return visitors(blocked).flatMap(({ step, says }) => {
    if (says.rule !== "reach" || step.reaches.length < 2) return [];
    const reach = step.reaches[Number(says.id) - 1];
    if (reach === undefined) return [];
    const other = saying(blocked, "wait").find((w) => w.step === step.id || w.other === step.id);
    const far = stepOf(blocked, other?.step === step.id ? other.other : other?.step);
    const made = part(blocked, step, { reaches: [writtenReach(reach)] }, far?.id ?? "");
    return [{ ...made, edits: [withoutReach(step, says), ...made.edits] }];
  });
}

/** A piece that must pass as one is made in parts no larger and no heavier than some way lets pass. */
function smallerUnits(blocked: Blocked): Candidate[] {
  return visitors(blocked).flatMap(({ step, says }) => {
    const piece = pieceOf(blocked, typeof says.detail?.unit === "string" ? says.detail.unit : undefined);
    const place = blocked.build.places[blocked.build.at.place.get(says.place ?? "") ?? -1];
    if (piece === undefined || piece.size_mm === null || place === undefined) return [];
    const { long, wide, thick } = piece.size_mm;
    const sides = [long, wide, thick].sort((a, b) => a - b) as [number, number, number];
    return place.ways
      .filter((way) => way.passes.some((kind) => kind === "unit" || kind === "person" || kind === "machine"))
      .map((way): Candidate => {
        const hole = way.opening_mm ?? { wide: sides[1], high: sides[0] };
        const fitted = [
          Math.min(sides[2], way.longest_mm ?? sides[2]),
          Math.min(sides[1], Math.max(hole.wide, hole.high)),
          Math.min(sides[0], Math.min(hole.wide, hole.high)),
        ];
        const [l, w, t] = fitted.map((mm) => `${Math.floor(mm)} mm`);
        const tooHeavy = way.bears_kg !== null && piece.mass_kg !== null && piece.mass_kg > way.bears_kg;
        const weight = tooHeavy ? [edit("pieces", piece.id, ["weight"], { is: `${way.bears_kg} kg`, from: "own guess" })] : [];
        return {
          kind: "split",
          detail: { step: step.id, piece: piece.id, place: place.id, way: way.full },
          edits: [edit("pieces", piece.id, ["size"], { long: l, wide: w, thick: t }), ...weight],
        };
      });
  });
}
