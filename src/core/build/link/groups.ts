import type { Finding } from "../../base";
import { limits } from "../../base";
import type { Membership } from "../model";
import type { GroupDraft } from "../read/drafts";
import { type Draft, readMember } from "../read/member";
import type { ListName } from "../schema/document";
import { isObject } from "../schema/shape";
import type { Copy, Names } from "./names";

/** One member as it is read: itself, or one of its copies. */
export interface Written<L extends ListName> {
  /** "post#2" for a copy. */
  readonly id: string;
  readonly draft: Draft<L>;
  readonly copy: Copy | null;
  readonly membership: Membership | null;
}

export type GroupsByMember = ReadonlyMap<string, GroupDraft>;

/** Which group each member belongs to; none belongs to two. */
export function membersOf(groups: readonly GroupDraft[], names: Names): GroupsByMember {
  const groupOf = new Map<string, GroupDraft>();
  for (const group of groups) {
    for (const member of group.members) {
      const other = groupOf.get(member);
      if (other && other !== group) {
        names.say("build.two-groups", { list: "groups", id: group.id, key: "members" }, { member, first: other.id, second: group.id });
      } else groupOf.set(member, group);
    }
  }
  return groupOf;
}

const merged = new WeakMap<object, WeakMap<object, object>>();

/** The member with one copy's differences over it (null takes a key away); the same objects give the same object. */
function withDifference(member: object, difference: Readonly<Record<string, unknown>>): object {
  let known = merged.get(member);
  if (!known) {
    known = new WeakMap();
    merged.set(member, known);
  }
  const before = known.get(difference);
  if (before) return before;
  const kept = Object.entries({ ...member, ...difference, id: (member as { id: unknown }).id }).filter(([, value]) => value !== null);
  const whole = Object.fromEntries(kept);
  known.set(difference, whole);
  return whole;
}

export interface Entered<L extends ListName> {
  readonly raw: object;
  readonly id: string;
  readonly draft: Draft<L>;
}

/** The members of a list with groups written out: copy after copy in the member's place in the list. */
export function writeOut<L extends ListName>(
  list: L,
  entered: readonly Entered<L>[],
  groupOf: GroupsByMember,
  findings: Finding[],
): Written<L>[] {
  if (groupOf.size === 0) return entered.map(({ id, draft }) => ({ id, draft, copy: null, membership: null }));
  const out: Written<L>[] = [];
  for (const { raw, id, draft } of entered) {
    const group = groupOf.get(id);
    if (!group) {
      out.push({ id, draft, copy: null, membership: null });
      continue;
    }
    for (let copy = 1; copy <= group.count && out.length <= limits.membersInAList.most; copy++) {
      const difference = group.differences.get(copy)?.get(id);
      const read = difference && isObject(difference) ? readMember(list, withDifference(raw, difference)) : null;
      if (read)
        for (const finding of read.findings) findings.push({ ...finding, where: { list: "groups", id: group.id, key: "differences" } });
      out.push({
        id: `${id}#${copy}`,
        draft: read?.draft ?? draft,
        copy: { group, copy },
        membership: { group: group.id as Membership["group"], copy, written: id },
      });
    }
  }
  return out;
}
