import { type DocumentEdit, type Statement, writtenId } from "../../base";
import type { Step } from "../../build";
import { type Candidate, closers, type Maker, visitors } from "./candidate";
import { add, after, anHour, crewOf, edit, freeId, share } from "./written";

/**
 * Do it on the bench. Work that makes a piece of known size is done there by a new step that must get nowhere, and the old step only brings the piece in as
 * one: it now needs a way for a unit of that size. Work on something else is done before the piece that closes it off goes in: it must get nowhere any more.
 */
export const bench: Maker = (blocked) =>
  visitors(blocked)
    .filter(({ step, says }) => says.rule === "reach" && (step.sort === "work" || step.sort === "embed"))
    .flatMap(({ step, says }): Candidate[] => {
      const detail = { step: step.id, place: says.place ?? "" };
      const unit = step.puts
        .map((id) => blocked.build.pieces[blocked.build.at.piece.get(id) ?? -1])
        .find((piece) => piece?.size_mm !== undefined && piece.size_mm !== null);
      if (unit !== undefined && says.place !== undefined) {
        const id = freeId(blocked.build, `${writtenId(step.id)}-bench`);
        const member = {
          id,
          name: `${step.name}, on the bench`,
          sort: step.sort,
          ...crewOf({ ...step, place: null }, blocked.build),
          work: share(step, 1),
        };
        const edits = [
          ...add("steps", member, step.group),
          edit("steps", step.id, ["reaches", at(says)], { place: writtenId(says.place), need: "unit", piece: writtenId(unit.id) }),
          edit("steps", step.id, ["work"], anHour),
          after(step.id, id),
        ];
        return [{ kind: "bench", detail: { ...detail, piece: unit.id }, edits }];
      }
      return closers(blocked)
        .filter(({ by, says: closes }) => by.id !== step.id && closes.rule === "closes")
        .map(
          ({ by, piece }): Candidate => ({
            kind: "bench",
            detail: { ...detail, piece: piece.id, other: by.id },
            edits: [withoutReach(step, says), after(by.id, step.id)],
          }),
        );
    });

const at = (says: Statement): string => String(Number(says.id) - 1);

export const withoutReach = (step: Step, says: Statement): DocumentEdit => edit("steps", step.id, ["reaches", at(says)]);
