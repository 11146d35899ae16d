import { type DocumentEdit, formatWork, parseQuantity, writtenId } from "../base";
import { addMember, idFrom } from "./commands";
import { pourOfStep } from "./pours";
import { idsIn, isObject, memberOf, membersOf, textsOf, type Written, type WrittenMember } from "./written";

/** Why a step cannot be split. */
export type Unsplit = "gone" | "pour" | "rounds" | "done" | "inspection";

export type Split = { readonly edits: readonly DocumentEdit[]; readonly second: string } | { readonly refused: Unsplit };

/** Half of a time as written, whole minutes; what is left over goes to the second. What cannot be read goes to both for its author to look at. */
function halves(value: unknown): readonly [first: unknown, second: unknown] {
  if (isObject(value)) {
    const parts = Object.entries(value).map(
      ([key, inner]) => [key, ["is", "low", "likely", "high"].includes(key) ? halves(inner) : [inner, inner]] as const,
    );
    return [Object.fromEntries(parts.map(([key, both]) => [key, both[0]])), Object.fromEntries(parts.map(([key, both]) => [key, both[1]]))];
  }
  const time_min = typeof value === "string" ? parseQuantity("time", value) : null;
  if (time_min === null) return [value, value];
  const first_min = Math.floor(time_min / 2);
  return [formatWork(first_min), formatWork(Math.round(time_min) - first_min)];
}

/** What is so only when all of it is done: it goes to the second part. */
const atTheEnd = ["puts", "takes", "closes", "holdPoint", "trial", "deadline"];
/** What is there before it begins: it stays with the first. */
const atTheStart = ["after", "needs", "notBefore", "fixed"];

/** A piece is carried in where it is put up. */
function carried(reaches: unknown): readonly [first: unknown, second: unknown] {
  const isCarried = (reach: unknown): boolean => {
    const aims: readonly unknown[] = isObject(reach) && Array.isArray(reach.any) ? reach.any : [reach];
    return aims.some((aim) => isObject(aim) && aim.need === "unit");
  };
  return Array.isArray(reaches) ? [reaches.filter((reach) => !isCarried(reach)), reaches] : [reaches, reaches];
}

/** A step, or what one copy of it has of its own, as two. */
function shared(step: Written): readonly [first: Written, second: Written] {
  const first: Record<string, unknown> = {};
  const second: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(step)) {
    const [one, two] = key === "work" ? halves(value) : key === "reaches" ? carried(value) : [value, value];
    if (!atTheEnd.includes(key)) first[key] = one;
    if (!atTheStart.includes(key)) second[key] = two;
  }
  return [first, second];
}

const isRounds = ({ trial }: Written): boolean => isObject(trial) && typeof trial.rounds === "number" && trial.rounds > 1;
const speaksOf = (ref: unknown, id: string): ref is string => typeof ref === "string" && writtenId(ref) === id;

/**
 * Makes two of a step: the second comes after the first, each with half of the work. What it puts up, takes down and decides, and what waits for its end, goes to the second.
 * @param copyOrId of a group all copies are split
 * @param name of the second part
 */
export function split(document: unknown, copyOrId: string, name: string): Split {
  const id = writtenId(copyOrId);
  const step = memberOf(document, "steps", id);
  if (step === undefined) return { refused: "gone" };
  const group = membersOf(document, "groups").find(({ members }) => textsOf(members).includes(id));
  const differences = Object.entries(isObject(group?.differences) ? group.differences : {}).flatMap(
    ([copy, byMember]): [string, Written][] => (isObject(byMember) && isObject(byMember[id]) ? [[copy, byMember[id]]] : []),
  );
  const pours = pourOfStep(document, id) !== null || membersOf(document, "pours").some((pour) => speaksOf(pour.step, id));
  if (pours || step.sort === "pour" || step.pour !== undefined) return { refused: "pour" };
  if (step.sort === "inspection") return { refused: "inspection" };
  if (isRounds(step)) return { refused: "rounds" };
  if ([step, ...differences.map(([, one]) => one)].some(({ done }) => isObject(done))) return { refused: "done" };

  const second = idFrom(`${id}-second`, idsIn(document));
  const [one, two] = shared(step);
  const edits: DocumentEdit[] = [
    { path: ["steps", `id=${id}`], value: one },
    addMember("steps", { ...two, id: second, name, after: [id] }),
    ...followers(document, id, second),
  ];
  if (group !== undefined) {
    const path = ["groups", `id=${group.id}`];
    edits.push({ path: [...path, "members", `id=${second}`], value: second });
    for (const [copy, difference] of differences) {
      const [first, then] = shared(difference);
      edits.push({ path: [...path, "differences", copy, id], value: first });
      if (Object.keys(then).length > 0) edits.push({ path: [...path, "differences", copy, second], value: then });
    }
  }
  return { edits, second };
}

/** What waits for the end of a step, or counts on it as done, speaks of its second part from then on. */
function followers(document: unknown, id: string, second: string): DocumentEdit[] {
  const instead = (ref: string): string => second + ref.slice(id.length);
  const texts = (list: string, member: WrittenMember, ...key: readonly string[]): DocumentEdit[] => {
    const value = key.reduce<unknown>((inner, name) => (isObject(inner) ? inner[name] : undefined), member);
    if (!textsOf(value).some((ref) => speaksOf(ref, id))) return [];
    const to = (value as readonly unknown[]).map((ref) => (speaksOf(ref, id) ? instead(ref) : ref));
    return [{ path: [list, `id=${member.id}`, ...key], value: to }];
  };
  const ends = (path: readonly string[], wait: Written): DocumentEdit[] => [
    ...(speaksOf(wait.from, id) && wait.fromEnd !== "start" ? [{ path: [...path, "from"], value: instead(wait.from) }] : []),
    ...(speaksOf(wait.to, id) && wait.toEnd === "finish" ? [{ path: [...path, "to"], value: instead(wait.to) }] : []),
  ];
  return [
    ...membersOf(document, "steps").flatMap((member) => (member.id === id ? [] : texts("steps", member, "after"))),
    ...membersOf(document, "waits").flatMap((wait) => ends(["waits", `id=${wait.id}`], wait)),
    ...membersOf(document, "choices").flatMap((choice) =>
      (Array.isArray(choice.either) ? choice.either : []).flatMap((side: unknown, i) =>
        (isObject(side) && Array.isArray(side.waits) ? side.waits : []).flatMap((wait: unknown, j) =>
          isObject(wait) ? ends(["choices", `id=${choice.id}`, "either", String(i), "waits", String(j)], wait) : [],
        ),
      ),
    ),
    ...membersOf(document, "solids").flatMap((solid) => texts("solids", solid, "bars")),
    ...membersOf(document, "pours").flatMap((pour) => removals(pour, id, second)),
  ];
}

/** The form comes off in the part that takes it down, and the work on it may not begin before that either. */
function removals(pour: WrittenMember, id: string, second: string): DocumentEdit[] {
  const all: readonly unknown[] = Array.isArray(pour.removals) ? pour.removals : [];
  if (!all.some((removal) => isObject(removal) && speaksOf(removal.step, id))) return [];
  const value = all.flatMap((removal) =>
    isObject(removal) && speaksOf(removal.step, id) ? [removal, { ...removal, step: second + removal.step.slice(id.length) }] : [removal],
  );
  return [{ path: ["pours", `id=${pour.id}`, "removals"], value }];
}
