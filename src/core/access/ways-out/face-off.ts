import type { DocumentEdit } from "../../base";
import type { Build, Piece, Step } from "../../build";
import { type Candidate, type Closer, closers, type Maker, visitors } from "./candidate";
import { add, after, anHour, crewOf, edit, freeId, writtenId, writtenReach } from "./written";

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
            detail: { piece: closer.piece.id, step: closer.by.id, other: step.id },
            edits: putLater(blocked.build, closer, step),
          }),
        ),
    );

function putLater(build: Build, { piece, by }: Closer, visitor: Step): DocumentEdit[] {
  const id = freeId(build, `${writtenId(piece.id)}-later`);
  const member = {
    id,
    name: `Put up ${piece.name}`,
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
          .filter((s) => s.rule === "wait" && s.detail?.plain === true)
          .map(
            (link): Candidate => ({
              kind: "later",
              detail: { piece: piece.id, step: by.id, other: step.id },
              edits: [edit("steps", link.other ?? "", ["after", `id=${writtenId(link.step ?? "")}`]), after(by.id, step.id)],
            }),
          ),
      ),
  );
