import { objectsOf, textOf } from "./written";

/** Hands as typed: "2", or "1 hose, 4 hands". */
export function handsText(value: unknown): string {
  if (typeof value === "number") return String(value);
  return objectsOf(value)
    .map((need) => `${typeof need.number === "number" ? need.number : 1} ${textOf(need.role)}`)
    .join(", ");
}

/** The document's form (undefined for an empty field), or the sentence for the field. */
export function writtenHands(typed: string): { readonly value: unknown } | string {
  const text = typed.trim();
  if (text === "") return { value: undefined };
  if (/^\d+$/.test(text)) return { value: Number(text) };
  const parts = text.split(",").map((part) => /^\s*(\d+)\s+(.+?)\s*$/.exec(part));
  if (parts.some((part) => part === null)) return `“${text}” is not a number of hands; write 2, or 1 hose, 4 hands.`;
  return { value: parts.map((part) => ({ role: part?.[2], number: Number(part?.[1]) })) };
}
