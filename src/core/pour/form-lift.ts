import type { FormSpec, HoldDown } from "../build";
import { judged, tension, uplift_lb_ft } from "../concrete";
import { formedSides } from "./element";
import type { Tally } from "./form-ask";
import type { Head } from "./form-head";
import { kNmOfPoundsPerFoot, pounds, weightOf } from "./form-units";
import { doubtsOfFastener } from "./guess";
import { member } from "./members";
import type { FormSheet } from "./result";

type Lift = FormSheet["lift"];

/** Less than this is nothing, kN or kN/m. */
const nothing = 0.005;

/** On the faces that lean over the concrete: the pressure diagram projected on the level, kN for each metre. */
export function leaning_kN_m(head: Head, batters: readonly number[]): number {
  return batters.reduce((sum, batter) => sum + kNmOfPoundsPerFoot(uplift_lb_ft(head.diagram, batter)), 0);
}

/** Under a lid, where the concrete is pumped in from below: the surge of a quarter of the whole head, kPa. A lid that is filled up to feels no more than that. */
export function lid_kPa(tally: Tally, head: Head): number {
  const isLid = tally.ask.element.faces.some(({ face, against }) => face === "top" && against === "form");
  return isLid && tally.ask.pour.placed === "from the base" ? head.most_kPa / 5 : 0;
}

/** Leaning faces of a wall that are formed. */
export function formedBatters(tally: Tally): readonly number[] {
  const { element, upright } = tally.ask;
  const sides = formedSides(element);
  const batter = upright?.batter ?? { a: 0, b: 0 };
  return [...(sides.a ? [batter.a] : []), ...(sides.b ? [batter.b] : [])];
}

/** What hold-downs carry together (a column), or for each metre (a wall). */
function heldBy(down: HoldDown | null, each: "metre" | "all", long_mm: number): number {
  if (down === null) return 0;
  const all = down.by.carries_kN * Math.max(1, down.number);
  return each === "all" ? all : all / ((down.spacing_mm ?? long_mm) / 1000);
}

/** Upward force against weight and hold-downs. No factor of safety in it: what a hold-down carries is written with its own. */
export function judgeLift(tally: Tally, up: number, each: "metre" | "all", form: Exclude<FormSpec, { kind: "deck" }>, faces: number): Lift {
  const long_mm = tally.ask.upright?.long_mm ?? 1000;
  const mass = form.kind === "column" ? form.mass_kg : form.kind === "wall" && form.mass_kg_m !== null ? form.mass_kg_m * faces : null;
  const weight = mass === null ? null : weightOf(mass);
  const needed = Math.max(0, up - (weight ?? 0));
  const held = heldBy(form.holdDown, each, long_mm);
  const lift = { up, weight, held, needed };
  if (up <= nothing) return { ...lift, up: Math.max(0, up) };
  if (weight === null && needed > held) tally.say("form.mass-unknown", "look", { up_kN: up, each });
  if (needed <= nothing) return lift;
  if (form.holdDown === null) tally.say("form.lifts", "stop", { up_kN: up, weight_kN: weight ?? 0, needed_kN: needed, each });
  else {
    const { by } = form.holdDown;
    const load_kN = (needed / held) * by.carries_kN;
    tally.add(
      member({
        part: "hold-downs",
        stuff: by.name,
        pieces: form.holdDown.number,
        result: judged([tension(pounds(load_kN), pounds(by.carries_kN))]),
        span_mm: form.holdDown.spacing_mm,
        load: { value: load_kN, unit: "kN" },
        documents: [],
        doubts: doubtsOfFastener(by),
        source: by.from,
      }),
    );
  }
  return lift;
}
