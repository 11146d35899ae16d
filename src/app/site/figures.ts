import type { DocumentEdit } from "../../core/base";
import { isObject, listOf, objectsOf, quantityOf, textOf, type Written } from "../write/written";

/** A figure of the document that says where it comes from. */
export interface Figure {
  readonly key: string;
  /** Lead to the figure, to the thing whose figures all come from there, or to every one of a table. */
  readonly paths: readonly (readonly string[])[];
  readonly from: string;
  /** The list and id of what it is a figure of; "site" for the site itself. */
  readonly list: string;
  readonly id: string;
  /** Name of that thing, and of what is in it. */
  readonly name: string;
  /** What the figure is: "work", "least wait". */
  readonly what: string;
  /** As typed; empty where the source is that of several figures. */
  readonly value: string;
}

/** What figures are called, by their key. */
const called: Readonly<Record<string, string>> = {
  work: "work",
  weight: "weight",
  size: "size",
  least: "waits at least",
  most: "waits at most",
  once: "may be leaned on after",
  goesAfter: "goes by itself after",
  holdsItself: "holds itself after",
  lead: "lead time",
  yields: "concrete of one",
  gap: "between rounds",
  depth: "depth",
  wide: "wide",
  high: "high",
  longest: "longest that passes",
  bears: "bears",
  low: "low",
  lowest: "lowest",
  highest: "highest",
  wind: "wind",
  soil: "ground under the mudsills",
  strength: "strength",
  bars: "bars",
  sheathing: "sheathing",
};

const lists = [
  "calendars",
  "people",
  "equipment",
  "stock",
  "places",
  "pieces",
  "steps",
  "waits",
  "choices",
  "pours",
  "deliveries",
  "bookings",
] as const;

const nameOf = (thing: Written): string => textOf(thing.name) || textOf(thing.id).replaceAll("-", " ");
const spaced = (key: string): string => key.replace(/([a-z])([A-Z])/g, "$1 $2").toLowerCase();

interface Owner {
  readonly list: string;
  readonly id: string;
  readonly name: string;
}

/** "form, studs" of the keys on the way to a figure; positions are counted, what has a name is called by it. */
function wayWords(keys: readonly string[]): string {
  return keys.map((key) => called[key] ?? spaced(key)).join(", ");
}

function walk(value: unknown, path: readonly string[], keys: readonly string[], of: Owner, put: (figure: Figure) => void): void {
  if (Array.isArray(value)) {
    value.forEach((one, i) => {
      const name = isObject(one) ? textOf(one.name) : "";
      walk(one, [...path, String(i)], name === "" ? (value.length > 1 ? [...keys, String(i + 1)] : keys) : [...keys, name], of, put);
    });
    return;
  }
  if (!isObject(value)) return;
  const own = textOf(value.from);
  // A wait is from a step to a step: what it says there is no source.
  const isLink = "to" in value;
  if (own !== "" && !isLink) {
    const shown = "is" in value || "likely" in value ? quantityOf(value) : "";
    put({ key: path.join("/"), paths: [path], from: own, ...of, what: wayWords(keys) || "all of it", value: shown });
  }
  for (const [key, inner] of Object.entries(value)) walk(inner, [...path, key], [...keys, key], of, put);
}

/** Every figure of the document that says where it comes from, in document order. */
export function figuresOf(document: unknown): readonly Figure[] {
  const found: Figure[] = [];
  const put = (figure: Figure): void => void found.push(figure);
  if (!isObject(document)) return found;
  const site: Figure[] = [];
  walk(document.site, ["site"], [], { list: "site", id: "", name: "The site" }, (figure) => void site.push(figure));
  found.push(
    ...asTable(site, "usualTemperatures", "usual temperatures of the months"),
    ...asTable(site, "days", "temperatures of single days"),
  );
  found.push(...site.filter(({ paths }) => !["usualTemperatures", "days"].includes(paths[0]?.[1] ?? "")));
  for (const list of lists)
    for (const member of objectsOf(document[list])) {
      const id = textOf(member.id);
      walk(member, [list, `id=${id}`], [], { list, id, name: nameOf(member) }, put);
    }
  for (const group of listOf(document, "groups")) {
    if (!isObject(group.differences)) continue;
    for (const [copy, members] of Object.entries(group.differences)) {
      for (const [member, changed] of Object.entries(isObject(members) ? members : {})) {
        const list = (["steps", "pieces", "places", "waits"] as const).find((one) => listOf(document, one).some(({ id }) => id === member));
        const written = listOf(document, list ?? "steps").find(({ id }) => id === member) ?? { id: member };
        const path = ["groups", `id=${textOf(group.id)}`, "differences", copy, member];
        walk(changed, path, [], { list: list ?? "steps", id: `${member}#${copy}`, name: `${nameOf(written)} (${copy})` }, put);
      }
    }
  }
  return found;
}

/** How many figures come from where, most first. */
export function sourcesOf(figures: readonly Figure[]): readonly { readonly from: string; readonly count: number }[] {
  const counts = new Map<string, number>();
  for (const { from } of figures) counts.set(from, (counts.get(from) ?? 0) + 1);
  return [...counts].map(([from, count]) => ({ from, count })).sort((a, b) => b.count - a.count || (a.from < b.from ? -1 : 1));
}

/** The figures of a table of the site, those from one source as one. */
function asTable(figures: readonly Figure[], key: string, what: string): readonly Figure[] {
  const inIt = figures.filter(({ paths }) => paths[0]?.[1] === key);
  return sourcesOf(inIt).flatMap(({ from }) => {
    const same = inIt.filter((figure) => figure.from === from);
    const [first] = same;
    const paths = same.flatMap((figure) => figure.paths);
    return first ? [{ ...first, paths, what, value: same.length === 1 ? first.value : `${same.length} figures` }] : [];
  });
}

function valueAt(document: unknown, path: readonly string[]): unknown {
  return path.reduce<unknown>((value, key) => {
    if (Array.isArray(value))
      return key.startsWith("id=") ? value.find((one) => isObject(one) && one.id === key.slice(3)) : value[Number(key)];
    return isObject(value) ? value[key] : undefined;
  }, document);
}

/** What stands in the document at a figure. */
export const valuesOf = (document: unknown, { paths }: Figure): readonly unknown[] => paths.map((path) => valueAt(document, path));

/** The edits that write other values where a figure stands. */
export const figureEdits = ({ paths }: Figure, values: readonly unknown[]): readonly DocumentEdit[] =>
  paths.map((path, i) => ({ path, value: values[i] }));
