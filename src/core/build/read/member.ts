import type { Finding } from "../../base";
import { bars } from "../codes";
import { type ListName, lists, type Member } from "../schema/document";
import { isObject } from "../schema/shape";
import { Notes, shown } from "./notes";
import { readBooking, readCalendar, readDelivery, readEquipment, readGroup, readPerson, readStock } from "./others";
import { readPart, readSolid } from "./part";
import { readPiece } from "./piece";
import { readPlace } from "./place";
import { readPour } from "./pour";
import { readStep } from "./step";
import { isValid } from "./validate";
import { readChoice, readWait } from "./wait";

const readers = {
  calendars: readCalendar,
  people: readPerson,
  equipment: readEquipment,
  stock: readStock,
  places: readPlace,
  pieces: readPiece,
  steps: readStep,
  waits: readWait,
  choices: readChoice,
  pours: readPour,
  deliveries: readDelivery,
  bookings: readBooking,
  groups: readGroup,
  solids: readSolid,
  parts: readPart,
} satisfies { [L in ListName]: (raw: Member<L>, notes: Notes) => unknown };

export type Draft<L extends ListName> = ReturnType<(typeof readers)[L]>;

export interface Read<L extends ListName> {
  /** As far as it is one; a member that is otherwise wrong can still be referred to. */
  readonly id: string | null;
  /** Null when something in it keeps it from being read. */
  readonly draft: Draft<L> | null;
  readonly findings: readonly Finding[];
}

const memory = new Map(Object.keys(lists).map((list) => [list, new WeakMap<object, Read<ListName>>()]));

function readFresh<L extends ListName>(list: L, value: object): Read<L> {
  const written = (value as { id?: unknown }).id;
  const id = typeof written === "string" ? written : null;
  const notes = new Notes(id === null ? { list } : { list, id: shown(id) });
  const schema = lists[list];
  const reader = readers[list] as unknown as (raw: unknown, notes: Notes) => Draft<L>;
  const draft = isValid(schema, value, notes) ? reader(value, notes) : null;
  return { id, draft: notes.findings.some(bars) ? null : draft, findings: notes.findings };
}

/**
 * Reads one member of a list. An object that was read before is not read again: documents are never changed in place, so the same
 * object means the same text.
 */
export function readMember<L extends ListName>(list: L, value: unknown): Read<L> {
  if (!isObject(value)) {
    const notes = new Notes({ list });
    notes.say("build.type", undefined, { part: "", value: shown(value), wanted: ["object"] });
    return { id: null, draft: null, findings: notes.findings };
  }
  const known = memory.get(list) as WeakMap<object, Read<L>>;
  const before = known.get(value);
  if (before) return before;
  const read = readFresh(list, value);
  known.set(value, read);
  return read;
}
