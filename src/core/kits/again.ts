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
import { merged, same } from "./merge";
import { contextOf, joinsOf } from "./offers";
import { membersMade, missingCommons, writtenPart } from "./put-in";

export interface Again {
  readonly edits: readonly DocumentEdit[];
  /** What others say of members that the new answers no longer make. */
  readonly lost: readonly Lost[];
  readonly unknown: readonly Unknown[];
  /** What the new answers ask for and is not done: it had been changed by hand, or put in when the kit made it otherwise. */
  readonly stays: readonly Stays[];
}

/** Keys of a member that stay, or hold something that stays. */
export interface Stays {
  readonly list: ListName;
  readonly id: string;
  readonly keys: readonly string[];
}

/** What of a member still says what the kit said is brought up to date; the rest stays and is named. */
function updated(list: ListName, there: Written, before: Written, after: Written): Pick<Again, "edits" | "stays"> {
  const edits: DocumentEdit[] = [];
  const kept: string[] = [];
  for (const key of new Set([...Object.keys(before), ...Object.keys(after)])) {
    const { value, stays } = merged(there[key], before[key], after[key]);
    const path = [list, `id=${there.id}`, key];
    if (!same(value, there[key])) edits.push(value === undefined ? { path } : { path, value });
    if (stays) kept.push(key);
  }
  return { edits, stays: kept.length === 0 ? [] : [{ list, id: there.id, keys: kept }] };
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
  const stays: Stays[] = [];
  for (const [key, [list, member]] of next) {
    const there = listOf(document, list).find(({ id }) => id === member.id);
    const isOwn = isMadeBy(part, list, member.id);
    if (there !== undefined && !isOwn) continue;
    made[list] = [...(made[list] ?? []), member.id];
    const was = old.get(key)?.[1];
    const value = withoutGone(member, gone) as Written;
    if (there !== undefined && was !== undefined) {
      const one = updated(list, there, withoutGone(was, gone) as Written, value);
      edits.push(...one.edits);
      stays.push(...one.stays);
    } else if (there === undefined && !gone.has(member.id) && !isAboutGone(member, gone))
      edits.push({ path: [list, `id=${member.id}`], value });
  }
  const unwanted = [...old].flatMap(([key, [list, { id }]]): (readonly [ListName, string])[] =>
    next.has(key) || !isMadeBy(part, list, id) ? [] : [[list, id]],
  );
  edits.push(...copiesFollow(document, before, after));
  edits.push({ path: ["parts", `id=${part.id}`], value: writtenPart({ ...part, made }) });
  const taken = removeMany(apply(document, edits).document, unwanted);
  return { edits: [...edits, ...taken.edits], lost: taken.lost, unknown: after.unknown, stays };
}

/**
 * Answers a part again: what still is as the kit made it follows, what the builder changed or took out stays so. Parts that join it follow too, each with its own answers.
 * Answers that are not given stay as they were; nothing where there is no such part, or its kit is not known.
 */
export function answerAgain(document: unknown, partId: string, answers: RawAnswers, name?: string): Again {
  const edits: DocumentEdit[] = [];
  const lost: Lost[] = [];
  const stays: Stays[] = [];
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
    stays.push(...one.stays);
    if (part.id === partId) unknown = one.unknown;
    changed.add(part.id);
    now = apply(now, one.edits).document;
  }
  return { edits, lost, unknown, stays };
}
