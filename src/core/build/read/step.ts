import type { Step } from "../model";
import type { Member } from "../schema/document";
import { maybeAmount } from "./amounts";
import { maybeMoment, readMoment } from "./dates";
import type { StepDraft } from "./drafts";
import { type Notes, shown } from "./notes";
import { readReaches } from "./place";
import { inside, sourceOf, spot, strength_MPa, temperature_C, textOf, wind_km_h, work_min } from "./quantities";

type Raw = Member<"steps">;
const none: readonly never[] = [];
const anyHands = [{ role: "hands", number: 1 }] as const;

function readWork(raw: Raw["work"], notes: Notes): Step["work"] {
  const at = spot(notes, "work");
  if (raw === undefined) return { low_min: 0, likely_min: 0, high_min: 0 };
  if (typeof raw === "string" || "is" in raw) {
    const likely_min = work_min(at, raw as string);
    return { low_min: likely_min, likely_min, high_min: likely_min };
  }
  const three = raw as Exclude<typeof raw, { is: string }> & { low: string; likely: string; high: string };
  const work = {
    low_min: work_min(inside(at, "low"), three.low),
    likely_min: work_min(inside(at, "likely"), three.likely),
    high_min: work_min(inside(at, "high"), three.high),
  };
  if (work.low_min > work.likely_min || work.likely_min > work.high_min) {
    notes.say("build.order-of-three", "work", {
      low: shown(textOf(three.low)),
      likely: shown(textOf(three.likely)),
      high: shown(textOf(three.high)),
    });
  }
  return work;
}

function readHands(raw: Raw["hands"]): Step["hands"] {
  if (raw === undefined) return anyHands;
  if (typeof raw === "number") return raw === 0 ? none : [{ role: "hands", number: raw }];
  return raw.map((need) => ({ role: need.role, number: need.number ?? 1 })).filter((need) => need.number > 0);
}

/** When it was really done; a finish before its start is a slip of the pen. */
function readDone(raw: Raw["done"], notes: Notes): Step["done"] {
  if (raw === undefined) return null;
  const at = spot(notes, "done");
  const done = { start: readMoment(inside(at, "start"), raw.start), finish: readMoment(inside(at, "finish"), raw.finish) };
  if (done.finish < done.start) notes.say("build.done-backwards", "done", { start: shown(raw.start), finish: shown(raw.finish) });
  return done;
}

function readWeather(raw: Raw["weather"], notes: Notes): Step["weather"] {
  if (raw === undefined) return null;
  const at = spot(notes, "weather");
  return {
    lowest_C: raw.lowest === undefined ? null : temperature_C(inside(at, "lowest"), raw.lowest),
    highest_C: raw.highest === undefined ? null : temperature_C(inside(at, "highest"), raw.highest),
    wind_km_h: raw.wind === undefined ? null : wind_km_h(inside(at, "wind"), raw.wind),
    dry: raw.dry ?? false,
  };
}

/** The figure's own source (`work: { is, from }`) stands for the step where it names none. */
function workSource(raw: Raw): string | null {
  return typeof raw.work === "object" ? sourceOf(raw.work as { is: string; from?: string }) : null;
}

export function readStep(raw: Raw, notes: Notes): StepDraft {
  const moment = (key: "notBefore" | "deadline" | "fixed"): string | null => maybeMoment(spot(notes, key), raw[key]);
  const { trial, pour } = raw;
  const whole = readWork(raw.work, notes);
  const left_min = raw.left === undefined ? null : work_min(spot(notes, "left"), raw.left);
  // What is done is done, whatever was left of it at some time.
  const begun = left_min === null || raw.done !== undefined ? null : left_min;
  return {
    id: raw.id,
    own: {
      name: raw.name ?? raw.id,
      sort: raw.sort ?? (pour ? "pour" : "work"),
      work: begun === null ? whole : { low_min: begun, likely_min: begun, high_min: begun },
      hands: readHands(raw.hands),
      notAlone: raw.notAlone ?? false,
      unbroken: raw.unbroken ?? false,
      notBefore: moment("notBefore"),
      deadline: moment("deadline"),
      fixed: moment("fixed"),
      weather: readWeather(raw.weather, notes),
      tools: raw.tools ?? none,
      materials: raw.materials ?? none,
      cautions: raw.cautions ?? none,
      notes: raw.notes ?? "",
      pour: pour ? { strength_MPa: strength_MPa(spot(notes, "pour", "strength"), pour.strength), cement: pour.cement ?? "I" } : null,
      done: readDone(raw.done, notes),
      begun: begun === null ? null : { whole_min: whole.likely_min },
      from: raw.from ?? workSource(raw),
    },
    unsaid: { sort: raw.sort === undefined, work: raw.work === undefined, unbroken: raw.unbroken === undefined },
    place: raw.place ?? null,
    calendar: raw.calendar ?? null,
    reaches: readReaches(notes, "reaches", raw.reaches),
    puts: raw.puts ?? none,
    takes: raw.takes ?? none,
    closes: raw.closes ?? none,
    leansOn: (raw.leansOn ?? none).map((lean, i) => ({
      piece: lean.piece,
      once: maybeAmount(spot(notes, "leansOn", `${i + 1}.once`), lean.once),
    })),
    alone: raw.alone ?? none,
    after: raw.after ?? none,
    needs: raw.needs ?? none,
    equipment: (raw.equipment ?? none).map((item) => ({ of: item.of, number: item.number ?? 1 })),
    holdPoint: raw.holdPoint?.places ?? null,
    trial: trial
      ? {
          rounds: trial.rounds ?? 1,
          gap: maybeAmount(spot(notes, "trial", "gap"), trial.gap),
          decides: trial.decides ?? none,
          what: trial.what ?? "",
        }
      : null,
  };
}
