import { copyOf, type DocumentEdit, limits, writtenId } from "../base";
import { belonging, nameOf, type Ref } from "./clip";
import { addMember, idFrom } from "./commands";
import { nameBeside } from "./paste";
import { type Answer, rewritten, rewrittenWaits, spokenOf } from "./references";
import { idsIn, isObject, memberOf, membersOf, textsOf, type Written, type WrittenMember } from "./written";

/** Why steps cannot be made a group: nothing chosen; one of them is poured, grouped, booked, done, in rounds, or takes down what the others do not put up; a count that is none. */
export type Ungrouped = "nothing" | "pour" | "grouped" | "rounds" | "booked" | "done" | "takes" | "count";
export type Grouped =
  | { readonly edits: readonly DocumentEdit[]; readonly group: string }
  | { readonly refused: Ungrouped; readonly step?: string };

const lists = ["places", "pieces", "steps", "waits"] as const;

/** Places of which nothing but these steps and their pieces speaks: each copy may have one of its own. */
export function ownPlaces(document: unknown, selection: readonly Ref[]): readonly string[] {
  const { pieces, steps } = belonging(document, selection);
  const inside = new Set([...pieces, ...steps].map(({ id }) => id));
  const [own, others] = [new Set<string>(), new Set<string>()];
  for (const list of Object.keys(isObject(document) ? document : {}))
    for (const member of membersOf(document, list))
      for (const { of, ref } of spokenOf(list, member)) {
        if (of !== "places") continue;
        const isOwn = (list === "steps" || list === "pieces") && inside.has(member.id);
        (isOwn ? own : others).add(writtenId(ref));
      }
  return [...own].filter((id) => !others.has(id) && memberOf(document, "places", id) !== undefined);
}

/**
 * Makes one of many alike out of a selection: its steps, what they put up and the waits among them, as many times.
 * @param count from 2 on
 */
export function group(document: unknown, selection: readonly Ref[], count: number, name: string): Grouped {
  const { steps, pieces, places, waits } = belonging(document, selection);
  if (steps.length === 0) return { refused: "nothing" };
  if (!Number.isInteger(count) || count < 2 || count > limits.copies.most) return { refused: "count" };
  const grouped = new Set(membersOf(document, "groups").flatMap((one) => textsOf(one.members)));
  const named = (list: string) =>
    new Set(membersOf(document, list).flatMap(({ step }) => (typeof step === "string" ? [writtenId(step)] : [])));
  const [poured, booked] = [named("pours"), named("bookings")];
  const own = new Set(pieces.map((piece) => piece.id));
  for (const step of steps) {
    const refused =
      poured.has(step.id) || step.pour !== undefined || step.sort === "pour"
        ? "pour"
        : booked.has(step.id)
          ? "booked"
          : isObject(step.trial) && typeof step.trial.rounds === "number" && step.trial.rounds > 1
            ? "rounds"
            : isObject(step.done)
              ? "done"
              : textsOf(step.takes).every((ref) => own.has(writtenId(ref)))
                ? null
                : "takes";
    if (refused !== null) return { refused, step: step.id };
  }
  const members = [...places, ...pieces, ...steps, ...waits].map(({ id }) => id);
  const twice = [...places, ...pieces, ...steps].find(({ id }) => grouped.has(id));
  if (twice !== undefined) return { refused: "grouped", step: twice.id };
  const taken = idsIn(document);
  const id = idFrom(name, taken);
  return { edits: [addMember("groups", { id, name, count, members })], group: id };
}

/** The group that a step, piece, place or wait is of; null where it stands alone. */
export const groupOf = (document: unknown, copyOrId: string): WrittenMember | null =>
  membersOf(document, "groups").find(({ members }) => textsOf(members).includes(writtenId(copyOrId))) ?? null;

/** A member with what one copy has of its own over it; null takes a key away. */
const withDifference = (member: WrittenMember, difference: unknown): WrittenMember =>
  ({
    ...Object.fromEntries(Object.entries({ ...member, ...(isObject(difference) ? difference : {}) }).filter(([, value]) => value !== null)),
    id: member.id,
  }) as WrittenMember;

/**
 * Writes every copy of a group out as members of their own. The first keeps the ids; what spoke of all of them speaks of each, what spoke of one of that one.
 * Nothing where there is no such group.
 */
