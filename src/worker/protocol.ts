import type { Why } from "../core/access";
import type { DocumentEdit, Finding } from "../core/base";
import type { Served } from "../core/build";
import type { Aimed, OneMoreTable, Plan, PlanMay, Sought } from "../core/plan";
import type { OrderDrawing } from "../draw";

/** Raised when a message changes shape. A page and a worker of different versions do not talk: the page starts a fresh worker. */
export const protocolVersion = 2;

/** What is asked about: the whole document, or what changed since a revision that the worker has. */
export type About = { readonly build: unknown } | { readonly base: number; readonly change: readonly DocumentEdit[] };

/** Each question with what it needs beside the document. */
export interface Questions {
  /** Dates for the document. */
  plan: Record<never, never>;
  /** Dates for a document with changes that are only tried; apart from `plan`, so that neither overtakes the other. */
  trial: Record<never, never>;
  /** Ways out of what stands in the way, each tried on the whole build. */
  ways: { readonly findings: readonly Finding[] };
  /** May `before` be done before `after`, and if not, what would allow it? Ids of steps. */
  may: { readonly before: string; readonly after: string };
  /** Why is `before` done before `after`? Ids of steps. */
  why: { readonly before: string; readonly after: string };
  /** The steps as a layered drawing, its text that many px high. */
  layout: { readonly text: number };
  /** What one more of everything would buy: a portion further with this run, or a new run. Nothing is added before the local date `from`. */
  oneMore: { readonly run: number; readonly from: string };
  /** A plan that is better by what the document aims at: so many schedules further with this run, or a new run. */
  aim: { readonly run: number; readonly schedules: number };
  /** An earlier finish: a portion further towards rung `upTo`. */
  search: { readonly upTo: number };
}

export interface Answers {
  plan: { readonly plan: Plan };
  trial: { readonly plan: Plan };
  ways: { readonly findings: readonly Finding[] };
  may: { readonly may: PlanMay };
  why: { readonly why: Why };
  layout: { readonly drawing: OrderDrawing };
  oneMore: { readonly table: OneMoreTable };
  aim: { readonly aimed: Aimed | null };
  /** `served`: what the document has to say for the plan found; null where the plan as it is stays the best. */
  search: { readonly sought: Sought; readonly served: Served | null };
}

export type Question = keyof Questions;

export interface Ask<Q extends Question = Question> {
  readonly protocol: number;
  /** Rises with every ask of the page; the answer carries it back. */
  readonly revision: number;
  readonly about: About;
  readonly ask: Q;
  readonly with: Questions[Q];
}

interface Head<Q extends Question> {
  readonly protocol: number;
  readonly revision: number;
  readonly ask: Q;
  /** Rung of the search that this answer stands at; 0 for all else. */
  readonly rung: number;
  /** No more answers follow for this revision. */
  readonly done: boolean;
}

/** refused: "base" when the worker does not have the base; "protocol" when it is of another version; "document" when it cannot be read. */
export type Reply<Q extends Question = Question> =
  | (Head<Q> & { readonly answer: Answers[Q] })
  | (Head<Q> & { readonly refused: "base" | "protocol" | "document" });
