import type { DocumentEdit } from "../base";

/** Where something goes by a calendar: at a member of a list (`usual`: the whole build), at these keys of it. */
export interface GoesBy {
  readonly list: string;
  readonly id: string;
  readonly key: readonly string[];
}

interface Found extends GoesBy {
  readonly edit: (by: string) => DocumentEdit;
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Texts of the builder's own: whatever they say is no amount. */
const words: ReadonlySet<string> = new Set([
  "name",
  "notes",
  "why",
  "what",
  "for",
  "who",
  "tools",
  "materials",
  "cautions",
  "from",
  "role",
]);
const days = /^(\d+ days? of )([a-z][a-z0-9-]*)$/;

function search(
  value: unknown,
  id: string,
  path: readonly string[],
  name: string,
  within: unknown,
): { path: readonly string[]; say: (by: string) => string }[] {
  if (typeof value === "string") {
    if (value === id && (name === "calendar" || (name === "on" && isObject(within) && "is" in within))) return [{ path, say: (by) => by }];
    const [, count, of] = days.exec(value) ?? [];
    return of === id && count !== undefined ? [{ path, say: (by) => `${count}${by}` }] : [];
  }
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value)
    .filter(([key]) => !words.has(key))
    .flatMap(([key, inner]) => search(inner, id, [...path, key], Array.isArray(value) ? name : key, value));
}

function find(document: unknown, id: string): Found[] {
  if (!isObject(document)) return [];
  const whole: Found[] =
    document.usual === id ? [{ list: "usual", id: "", key: ["usual"], edit: (by) => ({ path: ["usual"], value: by }) }] : [];
  const members = Object.entries(document).flatMap(([list, value]) =>
    list === "calendars" || !Array.isArray(value)
      ? []
      : value.filter(isObject).flatMap((member) =>
          search(member, id, [], "", null).map(({ path, say }): Found => {
            const at = typeof member.id === "string" ? member.id : "";
            return { list, id: at, key: path, edit: (by) => ({ path: [list, `id=${at}`, ...path], value: say(by) }) };
          }),
        ),
  );
  return [...whole, ...members];
}

/** Everything that goes by a calendar: the build itself, steps, people, deliveries, bookings, and amounts in its hours or days. */
export const goesBy = (document: unknown, calendar: string): readonly GoesBy[] =>
  find(document, calendar).map(({ list, id, key }) => ({ list, id, key }));

/** Edits after which all that goes by one calendar goes by another. */
export const replaceCalendar = (document: unknown, calendar: string, by: string): readonly DocumentEdit[] =>
  find(document, calendar).map(({ edit }) => edit(by));
