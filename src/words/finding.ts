import type { Display, Finding } from "../core/base";
import type { Build, BuildCode } from "../core/build";
import type { clockCodes } from "../core/clock";
import type { PourCode } from "../core/pour";
import { accessSayings } from "./access/findings";
import { fileSayings } from "./build/file";
import { partSayings } from "./build/parts";
import { pourSayings as writtenPourSayings } from "./build/pours";
import type { Sayings, Told } from "./build/sayings";
import { clockSayings } from "./clock";
import { answerSayings } from "./kits/answers";
import { remarkSayings } from "./kits/remarks";
import { compareSayings, planSayings } from "./plan/findings";
import { cureSayings } from "./pour/cure-findings";
import { daySayings } from "./pour/day-findings";
import { formSayings } from "./pour/form-findings";
import { sentence } from "./text";
import { text, voice } from "./voice";
import { whereWords } from "./where";

const buildSayings: Readonly<Record<BuildCode, (told: Told) => string>> = { ...fileSayings, ...partSayings, ...writtenPourSayings };
const clocks: Readonly<Record<(typeof clockCodes)[number], (told: Told) => string>> = clockSayings;

const pourSayings: Readonly<Record<PourCode, (told: Told) => string>> = { ...daySayings, ...formSayings, ...cureSayings };

/** Every code that can be said. */
export const sayings: Sayings = {
  ...buildSayings,
  ...clocks,
  ...accessSayings,
  ...planSayings,
  ...compareSayings,
  ...pourSayings,
  ...answerSayings,
  ...remarkSayings,
};

/**
 * One finding as the builder reads it: where, what is wrong, and what would be right. A finding of a file that is no build yet is said without one.
 * Its reasons and ways out are said by `statementSentence` and `wayOutSentence`.
 */
export function findingSentence(finding: Finding, build: Build | null, display?: Display): string {
  const say = voice(build, display);
  const at = whereWords(finding.where, text(finding.detail, "part"), say);
  const saying = sayings[finding.code];
  return sentence(
    saying === undefined
      ? `${at}: something is not right here`
      : saying({ at, where: finding.where, detail: finding.detail, because: finding.because ?? [], voice: say }),
  );
}
