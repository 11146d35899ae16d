import { type DocumentEdit, writtenId } from "../../base";
import type { Build, Piece, Step } from "../../build";
import { askedOf, type Candidate, type Closer, closers, type Maker, visitors } from "./candidate";
import { withoutWait } from "./others";
import { add, after, anHour, crewOf, edit, freeId, the, writtenReach } from "./written";

/** Leave a face off: a new step puts the piece up, after the step that must get past it. */
export const leaveFaceOff: Maker = (blocked) =>
  closers(blocked)
    .filter(({ says }) => says.rule === "closes")
    .flatMap((closer) =>
      visitors(blocked)
        .filter(({ step }) => step.id !== closer.by.id)
        .map(
          ({ step }): Candidate => ({
            kind: "leave-face-off",
            detail: {
              piece: closer.piece.id,
              step: closer.by.id,
              other: step.id,
              // Asked for by name, the step is the same in name only: what it does no more must be said.
              ...(askedOf(blocked).includes(closer.by.id) ? { emptied: [closer.piece.id] } : {}),
            },
            edits: putLater(blocked.build, closer, step),
          }),
        ),
    );

function putLater(build: Build, { piece, by }: Closer, visitor: Step): DocumentEdit[] {
  const id = freeId(build, `${writtenId(piece.id)}-later`);
  const member = {
    id,
    name: `Put up ${the(piece.name)}`,
    ...crewOf(by, build),
    work: anHour,
    ...(by.reaches.length === 0 ? {} : { reaches: by.reaches.map(writtenReach) }),
    puts: [writtenId(piece.id)],
    after: [writtenId(by.id), writtenId(visitor.id)],
  };
  return [notPutBy(by, piece), ...add("steps", member, by.group)];
}

export const notPutBy = (step: Step, piece: Piece): DocumentEdit => edit("steps", step.id, ["puts", `id=${writtenId(piece.id)}`]);

/** Put a piece up later: after the step that must get past it, and no longer before what a link puts behind it. */
export const later: Maker = (blocked) =>
  closers(blocked).flatMap(({ piece, by }) =>
    visitors(blocked)
      .filter(({ step }) => step.id !== by.id)
      .flatMap(({ step }) =>
        blocked.because
          .filter((s) => s.rule === "wait")
          .map(
            (link): Candidate => ({
              kind: "later",
              detail: { piece: piece.id, step: by.id, other: step.id },
              edits: [...withoutWait(blocked, link), after(by.id, step.id)],
            }),
          ),
      ),
  );
