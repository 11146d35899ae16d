import { type DocumentEdit, invariant } from "../base";
import type { ListName, Part } from "../build";
import { idFrom } from "../edit";
import { kitOf } from "./all";
import { settledAnswers } from "./answers";
import { commons } from "./common";
import { idsOf, listOf, partsOf } from "./document";
import { type MadePart, makePart } from "./given";
import type { RawAnswers, Unknown, Written } from "./kit";
import { contextOf } from "./offers";

export interface PutIn {
  /** One change that can be undone as one. */
  readonly edits: readonly DocumentEdit[];
  readonly part: Part;
  readonly unknown: readonly Unknown[];
}

const longestId = 24;

/** An id from a name such that no other id begins with it and a dash, and it begins with no other part's. */
function partId(document: unknown, name: string): string {
  const ids = [...idsOf(document)];
  const parts = partsOf(document).map(({ id }) => id);
  const isFree = (id: string) =>
    ids.every((one) => one !== id && !one.startsWith(`${id}-`)) && parts.every((one) => !id.startsWith(`${one}-`));
  const dashed = idFrom(name.slice(0, longestId * 2), [])
    .slice(0, longestId)
    .replace(/-+$/, "");
  if (isFree(dashed)) return dashed;
  const closed = dashed.replaceAll("-", "");
  if (isFree(closed)) return closed;
  let number = 2;
  while (!isFree(`${closed}${number}`)) number += 1;
  return `${closed}${number}`;
}

/** Shared members that a part asked for and the document has not. */
export function missingCommons(document: unknown, made: MadePart): readonly DocumentEdit[] {
  return made.commons.flatMap((name): DocumentEdit[] => {
    const { list, member } = commons[name];
    return listOf(document, list).some(({ id }) => id === name) ? [] : [{ path: [list, `id=${name}`], value: member(document) }];
  });
}

/** Ids of what a part made, by list. */
const idsMade = (made: MadePart): Readonly<Record<string, readonly string[]>> =>
  Object.fromEntries(
    Object.entries(made.lists).flatMap(([list, members]) => (members.length > 0 ? [[list, members.map(({ id }) => id)]] : [])),
  );

export const membersMade = (made: MadePart): readonly (readonly [ListName, Written])[] =>
  (Object.entries(made.lists) as [ListName, readonly Written[]][]).flatMap(([list, members]) =>
    members.map((member): readonly [ListName, Written] => [list, member]),
  );

/** A part as it stands in the document. */
export const writtenPart = ({ id, name, kit, answers, made }: Part): Written => ({ id, name, kit, answers, made });

/**
 * Puts a kit into a document. Answers that are missing or cannot be read count as usual: ask `checkAnswers` first.
 * @param kitId of one of `kits`; another is our own mistake and throws
 */
export function putIn(document: unknown, kitId: string, name: string, answers: RawAnswers): PutIn {
  const kit = kitOf(kitId);
  invariant(kit !== undefined, `no kit ${kitId}`);
  const context = contextOf(document);
  const called = name.trim() === "" ? kit.name : name.trim();
  const bare: Part = { id: partId(document, called), name: called, kit: kitId, answers: settledAnswers(kit, answers, context), made: {} };
  const made = makePart(kit, bare, context);
  const part: Part = { ...bare, made: idsMade(made) };
  const edits = [
    ...missingCommons(document, made),
    ...membersMade(made).map(([list, member]): DocumentEdit => ({ path: [list, `id=${member.id}`], value: member })),
    { path: ["parts", `id=${part.id}`], value: writtenPart(part) },
  ];
  return { edits, part, unknown: made.unknown };
}
