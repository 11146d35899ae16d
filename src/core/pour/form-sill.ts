import type { DeckFormSpec, Lumber } from "../build";
import { bearing, forcedMember, judged, type MemberCheck, mudsill_ft2, type Section } from "../concrete";
import type { Tally } from "./form-ask";
import type { Stuff } from "./form-stuff";
import { inches, pounds, psfOf } from "./form-units";
import { type Doubt, doubtsOfSoil } from "./guess";
import { member } from "./members";

type Sills = NonNullable<DeckFormSpec["mudsills"]>;

/** Grounds that carry a shore without a figure of soil; whether a slab below bears it is for whoever designed that slab. */
const hard = new Set(["rock", "slab"]);

/** What is taken where no plank is written: the thinnest that is used, of the weakest likely wood (common practice, no source). */
const thinnest: Lumber = {
  size: "2x10",
  flat: true,
  pieces: 1,
  grade: null,
  salvaged: false,
  measured_mm: null,
  wet: true,
  reused: true,
  from: null,
};

/**
 * The plank as a beam: what the soil presses up evenly on it, on both sides of the shore's thin side, it carries to the shore as a cantilever. Over one shore this is
 * statics; where planks run on under several it is on the safe side. Shear leaves out a depth beside the shore (NDS 3.4.3.1).
 */
function beamChecks(plank: Stuff, section: Section, shore: Stuff, load_lb: number, long_in: number): MemberCheck[] {
  const free = Math.max(0, (long_in - Math.min(shore.section.wide_in, shore.section.deep_in)) / 2);
  const line = load_lb / long_in;
  return forcedMember(section, 1, plank.allowed, (line * free * free) / 2, line * Math.max(0, free - section.deep_in));
}

/** A shore's foot on the plank, across its grain. */
function footCheck(plank: Stuff, section: Section, shore: Stuff, load_lb: number): MemberCheck {
  const thin = Math.min(shore.section.wide_in, shore.section.deep_in);
  const deep = Math.max(shore.section.wide_in, shore.section.deep_in);
  return bearing(load_lb, thin * shore.pieces * Math.min(deep, section.wide_in), plank.allowed.bearing);
}

function saySills(tally: Tally, sills: Sills, load_kN: number, press_kPa: number): void {
  const { ground } = sills;
  if (ground === "fresh fill" || ground === "frozen") tally.say("form.mudsill-ground", "stop", { ground });
  if (ground === null) tally.say("form.mudsill-ground-unknown", "look", {});
  if (ground === "slab") tally.say("form.slab-below", "look", { load_kN });
  if (!sills.level) tally.say("form.mudsill-level", "look", {});
  if (sills.soil_kPa === null && (ground === null || !hard.has(ground))) tally.say("form.soil-unknown", "stop", { load_kN, press_kPa });
}

/** What the shores stand on: the ground under it, the plank itself, and the foot of a shore on it. */
export function judgeMudsills(tally: Tally, form: DeckFormSpec, shore: Stuff, load_kN: number): void {
  const sills = form.mudsills;
  if (sills === null) {
    tally.say("form.no-mudsill", "stop", { load_kN });
    return;
  }
  const long_mm = Math.min(sills.long_mm, form.shores.spacing_mm);
  const area_m2 = (long_mm * sills.wide_mm) / 1e6;
  saySills(tally, sills, load_kN, load_kN / area_m2);
  const load_lb = pounds(load_kN);
  const checks: MemberCheck[] = [];
  if (sills.soil_kPa !== null) {
    const needed_m2 = mudsill_ft2(load_lb, psfOf(sills.soil_kPa)) * 0.3048 ** 2;
    checks.push({ kind: "ground", of100: (100 * needed_m2) / area_m2, span_in: null });
  }
  const plank = tally.stuff("mudsills", { ...(sills.stuff ?? thinnest), wet: true }, "beam", false, true);
  if (plank !== null) {
    const section: Section = {
      ...plank.section,
      wide_in: sills.stuff ? Math.min(inches(sills.wide_mm), plank.section.wide_in * plank.pieces) : inches(sills.wide_mm),
    };
    if (sills.ground === null || !hard.has(sills.ground)) checks.push(...beamChecks(plank, section, shore, load_lb, inches(long_mm)));
    checks.push(footCheck(plank, section, shore, load_lb));
  }
  if (checks.length === 0) return;
  const wood: readonly Doubt[] = sills.stuff ? (plank?.doubts ?? []) : ["plank"];
  tally.add(
    member({
      part: "mudsills",
      stuff: sills.stuff?.size ?? "",
      pieces: sills.stuff?.pieces ?? 1,
      result: judged(checks),
      span_mm: null,
      load: { value: load_kN, unit: "kN" },
      documents: ["NDS"],
      doubts: [...wood, ...(sills.soil_kPa === null ? [] : doubtsOfSoil(sills.soilFrom))],
      source: sills.soilFrom,
    }),
  );
}
