import type { Finding } from "../../base";
import { limits } from "../../base";
import { found } from "../codes";
import type { Entered } from "../link/groups";
import { type ListName, listNames } from "../schema/document";
import { readMember } from "./member";
import { shown } from "./notes";

export type Lists = { readonly [L in ListName]: readonly Entered<L>[] };

export interface ReadLists {
  readonly lists: Lists;
  /** Ids of every list with their positions in it, those of members that could not be read included. */
  readonly ids: ReadonlyMap<ListName, ReadonlyMap<string, number>>;
  /** Lists that are none: what refers to their members cannot be judged. */
  readonly unread: ReadonlySet<ListName>;
  readonly findings: readonly Finding[];
}

function readList<L extends ListName>(list: L, value: unknown, findings: Finding[]): { entered: Entered<L>[]; ids: Map<string, number> } {
  const entered: Entered<L>[] = [];
  const first = new Map<string, number>();
  const members = Array.isArray(value) ? value : [];
  if (value !== undefined && !Array.isArray(value)) {
    findings.push(found("build.type", { list }, { part: "", value: shown(value), wanted: ["list"] }));
  }
  const most = limits.membersInAList.most;
  if (members.length > most) findings.push(found("build.too-many", { list }, { what: list, count: members.length, most }));
  members.slice(0, most).forEach((member: unknown, i) => {
    const read = readMember(list, member);
    for (const one of read.findings) findings.push(read.id === null ? { ...one, where: { ...one.where, position: i + 1 } } : one);
    if (read.id === null) return;
    const before = first.get(read.id);
    if (before !== undefined) {
      findings.push(found("build.id-twice", { list, id: shown(read.id), position: i + 1 }, { first: before + 1, second: i + 1 }));
      return;
    }
    first.set(read.id, i);
    if (read.draft !== null) entered.push({ raw: member as object, id: read.id, draft: read.draft });
  });
  return { entered, ids: first };
}

/** Reads every list of the document, member by member. */
export function readLists(document: Readonly<Record<string, unknown>>): ReadLists {
  const findings: Finding[] = [];
  const ids = new Map<ListName, ReadonlyMap<string, number>>();
  const unread = new Set<ListName>();
  const lists: Partial<Record<ListName, unknown>> = {};
  for (const list of listNames) {
    const value = Object.hasOwn(document, list) ? document[list] : undefined;
    if (value !== undefined && !Array.isArray(value)) unread.add(list);
    const read = readList(list, value, findings);
    lists[list] = read.entered;
    ids.set(list, read.ids);
  }
  return { lists: lists as Lists, ids, unread, findings };
}
