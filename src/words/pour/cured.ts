import { type Display, formatPressure, formatTemperature } from "../../core/base";
import type { Build, Cure, RemovalSort } from "../../core/build";
import { counted, sentence } from "../text";
import { voice } from "../voice";

const ways: Readonly<Record<NonNullable<Cure["how"]>, string>> = {
  wet: "kept wet",
  covered: "covered",
  compound: "sealed with a compound",
  "in the form": "left in its form",
};

/** "6 h", "3 days" */
const timeWords = (time_min: number): string =>
  time_min >= 1440 ? counted(Math.round(time_min / 144) / 10, "day") : `${Math.round(time_min / 6) / 10} h`;

/** How a pour is kept wet and warm, as written: "Kept wet for 7 days; held at 55 °F or warmer for 3 days; in the weather." */
export function cureSentence({ how, days, held_C, heldFor_min, exposed }: Cure, display: Display): string {
  const wet = how === null ? "nothing is said of how it is kept wet or sealed" : ways[how];
  const long = days === null ? "" : how === null ? `, only for how long: ${counted(days, "day")}` : ` for ${counted(days, "day")}`;
  const warm =
    held_C === null
      ? "not held warm"
      : `held at ${formatTemperature(held_C, display)} or warmer${heldFor_min === null ? "" : ` for ${timeWords(heldFor_min)}`}`;
  return sentence(`${wet}${long}; ${warm}; ${exposed ? "in the weather" : "indoors"}`);
}

/** What waits for a pour, as one picks it: what a step takes off, or puts on. */
export const removalNames: Readonly<Record<RemovalSort, string>> = {
  sides: "takes off side forms",
  soffit: "takes off forms under it",
  shores: "takes out shores",
  backfill: "fills earth against it",
  load: "loads it",
  anchors: "draws tight the nuts on its anchors",
};

/** A step that places concrete of which only a strength is written: what waits for it, and what to write down. */
export function bareSentence(build: Build, step: number, display: Display): string {
  const say = voice(build, display);
  const { id, pour } = build.steps[step]!;
  const asked = pour === null ? "no strength is written" : `${formatPressure(pour.strength_MPa, display)} is asked of it`;
  const waiting = build.waits.flatMap(({ to, least }) =>
    least !== null && (least.on.kind === "strength" || least.on.kind === "warm") && least.on.pour === id ? [to] : [],
  );
  const waits = [...new Set(waiting)];
  const told = waits.length === 0 ? "nothing waits for it" : `${say.steps(waits)} ${waits.length === 1 ? "waits" : "wait"} for it`;
  return sentence(`${asked}, and ${told}; write down in Forms what it pours, and its strength, its cure and what comes off stand here`);
}
