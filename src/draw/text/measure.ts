import { measured, regular, semibold } from "./widths";

export type Weight = 400 | 600;

/** What a letter outside the table is taken for: as wide as a wide capital, so that text never runs over. */
const unknown = 720;

function tableOf(widths: readonly number[]): ReadonlyMap<string, number> {
  return new Map([...measured].map((letter, index) => [letter, widths[index] as number]));
}

const tables = { 400: tableOf(regular), 600: tableOf(semibold) };

/** Width in px of one line of text at a type size in px. */
export function textWidth(text: string, size: number, weight: Weight = 400): number {
  const table = tables[weight];
  let thousandths = 0;
  for (const letter of text) thousandths += table.get(letter) ?? unknown;
  return (thousandths * size) / 1000;
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
