/** What a kit's name says first: "Slab" of "Slab on a timber deck". */
const shortOf = (kit: string): string => kit.split(/[,(]| (?:on|in|to|with|and|of|from) /)[0]?.trim() || kit;

/** "Column A", then "Column B": names follow one another by letters, then by numbers. */
export function freshName(kit: string, taken: Iterable<string>): string {
  const used = new Set([...taken].map((name) => name.trim().toLowerCase()));
  const short = shortOf(kit);
  for (const letter of "ABCDEFGHIJKLMNOPQRSTUVWXYZ") {
    const name = `${short} ${letter}`;
    if (!used.has(name.toLowerCase())) return name;
  }
  let number = 27;
  while (used.has(`${short} ${number}`.toLowerCase())) number += 1;
  return `${short} ${number}`;
}

/** The name of another one like it: the letter or number at its end goes on; a name without one gets a 2. */
export function nextName(name: string, taken: Iterable<string>): string {
  const used = new Set([...taken].map((other) => other.trim().toLowerCase()));
  const [, stem = name, end = ""] = /^(.*?)\s*\b([A-Z]|\d+)$/.exec(name.trim()) ?? [];
  let next = end;
  do {
    next = after(next);
  } while (used.has(`${stem} ${next}`.toLowerCase()));
  return `${stem} ${next}`;
}

function after(end: string): string {
  if (end === "") return "2";
  if (/^\d+$/.test(end)) return String(Number(end) + 1);
  return end === "Z" ? "27" : String.fromCharCode(end.charCodeAt(0) + 1);
}
