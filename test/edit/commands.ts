import { moveFlag } from "../../src/app/dates/flag-move";
import { moveStep } from "../../src/app/dates/step-move";
import { eitherOrder } from "../../src/app/write/choices";
import { suggestedFor, withSuggested } from "../../src/app/write/suggested";
import { type DocumentEdit, writtenId } from "../../src/core/base";
import { type Build, readDocument } from "../../src/core/build";
import { siteTime } from "../../src/core/clock";
import {
  addMember,
  addPour,
  clip,
  clipText,
  duplicate,
  group,
  moveTo,
  ownPlaces,
  paste,
  putUpBy,
  type Ref,
  type Removable,
  readClip,
  removeMany,
  removeMember,
  removePour,
  replaceCalendar,
  resume,
  setField,
  split,
  tick,
  ungroup,
} from "../../src/core/edit";
import { answerAgain, kits, putIn, takeOut } from "../../src/core/kits";
import { plan } from "../../src/core/plan";

/** Anything of a list, by a number that comes at random. */
export type Pick = (count: number) => number;
type Document = Readonly<Record<string, unknown>>;
type Member = Readonly<Record<string, unknown>> & { readonly id: string };

const listOf = (document: unknown, list: string): readonly Member[] =>
  ((document as Document)[list] as readonly Member[] | undefined) ?? [];
const none: readonly DocumentEdit[] = [];

function some<T>(all: readonly T[], pick: Pick, most = 4): readonly T[] {
  if (all.length === 0) return [];
  const from = pick(all.length);
  return all.slice(from, from + 1 + pick(most));
}
const one = <T>(all: readonly T[], pick: Pick): T | undefined => (all.length === 0 ? undefined : all[pick(all.length)]);
const steps = (document: unknown, pick: Pick): Ref[] => some(listOf(document, "steps"), pick).map(({ id }) => ({ list: "steps", id }));

const removable: readonly Removable[] = [
  "steps",
  "pieces",
  "places",
  "deliveries",
  "people",
  "equipment",
  "stock",
  "waits",
  "choices",
  "pours",
  "bookings",
  "groups",
  "solids",
  "calendars",
];

