import { type DocumentEdit, writtenId } from "../base";
import { type Answer, rewritten } from "./references";
import { isObject, memberOf, membersOf, textsOf, type Written, type WrittenMember } from "./written";

export type Removable =
  | "steps"
  | "pieces"
  | "places"
  | "deliveries"
  | "calendars"
  | "people"
  | "equipment"
  | "stock"
  | "waits"
  | "choices"
  | "pours"
  | "bookings"
  | "groups"
  | "solids"
  | "parts";

/** Members that mean nothing without the step they speak of. */
const ofStep: Readonly<Record<string, readonly string[]>> = { waits: ["from", "to"], bookings: ["step"], pours: ["step"] };

/** Lists of which groups have members. */
const grouped = ["places", "pieces", "steps", "waits"] as const;

const speaksOf = (value: unknown, id: string): boolean => typeof value === "string" && writtenId(value) === id;

/** A choice without the orders that are none any more; ways without an order go. */
function choiceLeft(before: WrittenMember, after: WrittenMember): Written | null {
  const [was, is] = [before.either, after.either].map((either) => (Array.isArray(either) ? either : []));
  const either = (is ?? []).filter((side: unknown, at) => {
    const had = was?.[at];
    return !(isObject(side) && Array.isArray(side.waits) && side.waits.length === 0 && isObject(had) && lengthOf(had.waits) > 0);
  });
  return either.length < 2 && (was ?? []).length >= 2 ? null : { ...after, either };
}
const lengthOf = (value: unknown): number => (Array.isArray(value) ? value.length : 0);

/** A group without the members that go, and without what single copies say of what goes; null where none is left. */
function groupLeft(group: WrittenMember, listOf: (id: string) => string, isGone: (id: string) => boolean, answer: Answer): Written | null {
  const members = textsOf(group.members).filter((id) => !isGone(id));
  if (members.length === 0 && textsOf(group.members).length > 0) return null;
  if (!isObject(group.differences)) return { ...group, members };
  const differences = Object.entries(group.differences).map(([copy, byMember]): [string, unknown] => [
    copy,
    isObject(byMember)
      ? Object.fromEntries(
          Object.entries(byMember).flatMap(([id, own]): [string, unknown][] =>
            isGone(id) ? [] : [[id, isObject(own) ? rewritten(listOf(id), own, answer) : own]],
          ),
        )
      : byMember,
  ]);
  return { ...group, members, differences: Object.fromEntries(differences) };
}

/** Edits for the keys in which two states of a member differ. */
function changes(list: string, before: WrittenMember, after: Written): DocumentEdit[] {
  if (before === after) return [];
  return Object.keys(before).flatMap((key): DocumentEdit[] => {
    const path = [list, `id=${before.id}`, key];
    if (!Object.hasOwn(after, key)) return [{ path }];
    return JSON.stringify(after[key]) === JSON.stringify(before[key]) ? [] : [{ path, value: after[key] }];
  });
}

/**
 * Edits that take a member out of its list together with what speaks of it: ids in lists, reaches, orders in choices, amounts counted of it; waits, bookings and the pour of a step
 * go with the step. The id may be a copy's ("post#2"): the group's member goes.
 */
export function removeMember(document: unknown, list: Removable, copyOrId: string): readonly DocumentEdit[] {
  const id = writtenId(copyOrId);
  const gone = new Set([`${list}/${id}`]);
  if (list === "steps")
    for (const [other, keys] of Object.entries(ofStep))
      for (const member of membersOf(document, other)) if (keys.some((key) => speaksOf(member[key], id))) gone.add(`${other}/${member.id}`);
  const answer: Answer = (of, ref) => {
    // What goes by a calendar is made to go by another one first.
    if (of === "calendars") return [ref];
    const lists = of === "things" ? ["stock", "equipment"] : [of];
    return lists.some((one) => gone.has(`${one}/${writtenId(ref)}`)) ? [] : [ref];
  };
  const inGroups = (member: string): boolean => grouped.some((one) => gone.has(`${one}/${member}`));
  const listOf = (member: string): string => grouped.find((one) => memberOf(document, one, member) !== undefined) ?? "";
  const edits: DocumentEdit[] = [];
  for (const other of Object.keys(isObject(document) ? document : {})) {
    for (const member of membersOf(document, other)) {
      if (gone.has(`${other}/${member.id}`)) continue;
      const made = other === "groups" ? groupLeft(member, listOf, inGroups, answer) : rewritten(other, member, answer);
      const left = other === "choices" && made !== null && made !== member ? choiceLeft(member, made as WrittenMember) : made;
      if (left === null) gone.add(`${other}/${member.id}`);
      else edits.push(...changes(other, member, left));
    }
  }
  gone.delete(`${list}/${id}`);
  const others = [...gone].map((key): DocumentEdit => {
    const [other = "", member = ""] = key.split("/");
    return { path: [other, `id=${member}`] };
  });
  return [...edits, ...others, { path: [list, `id=${id}`] }];
}
