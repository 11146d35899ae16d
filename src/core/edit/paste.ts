import { copyOf, type DocumentEdit, writtenId } from "../base";
import { type Clip, type ClipList, clip, clipLists, nameOf, type Ref } from "./clip";
import { addMember, idFrom } from "./commands";
import { type Answer, rewritten, type Spoken } from "./references";
import { idsIn, isObject, memberOf, membersOf, textsOf, type Written, type WrittenMember } from "./written";

/** Something that a member spoke of and the build has not: what it said of it stayed behind. */
export interface LeftBehind {
  readonly list: string;
  /** Name of the member that spoke of it. */
  readonly name: string;
  readonly of: Spoken;
  readonly what: string;
}

export interface Pasted {
  /** One change that can be undone as one. */
  readonly edits: readonly DocumentEdit[];
  readonly made: readonly { readonly list: ClipList; readonly id: string; readonly name: string }[];
  readonly leftBehind: readonly LeftBehind[];
  /** Dates of their own that steps had in the other build were left out. */
  readonly datesLeft: boolean;
}

/** A name that none of those taken is: with the next free number behind it ("Strip", "Strip 2"). */
export function nameBeside(name: string, taken: ReadonlySet<string>): string {
  if (!taken.has(name)) return name;
  const base = name.replace(/ \d{1,4}$/, "");
  let number = 2;
  while (taken.has(`${base} ${number}`)) number += 1;
  return `${base} ${number}`;
}

/** How many copies or rounds an id of the document is read as; 0 where it stands alone. */
function copiesOf(document: unknown, list: string, id: string): number {
  const group = membersOf(document, "groups").find(({ members }) => textsOf(members).includes(id));
  if (group) return typeof group.count === "number" ? group.count : 0;
  const trial = list === "steps" ? memberOf(document, list, id)?.trial : undefined;
  return isObject(trial) && typeof trial.rounds === "number" && trial.rounds > 1 ? trial.rounds : 0;
}

/** Of the one step it was said of, never of a second one like it. */
const own = { steps: ["done", "fixed"], pours: ["breaks"] } as const;
/** Dates of one build say nothing in another. */
const dates = ["notBefore", "deadline"] as const;

function without(member: WrittenMember, keys: readonly string[]): WrittenMember {
  return keys.some((key) => Object.hasOwn(member, key))
    ? ({ ...Object.fromEntries(Object.entries(member).filter(([key]) => !keys.includes(key))), id: member.id } as WrittenMember)
    : member;
}

/**
 * Puts a part of a build into this or another one: new ids, names with a number where they are taken. What is spoken of inside the part follows; what is
 * spoken of outside stays where the build has it, places come along, and the rest is left behind and told.
 */
