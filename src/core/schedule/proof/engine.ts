import { Activity } from "./activity";
import { Atoms } from "./atoms";
import { Clauses } from "./clauses";
import { type Edges, edgesOf } from "./edges";
import { Arcs, Lags } from "./lags";
import { Learn } from "./learn";
import type { Model } from "./model";
import { Orders, pairsOf } from "./orders";
import type { StartMap } from "./start-map";
import { Stretches } from "./stretches";
import { TimeTable } from "./time-table";
import { Trail, Why } from "./trail";

/** Everything that reasons over one model, run until nothing more follows; and the learning from what clashes. */
export class Engine {
  readonly trail: Trail;
  readonly atoms: Atoms;
  readonly clauses: Clauses;
  readonly activity: Activity;
  readonly learn: Learn;
  readonly orders: Orders;
  readonly finish: number;
  private readonly lags: Lags;
  private readonly arcs: Arcs;
  private readonly tables: TimeTable[];
  private readonly edges: readonly (Edges | null)[];
  /** By variable: table and task, in turn. */
  private readonly uses: Int32Array[];
  private readonly due: Uint8Array;
  private readonly edgeDue: Uint8Array;

  /** @param fading what is left of the weight of a clash at the next one: from 0 to 1 */
  constructor(
    readonly model: Model,
    fading: number,
  ) {
    const pairs = pairsOf(model);
    const jobs = model.jobs;
    const variables = jobs + 1 + pairs.length;
    const maps: (StartMap | null)[] = new Array(variables).fill(null);
    for (let j = 0; j < jobs; j++) if (model.maps[j]!.size > 1) maps[j] = model.maps[j]!;
    const low = new Int32Array(variables);
    const high = new Int32Array(variables).fill(1);
    low.set(model.low);
    high.set(model.high);
    this.finish = jobs;
    const trail = new Trail(variables, maps, low, high);
    this.trail = trail;
    this.atoms = new Atoms(variables, maps);
    this.clauses = new Clauses(trail, this.atoms);
    this.lags = new Lags(trail, model.lags);
    this.arcs = new Arcs(trail, model.arcs, model.maps);
    const length = Int32Array.from({ length: jobs + 1 }, (_, j) => (j < jobs ? model.maps[j]!.length[0]! : 0));
    this.orders = new Orders(trail, pairs, jobs + 1, length);
    this.tables = model.shared.map((s, k) => new TimeTable(k, s, trail, model.maps, model.high[jobs]!));
    this.due = new Uint8Array(this.tables.length).fill(1);
    this.edgeDue = this.due.slice();
    const stretches = new Stretches();
    this.edges = edgesOf(model, this.tables, trail, stretches);
    const uses = Array.from({ length: variables }, (): number[] => []);
    model.shared.forEach((s, k) => {
      s.tasks.forEach((t, task) => {
        if (t.out >= 0) uses[t.out]!.push(k, task);
        if (t.back >= 0 && t.back !== t.out) uses[t.back]!.push(k, task);
      });
    });
    this.uses = uses.map((u) => Int32Array.from(u));
    this.activity = new Activity(trail, this.atoms, fading);
    const { atoms, clauses, lags, arcs, orders, tables } = this;
    this.learn = new Learn({ trail, atoms, clauses, lags, arcs, orders, tables, stretches, model, length }, this.activity);
  }

  /** Everything that follows from the bounds; false on a clash. `all`: from every bound, not only from those that moved. */
  propagate(all = false): boolean {
    const { trail } = this;
    if (all) for (let side = 0; side < 2 * trail.variables; side++) if (!this.follow(side)) return false;
    for (;;) {
      while (trail.head < trail.size) {
        const e = trail.head++;
        const side = trail.side[e]!;
        if (!this.clauses.rise(side, trail.was[e]!, trail.to[e]!)) return false;
        // Where the side has risen again since, what follows is told with that move.
        if (trail.last[side] === e && !this.follow(side)) return false;
      }
      this.touch();
      let ran = false;
      for (let k = 0; k < this.tables.length && !ran; k++) {
        if (this.due[k] === 0 || this.model.shared[k]!.implied) continue;
        if (!this.tables[k]!.run()) return false;
        this.due[k] = 0;
        ran = trail.head < trail.size;
      }
      for (let k = 0; k < this.edges.length && !ran; k++) {
        const edges = this.edges[k]!;
        if (this.edgeDue[k] === 0) continue;
        this.edgeDue[k] = 0;
        if (edges === null || !edges.wanted()) continue;
        // What has gone back since the table last ran is still in it.
        if (!this.tables[k]!.run() || !edges.run()) return false;
        ran = trail.head < trail.size;
      }
      if (!ran) return true;
    }
  }

  private follow(side: number): boolean {
    return this.lags.rise(side) && this.arcs.rise(side) && this.orders.rise(side);
  }

  private touch(): void {
    const { trail } = this;
    for (let k = 0; k < trail.changedSize; k++) {
      const x = trail.changed[k]!;
      const uses = this.uses[x]!;
      // What has only gone back to where it was needs no look before something else moves: all followed from it then.
      const rose = trail.rose[x]! === trail.returns;
      for (let u = 0; u < uses.length; u += 2) {
        this.tables[uses[u]!]!.touch(uses[u + 1]!, rose);
        if (!rose) continue;
        this.due[uses[u]!] = 1;
        this.edgeDue[uses[u]!] = 1;
      }
    }
    trail.forgetChanged();
  }

  /** Learns from the clash on the trail and goes back to where that tells something new; false when nothing can be. */
  recover(): boolean {
    const { learn, trail, atoms } = this;
    if (trail.depth === 0) return false;
    learn.run();
    if (learn.back < 0) return false;
    this.backTo(learn.back);
    const first = learn.literals[0]!;
    const clause = learn.size > 1 ? this.clauses.add(learn.literals, learn.size, learn.spread) : -1;
    this.activity.fade();
    return trail.raise(atoms.side[first]!, atoms.bound[first]!, clause < 0 ? Why.decision : Why.clause, clause, 0);
  }

  backTo(level: number): void {
    if (level < this.trail.depth) {
      // All that follows from what is left was found before the next decision was made.
      this.due.fill(0);
      this.edgeDue.fill(0);
    }
    this.trail.backTo(level);
    this.activity.backTo(level);
  }
}
