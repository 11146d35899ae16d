import { type DocumentEdit, writtenId } from "../../core/base";
import { addMember, idFrom } from "../../core/edit";
import { isObject, listOf, objectsOf, textOf, type Written } from "./written";

/** The choices, as written, in which a step stands. */
export function choicesOf(document: unknown, step: string): readonly Written[] {
  const id = writtenId(step);
  const speaks = (wait: Written): boolean => [wait.from, wait.to].some((end) => writtenId(textOf(end)) === id);
  return listOf(document, "choices").filter((choice) => objectsOf(choice.either).some((side) => objectsOf(side.waits).some(speaks)));
}

/** The edits that let two steps be done in either order, whichever suits better. */
export function eitherOrder(document: unknown, one: string, other: string, names: readonly [string, string]): readonly DocumentEdit[] {
  const [a, b] = [writtenId(one), writtenId(other)];
  const lists = isObject(document) ? Object.values(document).flatMap(objectsOf) : [];
  const id = idFrom(
    `${a} or ${b}`,
    lists.map((member) => textOf(member.id)),
  );
  const either = [
    { name: `${names[0]} first`, waits: [{ from: a, to: b }] },
    { name: `${names[1]} first`, waits: [{ from: b, to: a }] },
  ];
  return [addMember("choices", { id, name: `${names[0]} or ${names[1]} first`, either })];
}

/** A wait or a way of a choice to begin another one with; ids stay with the first. */
export function anotherLike(value: Written): Written {
  const { id: _, waits, ...rest } = value;
  return waits === undefined ? rest : { ...rest, waits: objectsOf(waits).map(anotherLike) };
}
