import { type DocumentEdit, writtenId, writtenIdPattern } from "../base";
import type { ListName } from "../build";

type Member = Readonly<Record<string, unknown>> & { readonly id: string };

/** Adds a member at the end of a list, or puts it in place of the one with its id. */
export const addMember = (list: ListName, member: Member): DocumentEdit => ({ path: [list, `id=${member.id}`], value: member });

/** Sets one field of a member; undefined takes it out. The id may be a copy's ("post#2"): the field is the group's, written once. */
export function setField(list: ListName, id: string, key: string | readonly string[], value: unknown): DocumentEdit {
  const path = [list, `id=${writtenId(id)}`, ...(typeof key === "string" ? [key] : key)];
  return value === undefined ? { path } : { path, value };
}

/** An id made from a name: lower case, dashes, no number sign, and not one of those taken. */
export function idFrom(name: string, taken: Iterable<string>): string {
  const used = new Set(taken);
  const plain = name
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^[^a-z]+|-+$/g, "")
    .slice(0, 40)
    .replace(/-+$/, "");
  const base = writtenIdPattern.test(plain) ? plain : "item";
  if (!used.has(base)) return base;
  let number = 2;
  while (used.has(`${base}-${number}`)) number++;
  return `${base}-${number}`;
}
