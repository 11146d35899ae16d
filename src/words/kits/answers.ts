import { formatLength, fromModel, toModel } from "../../core/base";
import type { AnswerCode } from "../../core/kits";
import type { Told } from "../build/sayings";
import { listed, quoted } from "../text";
import { type Detail, figure, list, text, type Voice } from "../voice";

/** A limit of a length as it can be typed: to the whole inch inside the limit, below an inch to the sixteenth. */
function limit(length_mm: number, side: "least" | "most", voice: Voice): string {
  if (voice.display === "metric") return formatLength(length_mm, "metric");
  const inches = fromModel("length", length_mm, "in");
  const parts = Math.abs(inches) < 1 ? 16 : 1;
  const inside = (side === "least" ? Math.ceil(inches * parts) : Math.floor(inches * parts)) / parts;
  return formatLength(toModel("length", inside, "in"), "us");
}

function range(detail: Detail, voice: Voice): string {
  const [least, most, unit] = [figure(detail, "least"), figure(detail, "most"), text(detail, "unit")];
  if (unit === "mm") return `from ${limit(least, "least", voice)} to ${limit(most, "most", voice)}`;
  return `from ${least} to ${most}${unit === "" ? "" : ` ${unit}`}`;
}

const value = (detail: Detail): string => quoted(text(detail, "value"));
const isEmpty = (detail: Detail): boolean => text(detail, "value").trim() === "";

/** What would be right, by the kind of answer. */
const kinds: Readonly<Record<string, (like: string) => readonly [is: string, right: string]>> = {
  length: (like) => ["no length", `write it with its unit, like ${like}`],
  time: (like) => ["no time", `write it with its unit, like ${like || "2 h"}`],
  number: (like) => ["no number", `write one like ${like}`],
};

function quantity({ detail }: Told): string {
  const kind = kinds[text(detail, "kind")];
  if (kind === undefined) return "This answer cannot be read; pick it again";
  const [is, right] = kind(text(detail, "like"));
  return isEmpty(detail) ? right : `${value(detail)} is ${is}; ${right}`;
}

/** Beside the field of an answer: the question stands over it and is not said again. */
export const answerSayings = {
  "kit.unknown": ({ detail }) => {
    const near = text(detail, "nearest");
    return `There is no kit ${quoted(text(detail, "kit"))}; ${near === "" ? "pick one of the list" : `is ${quoted(near)} meant?`}`;
  },
  "kit.not-asked": ({ detail }) => {
    const near = text(detail, "nearest");
    return `${quoted(text(detail, "key"))} is not asked by this kit; ${near === "" ? "leave it out" : `is ${quoted(near)} meant?`}`;
  },
  "kit.quantity": quantity,
  "kit.range": ({ detail, voice }) => `${value(detail)} is outside what this kit can make; write a figure ${range(detail, voice)}`,
  "kit.whole": ({ detail }) =>
    `${value(detail)} is no whole number; write one like ${Math.max(1, Math.round(Number(text(detail, "value")) || 1))}`,
  "kit.not-one-of": ({ detail }) => `${value(detail)} is none of these; pick ${listed(list(detail, "choices"), "or")}`,
  "kit.joins-few": ({ detail }) => {
    const [there, least] = [figure(detail, "there"), figure(detail, "least")];
    const wanted = least === 1 ? "pick one at least" : `pick ${least} at least`;
    return there === 0
      ? `Without one of these it stands on nothing; ${wanted}`
      : `${there} ${there === 1 ? "is" : "are"} too few; ${wanted}`;
  },
  "kit.joins-many": ({ detail }) =>
    `${figure(detail, "there")} are picked, and at most ${figure(detail, "most")} can be joined; take some out`,
  "kit.joins-gone": () => "What it was to join is no longer in the build; pick another",
  "kit.rate": ({ detail }) => `${isEmpty(detail) ? "" : `${value(detail)} is no time; `}write it with its unit, like 1 h 30 min`,
} as const satisfies Readonly<Record<AnswerCode, (told: Told) => string>>;
