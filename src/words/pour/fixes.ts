import { type Display, formatLength, parseQuantity } from "../../core/base";
import type { Fix } from "../../core/pour";
import { lengthsTogether } from "../lengths";
import { sentence, spelledFigure } from "../text";
import { of100, ofWhatMay, partWords } from "./members";
import { plyWords } from "./ply";

const text = (fix: Fix, key: string): string => String(fix.detail[key] ?? "");
const length = (fix: Fix, key: string, display: Display): string => {
  const value = fix.detail[key];
  return typeof value === "number" ? formatLength(value, display) : text(fix, key);
};

const height = (fix: Fix, key: string, display: Display): string => {
  const value = fix.detail[key];
  return typeof value === "number" ? lengthsTogether([value], display)(value) : text(fix, key);
};

/** Several heights as they would be written down, in the units on screen and all in one. */
const heights = (fix: Fix, key: string, display: Display): string => {
  const read = text(fix, key)
    .split(", ")
    .map((one) => parseQuantity("length", one));
  const known = read.filter((one) => one !== null);
  return known.length === read.length ? known.map(lengthsTogether(known, display)).join(", ") : text(fix, key);
};

/** What to do, without what it brings. */
const acts: Readonly<Record<Fix["kind"], (fix: Fix, display: Display) => string>> = {
  "band more": (fix, display) => `One more band at ${height(fix, "at_mm", display)}`,
  "bands as proposed": (fix, display) =>
    `Bands at ${typeof fix.detail.at === "string" ? heights(fix, "at", display) : height(fix, "first_mm", display)} from the foot up`,
  "heavier bands": (fix) => `Bands of ${text(fix, "stuff").replace(/^(\d+) of /, (_, number) => `${spelledFigure(Number(number))} `)}`,
  "closer members": (fix, display) => `${partWords(fix.part).replace(/^the /, "")} every ${length(fix, "spacing_mm", display)}`,
  "thicker sheathing": (fix, display) => `Plywood of ${plyWords(text(fix, "ply"), display)}`,
  "closer wales": (fix, display) =>
    typeof fix.detail.at_mm === "number"
      ? `One more wale at ${height(fix, "at_mm", display)}`
      : `Wales at ${heights(fix, "heights", display)} from the foot up`,
  "stronger ties": (fix) => `Ties that carry ${text(fix, "carries")}`,
  "closer ties": (fix, display) => `Ties every ${length(fix, "spacing_mm", display)}`,
  "closer shores": (fix, display) => `Shores every ${length(fix, "spacing_mm", display)}`,
  "brace shores": (fix, display) => `Shores braced every ${length(fix, "unbraced_mm", display)} of their height`,
  "bigger mudsills": (fix, display) => `Mudsills ${length(fix, "long_mm", display)} by ${length(fix, "wide_mm", display)}`,
  "hold down": (fix, display) =>
    fix.detail.spacing_mm === 0
      ? `Hold it down with ${text(fix, "number")} that carry ${text(fix, "carries")} each`
      : `Hold it down for ${text(fix, "carries")} every ${length(fix, "spacing_mm", display)}`,
  braces: (fix, display) => `Braces${"stuff" in fix.detail ? ` of ${text(fix, "stuff")}` : ""} every ${length(fix, "spacing_mm", display)}`,
  "bigger bolts": (fix) => `Corner bolts that carry ${text(fix, "carries")}`,
  "held rate": (fix, display) =>
    `Only as a written act: passes of ${length(fix, "pass_mm", display)} every ${text(fix, "every_min")} min, kept by one named person with a stick and a watch`,
};

/** A change and what the most any member carries is after it, computed again. */
export function fixSentence(fix: Fix, display: Display): string {
  const most = `the most any part carries is ${fix.of100 > 1000 ? ofWhatMay(fix.of100) : of100(fix.of100)}, and ${partWords(fix.thenFirst)} would give first`;
  return sentence(`${acts[fix.kind](fix, display)}: then ${fix.of100 > 100 ? `it still would not hold: ${most}` : most}`);
}
