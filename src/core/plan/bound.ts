import type { Access } from "../access";
import type { Clock, ElapsedMinute } from "../base";
import type { Build } from "../build";
import type { Clocks } from "../clock";
import type { Problem } from "../schedule";
import type { Crews } from "./crews";
import type { PlaceNeeds } from "./places";
import type { StoreNeeds } from "./stores";

/** Where a date that a job must keep comes from. */
export type DateOf = "not-before" | "deadline" | "fixed" | "booking" | "promised" | "lead" | "notice" | "resumes" | "done";

/** A build turned into jobs (steps first, then deliveries), with the way back from every number to what the builder wrote. */
export interface Bound {
  readonly build: Build;
  readonly access: Access;
  readonly clocks: Clocks;
  readonly crews: Crews;
  readonly problem: Problem;
  readonly places: PlaceNeeds;
  readonly stores: StoreNeeds;
  /** Row of `access.arcs` of each link; -1: a delivery that a step needs. */
  readonly row: Int32Array;
  readonly releaseOf: readonly (DateOf | null)[];
  readonly dueOf: readonly (DateOf | null)[];
  readonly fixedOf: readonly (DateOf | null)[];
}

/** Clocks by position, each once. */
export class ClockList {
  readonly list: Clock[] = [];
  private readonly place = new Map<Clock, number>();

  of(clock: Clock): number {
    let at = this.place.get(clock);
    if (at === undefined) {
      at = this.list.length;
      this.list.push(clock);
      this.place.set(clock, at);
    }
    return at;
  }
}

/** Forty years: what lies beyond does not exist for any clock. */
export const furthest = (40 * 366 * 1440) as ElapsedMinute;
