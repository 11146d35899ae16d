import { type DocumentEdit, writtenId } from "../base";

type Members = readonly Readonly<Record<string, unknown>>[];
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

/** Where the members of one list are spoken of. `texts`: ids in a list. `whole`: entries of a list, or whole members, that mean nothing without it. */
interface Mentions {
  readonly texts?: readonly (readonly [list: string, ...key: string[]])[];
  readonly entries?: readonly (readonly [list: string, key: string, field: string])[];
  readonly members?: readonly (readonly [list: string, field: string])[];
  readonly fields?: readonly (readonly [list: string, field: string])[];
  /** A key of the elements of pours: a list of ids, or the one id at its end. */
  readonly inElements?: readonly string[];
}

const mentions: Partial<Record<Removable, Mentions>> = {
  steps: {
    texts: [
      ["steps", "after"],
      ["steps", "trial", "decides"],
      ["groups", "members"],
      ["solids", "bars"],
    ],
    entries: [["pours", "removals", "step"]],
    fields: [["solids", "pour"]],
    members: [
      ["waits", "from"],
      ["waits", "to"],
      ["bookings", "step"],
      ["pours", "step"],
    ],
  },
  pieces: {
    texts: [
      ["steps", "puts"],
      ["steps", "takes"],
      ["groups", "members"],
      ["solids", "pieces"],
      ["solids", "form"],
    ],
    entries: [["steps", "leansOn", "piece"]],
    inElements: ["pieces"],
  },
  people: { inElements: ["held", "who"] },
  places: {
    texts: [
      ["steps", "alone"],
      ["steps", "closes"],
      ["steps", "holdPoint", "places"],
      ["pieces", "closes"],
      ["pieces", "makes"],
      ["pieces", "fills"],
      ["places", "below"],
      ["groups", "members"],
      ["solids", "places"],
    ],
    entries: [
      ["steps", "reaches", "place"],
      ["pieces", "off", "place"],
    ],
    fields: [
      ["steps", "place"],
      ["places", "layerOf"],
    ],
  },
  deliveries: { texts: [["steps", "needs"]] },
  equipment: {
    entries: [
      ["steps", "equipment", "of"],
      ["pieces", "uses", "of"],
    ],
  },
  stock: {
    entries: [
      ["pieces", "uses", "of"],
      ["deliveries", "brings", "of"],
    ],
    fields: [["pours", "sacks"]],
  },
  waits: { texts: [["groups", "members"]] },
};

const membersOf = (document: unknown, list: string): Members => {
  const value = typeof document === "object" && document !== null ? (document as Readonly<Record<string, unknown>>)[list] : undefined;
  return Array.isArray(value)
    ? value.filter((member) => typeof member === "object" && member !== null && typeof member.id === "string")
    : [];
};

