import { type DetailValue, type Finding, isWithin, nearest, parseSigned } from "../base";
import type { Answer } from "../build";
import { type AnswerContext, choicesOf, readAnswers, usualAnswer } from "./answers";
import type { Answers, Ask, Kit, RawAnswers } from "./kit";
import { type RateName, rates } from "./rates";

/** Findings of answers, with the keys of their detail; `asked` is the ask's label. The sentences stand in words. */
export const answerCodes = {
  "kit.unknown": ["kit", "nearest"],
  "kit.not-asked": ["key", "nearest"],
  /** `kind`: length, time, number, yes, text, list. */
  "kit.quantity": ["asked", "value", "kind", "like"],
  "kit.range": ["asked", "value", "least", "most", "unit"],
  "kit.whole": ["asked", "value"],
  "kit.not-one-of": ["asked", "value", "choices"],
  "kit.joins-few": ["asked", "there", "least", "offers"],
  "kit.joins-many": ["asked", "there", "most"],
  "kit.joins-gone": ["asked", "key"],
  "kit.rate": ["rate", "value"],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type AnswerCode = keyof typeof answerCodes;

type Detail<C extends AnswerCode> = Readonly<Record<(typeof answerCodes)[C][number], DetailValue>>;

/** A finding about an answer: where is the ask's key. */
export const answerFinding = <C extends AnswerCode>(code: C, key: string, detail: Detail<C>): Finding => ({
  code,
  severity: "stop",
  where: { list: "parts", key },
  detail,
});

const shown = (value: Answer): string => (Array.isArray(value) ? value.join(", ") : String(value)).slice(0, 60);

function checkFigure(
  ask: Ask & { readonly kind: "length" | "number" },
  value: Answer,
  { units }: AnswerContext,
  answers: Answers,
): Finding | null {
  const asked = ask.label;
  const range = ask.kind === "length" ? (ask.within_mm?.(answers) ?? ask.range_mm) : ask.range;
  const like = ask.kind === "length" ? ask.usual[units] : String(ask.usual);
  const figure = ask.kind === "length" ? (typeof value === "string" ? parseSigned("length", value) : null) : value;
  if (typeof figure !== "number" || !Number.isFinite(figure))
    return answerFinding("kit.quantity", ask.key, { asked, value: shown(value), kind: ask.kind, like });
  if (range.whole && !Number.isInteger(figure)) return answerFinding("kit.whole", ask.key, { asked, value: shown(value) });
  if (isWithin(range, figure)) return null;
  const unit = ask.kind === "length" ? "mm" : (ask.unit ?? range.unit);
  return answerFinding("kit.range", ask.key, { asked, value: shown(value), least: range.least, most: range.most, unit });
}

function checkJoins(ask: Ask & { readonly kind: "joins" }, value: Answer | undefined, context: AnswerContext): Finding | null {
  const asked = ask.label;
  const choices = choicesOf(ask, context);
  const few = (there: number) => answerFinding("kit.joins-few", ask.key, { asked, there, least: ask.least, offers: [...ask.offers] });
  if (value === undefined) {
    const usual = usualAnswer(ask, context) as readonly string[];
    return usual.length < ask.least ? few(usual.length) : null;
  }
  if (!Array.isArray(value)) return answerFinding("kit.quantity", ask.key, { asked, value: shown(value), kind: "list", like: "" });
  const gone = value.find((one) => !choices.some(({ key }) => key === one));
  if (gone !== undefined) return answerFinding("kit.joins-gone", ask.key, { asked, key: gone });
  if (value.length < ask.least) return few(value.length);
  return value.length > ask.most ? answerFinding("kit.joins-many", ask.key, { asked, there: value.length, most: ask.most }) : null;
}

function checkOne(ask: Ask, value: Answer | undefined, context: AnswerContext, answers: Answers): Finding | null {
  if (ask.kind === "joins") return checkJoins(ask, value, context);
  if (value === undefined) return null;
  const asked = ask.label;
  const wrong = (kind: string, like: string) => answerFinding("kit.quantity", ask.key, { asked, value: shown(value), kind, like });
  switch (ask.kind) {
    case "length":
    case "number":
      return checkFigure(ask, value, context, answers);
    case "choice":
    case "several": {
      const chosen = Array.isArray(value) ? value : [value];
      const bad = chosen.find((one) => !ask.options.some((option) => option.value === one));
      if (bad === undefined && (ask.kind === "choice") === !Array.isArray(value)) return null;
      return answerFinding("kit.not-one-of", ask.key, { asked, value: shown(bad ?? value), choices: ask.options.map(({ name }) => name) });
    }
    case "yes":
      return typeof value === "boolean" ? null : wrong("yes", "");
    case "text":
      return typeof value === "string" ? null : wrong("text", "");
    case "amount":
      return typeof value === "string" && (parseSigned("time", value) ?? -1) >= 0 ? null : wrong("time", ask.usual);
  }
}

function checkRate(key: string, value: Answer): Finding | null {
  const rate = key.slice("rate.".length);
  if (!Object.hasOwn(rates, rate))
    return answerFinding("kit.not-asked", key, { key: rate, nearest: nearest(rate, Object.keys(rates)) ?? "" });
  const time = typeof value === "string" ? parseSigned("time", value) : null;
  return time !== null && time >= 0 ? null : answerFinding("kit.rate", key, { rate: rates[rate as RateName].name, value: shown(value) });
}

/** What is wrong with answers, one finding an ask at most, in the order of the asks; only of what is asked with these answers. */
export function faultsOfAnswers(kit: Kit, raw: RawAnswers, context: AnswerContext): readonly Finding[] {
  const answers = readAnswers(kit, raw, context);
  const own = kit.asks.flatMap((ask) => {
    if (ask.when && !ask.when(answers)) return [];
    return checkOne(ask, Object.hasOwn(raw, ask.key) ? raw[ask.key] : undefined, context, answers) ?? [];
  });
  const keys = kit.asks.map(({ key }) => key);
  const others = Object.entries(raw).flatMap(([key, value]) => {
    if (key.startsWith("rate.")) return checkRate(key, value) ?? [];
    return keys.includes(key) ? [] : answerFinding("kit.not-asked", key, { key: key.slice(0, 60), nearest: nearest(key, keys) ?? "" });
  });
  return [...own, ...others];
}
