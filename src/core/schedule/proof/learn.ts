import type { Activity } from "./activity";
import { fewLevels } from "./clauses";
import { Shorten } from "./shorten";
import { type Trail, Why, wider } from "./trail";
import { askAtoms, type Movers, Reasons, reasonsOf } from "./why";

/**
 * From a clash to a clause: statements are replaced by what they rest on, latest first, until only one of the last decision's level is left (first unique
 * implication point; Marques-Silva & Sakallah 1999, "GRASP"; Zhang et al. 2001). A statement keeps the weakest bound that is asked of its move, so that
 * the clause says no more than is needed.
 */
export class Learn {
  /** The clause: denials of what holds, the first to be turned round, the second of the level to go back to. */
  literals = new Int32Array(64);
  size = 0;
  /** The level at which the first literal follows from the others; -1: there is none, nothing can be. */
  back = -1;
  /** Levels among the statements (literal block distance: Audemard & Simon 2009). */
  spread = 0;

  private side = new Int32Array(64);
  private bound = new Int32Array(64);
  private move = new Int32Array(64);
  private count = 0;
  private need = new Int32Array(1024);
  private mark = new Int32Array(1024);
  private stamp = 0;
  private open = 0;
  private level = 0;
  /** Of the reasons at hand, the moves that made them true. */
  private moves = new Int32Array(64);
  private renewed = new Int32Array(256);
  private renewals = 0;
  private levelMark = new Int32Array(256);
  private readonly reasons = new Reasons();
  private readonly trail: Trail;
  private readonly shorten: Shorten;

  constructor(
    private readonly movers: Movers,
    private readonly activity: Activity,
  ) {
    this.trail = movers.trail;
    this.shorten = new Shorten(movers);
  }

  /** Reads the clash on the trail. Takes moves of the latest level back as it goes. */
  run(): void {
    const { trail, reasons } = this;
    const { clash } = trail;
    if (this.need.length < trail.side.length) {
      this.need = new Int32Array(trail.side.length);
      this.mark = new Int32Array(trail.side.length);
    }
    while (this.renewed.length <= trail.depth) this.renewed = wider(this.renewed);
    this.stamp++;
    this.count = 0;
    this.open = 0;
    const over = clash.side < 0 ? 0 : 1 - trail.bound[clash.side ^ 1]!;
    reasonsOf(this.movers, clash.why, clash.what, clash.what2, clash.side, over, trail.size, reasons);
    if (clash.side >= 0) reasons.add(clash.side ^ 1, 1 - over);
    this.level = 0;
    for (let k = 0; k < reasons.size; k++) {
      const e = trail.moveOf(reasons.side[k]!, reasons.bound[k]!);
      if (e >= 0 && trail.level[e]! > this.level) this.level = trail.level[e]!;
    }
    if (this.level === 0) {
      this.back = -1;
      this.size = 0;
      return;
    }
    this.take();
    for (;;) {
      const e = trail.size - 1;
      if (this.mark[e] !== this.stamp || trail.level[e] !== this.level) {
        trail.pop();
        continue;
      }
      if (this.open === 1) {
        this.finish(e);
        return;
      }
      this.open--;
      trail.pop();
      reasonsOf(this.movers, trail.why[e]!, trail.what[e]!, trail.what2[e]!, trail.side[e]!, this.need[e]!, e, reasons);
      this.take();
      if (trail.why[e] === Why.clause) this.renew(trail.what[e]!);
    }
  }

  private take(): void {
    const { trail, reasons } = this;
    while (this.moves.length < reasons.size) this.moves = wider(this.moves);
    for (let k = 0; k < reasons.size; k++) {
      const side = reasons.side[k]!;
      const b = trail.weakest(side, reasons.bound[k]!);
      const e = trail.moveOf(side, b);
      this.moves[k] = e;
      if (e < 0) continue;
      const atom = reasons.atom[k]!;
      const known = atom === askAtoms ? this.movers.atoms.known(side, b) : atom;
      if (known >= 0) this.activity.bump(known);
      if (this.mark[e] === this.stamp) {
        if (b > this.need[e]!) this.need[e] = b;
        continue;
      }
      this.mark[e] = this.stamp;
      this.need[e] = b;
      if (trail.level[e] === this.level) this.open++;
      else this.keep(side, b, e);
    }
  }

  /** The reasons at hand are a clause's: where they span fewer levels than it ever did, it is as good as that (Audemard & Simon 2009). */
  private renew(c: number): void {
    const { trail, reasons } = this;
    const { cells } = this.movers.clauses;
    if (cells[c - 2]! <= fewLevels) return;
    this.renewals++;
    let spread = 1;
    for (let k = 0; k < reasons.size; k++) {
      const level = this.moves[k]! < 0 ? this.level : trail.level[this.moves[k]!]!;
      if (level === this.level || this.renewed[level] === this.renewals) continue;
      this.renewed[level] = this.renewals;
      spread++;
    }
    if (spread < cells[c - 2]!) cells[c - 2] = spread;
  }

  private keep(side: number, b: number, move: number): void {
    if (this.count + 1 >= this.side.length) {
      this.side = wider(this.side);
      this.bound = wider(this.bound);
      this.move = wider(this.move);
    }
    this.side[this.count] = side;
    this.bound[this.count] = b;
    this.move[this.count++] = move;
  }

  private finish(turn: number): void {
    const { trail } = this;
    for (let k = 0; k < this.count; k++) this.bound[k] = this.need[this.move[k]!]!;
    this.count = this.shorten.run(this.side, this.bound, this.move, this.count, trail.side[turn]!, this.need[turn]!);
    while (this.literals.length < this.count + 1) this.literals = wider(this.literals);
    const { atoms } = this.movers;
    this.literals[0] = atoms.literal(trail.side[turn]!, this.need[turn]!) ^ 1;
    this.size = 1;
    this.back = 0;
    this.spread = 1;
    let second = 1;
    while (this.levelMark.length <= trail.depth) this.levelMark = wider(this.levelMark);
    for (let k = 0; k < this.count; k++) {
      const level = trail.level[this.move[k]!]!;
      if (this.levelMark[level] !== this.stamp) {
        this.levelMark[level] = this.stamp;
        this.spread++;
      }
      if (level > this.back) {
        this.back = level;
        second = this.size;
      }
      this.literals[this.size++] = atoms.literal(this.side[k]!, this.bound[k]!) ^ 1;
    }
    if (this.size > 1) {
      const keep = this.literals[1]!;
      this.literals[1] = this.literals[second]!;
      this.literals[second] = keep;
    }
    for (let k = 0; k < this.size; k++) this.activity.enter(this.literals[k]!);
  }
}
