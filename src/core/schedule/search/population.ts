import { Chance } from "./chance";
import { Crossing } from "./cross";
import { type Ground, type Member, memberOf } from "./member";
import { sample } from "./sample";

const leastMembers = 10;
const membersByRoot = 0.55;

/**
 * Two populations by turns, one of schedules made from the beginning and one from the end (Debels & Vanhoucke 2007, Operations Research 55:457-469): every
 * child of one is made by a pass of the other turn, so that each pass pushes its parents' jobs to the other side too.
 */
export class Population {
  /** Schedules so far; the turn of the last one and what it made, until the next. */
  count = 0;
  turn = 0;
  made: Member;
  private spare: Member;
  private readonly members: readonly Member[][];
  private readonly chance: Chance;
  private readonly crossing: Crossing;
  private readonly child: Int32Array;
  private readonly size: number;
  private at = 0;

  /** `schedules`: for how many passes it is meant. `given`: lists with which it begins. */
  constructor(
    private readonly ground: Ground,
    seed: number,
    schedules: number,
    private readonly given: readonly Int32Array[],
  ) {
    this.chance = new Chance(seed);
    this.crossing = new Crossing(ground, this.chance);
    this.size = Math.max(leastMembers, Math.round(membersByRoot * Math.sqrt(schedules)));
    const rows = (): Member[] => Array.from({ length: this.size }, () => memberOf(ground.jobs));
    this.members = ground.turns === 2 ? [rows(), rows()] : [rows()];
    this.child = new Int32Array(ground.jobs);
    this.made = this.spare = memberOf(ground.jobs);
  }

  /** Makes one schedule; the number of passes it counts for. */
  step(): number {
    const { ground, size, spare } = this;
    if (this.at === size) {
      this.at = 0;
      this.turn = (this.turn + 1) % ground.turns;
    }
    const begins = this.count++ < size;
    if (begins) this.begin();
    else {
      const parents = this.members[(this.turn + 1) % ground.turns]!;
      this.crossing.cross(parents[this.at]!, parents[this.mate(parents)]!, this.child);
    }
    const passes = ground.pass(this.turn, this.child, spare);
    this.made = spare;
    const row = this.members[this.turn]!;
    const old = row[this.at]!;
    if (spare.finish <= old.finish) {
      row[this.at] = spare;
      this.spare = old;
    }
    this.at++;
    return passes;
  }

  private begin(): void {
    const given = this.given[this.at];
    if (given === undefined) sample(this.ground, this.chance, this.child);
    else this.child.set(given);
  }

  /** The better of two, and not the one that stands at the same place. */
  private mate(parents: readonly Member[]): number {
    const one = this.chance.below(parents.length);
    const other = this.chance.below(parents.length);
    const pick = parents[other]!.finish < parents[one]!.finish ? other : one;
    return pick === this.at ? (pick + 1) % parents.length : pick;
  }
}
