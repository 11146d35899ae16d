import type { Option } from "../parts/option";
import { type ListName, listOf, objectsOf, textOf, type Written } from "./written";

const nameOf = (member: Written): string => textOf(member.name) || textOf(member.id);

/** The document is never changed in place: a member that was left alone keeps its option, and what offers it need not be drawn anew. */
const made = new WeakMap<Written, Option>();

/** A member as something to pick. */
export function optionOf(member: Written): Option {
  const known = made.get(member);
  if (known) return known;
  const option = { id: textOf(member.id), name: nameOf(member) };
  made.set(member, option);
  return option;
}

/** The members of a list to pick from, as written (a group's member once). */
export const optionsOf = (document: unknown, list: ListName): readonly Option[] => listOf(document, list).map(optionOf);

/** Every way, and every place for all of its ways. */
export function wayOptions(document: unknown): readonly Option[] {
  return listOf(document, "places").flatMap((place) => {
    const ways = objectsOf(place.ways);
    const whole = { id: textOf(place.id), name: ways.length > 1 ? `${nameOf(place)}: all ways in` : nameOf(place) };
    if (ways.length < 2) return [whole];
    return [whole, ...ways.map((way) => ({ id: `${textOf(place.id)}.${textOf(way.id)}`, name: `${nameOf(place)}: ${nameOf(way)}` }))];
  });
}

/** A name for an id that is no option of its own: "Wall steel: from the north" of a way, "Post (2)" of a copy. */
export function nameOfStray(document: unknown, id: string): string {
  const [full = "", copy] = id.split("#");
  const [thing = "", way] = full.split(".");
  const member = (["places", "pieces", "steps"] as const).flatMap((list) => listOf(document, list)).find((one) => one.id === thing);
  const found = way === undefined ? undefined : objectsOf(member?.ways).find((one) => one.id === way);
  const name = member ? nameOf(member) : thing.replaceAll("-", " ");
  return [copy === undefined ? name : `${name} (${copy})`, ...(way === undefined ? [] : [found ? nameOf(found) : way])].join(": ");
}

/** Ids kept in a value that no option stands for (a copy "panel#2", a way named in full) with a name to show for them. */
export function withStrays(options: readonly Option[], ids: readonly string[], nameOfId: (id: string) => string): readonly Option[] {
  const known = new Set(options.map((option) => option.id));
  return [...options, ...ids.filter((id) => !known.has(id)).map((id) => ({ id, name: nameOfId(id) }))];
}

/** The member that goes by a name already, however it is spaced or capitalised: typed again it is meant again. */
export function namesake(options: readonly Option[], name: string): Option | undefined {
  const plain = (text: string): string => text.trim().replace(/\s+/g, " ").toLowerCase();
  return options.find((option) => plain(option.name) === plain(name));
}