/** Every command that changes a document, each with what it needs picked at random; `build` is the document as read, where it can be. */
export const commands: Readonly<Record<string, (document: unknown, pick: Pick, build: Build | null) => readonly DocumentEdit[]>> = {
  "add a member": (_, pick) => [
    addMember(one(["steps", "places", "people", "deliveries"] as const, pick)!, { id: `new-${pick(3)}`, name: "New" }),
  ],
  "set a field": (document, pick) => {
    const list = one(["steps", "pieces", "places", "waits", "deliveries"] as const, pick)!;
    const member = one(listOf(document, list), pick);
    const [key, value] = one<[string, unknown]>(
      [
        ["name", "Other"],
        ["notes", undefined],
        ["work", "3 h"],
        ["hands", [{ role: "hose", number: 1 }]],
        ["weather", { dry: true }],
        ["uses", []],
      ],
      pick,
    )!;
    return member ? [setField(list, member.id, key, value)] : none;
  },
  "set inside a field": (document, pick) => {
    const step = one(listOf(document, "steps"), pick);
    return step
      ? [setField("steps", step.id, ["weather", "lowest"], "40 °F"), setField("steps", step.id, ["trial", "what"], "oils")]
      : none;
  },
  "take a member out": (document, pick) => {
    const list = one(removable, pick)!;
    const member = one(listOf(document, list), pick);
    return member ? removeMember(document, list, member.id) : none;
  },
  "take several out": (document, pick) => {
    const refs = steps(document, pick);
    const ids = refs.map(({ id }) => id);
    return removeMany(document, [
      ...ids.map((id) => ["steps", id] as const),
      ...putUpBy(document, ids).map((id) => ["pieces", id] as const),
    ]).edits;
  },
  duplicate: (document, pick) => duplicate(document, steps(document, pick)).edits,
  "copy and paste": (document, pick) => {
    const part = clip(document, steps(document, pick));
    const read = part ? readClip(clipText(part)) : null;
    return read ? paste(document, pick(2) === 0 ? read : { ...read, of: "another-build" }).edits : none;
  },
  split: (document, pick) => {
    const made = split(document, one(listOf(document, "steps"), pick)?.id ?? "", "Second part");
    return "edits" in made ? made.edits : none;
  },
  group: (document, pick) => {
    const refs = steps(document, pick);
    const made = group(document, [...refs, ...ownPlaces(document, refs).map((id): Ref => ({ list: "places", id }))], 2 + pick(3), "Alike");
    return "edits" in made ? made.edits : none;
  },
  ungroup: (document, pick) => ungroup(document, one(listOf(document, "groups"), pick)?.id ?? ""),
  "move to a place": (document, pick) =>
    moveTo(
      steps(document, pick).map(({ id }) => id),
      one(listOf(document, "places"), pick)?.id ?? "",
    ),
  "either order": (document, pick) => {
    const [a, b] = [one(listOf(document, "steps"), pick), one(listOf(document, "steps"), pick)];
    return a && b ? eitherOrder(document, a.id, b.id, [a.id, b.id]) : none;
  },
  "go by another calendar": (document, pick) => {
    const [a, b] = [one(listOf(document, "calendars"), pick), one(listOf(document, "calendars"), pick)];
    return a && b ? replaceCalendar(document, a.id, b.id) : none;
  },
  "give a pour": (document, pick) => {
    const step = one(listOf(document, "steps"), pick);
    const shape = { kind: "pier", long: "1 ft", wide: "1 ft", high: "3 ft" };
    return step ? addPour(document, step.id, "3000 psi", [{ id: "one", shape }]) : none;
  },
  "take a pour out": (document, pick) => removePour(document, one(listOf(document, "pours"), pick)?.id ?? ""),
  "add a step with what is usual": (document, pick) => {
    const name = one(["Tie the bars", "Strip the face", "Pour the wall", "Inspect the steel", "Set a form"], pick)!;
    const suggested = suggestedFor(document, name);
    return suggested ? withSuggested(document, name, suggested).edits : none;
  },
  "put a kit in": (document, pick) => putIn(document, one(kits, pick)!.id, "", {}).edits,
  "answer a kit again": (document, pick) => {
    const part = one(listOf(document, "parts"), pick);
    const kit = kits.find(({ id }) => id === part?.kit);
    const ask = kit
      ? one(
          kit.asks.filter(({ kind }) => kind === "yes" || kind === "choice"),
          pick,
        )
      : undefined;
    const answer = ask?.kind === "choice" ? one(ask.options, pick)?.value : pick(2) === 0;
    return part && ask && answer !== undefined ? answerAgain(document, part.id, { [ask.key]: answer }).edits : none;
  },
  "take a kit out": (document, pick) => takeOut(document, one(listOf(document, "parts"), pick)?.id ?? "").edits,
  tick: (_, pick, build) => {
    const step = build ? one(build.steps, pick) : undefined;
    return build && step
      ? tick(build, step.id, pick(3) === 0 ? null : { start: `${build.start}T08:00`, finish: `${build.start}T09:00` })
      : none;
  },
  resume: (_, pick, build) => (build ? resume(pick(2) === 0 ? null : `${build.start}T12:00`) : none),
  "drag a step": (_, pick, build) => {
    const step = build ? one(build.steps, pick) : undefined;
    if (!build || !step) return none;
    const time = siteTime(build.site.zone, build.start);
    const aim = {
      date: pick(3) === 0 ? null : time.dateOf((time.dayOfDate(build.start) ?? 0) + pick(120)),
      place: pick(2) === 0 ? null : (one(build.places, pick)?.id ?? ""),
      fixed: pick(2) === 0,
    };
    return moveStep(build, plan(build), time, step.id, aim)?.edits ?? none;
  },
  "drag a flag": (_, pick, build) => {
    const list = one(["deliveries", "bookings"] as const, pick)!;
    const member = build ? one<{ readonly id: string; readonly name: string }>(build[list], pick) : undefined;
    if (!build || !member) return none;
    const time = siteTime(build.site.zone, build.start);
    const at = time.minuteOf(build.start) ?? 0;
    const flag = { list, id: writtenId(member.id), name: member.name, at, movable: true } as unknown as Parameters<typeof moveFlag>[2];
    return moveFlag(build, time, flag, time.dateOf((time.dayOfDate(build.start) ?? 0) + pick(90)))?.edits ?? none;
  },
};

export const readOf = (document: unknown): Build | null => readDocument(document).build;
