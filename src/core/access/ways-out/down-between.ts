import { writtenId } from "../../base";
import type { Build, Piece, Step } from "../../build";
import { type Candidate, closers, type Maker, visitors } from "./candidate";
import { add, after, anHour, crewOf, edit, freeId, the, writtenPiece, writtenReach } from "./written";

/**
 * Take a piece down for a step and put it up again: a new step takes it down before that, another puts up the same once more after it. Whatever took the first
 * one down takes the second. A piece that fills a place, concrete or earth, is not taken down like that.
 */
export const downBetween: Maker = (blocked) =>
  closers(blocked)
    .filter(({ says, piece }) => says.rule === "closes" && piece.fills.length === 0)
    .flatMap(({ piece, by }) =>
      visitors(blocked)
        .filter(({ step }) => step.id !== by.id && blocked.build.steps[piece.down]?.id !== step.id)
        .map(({ step }) => between(blocked.build, piece, by, step)),
    );

function between(build: Build, piece: Piece, by: Step, visitor: Step): Candidate {
  const again = freeId(build, `${writtenId(piece.id)}-again`);
  const off = freeId(build, `${writtenId(piece.id)}-off`);
  const on = freeId(build, `${writtenId(piece.id)}-on-again`);
  const hands = { ...crewOf(by, build), work: anHour };
  const last = build.steps[piece.down];
  const reaches = by.reaches.length === 0 ? {} : { reaches: by.reaches.map(writtenReach) };
  return {
    kind: "down-between",
    detail: { piece: piece.id, step: visitor.id },
    edits: [
      ...add(
        "steps",
        { id: off, ...{ name: `Take ${the(piece.name)} down`, ...hands, takes: [writtenId(piece.id)], after: [writtenId(by.id)] } },
        by.group,
      ),
      ...add("pieces", { id: again, ...{ name: `${piece.name}, again` }, ...writtenPiece(piece, again) }, piece.group),
      ...add(
        "steps",
        {
          id: on,
          ...{ name: `Put ${the(piece.name)} up again`, ...hands, ...reaches, puts: [again], after: [writtenId(visitor.id), off] },
        },
        by.group,
      ),
      after(visitor.id, off),
      ...(last === undefined
        ? []
        : [edit("steps", last.id, ["takes", `id=${writtenId(piece.id)}`]), edit("steps", last.id, ["takes", `id=${again}`], again)]),
    ],
  };
}
