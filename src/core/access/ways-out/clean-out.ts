import { type DocumentEdit, writtenId } from "../../base";
import type { Build, Passage, Place, Step } from "../../build";
import { reachesOf } from "../compile/steps";
import { type Candidate, closers, type Maker, visitors } from "./candidate";
import { add, after, anHour, edit, freeId, onePair, the, writtenNeed } from "./written";

const small = ["sight", "hand", "arm", "hose"];

/**
 * One more way into a place for what must pass. Where something closes or fills the place: a clean-out, with a cover that closes it again after the work
 * behind it; whatever fills the place leans on the cover. It never opens what is filled already. Where nothing does: another way in (a ladder, a scaffold), put up
 * before the work; `open` in the detail.
 */
export const cleanOut: Maker = (blocked) =>
  visitors(blocked).flatMap(({ step, says }): Candidate[] => {
    const { build } = blocked;
    const place = build.places[build.at.place.get(says.place ?? "") ?? -1];
    const need = place === undefined ? undefined : needOf(build, step, place, says.need);
    if (place === undefined || need === undefined) return [];
    const isEnclosed =
      closers(blocked).length > 0 || build.pieces.some((p) => p.fills.includes(place.id) || p.closes.some((ref) => ref.place === place.id));
    const detail = { place: place.id, step: step.id };
    if (!isEnclosed && need.kind === "unit") return [];
    if (!isEnclosed) return [{ kind: "clean-out", detail: { ...detail, open: true }, edits: anotherWay(build, place, step, need) }];
    return small.includes(need.kind) ? [{ kind: "clean-out", detail, edits: cut(build, place, step, need) }] : [];
  });

function needOf(build: Build, step: Step, place: Place, kind: string | undefined): Passage | undefined {
  const aims = reachesOf(build, build.at.step.get(step.id) ?? -1).flatMap(({ any }) => any);
  const own = aims.find((a) => a.place === place.id && a.need.kind === kind)?.need;
  return own ?? (kind === "sight" && step.holdPoint !== null ? { kind: "sight" } : undefined);
}

function wayIn(place: Place, wanted: string, name: string, need: Passage) {
  const id = place.ways.some((w) => w.id === wanted) ? `${wanted}-${place.ways.length + 1}` : wanted;
  const { depth } = writtenNeed(need);
  const written = { id, name, passes: [need.kind], ...(depth === undefined ? {} : { depth }) };
  return { id, full: `${writtenId(place.id)}.${id}`, added: edit("places", place.id, ["ways", `id=${id}`], written) };
}

function cut(build: Build, place: Place, step: Step, need: Passage): DocumentEdit[] {
  const way = wayIn(place, "clean-out", "by the clean-out", need);
  const cover = freeId(build, `${writtenId(place.id)}-${way.id}-cover`);
  const shut = {
    id: freeId(build, `${writtenId(place.id)}-${way.id}-shut`),
    name: `Close the clean-out at ${the(place.name)}`,
    ...(step.place === null ? {} : { place: writtenId(step.place) }),
    ...onePair,
    work: anHour,
    puts: [cover],
    after: [writtenId(step.id)],
  };
  const fillers = build.pieces.filter((p) => p.fills.includes(place.id) && p.up >= 0);
  return [
    way.added,
    ...add("pieces", { id: cover, ...{ name: `Clean-out cover at ${the(place.name)}`, sort: "cover", closes: [way.full] } }, place.group),
    ...add("steps", shut, step.group ?? place.group),
    ...fillers.map((p) => edit("steps", build.steps[p.up]?.id ?? "", ["leansOn", "+999"], { piece: cover })),
  ];
}

function anotherWay(build: Build, place: Place, step: Step, need: Passage): DocumentEdit[] {
  const way = wayIn(place, "other-way", "by another way in", need);
  const maker = freeId(build, `${writtenId(place.id)}-way-in`);
  const set = {
    id: freeId(build, `${writtenId(place.id)}-way-in-up`),
    name: `Put up a way in to ${the(place.name)}`,
    ...onePair,
    work: anHour,
    puts: [maker],
  };
  return [
    way.added,
    ...add("pieces", { id: maker, ...{ name: `Way in to ${the(place.name)}`, sort: "scaffold", makes: [way.full] } }, place.group),
    ...add("steps", set, step.group ?? place.group),
    after(step.id, set.id),
  ];
}
