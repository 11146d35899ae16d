import { writtenId } from "../../base";
import type { Piece, Step } from "../../build";
import { withoutReach } from "./bench";
import { askedOf, type Blocked, type Candidate, type Maker, pieceOf, saying, stepOf, visitors } from "./candidate";
import { notPutBy } from "./face-off";
import { inParts } from "./parts";
import { add, crewOf, edit, freeId, share, writtenReach } from "./written";

/** Split a step that does several of the things that cannot go together: one of them becomes a step of its own, with half of the work. */
export const split: Maker = (blocked) => {
  const asked = askedOf(blocked);
  const inTwo = [...partsPut(blocked), ...partsTaken(blocked), ...partsReached(blocked)];
  // What was asked of a step by name is not had by giving its work another name.
  return [...inTwo.filter(({ detail }) => !asked.includes(String(detail.step))), ...inParts(blocked)];
};

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
    // Work at an inspected place stays with the step; the part only sets what closes it.
    const inspected = saying(blocked, "hold-point").map((s) => s.place);
    const setting = step.reaches.filter(({ any }) => !any.some((a) => inspected.includes(a.place)));
    const reaches = setting.length === 0 ? {} : { reaches: setting.map(writtenReach) };
    const made = part(blocked, step, { ...reaches, puts: [writtenId(piece.id)] }, "");
    return [{ ...made, detail: { step: step.id, piece: piece.id }, edits: [notPutBy(step, piece), ...made.edits] }];
  });
}

/** Whether the block also asks something else of the step than what it puts up. */
const asksOf = ({ because }: Blocked, step: Step): boolean =>
  because.some(
    (s) =>
      (s.step === step.id && (s.rule === "reach" || s.rule === "off" || s.rule === "leans" || s.rule === "up-down")) ||
      (s.rule === "hold-point" && step.reaches.some(({ any }) => any.some((a) => a.place === s.place))),
  );

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
