import type { Build, Passage, Way, WayRef } from "../../build";
import { type Components, components, digraph } from "../../graph";
import { passes } from "../passes";
import { needKey } from "./facts";

/** The build's places and pieces by position: which pieces close, make and fill what, which ways let what pass. Ways are numbered through all places. */
export class Site {
  readonly ways: readonly Way[];
  readonly firstWay: Int32Array;
  readonly closers: number[][];
  readonly makers: number[][];
  readonly fillers: number[][];
  /** The place a way leads through, by position; -1: none. */
  readonly through: Int32Array;
  readonly needs: Passage[] = [];
  readonly #needs = new Map<string, number>();
  readonly #passing = new Map<number, number[]>();
  readonly #ring: Components;

  constructor(readonly build: Build) {
    const ways = build.places.flatMap((p) => p.ways);
    this.ways = ways;
    this.firstWay = new Int32Array(build.places.length + 1);
    build.places.forEach((place, q) => {
      this.firstWay[q + 1] = (this.firstWay[q] as number) + place.ways.length;
    });
    this.through = Int32Array.from(ways, (w) => (w.through === null ? -1 : (build.at.place.get(w.through.place) ?? -1)));
    this.closers = ways.map(() => []);
    this.makers = ways.map(() => []);
    this.fillers = build.places.map(() => []);
    // Pieces come in order: one that is there already is the last.
    const note = (list: number[] | undefined, piece: number): void => {
      if (list !== undefined && list[list.length - 1] !== piece) list.push(piece);
    };
    const wayOf = ({ place, way }: WayRef): number => {
      const q = build.at.place.get(place) ?? -1;
      const at = build.places[q]?.ways.findIndex((w) => w.id === way) ?? -1;
      return at < 0 ? -1 : (this.firstWay[q] as number) + at;
    };
    build.pieces.forEach((piece, p) => {
      for (const ref of piece.closes) note(this.closers[wayOf(ref)], p);
      for (const ref of piece.makes) note(this.makers[wayOf(ref)], p);
      for (const place of piece.fills) note(this.fillers[build.at.place.get(place) ?? -1], p);
    });
    this.#ring = this.#rings();
  }

  /** Position of the need among all needs; equal ones share it. */
  needOf(need: Passage): number {
    const key = needKey(need);
    let known = this.#needs.get(key);
    if (known === undefined) {
      known = this.needs.push(need) - 1;
      this.#needs.set(key, known);
    }
    return known;
  }

  /** Ways of the place, as numbers, that let the need pass. */
  passing(place: number, need: number): readonly number[] {
    const key = place * 65_536 + need;
    let known = this.#passing.get(key);
    if (known === undefined) {
      const first = this.firstWay[place] as number;
      known = [];
      for (let way = first; way < (this.firstWay[place + 1] as number); way++) {
        if (passes(this.ways[way] as Way, this.needs[need] as Passage)) known.push(way);
      }
      this.#passing.set(key, known);
    }
    return known;
  }

  /** Whether ways lead from one of the two places through the other and back again. */
  inOneRing(place: number, outer: number): boolean {
    return this.#ring.of[place] === this.#ring.of[outer];
  }

  /** Whether ways lead from the place through others and back to it. */
  inRing(place: number): boolean {
    const first = this.firstWay[place] as number;
    if ((this.#ring.size[this.#ring.of[place] as number] as number) > 1) return true;
    for (let way = first; way < (this.firstWay[place + 1] as number); way++) if (this.through[way] === place) return true;
    return false;
  }

  #rings(): Components {
    const from: number[] = [];
    const to: number[] = [];
    this.build.places.forEach((_, q) => {
      for (let w = this.firstWay[q] as number; w < (this.firstWay[q + 1] as number); w++) {
        if ((this.through[w] as number) < 0) continue;
        from.push(q);
        to.push(this.through[w] as number);
      }
    });
    return components(digraph(this.build.places.length, Int32Array.from(from), Int32Array.from(to)));
  }
}
