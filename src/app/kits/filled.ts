import { type Finding, parseSigned } from "../../core/base";
import type { Answer, Part } from "../../core/build";
import type { Kit, RawAnswers } from "../../core/kits";
import { figureOf } from "../parts/figure";

type Units = "us" | "metric";

/** What was entered in a form, by the keys of its questions: a figure as text, until it is read. */
export type Entered = Readonly<Record<string, Answer>>;

/**
 * Answers as they are to be put in: numbers read where they can be (a text that is none stays, to be refused beside its field), lengths that nobody entered
 * as they are shown, in the units shown.
 */
export function answersFrom(kit: Kit, entered: Entered, shown: Units): RawAnswers {
  const own = kit.asks.flatMap((ask): (readonly [string, Answer])[] => {
    const value = entered[ask.key];
    if (value === undefined) return ask.kind === "length" ? [[ask.key, ask.usual[shown]]] : [];
    if (ask.kind === "number") return [[ask.key, typeof value === "string" ? (figureOf(value) ?? value) : value]];
    return [[ask.key, typeof value === "string" && ask.kind !== "text" ? value.trim() : value]];
  });
  const rates = Object.entries(entered).filter(([key]) => key.startsWith("rate."));
  return Object.fromEntries([...own, ...rates]);
}

/** A finding about a length with its example in the units shown: the kit knows those of the build. */
export function inUnitsShown(kit: Kit, finding: Finding, shown: Units): Finding {
  const ask = kit.asks.find(({ key }) => key === finding.where.key);
  if (ask?.kind !== "length" || !("like" in finding.detail)) return finding;
  return { ...finding, detail: { ...finding.detail, like: ask.usual[shown] } };
}

/** Where a part of a kit stands, by the answers that say so. */
const across = "right";
const away = "back";
/** From one to the next: a usual span of small work. */
const step = {
  us: { text: (count: number) => `${count * 8} ft`, mm: 2438.4 },
  metric: { text: (count: number) => `${+(count * 2.4).toFixed(1)} m`, mm: 2400 },
};
const near_mm = 300;

/**
 * Answers that put another part of the kit beside those there are, not into one of them: as many spans to the right as it takes. Empty where the kit
 * does not ask where it stands, or nothing stands there.
 */
export function besides(kit: Kit, entered: Entered, parts: readonly Part[], shown: Units): Entered {
  const ask = (key: string) => kit.asks.find((one) => one.key === key && one.kind === "length");
  const [right, back] = [ask(across), ask(away)];
  if (right?.kind !== "length" || back?.kind !== "length") return {};
  const at = (answers: Entered, one: typeof right): number => {
    const said = answers[one.key];
    return parseSigned("length", typeof said === "string" ? said : one.usual[shown]) ?? 0;
  };
  const others = parts.filter((part) => part.kit === kit.id).map(({ answers }) => [at(answers, right), at(answers, back)] as const);
  const [x, y] = [at(entered, right), at(entered, back)];
  const taken = (spot: number): boolean => others.some(([a, b]) => Math.abs(a - spot) < near_mm && Math.abs(b - y) < near_mm);
  if (!taken(x)) return {};
  let spans = 1;
  while (taken(x + spans * step[shown].mm)) spans += 1;
  // From the datum it is a round figure; from elsewhere it is counted on in the units shown.
  return { [across]: x === 0 ? step[shown].text(spans) : sum(x + spans * step[shown].mm, shown) };
}

function sum(length_mm: number, shown: Units): string {
  const value = shown === "us" ? length_mm / 25.4 : length_mm;
  const text = shown === "us" ? `${+Math.abs(value).toFixed(2)} in` : `${Math.round(Math.abs(value))} mm`;
  return value < 0 ? `-${text}` : text;
}
