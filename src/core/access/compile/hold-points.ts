import type { Program } from "./program";
import { Stand } from "./stand";
import { reachesOf } from "./steps";

/** An inspection that stops the work: nobody works at the place between it and the closing, and nothing fills the place before it. */
export function compileHoldPoints(program: Program): void {
  const { build, facts } = program;
  const workers = build.steps.some((step) => step.holdPoint !== null) ? workersOf(program) : new Map<string, number[]>();
  build.steps.forEach((step, h) => {
    for (const place of new Set(step.holdPoint?.places)) {
      const q = build.at.place.get(place);
      if (q === undefined) continue;
      const fact = facts.add({ rule: "hold-point", step: step.id, place }, "steps", h * 1000 + 700);
      const closing = new Closing(program, q);
      for (const s of workers.get(place) ?? []) {
        if (s === h || closing.by.has(s)) continue;
        program.clause(fact, -1, [program.before(s, h), ...closing.before(s, fact)], h);
      }
      for (const up of closing.fills) program.clause(fact, -1, [program.before(h, up)], h);
    }
  });
}

/** Steps by place that do more there than look. */
function workersOf(program: Program): Map<string, number[]> {
  const workers = new Map<string, number[]>();
  program.build.steps.forEach((_, s) => {
    const places = reachesOf(program.build, s).flatMap(({ reach }) => reach.any.filter((a) => a.need.kind !== "sight").map((a) => a.place));
    for (const place of new Set(places)) workers.set(place, [...(workers.get(place) ?? []), s]);
  });
  return workers;
}

/** When a place is closed: filled, or every way of it closed, or gone with what made it. */
class Closing {
  /** Steps that put up what fills it. */
  readonly fills: readonly number[];
  /** For each way, steps after which it is closed. */
  readonly #ways: readonly (readonly number[])[];
  /** Steps that put up what closes or fills it. */
  readonly by: ReadonlySet<number>;

  constructor(
    readonly program: Program,
    q: number,
  ) {
    const { site } = program;
    const stand = new Stand(program);
    const ups = (pieces: readonly number[]) => pieces.map((p) => stand.piece(p).up).filter((s) => s >= 0);
    const downs = (pieces: readonly number[]) => pieces.map((p) => stand.piece(p).down).filter((s) => s >= 0);
    const ways = Array.from(
      { length: (site.firstWay[q + 1] as number) - (site.firstWay[q] as number) },
      (_, i) => (site.firstWay[q] as number) + i,
    );
    this.fills = ups(site.fillers[q] as number[]);
    const closers = ways.map((w) => ups(site.closers[w] as number[]));
    this.#ways = ways.map((w, i) => [...(closers[i] as number[]), ...downs(site.makers[w] as number[])]);
    this.by = new Set([...this.fills, ...closers.flat()]);
  }

  /** Options for "closed before s". */
  before(s: number, fact: number): number[] {
    const filled = this.fills.map((up) => this.program.before(up, s));
    if (this.#ways.length === 0 || this.#ways.some((by) => by.length === 0)) return filled;
    const shut = this.program.selector();
    for (const by of this.#ways)
      this.program.clause(
        fact,
        shut,
        by.map((t) => this.program.before(t, s)),
        s,
      );
    return [...filled, shut];
  }
}
