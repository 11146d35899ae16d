/** “Tie the bars” */
export const quoted = (text: string): string => `“${text}”`;

/** "a", "a and b", "a, b and c" */
export function listed(items: readonly string[], joint = "and"): string {
  if (items.length < 2) return items[0] ?? "nothing";
  return `${items.slice(0, -1).join(", ")} ${joint} ${items[items.length - 1]}`;
}

/** First letter small, unless the word is a single letter ("I-beams"), all capitals, holds a figure, or is kept on purpose (a person's name). */
export function lower(text: string, kept: readonly string[] = []): string {
  const word = /^[^\s,.;:]*/.exec(text)?.[0] ?? "";
  if (kept.some((name) => text === name || text.startsWith(`${name} `) || text.startsWith(`${name}'`))) return text;
  return /^[A-Z][a-z']+(-[a-z]+)*$/.test(word) || word === "A" ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}

/** First letter large; a quoted name at the front stays as it is. */
export const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "1 step", "3 steps"; words that do not take an s are given whole. */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

const small = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

/** "three"; figures from thirteen on. */
export const spelledFigure = (count: number): string => small[count] ?? String(count);

/** "three", "none" */
export const howMany = (count: number): string => (count === 0 ? "none" : spelledFigure(count));

/** "three steps"; figures from thirteen on. */
export const spelled = (count: number, one: string, many = `${one}s`): string => `${spelledFigure(count)} ${count === 1 ? one : many}`;

/** A name for what has none but its id: "tie-bars#2" is "tie bars (2)". */
export function readable(id: string): string {
  const [name = "", copy] = id.split("#");
  const text = name.replaceAll("-", " ");
  return copy === undefined ? text : `${text} (${copy})`;
}

/** One sentence: capital in front, a stop behind. */
export function sentence(text: string): string {
  const trimmed = text.trim();
  return upper(/[.?!]$/.test(trimmed) ? trimmed : `${trimmed}.`);
}
