import type { Access } from "../../core/access";
import type { Statement } from "../../core/base";
import type { Build } from "../../core/build";
import { shownName } from "../state/names";

/** A step next to another in the order, with every reason why. */
export interface Neighbour {
  readonly id: string;
  readonly at: number;
  /** Comes before. */
  readonly first: boolean;
  readonly name: string;
  /** False where another order is possible too. */
  readonly forced: boolean;
  readonly reasons: readonly Statement[];
}

/** What comes right before a step and right after it; what follows from the rest is left out. */
export function around(
  build: Build,
  access: Access,
  id: string,
): { readonly before: readonly Neighbour[]; readonly after: readonly Neighbour[] } {
  const { arcs, statements } = access;
  const at = build.at.step.get(id);
  const collect = (mine: Int32Array, theirs: Int32Array, first: boolean): Neighbour[] => {
    const found = new Map<number, { forced: boolean; reasons: Statement[] }>();
    for (let row = 0; row < arcs.count; row += 1) {
      if (mine[row] !== at || arcs.redundant[row] === 1 || arcs.orders[row] === 0 || theirs[row] === at) continue;
      const other = theirs[row] as number;
      const entry = found.get(other) ?? { forced: false, reasons: [] };
      entry.forced ||= arcs.forced[row] === 1;
      const reason = statements[arcs.reason[row] as number];
      if (reason && !entry.reasons.includes(reason)) entry.reasons.push(reason);
      found.set(other, entry);
    }
    return [...found].map(([other, entry]) => ({
      id: build.steps[other]?.id ?? "",
      at: other,
      first,
      name: shownName(build.steps[other]),
      ...entry,
    }));
  };
  return { before: collect(arcs.to, arcs.from, true), after: collect(arcs.from, arcs.to, false) };
}