export function paste(document: unknown, part: Clip): Pasted {
  const isHome = isObject(document) && document.id === part.of;
  const around = part.around.filter(({ id }) => memberOf(document, "places", id) === undefined);
  const incoming = clipLists.flatMap((list) =>
    [...(list === "places" ? around : []), ...(part.members[list] ?? [])].map((member) => ({ list, member })),
  );
  const taken = idsIn(document);
  const ids = new Map<string, string>();
  for (const { list, member } of incoming) {
    const id = idFrom(taken.has(member.id) ? member.id.replace(/-\d+$/, "") : member.id, taken);
    taken.add(id);
    ids.set(`${list}/${member.id}`, id);
  }
  const taking = new Set(membersOf(document, "steps").flatMap((step) => textsOf(step.takes).map(writtenId)));
  const groupOf = (id: string): string | undefined => {
    const group = part.within[id];
    return isHome && group !== undefined && textsOf(memberOf(document, "groups", group)?.members).includes(id) ? group : undefined;
  };
  const wholeMembers = new Set((part.members.groups ?? []).flatMap((group) => textsOf(group.members)));

  const leftBehind = new Map<string, LeftBehind>();
  const listsOf = (of: Spoken): readonly string[] => (of === "things" ? ["stock", "equipment"] : [of]);
  const answerFor =
    (list: ClipList, member: WrittenMember): Answer =>
    (of, ref, key) => {
      const id = writtenId(ref);
      const copy = copyOf(ref);
      const fresh = ids.get(`${of}/${id}`);
      if (fresh !== undefined) {
        const staysCopied = wholeMembers.has(id) || groupOf(id) !== undefined || list === "groups";
        return [copy > 0 && (staysCopied || copiesInside(part, id) >= copy) ? `${fresh}#${copy}` : fresh];
      }
      const there = listsOf(of).find((one) => memberOf(document, one, id) !== undefined);
      // A piece goes up once and comes down once: a second step of that kind does so with none.
      if (there !== undefined && key !== "puts" && !(key === "takes" && taking.has(id)))
        return [copy > 0 && copiesOf(document, there, id) < copy ? id : ref];
      const what = part.names[`${of}/${id}`] ?? (memberNameOf(document, there, id) || id);
      leftBehind.set(`${list} ${member.id} ${of} ${id}`, { list, name: nameOf(member), of, what });
      return [];
    };

  const names = new Map<string, Set<string>>();
  const edits: DocumentEdit[] = [];
  const made: { list: ClipList; id: string; name: string }[] = [];
  let datesLeft = false;
  const pouring = new Set<string>();
  for (const { list, member } of incoming) {
    const id = ids.get(`${list}/${member.id}`) ?? member.id;
    const said = isHome ? [] : dates.filter((key) => list === "steps" && Object.hasOwn(member, key));
    datesLeft ||= said.length > 0;
    const bare = without(member, [...(list === "steps" || list === "pours" ? own[list] : []), ...said]);
    const answer = answerFor(list, member);
    const follows =
      list === "groups"
        ? groupFollowing(bare, answer, ids)
        : list === "waits"
          ? waitFollowing(bare, answer)
          : rewritten(list, bare, answer);
    if (follows === null) continue;
    if (list === "pours") {
      const step = String(follows.step);
      if (follows.step === undefined || pouring.has(step)) continue;
      pouring.add(step);
    }
    const known = names.get(list) ?? new Set(membersOf(document, list).map(nameOf));
    const hasName = typeof member.name === "string";
    const name = nameBeside(hasName ? nameOf(member) : nameOf({ ...member, id }), known);
    names.set(list, known.add(name));
    edits.push(addMember(list, { ...follows, id, ...(hasName ? { name } : {}) }));
    const group = groupOf(member.id);
    if (group !== undefined) edits.push({ path: ["groups", `id=${group}`, "members", `id=${id}`], value: id });
    made.push({ list, id, name });
  }
  return { edits, made, leftBehind: [...leftBehind.values()], datesLeft };
}

/** Rounds of a trial inside the part. */
function copiesInside(part: Clip, id: string): number {
  const trial = part.members.steps?.find((step) => step.id === id)?.trial;
  return isObject(trial) && typeof trial.rounds === "number" ? trial.rounds : 0;
}

const memberNameOf = (document: unknown, list: string | undefined, id: string): string => {
  const member = list === undefined ? undefined : memberOf(document, list, id);
  return member === undefined ? "" : nameOf(member);
};

function waitFollowing(wait: WrittenMember, answer: Answer): WrittenMember | null {
  const end = (key: "from" | "to"): string | undefined => (typeof wait[key] === "string" ? answer("steps", wait[key], key)[0] : undefined);
  const [from, to] = [end("from"), end("to")];
  return from === undefined || to === undefined ? null : { ...rewritten("waits", wait, answer), from, to };
}

/** A group with its members under their new ids, and what each copy has of its own with it; what was done is not. */
function groupFollowing(group: WrittenMember, answer: Answer, ids: ReadonlyMap<string, string>): WrittenMember | null {
  const lists = ["places", "pieces", "steps", "waits"] as const;
  const fresh = (id: string): readonly [list: string, id: string] | undefined =>
    lists.flatMap((list) => {
      const to = ids.get(`${list}/${id}`);
      return to === undefined ? [] : [[list, to] as const];
    })[0];
  const members = textsOf(group.members).flatMap((id) => fresh(id)?.[1] ?? []);
  if (members.length === 0) return null;
  if (!isObject(group.differences)) return { ...group, members };
  const differences = Object.entries(group.differences).map(([copy, byMember]): [string, Written] => [
    copy,
    Object.fromEntries(
      Object.entries(isObject(byMember) ? byMember : {}).flatMap(([id, difference]): [string, unknown][] => {
        const to = fresh(id);
        if (to === undefined || !isObject(difference)) return [];
        const { done: _done, fixed: _fixed, ...kept } = difference;
        return [[to[1], rewritten(to[0], kept, answer)]];
      }),
    ),
  ]);
  return { ...group, members, differences: Object.fromEntries(differences) };
}

/** The same once more in the same build; nothing where the selection names nothing that is there. */
export function duplicate(document: unknown, selection: readonly Ref[]): Pasted {
  const part = clip(document, selection);
  return part === null ? { edits: [], made: [], leftBehind: [], datesLeft: false } : paste(document, part);
}
