import { type DocumentEdit, type Statement, writtenId } from "../../base";
import { isCure } from "../../build";
import { type Blocked, type Candidate, type Maker, saying, stepOf, workersAt } from "./candidate";
import { add, anHour, crewOf, edit, freeId } from "./written";

/** A second inspection stops the work at the place instead of the first one, after the work that comes between. */
export const secondInspection: Maker = (blocked) =>
  saying(blocked, "hold-point").flatMap((point) => {
    const first = stepOf(blocked, point.step);
    if (first === undefined || point.place === undefined) return [];
    const place = writtenId(point.place);
    return workersAt(blocked, point.place)
      .filter((step) => step.id !== first.id)
      .map((step): Candidate => {
        const member = {
          id: freeId(blocked.build, `${writtenId(first.id)}-second`),
          name: `${first.name}, once more`,
          sort: first.sort,
          ...crewOf(first, blocked.build),
          work: anHour,
          reaches: [{ place, need: "sight" }],
          holdPoint: { places: [place] },
          after: [writtenId(first.id), writtenId(step.id)],
        };
        const others = first.holdPoint?.places.filter((q) => q !== point.place).map(writtenId) ?? [];
        const left =
          others.length === 0 ? edit("steps", first.id, ["holdPoint"]) : edit("steps", first.id, ["holdPoint", "places"], others);
        return {
          kind: "second-inspection",
          detail: { step: first.id, place: point.place ?? "", other: step.id },
          edits: [left, ...add("steps", member, first.group)],
        };
      });
  });

/** What should have come before something that is done was done too, and only the tick is missing. */
export const tick: Maker = (blocked) =>
  saying(blocked, "done").flatMap(({ step = "", other = "" }): Candidate[] => {
    const done = stepOf(blocked, step)?.done;
    if (!done || other === "") return [];
    return [
      {
        kind: "tick",
        detail: { step: other, other: step },
        edits: [edit("steps", other, ["done"], { start: done.start, finish: done.start })],
      },
    ];
  });

/** A tick that was a slip: the step is not done after all. */
export const untick: Maker = (blocked) =>
  [...new Set(saying(blocked, "done").map(({ step }) => step ?? ""))].map(
    (step): Candidate => ({ kind: "untick", detail: { step }, edits: [edit("steps", step, ["done"])] }),
  );

/** Drop a wait, a link or a choice. */
export const dropWait: Maker = (blocked) =>
  saying(blocked, "wait", "choice")
    .filter(({ id }) => !isCure(blocked.build.waits.find((wait) => wait.id === id)?.least ?? null))
    .map(
      (s): Candidate => ({
        kind: "drop-wait",
        detail: s.rule === "choice" ? { choice: s.id ?? "" } : { wait: s.id ?? "", step: s.step ?? "", other: s.other ?? "" },
        edits: s.rule === "choice" ? [{ path: ["choices", `id=${writtenId(s.id ?? "")}`] }] : withoutWait(blocked, s),
      }),
    );

/** A plain link stands at the later step's `after`, or among what a trial decides. */
export function withoutWait(blocked: Blocked, { id = "", step = "", other = "", detail }: Statement): DocumentEdit[] {
  if (detail?.plain !== true) return [{ path: ["waits", `id=${writtenId(id)}`] }];
  const decided = stepOf(blocked, step)?.trial?.decides.some((one) => one === other) === true;
  const link = edit("steps", other, ["after", `id=${writtenId(step)}`]);
  return decided ? [link, edit("steps", step, ["trial", "decides", `id=${writtenId(other)}`])] : [link];
}
