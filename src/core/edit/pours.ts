import { type DocumentEdit, writtenId } from "../base";
import { addMember, idFrom } from "./commands";
import { type Removable, removeMember } from "./remove";

type Member = Readonly<Record<string, unknown>> & { readonly id: string };

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

function listOf(document: unknown, list: string): readonly Member[] {
  const value = isObject(document) ? document[list] : undefined;
  return Array.isArray(value) ? value.filter((member): member is Member => isObject(member) && typeof member.id === "string") : [];
}

const stepOf = (document: unknown, step: string): Member | undefined => listOf(document, "steps").find(({ id }) => id === writtenId(step));

/** The pour that is done in a step; of a group, that of the very copy. Null where there is none. */
export function pourOfStep(document: unknown, step: string): Member | null {
  return listOf(document, "pours").find((pour) => pour.step === step) ?? null;
}

/**
 * Edits that give a step its pour: strength and cement that the step said itself go over to the mix, as one of the two has to say them.
 * @param elements what is placed, in the order of placing; at least one
 */
export function addPour(document: unknown, step: string, strength: string, elements: readonly Member[]): readonly DocumentEdit[] {
  const written = stepOf(document, step);
  const own = isObject(written?.pour) ? written.pour : {};
  const name = typeof written?.name === "string" ? written.name : writtenId(step);
  const id = idFrom(
    name,
    listOf(document, "pours").map((pour) => pour.id),
  );
  const pour = { id, name, step, mix: { ...own, strength: own.strength ?? strength }, elements };
  const edits = [addMember("pours", pour)];
  return Object.keys(own).length === 0 ? edits : [...edits, { path: ["steps", `id=${writtenId(step)}`, "pour"] }];
}

/** Where something counts the strength or the warmth of a step's concrete: an amount "... of" it. */
export interface Counting {
  readonly list: string;
  readonly id: string;
  /** Key of the member, and of what is in it. */
  readonly key: readonly string[];
}

function amountsOf(value: unknown, step: string, path: readonly string[]): (readonly string[])[] {
  if (typeof value === "string") return value.endsWith(` of ${step}`) ? [path] : [];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => amountsOf(inner, step, key === "is" ? path : [...path, key]));
}

/** Everything outside a pour that counts on what it pours: without it nobody knows the strength. */
export function countsOn(document: unknown, pour: string): readonly Counting[] {
  const step = listOf(document, "pours").find(({ id }) => id === pour)?.step;
  if (typeof step !== "string") return [];
  return ["pieces", "steps", "waits", "choices"].flatMap((list) =>
    listOf(document, list).flatMap((member) => amountsOf(member, step, []).map((key): Counting => ({ list, id: member.id, key }))),
  );
}

/** Edits that take a pour out. Where something counts on its strength, its step says strength and cement again. */
export function removePour(document: unknown, pour: string): readonly DocumentEdit[] {
  const found = listOf(document, "pours").find(({ id }) => id === pour);
  const mix = isObject(found?.mix) ? found.mix : {};
  const edits = removeMember(document, "pours", pour);
  if (typeof found?.step !== "string" || countsOn(document, pour).length === 0) return edits;
  const { strength, cement } = mix;
  const value = cement === undefined ? { strength } : { strength, cement };
  return [...edits, { path: ["steps", `id=${writtenId(found.step)}`, "pour"], value }];
}

/** What a removal takes along: a member that goes with it, or one that loses what it says of it. */
export interface Lost {
  readonly list: string;
  readonly id: string;
  readonly goes: boolean;
}

/** Every other member that `removeMember` touches, once, in the order of its edits: what to name before it is done. */
export function lostWith(document: unknown, list: Removable, copyOrId: string): readonly Lost[] {
  const own = `${list}/${writtenId(copyOrId)}`;
  const lost = new Map<string, Lost>();
  for (const { path } of removeMember(document, list, copyOrId)) {
    const [other = "", member = ""] = path;
    const id = member.replace(/^id=/, "");
    const key = `${other}/${id}`;
    if (key === own) continue;
    const goes = path.length === 2;
    if (goes || !lost.has(key)) lost.set(key, { list: other, id, goes });
  }
  return [...lost.values()];
}
