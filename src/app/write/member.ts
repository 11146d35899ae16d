import { type DocumentEdit, writtenId } from "../../core/base";
import { findingSentence } from "../../words";
import type { Desk } from "../state";
import { type ListName, memberOf, putKey, textOf, type Written } from "./written";

/** One member of the document as a form reads and writes it. */
export interface Member {
  /** False where the document has no member of that id (any more). */
  readonly there: boolean;
  readonly written: Written;
  readonly name: string;
  text(key: string): string;
  /** Writes one key; sentences when that cannot be. */
  put(key: string, value: unknown, more?: readonly DocumentEdit[]): readonly string[];
  /** What is to be looked at in what is written there, in sentences. */
  remarks(key: string): readonly string[];
}

/** The member of that id in the open document. */
export function memberOn(desk: Desk, list: ListName, id: string): Member {
  const found = memberOf(desk.document, list, id);
  const written = found ?? {};
  const name = textOf(written.name) || textOf(written.id);
  return {
    there: found !== null,
    written,
    name,
    text: (key) => textOf(written[key]),
    put: (key, value, more = []) =>
      found === null ? [] : desk.attempt([putKey(list, id, key, value), ...more], `change ${name}`, `${list} ${id} ${key}`),
    remarks: (key) =>
      desk.findings
        .filter(({ severity, where }) => severity === "look" && where.list === list && where.key === key && where.id === writtenId(id))
        .map((finding) => findingSentence(finding, desk.build, desk.units)),
  };
}
