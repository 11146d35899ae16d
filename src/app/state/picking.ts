/** Steps chosen together in a list, and the one that a range is counted from. */
export interface Picking {
  readonly ids: ReadonlySet<string>;
  readonly anchor: string | null;
}

export const nothingPicked: Picking = { ids: new Set(), anchor: null };

/** One more, or one less. */
export function toggled({ ids }: Picking, id: string): Picking {
  const next = new Set(ids);
  if (!next.delete(id)) next.add(id);
  return { ids: next, anchor: id };
}

/** All from the anchor to one, in the order of the list as it is shown; what was chosen elsewhere goes. Without an anchor in the list, that one alone. */
export function ranged({ anchor }: Picking, id: string, shown: readonly string[]): Picking {
  const [from, to] = [shown.indexOf(anchor ?? ""), shown.indexOf(id)];
  if (to < 0) return { ids: new Set(), anchor };
  if (from < 0) return { ids: new Set([id]), anchor: id };
  return { ids: new Set(shown.slice(Math.min(from, to), Math.max(from, to) + 1)), anchor };
}

/** Without what the build no longer has; the very same one where it has all. */
export function onlyThose(picking: Picking, there: (id: string) => boolean): Picking {
  const ids = [...picking.ids].filter(there);
  return ids.length === picking.ids.size ? picking : { ids: new Set(ids), anchor: picking.anchor };
}
