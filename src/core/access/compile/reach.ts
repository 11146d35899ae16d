import type { Reach } from "../../build";
import { Pairs } from "./pairs";
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
  /** By place and need, the last selector; one from before the step's first is another step's. */
  readonly #known = new Pairs();
  /** The helping node of a selector, for places in rings. */
  readonly #nodes = new Map<number, number>();
  #step = -1;
  #firstOfStep = 0;

  constructor(readonly program: Program) {
    this.site = program.site;
    this.#stand = new Stand(program);
    this.#facts = new PlaceFacts(program.facts, program.site);
  }

  /** One reach of step s as a clause: a selector for each place that would do. */
  ask(fact: number, s: number, { any }: Reach): void {
    if (s !== this.#step) this.#firstOfStep = this.program.atoms;
    this.#step = s;
    const [only] = any;
    if (any.length === 1 && only !== undefined) this.program.must(fact, -1, this.#option(s, only), never, s);
    else
      this.program.clause(
        fact,
        -1,
        any.map((aim) => this.#option(s, aim)),
        s,
      );
  }

  /** `never` for a place that the build does not have. */
  #option(s: number, { place, need }: Reach["any"][number]): number {
    const q = this.program.build.at.place.get(place);
    return q === undefined ? never : this.#reach(s, q, this.site.needOf(need));
  }

  #reach(s: number, q: number, n: number): number {
    const { program, site } = this;
    const known = this.#known.get(q, n);
    if (known >= this.#firstOfStep) return known;
    const selector = program.selector();
    this.#known.set(q, n, selector);
    if (site.inRing(q)) this.#nodes.set(selector, program.node());
    for (const p of site.fillers[q] as number[]) this.#outOfTheWay(this.#facts.fills(p, q), selector, p, s, n);
    const ways = site.passing(q, n);
    const first = program.selectors(ways.length);
    program.oneOf(this.#facts.ways(q, n), selector, first, ways.length, s, n);
    for (let i = 0; i < ways.length; i++) this.#way(s, q, n, ways[i] as number, first + i, selector);
    return selector;
  }

  /** @param self the selector of the reach that the way belongs to */
  #way(s: number, q: number, n: number, way: number, selector: number, self: number): void {
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
    program.must(fact, selector, beyond, never, s, n);
    if (!site.inOneRing(q, outer)) return;
    program.must(fact, selector, program.inside(this.#nodes.get(beyond) as number, this.#nodes.get(self) as number), never, s, n);
  }

  /** A step is let off what it puts up itself. */
  #outOfTheWay(fact: number, selector: number, p: number, s: number, n: number): void {
    if (this.#stand.piece(p).up === s) return;
    const gone = this.#stand.gone(p, s, fact, n);
    this.program.must(fact, selector, this.#stand.notYet(p, s), gone, s, n);
  }
}
