import type { Reach } from "../../build";
import { PlaceFacts } from "./place-facts";
import { never, type Program } from "./program";
import type { Site } from "./site";
import { Stand } from "./stand";

/**
 * "s reaches place q with need n" as clauses over selectors: one selector for the reach, one for each way that passes n. Within a step, equal reaches share
 * theirs. Where ways lead through each other in a ring, an arc between helping nodes keeps a reach from resting on itself.
 */
export class Reaching {
  readonly site: Site;
  readonly #stand: Stand;
  readonly #facts: PlaceFacts;
  readonly #known = new Map<number, { readonly selector: number; readonly node: number }>();
  #step = -1;

  constructor(readonly program: Program) {
    this.site = program.site;
    this.#stand = new Stand(program);
    this.#facts = new PlaceFacts(program.facts, program.site);
  }

  /** The options of one reach of step s: a selector for each place that would do. */
  options(s: number, reach: Reach): number[] {
    if (s !== this.#step) this.#known.clear();
    this.#step = s;
    const options: number[] = [];
    for (const { place, need } of reach.any) {
      const q = this.program.build.at.place.get(place);
      if (q !== undefined) options.push(this.#reach(s, q, this.site.needOf(need)).selector);
    }
    return options;
  }

  #reach(s: number, q: number, n: number): { readonly selector: number; readonly node: number } {
    const key = q * 65_536 + n;
    const before = this.#known.get(key);
    if (before !== undefined) return before;
    const { program, site } = this;
    const self = { selector: program.selector(), node: site.inRing(q) ? program.node() : -1 };
    this.#known.set(key, self);
    for (const p of site.fillers[q] as number[]) this.#outOfTheWay(this.#facts.fills(p, q), self.selector, p, s, n);
    const ways = site.passing(q, n);
    const selectors = ways.map(() => program.selector());
    program.clause(this.#facts.ways(q, n), self.selector, selectors, s, n);
    for (let i = 0; i < ways.length; i++) this.#way(s, q, n, ways[i] as number, selectors[i] as number, self.node);
    return self;
  }

  #way(s: number, q: number, n: number, way: number, selector: number, node: number): void {
    const { program, site } = this;
    for (const p of site.closers[way] as number[]) this.#outOfTheWay(this.#facts.onWay("closes", p, q, way), selector, p, s, n);
    for (const p of site.makers[way] as number[]) {
      const fact = this.#facts.onWay("makes", p, q, way);
      if (this.#stand.piece(p).up !== s) program.must(fact, selector, this.#stand.up(p, s), never, s, n);
      program.must(fact, selector, this.#stand.stillThere(p, s), never, s, n);
    }
    const outer = site.through[way] as number;
    const through = site.ways[way]?.through;
    if (outer < 0 || !through) return;
    const fact = this.#facts.through(q, way);
    const beyond = this.#reach(s, outer, site.needOf(through.need));
    program.must(fact, selector, beyond.selector, never, s, n);
    if (site.inOneRing(q, outer)) program.must(fact, selector, program.inside(beyond.node, node), never, s, n);
  }

  /** A step is let off what it puts up itself. */
  #outOfTheWay(fact: number, selector: number, p: number, s: number, n: number): void {
    if (this.#stand.piece(p).up === s) return;
    const gone = this.#stand.gone(p, s, fact, n);
    this.program.must(fact, selector, this.#stand.notYet(p, s), gone, s, n);
  }
}
