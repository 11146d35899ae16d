import type { Kept } from "./port";
import type { Unsaved } from "./saver";

/** Actions that were still on their way to the disk when their page went away, put where a page that is closing can still put something. */
export interface Lifeboat extends Unsaved {
  readonly key: string;
  readonly writer: string;
}

/** A place for the lifeboat of each build that is written at once, as a page that closes waits for nothing. Both may fail in silence. */
export interface Mooring {
  put(key: string, boat: Lifeboat | null): void;
  get(key: string): unknown;
}

/**
 * The build with what its last page had not got to the disk. The boat is taken only if the same tab was the last to write this build
 * and its actions join on to what is there: otherwise the build has gone on without them.
 */
export function boarded(kept: Kept, boat: unknown): Kept {
  if (!isBoat(boat) || boat.key !== kept.snapshot.key || boat.writer !== kept.writer) return kept;
  const last = kept.entries.reduce((seq, entry) => Math.max(seq, entry.seq), kept.snapshot.seq);
  if (boat.first > last + 1) return kept;
  const more = boat.actions.map((action, at) => ({ key: boat.key, seq: boat.first + at, action }));
  return { ...kept, entries: [...kept.entries, ...more.filter(({ seq }) => seq > last)] };
}

function isBoat(value: unknown): value is Lifeboat {
  const boat = value as Partial<Lifeboat> | null;
  return typeof boat === "object" && boat !== null && typeof boat.first === "number" && Array.isArray(boat.actions);
}