/** "post", "post#2" and "post.north" all speak of "post". */
const speaksOf = (value: unknown, id: string): boolean => typeof value === "string" && value.split(/[#.]/)[0] === id;

function at(member: Readonly<Record<string, unknown>>, key: readonly string[]): unknown {
  return key.reduce<unknown>(
    (value, name) => (typeof value === "object" && value !== null ? (value as Record<string, unknown>)[name] : undefined),
    member,
  );
}

function withoutTexts(document: unknown, [list, ...key]: readonly [string, ...string[]], id: string): DocumentEdit[] {
  return membersOf(document, list).flatMap((member): DocumentEdit[] => {
    const texts = at(member, key);
    if (!Array.isArray(texts) || !texts.some((text) => speaksOf(text, id))) return [];
    return [{ path: [list, `id=${member.id}`, ...key], value: texts.filter((text) => !speaksOf(text, id)) }];
  });
}

function withoutEntries(document: unknown, [list, key, field]: readonly [string, string, string], id: string): DocumentEdit[] {
  return membersOf(document, list).flatMap((member): DocumentEdit[] => {
    const entries = member[key];
    if (!Array.isArray(entries)) return [];
    const left = entries.flatMap((entry) => entryWithout(entry, field, id));
    if (left.length === entries.length && left.every((entry, index) => entry === entries[index])) return [];
    return [{ path: [list, `id=${member.id}`, key], value: left }];
  });
}

/** The entry itself where it does not speak of it; of several that would do (`any`) those that are left; else nothing. */
function entryWithout(entry: unknown, field: string, id: string): readonly unknown[] {
  if (typeof entry !== "object" || entry === null) return [entry];
  const { any, [field]: named } = entry as Record<string, unknown>;
  if (speaksOf(named, id)) return [];
  if (!Array.isArray(any)) return [entry];
  const left = any.flatMap((one) => entryWithout(one, field, id));
  if (left.length === any.length) return [entry];
  return left.length === 0 ? [] : [{ ...entry, any: left }];
}

/** Alternatives that count on the piece are none any more; without an alternative left nothing need hold the other. */
function withoutHolder(document: unknown, id: string): DocumentEdit[] {
  return membersOf(document, "pieces").flatMap((member): DocumentEdit[] => {
    const sets = member.heldBy;
    const speaks = (set: unknown): boolean => Array.isArray(set) && set.some((holder) => speaksOf(holder, id));
    if (!Array.isArray(sets) || !sets.some(speaks)) return [];
    return [{ path: ["pieces", `id=${member.id}`, "heldBy"], value: sets.filter((set) => !speaks(set)) }];
  });
}

/** An element of a pour without what it says of the one that goes: its id out of a list, or the key that names it. */
function elementsWithout(document: unknown, key: readonly string[], id: string): DocumentEdit[] {
  return membersOf(document, "pours").flatMap((pour) => {
    const elements = Array.isArray(pour.elements) ? (pour.elements as unknown[]) : [];
    return elements.flatMap((element, i): DocumentEdit[] => {
      const value = typeof element === "object" && element !== null ? at(element as Readonly<Record<string, unknown>>, key) : undefined;
      const path = ["pours", `id=${pour.id}`, "elements", String(i), ...key];
      if (Array.isArray(value))
        return value.some((one) => speaksOf(one, id)) ? [{ path, value: value.filter((one) => !speaksOf(one, id)) }] : [];
      return speaksOf(value, id) ? [{ path }] : [];
    });
  });
}

/**
 * Edits that take a member out of its list together with what speaks of it: ids in lists, reaches, waits, bookings, and the pour of a step. What is said in words (an amount
 * "500 psi of" a pour that goes) is left for its author: the reader points it out. The id may be a copy's ("post#2"): the group's member goes.
 */
export function removeMember(document: unknown, list: Removable, copyOrId: string): readonly DocumentEdit[] {
  const id = writtenId(copyOrId);
  const { texts = [], entries = [], members = [], fields = [], inElements } = mentions[list] ?? {};
  const gone = new Set([`${list}/${id}`]);
  const edits: DocumentEdit[] = [
    ...texts.flatMap((where) => withoutTexts(document, where, id)),
    ...entries.flatMap((where) => withoutEntries(document, where, id)),
    ...(list === "pieces" ? withoutHolder(document, id) : []),
    ...(inElements ? elementsWithout(document, inElements, id) : []),
    ...fields.flatMap(([other, field]) =>
      membersOf(document, other).flatMap((member): DocumentEdit[] =>
        speaksOf(member[field], id) ? [{ path: [other, `id=${member.id}`, field] }] : [],
      ),
    ),
  ];
  for (const [other, field] of members) {
    for (const member of membersOf(document, other)) {
      const key = `${other}/${member.id}`;
      if (!speaksOf(member[field], id) || gone.has(key)) continue;
      gone.add(key);
      edits.push({ path: [other, `id=${member.id}`] });
    }
  }
  return [...edits, { path: [list, `id=${id}`] }];
}
