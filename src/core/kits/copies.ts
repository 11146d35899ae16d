import type { DocumentEdit } from "../base";
import type { ListName } from "../build";
import { listOf } from "./document";
import type { MadePart } from "./given";
import type { Written } from "./kit";
import { membersMade } from "./put-in";

/** What is so of one step and never of others like it. */
const ofOneOnly = ["done", "fixed"] as const;

type Fields = Readonly<Record<string, unknown>>;
const fieldsOf = (value: unknown): Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value) ? (value as Fields) : {};
const groupsOf = (made: MadePart): readonly Written[] => made.lists.groups ?? [];

/** What the first copy had of its own, on the one that is left. */
function toOne(differences: Fields, made: MadePart): DocumentEdit[] {
  const listOfId = new Map(membersMade(made).map(([list, { id }]) => [id, list] as const));
  return Object.entries(fieldsOf(Object.hasOwn(differences, "1") ? differences["1"] : {})).flatMap(([id, own]) => {
    const list: ListName | undefined = listOfId.get(id);
    if (list === undefined) return [];
    return Object.entries(fieldsOf(own)).map(([key, value]): DocumentEdit => {
      const path = [list, `id=${id}`, key];
      return value === null ? { path } : { path, value };
    });
  });
}

/** What was so of the one that was there, on the first copy. */
function toFirst(document: unknown, group: Written): DocumentEdit[] {
  const members = new Set(Array.isArray(group.members) ? (group.members as readonly unknown[]) : []);
  return listOf(document, "steps")
    .filter(({ id }) => members.has(id))
    .flatMap((step) =>
      ofOneOnly
        .filter((key) => Object.hasOwn(step, key))
        .flatMap((key): DocumentEdit[] => [
          { path: ["steps", `id=${step.id}`, key] },
          { path: ["groups", `id=${group.id}`, "differences", "1", step.id, key], value: step[key] },
        ]),
    );
}

/**
 * Edits that carry over what single copies have of their own where new answers make several out of one, one out of several, or fewer: what was done of one is done of the
 * first only, and what the last ones had goes with them. To be made after those that bring the members up to date, and before what is not made any more goes.
 */
export function copiesFollow(document: unknown, before: MadePart, after: MadePart): readonly DocumentEdit[] {
  const inDocument = new Map(listOf(document, "groups").map((group) => [group.id, group]));
  const old = new Map(groupsOf(before).map((group) => [group.id, group]));
  const next = new Map(groupsOf(after).map((group) => [group.id, group]));
  const left = [...old].flatMap(([id, was]): DocumentEdit[] => {
    const there = inDocument.get(id);
    const is = next.get(id);
    if (there === undefined) return [];
    const differences = fieldsOf(there.differences);
    if (is === undefined) return toOne(differences, after);
    const count = Number(there.count === was.count ? is.count : there.count);
    const over = Object.keys(differences).filter((copy) => Number(copy) > count);
    return over.map((copy) => ({ path: ["groups", `id=${id}`, "differences", copy] }));
  });
  const fresh = [...next.values()].filter(({ id }) => !old.has(id) && !inDocument.has(id));
  return [...left, ...fresh.flatMap((group) => toFirst(document, group))];
}
