import { type DocumentEdit, writtenId } from "../../core/base";
import { append, idFrom, idsOf, listOf, textOf, type Written } from "./written";

/** A wait at one of its two steps. */
export interface WaitAt {
  readonly id: string;
  readonly written: Written;
  /** Before: this step waits for the other. After: the other waits for this one. */
  readonly side: "before" | "after";
  /** Id of the step at the other end, as written. */
  readonly other: string;
}

/** The waits written for a step, those it waits for first. */
export function waitsAt(document: unknown, step: string): readonly WaitAt[] {
  const id = writtenId(step);
  const found = listOf(document, "waits").flatMap((written): WaitAt[] => {
    const [from, to] = [textOf(written.from), textOf(written.to)];
    if (writtenId(to) === id) return [{ id: textOf(written.id), written, side: "before", other: from }];
    return writtenId(from) === id ? [{ id: textOf(written.id), written, side: "after", other: to }] : [];
  });
  return [...found.filter((wait) => wait.side === "before"), ...found.filter((wait) => wait.side === "after")];
}

/** The edits that add a wait without amounts between two steps; between two of one group it is the group's, so that each copy has its own. */
export function addWait(document: unknown, from: string, to: string): readonly DocumentEdit[] {
  const [first, then] = [writtenId(from), writtenId(to)];
  const id = idFrom(`${first} to ${then}`, document);
  const group = listOf(document, "groups").find((one) => [first, then].every((step) => idsOf(one.members).includes(step)));
  const edits = [append("waits", { id, from: first, to: then })];
  return group ? [...edits, { path: ["groups", `id=${textOf(group.id)}`, "members", `id=${id}`], value: id }] : edits;
}

/** "from its start", "to its finish": told only where it is not the usual finish to start. */
export function endsText({ fromEnd, toEnd }: Written): string {
  const [from, to] = [textOf(fromEnd) || "finish", textOf(toEnd) || "start"];
  return from === "finish" && to === "start" ? "" : `It counts from the ${from} of the first to the ${to} of the second.`;
}
