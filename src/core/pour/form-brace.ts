import type { Brace } from "../build";
import { alongBrace_lb, shoreMember, windBrace_lb_ft } from "../concrete";
import type { Tally } from "./form-ask";
import { feet, inches, kNmOfPoundsPerFoot, kNOfPounds, pounds } from "./form-units";
import { member } from "./members";

/** What the bracing of an upright form is asked at its top, kN/m: 100 lb/ft, or wind of 15 psf over half its height (ACI 347 2.2.3, read in a lecture). */
export function uprightBracing_kN_m(high_mm: number): number {
  return kNmOfPoundsPerFoot(windBrace_lb_ft(feet(high_mm)));
}

/** Horizontal force at the height of the braces that keeps a force at another height from turning the form over, about its foot. */
export const atBrace = (force: number, at_mm: number, brace: Brace): number => (force * at_mm) / brace.rise_mm;

/** A brace and its foot under a horizontal force, kN each. Both are judged as pushed: a brace that is only pulled carries no less. */
export function judgeBrace(tally: Tally, brace: Brace, horizontal_kN: number, footMust: boolean): void {
  const length_mm = Math.hypot(brace.run_mm, brace.rise_mm);
  const along_kN = kNOfPounds(alongBrace_lb(pounds(horizontal_kN), feet(brace.run_mm), feet(brace.rise_mm)));
  const stuff = tally.stuff("braces", brace.stuff, "column", false);
  if (stuff !== null) {
    const free = inches(length_mm);
    tally.add(
      member({
        part: "braces",
        stuff: stuff.label,
        pieces: stuff.pieces,
        result: shoreMember(pounds(along_kN), stuff.section, stuff.pieces, stuff.allowed, free, free),
        span_mm: length_mm,
        load: { value: along_kN, unit: "kN" },
        documents: ["NDS", "ACI 347"],
        doubts: stuff.doubts,
        source: brace.stuff.from,
      }),
    );
  }
  tally.fastener("brace feet", brace.foot, along_kN, [], footMust ? "stop" : "look");
  if (brace.lands === null) tally.say("form.brace-lands", "look", { load_kN: along_kN });
}
