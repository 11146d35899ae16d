import { objectsOf, textOf } from "./written";

/** Hands as typed: "2", or "1 hose, 4 hands". */
export function handsText(value: unknown): string {
  if (typeof value === "number") return String(value);
  return objectsOf(value)
    .map((need) => `${typeof need.number === "number" ? need.number : 1} ${textOf(need.role)}`)
    .join(", ");
}

/** The document's form. What cannot be read as hands is handed on as it is, for the document's own check to refuse. */
export function writtenHands(typed: string): unknown {
  const text = typed.trim();
  if (text === "") return undefined;
  if (/^\d+$/.test(text)) return Number(text);
  const parts = text.split(",").map((part) => /^\s*(\d+)\s+(.+?)\s*$/.exec(part));
  return parts.every((part) => part !== null) ? parts.map((part) => ({ role: part[2], number: Number(part[1]) })) : text;
}
