import { measured, regular, semibold } from "./widths";

export type Weight = 400 | 600;

/** What a letter outside the table is taken for: as wide as a wide capital, so that text never runs over. */
const unknown = 720;

function tableOf(widths: readonly number[]): ReadonlyMap<string, number> {
  return new Map([...measured].map((letter, index) => [letter, widths[index] as number]));
}

const tables = { 400: tableOf(regular), 600: tableOf(semibold) };

/** A sheet that is laid out anew says mostly what it said before. So many lines are kept before all are forgotten. */
const mostKept = 20_000;
const kept: Readonly<Record<Weight, Map<string, number>>> = { 400: new Map(), 600: new Map() };

function thousandthsOf(text: string, weight: Weight): number {
  const known = kept[weight].get(text);
  if (known !== undefined) return known;
  let thousandths = 0;
  for (const letter of text) thousandths += tables[weight].get(letter) ?? unknown;
  if (kept[weight].size >= mostKept) kept[weight].clear();
  kept[weight].set(text, thousandths);
  return thousandths;
}

/** Width in px of one line of text at a type size in px. */
export function textWidth(text: string, size: number, weight: Weight = 400): number {
  return (thousandthsOf(text, weight) * size) / 1000;
}

/** Breaks text at spaces into lines no wider than `width` px; a single longer word keeps a line of its own. */
export function wrap(text: string, width: number, size: number, weight: Weight = 400): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/)) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line === "" || textWidth(longer, size, weight) <= width) line = longer;
    else {
      lines.push(line);
      line = word;
    }
  }
  if (line !== "") lines.push(line);
  return lines;
}
