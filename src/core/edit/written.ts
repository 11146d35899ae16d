/** A member of a list as it stands in the document; whatever else is in it stays with it. */
export type Written = Readonly<Record<string, unknown>>;
export type WrittenMember = Written & { readonly id: string };

export const isObject = (value: unknown): value is Written => typeof value === "object" && value !== null && !Array.isArray(value);

/** The members of a list that have an id; empty where there is no such list. */
export function membersOf(document: unknown, list: string): readonly WrittenMember[] {
  const value = isObject(document) ? document[list] : undefined;
  return Array.isArray(value) ? value.filter((member): member is WrittenMember => isObject(member) && typeof member.id === "string") : [];
}

export const memberOf = (document: unknown, list: string, id: string): WrittenMember | undefined =>
  membersOf(document, list).find((member) => member.id === id);

/** The texts of a list; empty where it is none. */
export const textsOf = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.filter((text): text is string => typeof text === "string") : [];

/** Every id of the document, of whatever list. */
export function idsIn(document: unknown): Set<string> {
  const lists = isObject(document) ? Object.keys(document) : [];
  return new Set(lists.flatMap((list) => membersOf(document, list).map(({ id }) => id)));
}
