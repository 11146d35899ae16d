import type { DeckFormSpec, Lumber } from "../build";
import { footOnPlank, judged, type MemberCheck, mudsill_ft2, plankChecks, type Section } from "../concrete";
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
    if (sills.ground === null || !hard.has(sills.ground))
      checks.push(...plankChecks(section, plank.allowed, shore.section, load_lb, inches(long_mm)));
    checks.push(footOnPlank(section, plank.allowed, shore.section, shore.pieces, load_lb));
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
