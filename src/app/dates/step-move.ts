import { type DocumentEdit, writtenId } from "../../core/base";
import type { Build, Step } from "../../core/build";
import type { SiteTime } from "../../core/clock";
import type { Plan } from "../../core/plan";
import { dateLabel } from "../../draw";
import { shownName } from "../state/names";

/** Where a step in hand would go; null: stays as it is there. */
export interface StepAim {
  readonly date: string | null;
  /** Id of a place; "": no one place. */
  readonly place: string | null;
  /** On that very day, not only from it on. */
  readonly fixed: boolean;
}

export interface StepMove {
  /** Empty where nothing would change. */
  readonly edits: readonly DocumentEdit[];
  /** How the list of changes says it. */
  readonly words: string;
  /** Why a date says nothing: it starts as early as it can already. */
  readonly asEarlyAsItCan: boolean;
}

/** A step that is done lies behind; rounds after the first follow it. */
export const isMovable = (step: Step): boolean => step.done === null && (step.trial === null || step.trial.round === 1);

/** Where a step's own keys are written: of one copy of a group only that copy changes. */
function pathOf({ id, group }: Step): readonly string[] {
  return group === null
    ? ["steps", `id=${writtenId(id)}`]
    : ["groups", `id=${group.group}`, "differences", String(group.copy), group.written];
}

const clockOf = (moment: string): string => (moment.includes("T") ? moment.slice(moment.indexOf("T")) : "");

/** Moving a step to another day or place: the change of the document. Null where the step is not there, or may not be moved. */
export function moveStep(build: Build, plan: Plan, time: SiteTime, id: string, aim: StepAim): StepMove | null {
  const at = build.at.step.get(id as never) ?? -1;
  const step = build.steps[at];
  if (!step || !isMovable(step)) return null;
  const path = pathOf(step);
  const put = (key: string, value: string): DocumentEdit => ({ path: [...path, key], value });
  // In a copy's differences a key is taken away by null; elsewhere it is left out.
  const drop = (key: string): DocumentEdit => (step.group === null ? { path: [...path, key] } : { path: [...path, key], value: null });
  const edits: DocumentEdit[] = [];
  const said: string[] = [];
  const name = shownName(step);
  let asEarlyAsItCan = false;

  const date = aim.date !== null && aim.date < build.start ? build.start : aim.date;
  const stands = time.local(plan.steps[at]?.start ?? 0).date;
  const label = (to: string): string => dateLabel(time, time.minuteOf(to) ?? 0);
  if (date !== null && time.minuteOf(date) !== null) {
    if (aim.fixed || step.fixed !== null) {
      const to = `${date}${clockOf(step.fixed ?? "")}`;
      if (to !== step.fixed) {
        edits.push(put("fixed", to), ...(step.notBefore === null || step.notBefore <= to ? [] : [drop("notBefore")]));
        said.push(`to ${label(date)} exactly`);
      }
    } else if (date > stands) {
      edits.push(put("notBefore", date));
      said.push(`to ${label(date)} or later`);
    } else if (date < stands && step.notBefore !== null && step.notBefore.slice(0, 10) > date) {
      const needless = date <= build.start;
      edits.push(needless ? drop("notBefore") : put("notBefore", date));
      said.push(needless ? "to as early as it can be" : `to ${label(date)} or later`);
    } else if (date < stands) asEarlyAsItCan = true;
  }
  if (aim.place !== null && aim.place !== (step.place ?? "")) {
    const place = build.places[build.at.place.get(aim.place as never) ?? -1];
    const inGroup =
      place !== undefined && step.group !== null && place.group?.group === step.group.group && place.group.copy === step.group.copy;
    edits.push(aim.place === "" ? drop("place") : put("place", inGroup ? writtenId(aim.place) : aim.place));
    said.push(place === undefined ? "to no one place" : `to ${shownName(place)}`);
  }
  return { edits, words: edits.length === 0 ? `leave ${name}` : `move ${name} ${said.join(", ")}`, asEarlyAsItCan };
}

/** The place of the lane that far down the sheet; null where there is none, or it stands there already. `y`: px */
export function laneAt(
  lanes: readonly { readonly key: string; readonly place: number; readonly y0: number; readonly y1: number }[],
  y: number,
): { readonly key: string; readonly place: string } | null {
  const lane = lanes.find(({ y0, y1 }) => y >= y0 && y < y1);
  return lane ? { key: lane.key, place: lane.place < 0 ? "" : lane.key } : null;
}

/** The lane above or below one. */
export function laneNext<L extends { readonly key: string; readonly y0: number }>(lanes: readonly L[], key: string, by: 1 | -1): L | null {
  const down = [...lanes].sort((a, b) => a.y0 - b.y0);
  return down[down.findIndex((lane) => lane.key === key) + by] ?? null;
}
