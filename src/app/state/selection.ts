import type { Where } from "../../core/base";
import type { Build } from "../../core/build";
import type { Selection } from "./desk";
import { shownName } from "./names";

const lists = { steps: "step", pieces: "piece", places: "place", deliveries: "delivery", bookings: "booking" } as const;

/** What a finding speaks of, as something to select; null where it is nothing one can look at. */
export function selectionOf(build: Build, where: Where): Selection | null {
  const list = where.list as keyof typeof lists | undefined;
  if (list === undefined || where.id === undefined || !(list in lists)) return null;
  if (build.at[lists[list]].has(where.id)) return { list, id: where.id };
  // A group's member is written once; its first copy stands for it.
  return build.at[lists[list]].has(`${where.id}#1`) ? { list, id: `${where.id}#1` } : null;
}

/** The name of what is selected; empty where the build no longer has it. */
export function nameOfSelected(build: Build, { list, id }: Selection): string {
  if (list === "waits") return shownName(build.waits.find((wait) => wait.id === id));
  return shownName(build[list][build.at[lists[list]].get(id) ?? -1]);
}
