import { type Kind, kinds, offsets_C, spellings, unitsOf } from "./kinds";

const whole = "(?:\\d{1,3}(?:,\\d{3})+|\\d+)";
const figure = `(?:${whole}(?:\\.\\d+)?(?:[ -]\\d+/\\d+)?|\\d+/\\d+)`;
const signed: readonly Kind[] = ["temperature"];
const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, "\\$&");

/** Longest names first, so that "min" is not read as "m". */
const names = (kind: Kind): string =>
  [...Object.keys(unitsOf[kind]), ...Object.keys(spellings[kind])]
    .sort((a, b) => b.length - a.length || (a < b ? -1 : 1))
    .map(escaped)
    .join("|");

const one = (kind: Kind): string => `${figure} ?(?:${names(kind)})`;

/**
 * One figure with its unit, or several from large to small (`3 ft 6 1/2 in`, `1 h 30 min`); temperatures may be below zero. However many, as their order sees to
 * it that they are few: "at most three more" would be made ready three times over, which took a tenth of the first reading.
 */
const patternOf = (kind: Kind): RegExp => new RegExp(signed.includes(kind) ? `^-?${one(kind)}$` : `^${one(kind)}(?:[ -]*${one(kind)})*$`);

const byKind = (make: (kind: Kind) => RegExp): Readonly<Record<Kind, RegExp>> =>
  Object.fromEntries(kinds.map((kind) => [kind, make(kind)])) as Record<Kind, RegExp>;

/** What a quantity of each kind looks like; the published schema states the very same. */
export const quantityPattern = byKind(patternOf);

const partsOf = (kind: Kind): RegExp => new RegExp(`(${figure}) ?(${names(kind)})`, "g");
const parts = byKind(partsOf);

const longest = 60;

function figureOf(text: string): number {
  const fraction = /^(?:(.*?)[ -])?(\d+)\/(\d+)$/.exec(text);
  if (!fraction) return Number(text.replaceAll(",", ""));
  const [, before, above, below] = fraction;
  return (before ? Number(before.replaceAll(",", "")) : 0) + Number(above) / Number(below);
}

type Parts = readonly { readonly figure: number; readonly unit: string }[];

/** Of each kind, texts that were read lately: a document says "2 h" a hundred times. */
const read = Object.fromEntries(kinds.map((kind) => [kind, new Map<string, Parts | null>()])) as Record<Kind, Map<string, Parts | null>>;
const mostRead = 512;

/** Figure and unit (its one canonical name) of each part of a quantity, or null if the text is none of this kind. */
export function partsOfQuantity(kind: Kind, text: string): Parts | null {
  if (text.length > longest) return readParts(kind, text);
  const known = read[kind];
  let parts = known.get(text);
  if (parts === undefined) {
    if (known.size >= mostRead) known.clear();
    parts = readParts(kind, text);
    known.set(text, parts);
  }
  return parts;
}

function readParts(kind: Kind, text: string): Parts | null {
  const trimmed = text.trim();
  if (trimmed.length > longest || !quantityPattern[kind].test(trimmed)) return null;
  const sign = trimmed.startsWith("-") ? -1 : 1;
  const table: Readonly<Record<string, number>> = unitsOf[kind];
  const found = [...trimmed.matchAll(parts[kind])].map(([, number = "", name = ""]) => ({
    figure: sign * figureOf(number),
    unit: spellings[kind][name] ?? name,
  }));
  const sizes = found.map((part) => table[part.unit] ?? 0);
  if (sizes.some((size, i) => i > 0 && size >= (sizes[i - 1] ?? 0))) return null;
  return found.every((part) => Number.isFinite(part.figure)) ? found : null;
}

/** Twelve digits, so that "6 ft 8 in" and "80 in" are the very same number and a limit met exactly is met. */
const settled = (value: number): number => Number(value.toPrecision(12));

/**
 * A quantity as a builder writes it, in the model's unit of its kind (see `modelUnit`); null if it is none.
 * A bare number is none: the unit is never guessed. A leading minus is understood for temperatures only; see `parseSigned`.
 */
export function parseQuantity(kind: Kind, text: string): number | null {
  const found = partsOfQuantity(kind, text);
  if (!found) return null;
  const table: Readonly<Record<string, number>> = unitsOf[kind];
  if (kind === "temperature") {
    const part = found[0];
    return part ? settled(part.figure * (table[part.unit] ?? 0) + (part.unit === "F" ? offsets_C.F : offsets_C.C)) : null;
  }
  return settled(found.reduce((sum, part) => sum + part.figure * (table[part.unit] ?? 0), 0));
}

/** As `parseQuantity`, with a minus in front allowed: coordinates, and to tell a negative amount from no amount. */
export function parseSigned(kind: Kind, text: string): number | null {
  const trimmed = text.trim();
  if (kind === "temperature" || !trimmed.startsWith("-")) return parseQuantity(kind, trimmed);
  const value = parseQuantity(kind, trimmed.slice(1).trim());
  return value === null ? null : -value;
}