export function ungroup(document: unknown, groupId: string): readonly DocumentEdit[] {
  const found = memberOf(document, "groups", groupId);
  const count = typeof found?.count === "number" && found.count >= 1 && found.count <= limits.copies.most ? found.count : 0;
  if (found === undefined || count === 0) return [];
  const inside = new Set(textsOf(found.members));
  const taken = idsIn(document);
  const copies = new Map<string, readonly string[]>();
  for (const list of lists)
    for (const { id } of membersOf(document, list)) {
      if (!inside.has(id)) continue;
      const ids = Array.from({ length: count }, (_, at) => {
        const fresh = at === 0 ? id : idFrom(`${id}-${at + 1}`, taken);
        taken.add(fresh);
        return fresh;
      });
      copies.set(id, ids);
    }
  const answerIn =
    (copy: number | null): Answer =>
    (_of, ref) => {
      const all = copies.get(writtenId(ref));
      if (all === undefined) return [ref];
      const named = copyOf(ref);
      if (named > 0) return all.slice(named - 1, named);
      return copy === null ? all : all.slice(copy - 1, copy);
    };
  const edits: DocumentEdit[] = [{ path: ["groups", `id=${groupId}`] }];
  const differences = isObject(found.differences) ? found.differences : {};
  const differenceOf = (copy: number, id: string): unknown => {
    const byMember = differences[String(copy)];
    return isObject(byMember) ? byMember[id] : undefined;
  };
  for (const list of Object.keys(isObject(document) ? document : {})) {
    const whole = membersOf(document, list);
    const names = new Set(whole.map(nameOf));
    for (const member of whole) {
      if (!inside.has(member.id) || !lists.some((one) => one === list)) edits.push(...outside(list, member, answerIn(null), taken));
      else
        for (let copy = 1; copy <= count; copy++) {
          const id = copies.get(member.id)?.[copy - 1] ?? member.id;
          const different = withDifference(member, differenceOf(copy, member.id));
          const name = copy === 1 || typeof different.name !== "string" ? different.name : nameBeside(nameOf(different), names);
          if (typeof name === "string") names.add(name);
          const made = ended(list, rewritten(list, different, answerIn(copy)), answerIn(copy));
          edits.push({ path: [list, `id=${id}`], value: { ...made, id, ...(typeof name === "string" ? { name } : {}) } });
        }
    }
  }
  return [...edits, ...keptSteps(document, copies), ...servedSteps(document, copies)];
}

/** Ends of a wait inside a group, each the same copy. */
const ended = (list: string, member: WrittenMember, answer: Answer): Written =>
  list !== "waits"
    ? member
    : {
        ...member,
        ...Object.fromEntries(
          (["from", "to"] as const).flatMap((key) =>
            typeof member[key] === "string" ? [[key, answer("steps", member[key], key)[0] ?? member[key]]] : [],
          ),
        ),
      };

/** What speaks of the group from outside. */
function outside(list: string, member: WrittenMember, answer: Answer, taken: Set<string>): DocumentEdit[] {
  if (list === "groups") return [];
  if (list !== "waits") {
    const made = rewritten(list, member, answer);
    return made === member ? [] : [{ path: [list, `id=${member.id}`], value: made }];
  }
  const waits = rewrittenWaits(member, answer, (at) => {
    const id = at === 0 ? member.id : idFrom(`${member.id}-${at + 1}`, taken);
    taken.add(id);
    return id;
  });
  if (waits.length === 1 && JSON.stringify(waits[0]) === JSON.stringify(member)) return [];
  return waits.map((wait) => ({ path: ["waits", `id=${wait.id}`], value: wait }));
}

/** The kept plan goes on speaking of the same copies. */
function keptSteps(document: unknown, copies: ReadonlyMap<string, readonly string[]>): DocumentEdit[] {
  const kept = isObject(document) && isObject(document.kept) ? document.kept.steps : undefined;
  if (!isObject(kept)) return [];
  const value = Object.fromEntries(Object.entries(kept).map(([step, times]) => [nowCalled(step, copies), times]));
  return JSON.stringify(value) === JSON.stringify(kept) ? [] : [{ path: ["kept", "steps"], value }];
}

/** So does the order in which steps are served. */
function servedSteps(document: unknown, copies: ReadonlyMap<string, readonly string[]>): DocumentEdit[] {
  const served = isObject(document) && isObject(document.served) ? document.served.steps : undefined;
  if (!Array.isArray(served)) return [];
  const value = served.map((step: unknown) => (typeof step === "string" ? nowCalled(step, copies) : step));
  return JSON.stringify(value) === JSON.stringify(served) ? [] : [{ path: ["served", "steps"], value }];
}

const nowCalled = (step: string, copies: ReadonlyMap<string, readonly string[]>): string =>
  copies.get(writtenId(step))?.[copyOf(step) - 1] ?? step;
