import type { Build, Passage, Reach, Step } from "../build";
import { type Digraph, digraph, IntList, reachMany } from "../graph";
import { passes } from "./passes";
import type { Access, Arcs, Closing } from "./result";

/**
 * For each piece that closes or fills something when it is put up: every step that gets in where it closes and is ordered before it. In the order in which they
 * go up. Empty when there is no order.
 */
export function lastChances(build: Build, result: Access): readonly Closing[] {
  if (!result.possible) return [];
  const { arcs, order } = result;
  const turn = new Int32Array(build.steps.length);
  order.forEach((s, i) => {
    turn[s] = i;
  });
  const closers = [...build.pieces.keys()].filter((p) => closes(build, p));
  const visits = visitsOf(build, closers);
  const through = throughOf(build, result);
  // One question for each step that gets in where a piece closes.
  const from = new IntList(1024);
  const to = new IntList(1024);
  const askedFor = new Int32Array(build.steps.length).fill(-1);
  const ends = closers.map((p) => {
    const piece = build.pieces[p] as Build["pieces"][number];
    const ask = (step: number): void => {
      if (step === piece.up || askedFor[step] === p) return;
      askedFor[step] = p;
      from.push(step);
      to.push(piece.up);
    };
    for (const step of through.get(p) ?? none) ask(step);
    for (const place of piece.fills) for (const { step } of visits.get(place) ?? none) ask(step);
    for (const { place, way } of piece.closes) {
      const found = build.places[build.at.place.get(place) ?? -1]?.ways.find((w) => w.id === way);
      if (found !== undefined) for (const { step, need } of visits.get(place) ?? none) if (passes(found, need)) ask(step);
    }
    return from.length;
  });
  const asked = [from.packed(), to.packed()] as const;
  const before = reachMany(graphOf(build, arcs, arcs.redundant, 0), order, ...asked);
  const forced = reachMany(graphOf(build, arcs, arcs.forced, 1), order, ...asked);
  const closings = closers.map((p, i): Closing => {
    const { up, down, goesAfter } = build.pieces[p] as Build["pieces"][number];
    const list: Closing["before"][number][] = [];
    for (let k = i === 0 ? 0 : (ends[i - 1] as number); k < (ends[i] as number); k++) {
      const step = from.at(k);
      if (before[k] !== 1) continue;
      // In the order in which they are done; a few at a time.
      let at = list.push({ step, what: whatOf(build.steps[step] as Step), forced: forced[k] === 1 }) - 1;
      const last = list[at] as Closing["before"][number];
      for (; at > 0 && (turn[(list[at - 1] as Closing["before"][number]).step] as number) > (turn[step] as number); at--)
        list[at] = list[at - 1] as Closing["before"][number];
      list[at] = last;
    }
    return { piece: p, step: up, before: list, forGood: down < 0 && goesAfter === null };
  });
  // Pieces of one step stay in the document's order.
  return closings.sort((a, b) => (turn[a.step] as number) - (turn[b.step] as number));
}

const none: readonly never[] = [];

function closes(build: Build, p: number): boolean {
  const { up, closes, fills } = build.pieces[p] as Build["pieces"][number];
  return up >= 0 && (closes.length > 0 || fills.length > 0);
}

function whatOf({ sort }: Step): Closing["before"][number]["what"] {
  return sort === "pour" || sort === "office" ? "work" : sort;
}

/** The precedences between steps that say `value` in a column of the table. */
function graphOf(build: Build, arcs: Arcs, column: Uint8Array, value: number): Digraph {
  const from = new Int32Array(arcs.count);
  const to = new Int32Array(arcs.count);
  let count = 0;
  for (let r = 0; r < arcs.count; r++) {
    if (arcs.orders[r] === 0 || column[r] !== value) continue;
    from[count] = arcs.from[r] as number;
    to[count++] = arcs.to[r] as number;
  }
  return digraph(build.steps.length, from, to, count);
}

interface Visit {
  readonly step: number;
  readonly need: Passage;
}

/** Who gets to each place that something closes or fills, by the place's id. */
function visitsOf(build: Build, closers: readonly number[]): ReadonlyMap<string, readonly Visit[]> {
  const visits = new Map<string, Visit[]>();
  for (const p of closers) {
    for (const place of build.pieces[p]?.fills ?? []) visits.set(place, []);
    for (const { place } of build.pieces[p]?.closes ?? []) visits.set(place, []);
  }
  const note = (step: number, reaches: readonly Reach[]): void => {
    for (const { any } of reaches) for (const { place, need } of any) visits.get(place)?.push({ step, need });
  };
  build.steps.forEach((step, s) => {
    note(s, step.reaches);
    for (const id of step.takes) note(s, build.pieces[build.at.piece.get(id) ?? -1]?.off ?? none);
  });
  return visits;
}

/** Steps that get through what a piece closes on their way to another place, by the piece's position. */
function throughOf(build: Build, { arcs, statements }: Access): ReadonlyMap<number, readonly number[]> {
  const steps = new Map<number, number[]>();
  for (let r = 0; r < arcs.count; r++) {
    const { rule, piece } = statements[arcs.reason[r] as number] ?? {};
    if ((rule !== "closes" && rule !== "fills") || piece === undefined) continue;
    const p = build.at.piece.get(piece as never) ?? -1;
    if (build.pieces[p]?.up !== arcs.to[r]) continue;
    const list = steps.get(p);
    if (list === undefined) steps.set(p, [arcs.from[r] as number]);
    else list.push(arcs.from[r] as number);
  }
  return steps;
}
