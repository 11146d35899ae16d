import type { Part } from "../build";
import { type ListName, listNames } from "../build";
import type { Written } from "./kit";

export const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Members of a list of a document that have an id; whatever else stands there is passed over. */
export function listOf(document: unknown, list: ListName): readonly Written[] {
  const value = isObject(document) ? document[list] : undefined;
  return Array.isArray(value) ? value.filter((one): one is Written => isObject(one) && typeof one.id === "string") : [];
}

/** Units in which the build is written. */
export function unitsOf(document: unknown): "us" | "metric" {
  const site = isObject(document) ? document.site : undefined;
  return isObject(site) && site.units === "metric" ? "metric" : "us";
}

const isAnswer = (value: unknown): boolean =>
  ["string", "number", "boolean"].includes(typeof value) || (Array.isArray(value) && value.every((one) => typeof one === "string"));

/** Parts of a document as far as they can be read; a hand may have been at them. */
export function partsOf(document: unknown): readonly Part[] {
  return listOf(document, "parts").flatMap((part): Part[] => {
    if (typeof part.kit !== "string") return [];
    const answers = isObject(part.answers) ? Object.fromEntries(Object.entries(part.answers).filter(([, value]) => isAnswer(value))) : {};
    const made = isObject(part.made)
      ? Object.fromEntries(
          Object.entries(part.made).map(([list, ids]) => [list, Array.isArray(ids) ? ids.filter((id) => typeof id === "string") : []]),
        )
      : {};
    return [{ id: part.id, name: typeof part.name === "string" ? part.name : part.id, kit: part.kit, answers, made } as Part];
  });
}

/** Every id of a document, whatever its list. */
export const idsOf = (document: unknown): ReadonlySet<string> =>
  new Set(listNames.flatMap((list) => listOf(document, list).map(({ id }) => id)));
