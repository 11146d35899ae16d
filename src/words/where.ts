import type { Where } from "../core/base";
import { quoted, readable, upper } from "./text";
import type { Voice } from "./voice";

const one: Readonly<Record<string, string>> = {
  steps: "step",
  pieces: "piece",
  places: "place",
  calendars: "calendar",
  people: "person",
  equipment: "equipment",
  stock: "stock",
  waits: "wait",
  choices: "choice",
  deliveries: "delivery",
  bookings: "booking",
  groups: "group",
  pours: "pour",
  solids: "drawn body",
  parts: "part built from a kit",
};

/** "leansOn" is "leans on"; names inside a key ("2.depth") follow as "entry 2, depth". */
function keyWords(key: string): string {
  return key
    .split(".")
    .map((part) =>
      /^\d+$/.test(part)
        ? `entry ${part}`
        : part
            .replace(/([a-z])([A-Z])/g, "$1 $2")
            .toLowerCase()
            .replaceAll("-", " "),
    )
    .join(", ");
}

/** "Step “Tie the bars”, leans on, entry 2": where in the document, as far as it is known. */
export function whereWords(where: Where, part: string, voice: Voice): string {
  const words: string[] = [];
  const position = (where as { readonly position?: number }).position;
  if (where.list !== undefined && where.list !== "") {
    const sort = one[where.list] ?? where.list;
    if (where.id !== undefined && where.id !== "") {
      const name = voice.thing(where.list, where.id);
      words.push(where.list === "steps" ? `${sort} ${name}` : `${sort} ${quoted(plainName(where.list, where.id, voice))}`);
    } else words.push(position === undefined ? `the list of ${listWords(where.list)}` : `${sort} ${position} in its list`);
  }
  if (where.key !== undefined && where.key !== "") words.push(keyWords(where.key));
  if (part !== "") words.push(keyWords(part));
  return words.length === 0 ? "The file" : upper(words.join(", "));
}

const listWords = (list: string): string => list;

function plainName(list: string, id: string, voice: Voice): string {
  const members = (voice.build?.[list as "pieces"] ?? []) as readonly { readonly id: string; readonly name: string }[];
  const found = members.find((member) => member.id === id) ?? members.find((member) => member.id === `${id}#1`);
  return found === undefined || found.name === "" || found.name === id ? readable(id) : found.name;
}
