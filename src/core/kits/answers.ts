import { invariant, isWithin, parseSigned } from "../base";
import type { Answer } from "../build";
import type { Answers, Ask, KeyedOffer, Kit, RawAnswers, Usual } from "./kit";

/** What asks are read against: the units of the build, and what its parts offer, oldest first. */
export interface AnswerContext {
  readonly units: "us" | "metric";
  readonly offers: readonly KeyedOffer[];
  /** Keys of offers that other parts join: what stands on one is not joined again unasked. */
  readonly joined: ReadonlySet<string>;
}

const usualText = (usual: Usual | string, units: "us" | "metric"): string => (typeof usual === "string" ? usual : usual[units]);

/** Offers that an ask may join, oldest first. */
export function choicesOf(ask: Ask, { offers }: AnswerContext): readonly KeyedOffer[] {
  return ask.kind === "joins" ? offers.filter(({ kind }) => ask.offers.includes(kind)) : [];
}

/** The newest that nothing stands on yet, as many as `most`; where those are too few, the newest of all; of such as the ask usually means, where it says so. */
function usualJoins(ask: Ask & { readonly kind: "joins" }, context: AnswerContext): readonly string[] {
  const all = choicesOf(ask, context);
  const free = all.filter(({ key }) => !context.joined.has(key));
  const from = ask.usually ? free.filter(ask.usually) : free.length >= Math.max(1, ask.least) ? free : ask.least > 0 ? all : [];
  return from.slice(-ask.most).map(({ key }) => key);
}

/** The usual answer of an ask, as it would be written in a part. */
export function usualAnswer(ask: Ask, context: AnswerContext): Answer {
  switch (ask.kind) {
    case "length":
      return usualText(ask.usual, context.units);
    case "joins":
      return usualJoins(ask, context);
    default:
      return ask.usual;
  }
}

/** Whether an answer can be read as one to this ask. */
export function isReadable(ask: Ask, value: Answer, context: AnswerContext): boolean {
  switch (ask.kind) {
    case "length": {
      const length = typeof value === "string" ? parseSigned("length", value) : null;
      return length !== null && isWithin(ask.range_mm, length);
    }
    case "number":
      return typeof value === "number" && isWithin(ask.range, value);
    case "choice":
      return ask.options.some((option) => option.value === value);
    case "several":
      return Array.isArray(value) && value.every((one) => ask.options.some((option) => option.value === one));
    case "yes":
      return typeof value === "boolean";
    case "amount":
      return typeof value === "string" && parseSigned("time", value) !== null;
    case "text":
      return typeof value === "string";
    case "joins": {
      const keys = new Set(choicesOf(ask, context).map(({ key }) => key));
      return Array.isArray(value) && value.length >= ask.least && value.length <= ask.most && value.every((one) => keys.has(one));
    }
  }
}

/** Reads answers over what is usual. One that cannot be read counts as usual: `checkAnswers` says so beside its field. */
export function readAnswers(kit: Kit, raw: RawAnswers, context: AnswerContext): Answers {
  const asks = new Map(kit.asks.map((ask) => [ask.key, ask]));
  const value = (key: string, ...kinds: readonly Ask["kind"][]): Answer => {
    const ask = asks.get(key);
    invariant(ask !== undefined && kinds.includes(ask.kind), `the kit ${kit.id} does not ask ${key} as ${kinds.join(" or ")}`);
    const given = Object.hasOwn(raw, key) ? raw[key] : undefined;
    return given !== undefined && isReadable(ask, given, context) ? given : usualAnswer(ask, context);
  };
  const text = (key: string, ...kinds: readonly Ask["kind"][]): string => value(key, ...kinds) as string;
  return {
    length_mm: (key) => parseSigned("length", text(key, "length")) ?? 0,
    written: (key) => text(key, "length", "amount"),
    number: (key) => value(key, "number") as number,
    choice: (key) => text(key, "choice"),
    several: (key) => value(key, "several") as readonly string[],
    yes: (key) => value(key, "yes") as boolean,
    text: (key) => text(key, "text", "amount"),
    joins: (key) => {
      const keys = new Set(value(key, "joins") as readonly string[]);
      return context.offers.filter((offer) => keys.has(offer.key));
    },
  };
}

/** The answers of a part with what it meant by the questions that were not asked when it was put in. */
export const asPutIn = (kit: Kit, raw: RawAnswers): RawAnswers => ({
  ...Object.fromEntries(kit.asks.flatMap(({ key, unasked }) => (unasked === undefined ? [] : [[key, unasked] as const]))),
  ...raw,
});

/** Every answer of a kit written out, so that a part says the same when usual answers or other parts change later. */
export function settledAnswers(kit: Kit, raw: RawAnswers, context: AnswerContext): RawAnswers {
  const own = kit.asks.map((ask): readonly [string, Answer] => {
    const given = Object.hasOwn(raw, ask.key) ? raw[ask.key] : undefined;
    return [ask.key, given !== undefined && isReadable(ask, given, context) ? given : usualAnswer(ask, context)];
  });
  const others = Object.entries(raw).filter(([key]) => key.startsWith("rate."));
  return Object.fromEntries([...own, ...others]);
}
