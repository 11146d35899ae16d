import { limits, writtenIdPattern } from "../base";
import { type Clip, type ClipList, clipLists } from "./clip";
import { isObject, type WrittenMember } from "./written";

const isMember = (value: unknown): value is WrittenMember =>
  isObject(value) && typeof value.id === "string" && writtenIdPattern.test(value.id);

const members = (value: unknown): readonly WrittenMember[] => {
  const seen = new Set<string>();
  return Array.isArray(value) ? value.filter(isMember).filter(({ id }) => !seen.has(id) && seen.add(id)) : [];
};

const texts = (value: unknown): Readonly<Record<string, string>> =>
  Object.fromEntries(isObject(value) ? Object.entries(value).filter((pair): pair is [string, string] => typeof pair[1] === "string") : []);

/** A part of a build out of any text; null where it is none. Whatever the text holds, it does not throw. */
export function readClip(text: string): Clip | null {
  if (text.length > limits.fileCharacters.most || !text.includes("batterboard-part")) return null;
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return null;
  }
  if (!isObject(value) || value["batterboard-part"] !== 1 || !isObject(value.members)) return null;
  const given = value.members;
  const lists = clipLists.map((list): [ClipList, readonly WrittenMember[]] => [list, members(given[list])]);
  if (lists.every(([, list]) => list.length === 0)) return null;
  return {
    "batterboard-part": 1,
    of: typeof value.of === "string" ? value.of : "",
    members: Object.fromEntries(lists.filter(([, list]) => list.length > 0)),
    within: texts(value.within),
    around: members(value.around),
    names: texts(value.names),
  };
}
