import { Chance } from "./chance";
import { Crossing } from "./cross";
import { absent, fewJobs, type Ground, type Member, memberOf } from "./member";
import { sample } from "./sample";

/** Members at the beginning for the number of schedules raised to a power; in problems of few jobs, for each turn. */
const members = 1.5;
const membersOfFew = 1.2;
const power = 0.45;
/** The share of them that remains at the end: many to look around first, few to go deep after. */
const remaining = 0.25;
const leastMembers = 4;
/** Schedules made by chance for each member, of which the best remain. */
const beginnings = 2;
/** Generations without an earlier finish, after which all begins anew; one in which many children were there already counts for several. */
const patience = 80;
const manyTwins = 0.4;
const twinsCount = 8;

/**
 * Two populations by turns, one of schedules made from the beginning and one from the end (Debels & Vanhoucke 2007, Operations Research 55:457-469): every
 * child of one is made by a pass of the other turn, so that each pass pushes its parents' jobs to the other side too. A child takes the place of the worst, if
 * it is no worse and not there yet. The further the search, the fewer members (as in Tanabe & Fukunaga 2014, IEEE CEC 1658-1665). Where nothing comes of it any
 * more, it begins anew with other members.
 */
export class Population {
  /** The turn of the last pass and what it made, until the next. */
  turn = 0;
  made: Member;
  private spare: Member;
  private readonly rows: readonly Member[][];
  private readonly chance: Chance;
  private readonly crossing: Crossing;
  private readonly child: Int32Array;
  /** Schedules by chance that are still to be made; mothers of this generation, and the next of them. */
  private beginning: number;
  private parents = 0;
  private at = 0;
  private least = absent;
  private stale = 0;
  private twins = 0;
  private readonly size: number;
  private passes = 0;

  /** `schedules`: for how many passes it is meant. `given`: lists with which it begins. */
  constructor(
    private readonly ground: Ground,
    seed: number,
    private readonly schedules: number,
    private readonly given: Int32Array[],
  ) {
    this.chance = new Chance(seed);
    this.crossing = new Crossing(ground, this.chance);
    const size = Math.max(leastMembers, Math.round((ground.jobs < fewJobs ? membersOfFew * ground.turns : members) * schedules ** power));
    this.size = size;
    const row = (): Member[] => Array.from({ length: size }, () => memberOf(ground.jobs));
    this.rows = ground.turns === 2 ? [row(), row()] : [row()];
    this.child = new Int32Array(ground.jobs);
    this.made = this.spare = memberOf(ground.jobs);
    this.beginning = beginnings * size;
  }

  /** Makes one schedule; the number of passes it counts for. */
  step(): number {
    const { ground, spare } = this;
    if (this.beginning === 0 && this.at === this.parents) this.next();
    if (this.beginning > 0) this.begin();
    else {
      const row = this.rows[(this.turn + ground.turns - 1) % ground.turns]!;
      this.crossing.cross(row[this.at]!, row[this.mate(row)]!, this.child);
      this.at++;
    }
    const passes = ground.pass(this.turn, this.child, spare);
    this.passes += passes;
    this.made = spare;
    this.settle(this.rows[this.turn]!);
    return passes;
  }

  private begin(): void {
    this.beginning--;
    const list = this.given.pop();
    if (list === undefined) sample(this.ground, this.chance, this.child);
    else this.child.set(list);
  }

  /** On to the next generation, or to other members. */
  private next(): void {
    const row = this.rows[this.turn]!;
    this.thin(row);
    // Members that are not there yet stand at the end.
    this.at = 0;
    this.parents = row.filter((m) => m.score < absent).length;
    this.turn = (this.turn + 1) % this.ground.turns;
    this.stale += this.twins > manyTwins * this.parents ? twinsCount : 1;
    this.twins = 0;
    if (this.stale <= patience) return;
    for (const members of this.rows) for (const m of members) m.score = absent;
    this.stale = 0;
    this.least = absent;
    this.turn = 0;
    this.parents = 0;
    this.beginning = beginnings * row.length;
  }

  /** Lets the worst go, as many as the course of the search says. */
  private thin(row: Member[]): void {
    const gone = (1 - remaining) * Math.min(1, this.passes / this.schedules);
    const size = Math.max(leastMembers, Math.round(this.size * (1 - gone)));
    if (size >= row.length) return;
    row.sort((a, b) => a.score - b.score);
    row.length = size;
  }

  /** Puts what was made in the place of the worst. */
  private settle(row: Member[]): void {
    const { made } = this;
    if (made.finish < this.least) {
      this.least = made.finish;
      this.stale = 0;
    }
    let worst = 0;
    for (let k = 0; k < row.length; k++) {
      if (row[k]!.score > row[worst]!.score) worst = k;
      if (row[k]!.mark !== made.mark || row[k]!.score !== made.score) continue;
      this.twins++;
      return;
    }
    if (made.score > row[worst]!.score) return;
    this.spare = row[worst]!;
    row[worst] = made;
  }

  /** The better of two, and not the one that stands at the same place. */
  private mate(parents: readonly Member[]): number {
    const one = this.chance.below(this.parents);
    const other = this.chance.below(this.parents);
    const pick = parents[other]!.score < parents[one]!.score ? other : one;
    return pick === this.at ? (pick + 1) % this.parents : pick;
  }
}
