import type { DocumentEdit } from "../base";
import type { ListName, Part } from "../build";
import { apply, type Lost, removeMany } from "../edit";
import { kitOf } from "./all";
import { asPutIn, settledAnswers } from "./answers";
import { copiesFollow } from "./copies";
import { listOf, partsOf } from "./document";
import { type MadePart, makePart } from "./given";
import { isAboutGone, withoutGone } from "./gone";
import type { RawAnswers, Unknown, Written } from "./kit";
import { contextOf, joinsOf } from "./offers";
import { membersMade, missingCommons, writtenPart } from "./put-in";

export interface Again {
  readonly edits: readonly DocumentEdit[];
  /** What others say of members that the new answers no longer make. */
  readonly lost: readonly Lost[];
  readonly unknown: readonly Unknown[];
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Keys of a member that still say what the kit said are brought up to date; what the builder changed stays. */
function updated(list: ListName, there: Written, before: Written, after: Written): readonly DocumentEdit[] {
  const path = (key: string) => [list, `id=${there.id}`, key];
  const keys = new Set([...Object.keys(before), ...Object.keys(after)]);
  return [...keys].flatMap((key): DocumentEdit[] => {
    if (same(before[key], after[key]) || !same(there[key], before[key])) return [];
    return [after[key] === undefined ? { path: path(key) } : { path: path(key), value: after[key] }];
  });
}

const byId = (made: MadePart): ReadonlyMap<string, readonly [ListName, Written]> =>
  new Map(membersMade(made).map((one) => [`${one[0]}/${one[1].id}`, one]));

/** Ids that parts made and that are no longer there: taken out on purpose. */
function goneFrom(document: unknown): ReadonlySet<string> {
  const gone = new Set<string>();
  for (const { made } of partsOf(document)) {
    for (const [list, ids] of Object.entries(made)) {
      const there = new Set(listOf(document, list as ListName).map(({ id }) => id));
      for (const id of ids) if (!there.has(id)) gone.add(id);
    }
  }
  return gone;
}

/** Whether a part says that it made a member: what stands under an id of its own otherwise is the builder's. */
const isMadeBy = ({ made }: Part, list: ListName, id: string): boolean =>
  (Object.hasOwn(made, list) ? made[list] : undefined)?.includes(id) ?? false;

function remade(document: unknown, part: Part, before: MadePart, after: MadePart): Again {
  const gone = goneFrom(document);
  const [old, next] = [byId(before), byId(after)];
  const edits: DocumentEdit[] = [...missingCommons(document, after)];
  const made: Record<string, string[]> = {};
  for (const [key, [list, member]] of next) {
    const there = listOf(document, list).find(({ id }) => id === member.id);
    const isOwn = isMadeBy(part, list, member.id);
    if (there !== undefined && !isOwn) continue;
    made[list] = [...(made[list] ?? []), member.id];
    const was = old.get(key)?.[1];
    const value = withoutGone(member, gone) as Written;
    if (there !== undefined && was !== undefined) edits.push(...updated(list, there, withoutGone(was, gone) as Written, value));
    else if (there === undefined && !gone.has(member.id) && !isAboutGone(member, gone))
      edits.push({ path: [list, `id=${member.id}`], value });
  }
  const unwanted = [...old].flatMap(([key, [list, { id }]]): (readonly [ListName, string])[] =>
    next.has(key) || !isMadeBy(part, list, id) ? [] : [[list, id]],
  );
  edits.push(...copiesFollow(document, before, after));
  edits.push({ path: ["parts", `id=${part.id}`], value: writtenPart({ ...part, made }) });
  const taken = removeMany(apply(document, edits).document, unwanted);
  return { edits: [...edits, ...taken.edits], lost: taken.lost, unknown: after.unknown };
}

/**
 * Answers a part again: what still is as the kit made it follows, what the builder changed or took out stays so. Parts that join it follow too, each with its own answers.
 * Answers that are not given stay as they were; nothing where there is no such part, or its kit is not known.
 */
export function answerAgain(document: unknown, partId: string, answers: RawAnswers, name?: string): Again {
  const edits: DocumentEdit[] = [];
  const lost: Lost[] = [];
  let unknown: readonly Unknown[] = [];
  let now = document;
  const changed = new Set<string>();
  for (const part of partsOf(document)) {
    const kit = kitOf(part.kit);
    const follows = joinsOf(part).some((key) => changed.has(key.split("/")[0] as string));
    if (kit === undefined || (part.id !== partId && !follows)) continue;
    const context = contextOf(now, part.id);
    const next: Part =
      part.id === partId
        ? { ...part, name: name?.trim() || part.name, answers: settledAnswers(kit, asPutIn(kit, { ...part.answers, ...answers }), context) }
        : part;
    const one = remade(now, next, makePart(kit, part, contextOf(document, part.id)), makePart(kit, next, context));
    edits.push(...one.edits);
    lost.push(...one.lost);
    if (part.id === partId) unknown = one.unknown;
    changed.add(part.id);
    now = apply(now, one.edits).document;
  }
  return { edits, lost, unknown };
}
