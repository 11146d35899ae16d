import { type Spot, spotOn } from "../forms/spot";
import type { Desk } from "../state";
import { isObject, type ListName, listOf, textOf } from "../write/written";

/** A member of a list as its fields read and write it; null where the document has none of that id (any more). */
export function memberSpot(desk: Desk, list: ListName, id: string): Spot | null {
  const member = listOf(desk.document, list).find((one) => one.id === id);
  return member ? spotOn(desk, [list, `id=${id}`], member, textOf(member.name) || id.replaceAll("-", " ")) : null;
}

/** What the document says beside its lists: the build itself, or the site. */
export const buildSpot = (desk: Desk): Spot => spotOn(desk, [], desk.document, "the build");
export const siteSpot = (desk: Desk): Spot => spotOn(desk, ["site"], isObject(desk.document) ? desk.document.site : undefined, "the site");
