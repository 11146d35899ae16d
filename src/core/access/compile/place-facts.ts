import type { Passage, Piece, Place, Way } from "../../build";
import { type Facts, needDetail } from "./facts";
import { Pairs } from "./pairs";
import type { Site } from "./site";

/** Facts of places and of what pieces do to them, each made when a clause first needs it. */
export class PlaceFacts {
  readonly #ways = new Pairs();
  readonly #through = new Pairs();
  readonly #fills = new Pairs();
  readonly #onWay = { closes: new Pairs(), makes: new Pairs() };

  constructor(
    readonly facts: Facts,
    readonly site: Site,
  ) {}

  /** There are no ways into place q but its own, for need n. */
  ways(q: number, n: number): number {
    return once(this.#ways, q, n, () => this.facts.addLater(this.#waysOf, q, n, "places", q * 1000 + Math.min(n, 499)));
  }

  readonly #waysOf = (q: number, n: number) => {
    const { id, ways } = this.#place(q);
    const need = this.site.needs[n] as Passage;
    const first = this.site.firstWay[q] as number;
    const passing = this.site.passing(q, n);
    const full = (keep: boolean) => ways.filter((_, i) => passing.includes(first + i) === keep).map((w) => w.full);
    return { rule: "ways" as const, place: id, need: need.kind, detail: { ...needDetail(need), passing: full(true), narrow: full(false) } };
  };

  through(q: number, way: number): number {
    return once(this.#through, q, way, () => {
      const { through, full } = this.site.ways[way] as Way;
      const detail = { through: through?.place ?? "" };
      return this.facts.add(
        { rule: "through", place: this.#place(q).id, way: full, detail },
        "places",
        q * 1000 + 500 + Math.min(way - (this.site.firstWay[q] as number), 499),
      );
    });
  }

  fills(p: number, q: number): number {
    return once(this.#fills, p, q, () =>
      this.facts.add({ rule: "fills", piece: this.#piece(p).id, place: this.#place(q).id }, "pieces", p * 1000),
    );
  }

  onWay(rule: "closes" | "makes", p: number, q: number, way: number): number {
    return once(this.#onWay[rule], p, way, () => {
      const { full } = this.site.ways[way] as Way;
      return this.facts.add(
        { rule, piece: this.#piece(p).id, place: this.#place(q).id, way: full },
        "pieces",
        p * 1000 + (rule === "closes" ? 1 : 2),
      );
    });
  }

  #place(q: number): Place {
    return this.site.build.places[q] as Place;
  }

  #piece(p: number): Piece {
    return this.site.build.pieces[p] as Piece;
  }
}

function once(known: Pairs, a: number, b: number, make: () => number): number {
  let fact = known.get(a, b);
  if (fact < 0) {
    fact = make();
    known.set(a, b, fact);
  }
  return fact;
}
