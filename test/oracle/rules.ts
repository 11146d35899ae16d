import type { Amount, Build, Reach, Wait } from "../../src/core/build";
import { asWritten, type Done, type Facts, has, isClosed, isHeld, mayHavePassed, reaches, stands } from "./state";

/** What a rule speaks of, to find it again among statements. */
export interface About {
  readonly kind: "reach" | "lean" | "up-before-down" | "held" | "wait" | "hold-point" | "choice";
  readonly step?: string;
  readonly other?: string;
  readonly piece?: string;
  readonly place?: string;
  readonly id?: string;
  /** Of a reach: its places with what must get there. */
  readonly goal?: string;
}

/** One thing that must hold of an order. `at`: the step whose turn decides it; `holds` is asked with the steps done before that one. */
export interface Rule extends About {
  readonly at: number;
  readonly holds: (done: Done) => boolean;
}

/** A choice decided over the whole order: some alternative of which every pair holds. */
export interface Either extends About {
  readonly kind: "choice";
  readonly options: readonly (readonly (readonly [from: number, to: number])[])[];
}

export interface Rules {
  readonly rules: readonly Rule[];
  readonly choices: readonly Either[];
}

/**
 * Steps that a wait puts before its second: its first, when it goes from a finish to a start and asks for more than a most; and a pour that must
 * have gathered a strength before that start.
 */
function befores(build: Build, { from, fromEnd, toEnd, least, most }: Wait): number[] {
  if (toEnd !== "start") return [];
  const own = fromEnd === "finish" && !(most !== null && least === null) ? [build.at.step.get(from)!] : [];
  return least?.on.kind === "strength" ? [...own, build.at.step.get(least.on.pour)!] : own;
}

/** Everything the build asks of an order of its steps. Whether a place is closed when somebody works there goes by what is written, whatever the facts. */
export function rulesOf(build: Build, facts: Facts = asWritten): Rules {
  const at = (step: string) => build.at.step.get(step)!;
  const rules: Rule[] = [];
  build.steps.forEach((_, s) => {
    rules.push(...reachRules(build, s, facts), ...leanRules(build, s), ...heldAfterRules(build, s), ...holdPointRules(build, s, facts));
  });
  build.pieces.forEach((p, i) => {
    if (p.up >= 0 && p.down >= 0) rules.push({ kind: "up-before-down", at: p.down, piece: p.id, holds: (done) => has(done, p.up) });
    if (p.up >= 0 && p.heldBy.length > 0) {
      rules.push({ kind: "held", at: p.up, piece: p.id, holds: (done) => isHeld(build, i, done | (1 << p.up)) });
    }
  });
  for (const w of build.waits) {
    for (const b of new Set(befores(build, w)))
      rules.push({ kind: "wait", at: at(w.to), id: w.id, step: w.from, other: w.to, holds: (done) => has(done, b) });
  }
  const choices = build.choices.map(
    (c): Either => ({
      kind: "choice",
      id: c.id,
      options: c.either.map((e) => e.waits.flatMap((w) => befores(build, w).map((b) => [b, at(w.to)] as const))),
    }),
  );
  return { rules, choices };
}

/** The places a step must get to: its own, and those that taking its pieces down asks for. `id` counts from 1 in either. */
export function reachesOf(build: Build, s: number): readonly { readonly reach: Reach; readonly piece?: string; readonly id: string }[] {
  const step = build.steps[s]!;
  const counted = (list: readonly Reach[]) => list.map((reach, i) => ({ reach, id: String(i + 1) }));
  const off = step.takes.flatMap((piece) =>
    counted(build.pieces[build.at.piece.get(piece)!]!.off).map((r) => ({ ...r, piece: piece as string })),
  );
  return [...counted(step.reaches), ...off];
}

export const goalOf = (reach: Reach): string => reach.any.map(({ place, need }) => `${need.kind} to ${place}`).join();

function reachRules(build: Build, s: number, facts: Facts): Rule[] {
  return reachesOf(build, s).map((r) => ({
    kind: "reach",
    at: s,
    step: build.steps[s]!.id,
    ...(r.piece === undefined ? {} : { piece: r.piece }),
    id: r.id,
    goal: goalOf(r.reach),
    holds: (done) => r.reach.any.some(({ place, need }) => reaches(build, { step: s, place, need }, done, facts)),
  }));
}

function leanRules(build: Build, s: number): Rule[] {
  return build.steps[s]!.leansOn.map(({ piece, once }) => {
    const i = build.at.piece.get(piece)!;
    const holds = (done: Done) =>
      stands(build, i, done) && build.pieces[i]!.down !== s && (once === null || mayHavePassed(build, once, done));
    return { kind: "lean", at: s, step: build.steps[s]!.id, piece, holds };
  });
}

/** After a step has taken holders down, what they held and still stands is held by others, holds itself, or may be gone by itself. */
function heldAfterRules(build: Build, s: number): Rule[] {
  const taken = build.steps[s]!.takes;
  return build.pieces.flatMap((q, i): Rule[] => {
    if (!q.heldBy.some((set) => set.some((id) => taken.includes(id)))) return [];
    return [
      {
        kind: "held",
        at: s,
        step: build.steps[s]!.id,
        piece: q.id,
        holds: (done) => {
          const after = done | (1 << s);
          if (!stands(build, i, after)) return true;
          const before = q.fromStart || has(done, q.up);
          const passed = (amount: Amount | null) => amount !== null && mayHavePassed(build, amount, done);
          return isHeld(build, i, after) || (before && (passed(q.holdsItself) || passed(q.goesAfter)));
        },
      },
    ];
  });
}

/** Whether somebody at the place only sets what closes it: nobody is in it, and no machine. */
const onlySets = (needs: readonly string[]): boolean => !needs.includes("person") && !needs.includes("machine");

function holdPointRules(build: Build, h: number, facts: Facts): Rule[] {
  const step = build.steps[h]!;
  return (step.holdPoint?.places ?? []).flatMap((place): Rule[] => {
    const q = build.at.place.get(place)!;
    const about = { kind: "hold-point", step: step.id, place } as const;
    const fills = build.pieces.filter((p) => p.fills.includes(place) && p.up >= 0);
    const closes = build.pieces.filter((p) => p.closes.some((r) => r.place === place));
    const work = build.steps.flatMap((other, s): Rule[] => {
      const needs = reachesOf(build, s).flatMap(({ reach }) => reach.any.filter((a) => a.place === place).map((a) => a.need.kind));
      if (s === h || needs.every((need) => need === "sight") || fills.some((p) => p.up === s)) return [];
      if (closes.some((p) => p.up === s) && onlySets(needs)) return [];
      return [{ ...about, at: s, other: other.id, holds: (done) => !has(done, h) || isClosed(build, q, s, done) }];
    });
    const before = fills.map((p): Rule => ({ ...about, at: p.up, piece: p.id, holds: (done) => has(done, h) }));
    const said = step.reaches.some(({ any }) => any.every((a) => a.place === place));
    const sees: Rule = { ...about, at: h, holds: (done) => reaches(build, { step: h, place, need: { kind: "sight" } }, done, facts) };
    return [...work, ...before, ...(said ? [] : [sees])];
  });
}
