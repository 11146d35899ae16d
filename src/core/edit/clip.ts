import { writtenId } from "../base";
import { spokenOf } from "./references";
import { isObject, memberOf, membersOf, textsOf, type WrittenMember } from "./written";

/** A member by its list and id; a copy's id ("post#2") stands for the group's member. */
export interface Ref {
  readonly list: "steps" | "pieces" | "places";
  readonly id: string;
}

/** What can be copied, in the order in which it is put in. */
export const clipLists = ["places", "pieces", "steps", "waits", "pours", "groups"] as const;
export type ClipList = (typeof clipLists)[number];

/** Part of a build as plain data: what was copied, and what of the build round it is needed to put it elsewhere. */
export interface Clip {
  readonly "batterboard-part": 1;
  /** Id of the build it comes from. */
  readonly of: string;
  readonly members: Readonly<Partial<Record<ClipList, readonly WrittenMember[]>>>;
  /** Groups of which only some members were copied, by member. */
  readonly within: Readonly<Record<string, string>>;
  /** Places that what was copied speaks of: they come along where the build has none of that id. */
  readonly around: readonly WrittenMember[];
  /** Names of what stays behind, "deliveries/bars": so that it can be told. */
  readonly names: Readonly<Record<string, string>>;
}

export const nameOf = (member: { readonly id: string; readonly [key: string]: unknown }): string =>
  typeof member.name === "string" && member.name !== "" ? member.name : member.id;

/** The groups all of whose steps are in, with what else belongs to them. */
function wholeGroups(document: unknown, steps: ReadonlySet<string>): readonly WrittenMember[] {
  const all = new Set(membersOf(document, "steps").map(({ id }) => id));
  return membersOf(document, "groups").filter((group) => {
    const own = textsOf(group.members).filter((id) => all.has(id));
    return own.length > 0 && own.every((id) => steps.has(id));
  });
}

/**
 * What belongs to a selection: its steps with the pieces they put up and the places those fill, the waits among them, their pours; groups of which it has every step, whole.
 * Lists in the order of the document.
 */
export function belonging(document: unknown, selection: readonly Ref[]): Readonly<Record<ClipList, readonly WrittenMember[]>> {
  const ids = (list: Ref["list"]): Set<string> => new Set(selection.filter((one) => one.list === list).map(({ id }) => writtenId(id)));
  const [steps, pieces, places] = [ids("steps"), ids("pieces"), ids("places")];
  const groups = wholeGroups(document, steps);
  const grouped = new Set(groups.flatMap((group) => textsOf(group.members)));
  for (const step of membersOf(document, "steps")) if (steps.has(step.id)) for (const id of textsOf(step.puts)) pieces.add(writtenId(id));
  // A place is filled once: what fills it a second time fills another one like it.
  for (const piece of membersOf(document, "pieces"))
    if (pieces.has(piece.id) || grouped.has(piece.id)) for (const id of textsOf(piece.fills)) places.add(writtenId(id));
  const is = (set: ReadonlySet<string>) => (member: WrittenMember) => set.has(member.id) || grouped.has(member.id);
  const ends = (...refs: readonly unknown[]): boolean => refs.every((ref) => typeof ref === "string" && steps.has(writtenId(ref)));
  return {
    places: membersOf(document, "places").filter(is(places)),
    pieces: membersOf(document, "pieces").filter(is(pieces)),
    steps: membersOf(document, "steps").filter(is(steps)),
    waits: membersOf(document, "waits").filter((wait) => ends(wait.from, wait.to)),
    pours: membersOf(document, "pours").filter((pour) => ends(pour.step)),
    groups,
  };
}

/** Places that are spoken of, and those that their ways lead through. */
function placesAround(document: unknown, members: readonly (readonly [string, WrittenMember])[]): readonly WrittenMember[] {
  const found = new Map<string, WrittenMember>();
  const look = (list: string, member: WrittenMember): void => {
    for (const { of, ref, key } of spokenOf(list, member)) {
      const place = of === "places" && key !== "below" && key !== "layerOf" ? memberOf(document, "places", writtenId(ref)) : undefined;
      if (place === undefined || found.has(place.id)) continue;
      found.set(place.id, place);
      look("places", place);
    }
  };
  for (const [list, member] of members) look(list, member);
  return [...found.values()];
}

/** A part of the document to be put in elsewhere; null where the selection names nothing that is there. */
export function clip(document: unknown, selection: readonly Ref[]): Clip | null {
  const members = belonging(document, selection);
  const all = clipLists.flatMap((list) => members[list].map((member): readonly [ClipList, WrittenMember] => [list, member]));
  if (all.length === 0) return null;
  const own = new Set(all.map(([, { id }]) => id));
  const whole = new Set(members.groups.map(({ id }) => id));
  const within = membersOf(document, "groups").flatMap((group) =>
    whole.has(group.id) ? [] : textsOf(group.members).flatMap((id): [string, string][] => (own.has(id) ? [[id, group.id]] : [])),
  );
  const around = placesAround(document, all).filter(({ id }) => !own.has(id));
  const names = [...all, ...around.map((place) => ["places", place] as const)].flatMap(([list, member]) =>
    spokenOf(list, member).flatMap(({ of, ref }): [string, string][] => {
      const id = writtenId(ref);
      const lists = of === "things" ? ["stock", "equipment"] : [of];
      const found = lists.map((one) => memberOf(document, one, id)).find((one) => one !== undefined);
      return own.has(id) || found === undefined ? [] : [[`${of}/${id}`, nameOf(found)]];
    }),
  );
  return {
    "batterboard-part": 1,
    of: isObject(document) && typeof document.id === "string" ? document.id : "",
    members: Object.fromEntries(clipLists.flatMap((list) => (members[list].length > 0 ? [[list, members[list]]] : []))),
    within: Object.fromEntries(within),
    around,
    names: Object.fromEntries(names),
  };
}

/** The text of a part for the clipboard. */
export const clipText = (part: Clip): string => JSON.stringify(part, null, 1);
