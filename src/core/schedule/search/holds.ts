import type { Model } from "../proof/model";
import type { Runs } from "../runs";

/** What a job takes of one shared number: while it lasts, or from its start until another job ends. */
export interface Hold {
  readonly shared: number;
  readonly number: number;
  /** Held only while these run; null: through pauses. */
  readonly runs: Runs | null;
  /** The job at whose end it comes back; -1: for good. */
  readonly back: number;
}

/** What comes back when a job ends that another one took (-1: that was not there from the beginning). */
export interface Return {
  readonly shared: number;
  readonly number: number;
  readonly out: number;
}

export interface Holds {
  readonly takes: readonly (readonly Hold[])[];
  readonly returns: readonly (readonly Return[])[];
  /** By job: of each shared number it takes, all that it takes of it. */
  readonly asked: readonly (readonly {
    readonly shared: number;
    readonly number: number;
    readonly runs: Runs | null;
    readonly own: boolean;
  }[])[];
}

export function holdsOf(m: Model): Holds {
  const takes = Array.from({ length: m.jobs }, (): Hold[] => []);
  const returns = Array.from({ length: m.jobs }, (): Return[] => []);
  m.shared.forEach((s, shared) => {
    for (const { out, back, number, runs } of s.tasks) {
      if (out >= 0) takes[out]!.push({ shared, number, runs, back });
      if (back >= 0 && back !== out) returns[back]!.push({ shared, number, out });
    }
  });
  const asked = takes.map((list, j) =>
    [...new Set(list.map((h) => h.shared))].map((shared) => {
      const of = list.filter((h) => h.shared === shared);
      const own = of.every((h) => h.back === j);
      return { shared, number: of.reduce((sum, h) => sum + h.number, 0), runs: own ? of[0]!.runs : null, own };
    }),
  );
  return { takes, returns, asked };
}
