import type { DocumentEdit } from "../../core/base";
import type { Desk } from "../state";
import { type ListName, memberOf, putKey, textOf, type Written } from "./written";

/** One member of the document as a form reads and writes it. */
export interface Member {
  readonly written: Written;
  readonly name: string;
  /** Writes one key; sentences when that cannot be. */
  put(key: string, value: unknown, more?: readonly DocumentEdit[]): readonly string[];
}

/** The member of that id, or null where the document has none (any more). */
export function memberOn(desk: Desk, list: ListName, id: string): Member | null {
  const written = memberOf(desk.document, list, id);
  if (written === null) return null;
  const name = textOf(written.name) || textOf(written.id);
  return {
    written,
    name,
    put: (key, value, more = []) => desk.attempt([putKey(list, id, key, value), ...more], `change ${name}`, `${list} ${id} ${key}`),
  };
}
