import type { Why, WhyLink } from "../../core/access";
import type { Display, Statement } from "../../core/base";
import type { Build } from "../../core/build";
import { sentence } from "../text";
import { type Voice, voice } from "../voice";
import { factClause } from "./statements";

/** Ids of the two steps, the earlier one first. */
type Ends = readonly [from: string, to: string];
type LinkSaying = (statement: Statement, first: boolean, voice: Voice, it: string, ends: Ends) => string;

const full = ({ place, way }: Statement): string => (way?.includes(".") ? way : `${place ?? ""}.${way ?? ""}`);

/**
 * Rules that say something of their own where they put one step before another. `first`: the step that asks is the earlier one. `it`: what that step is
 * called here.
 */
const reasons: Readonly<Record<string, LinkSaying>> = {
  closes: (s, first, voice, it) =>
    first
      ? `${it} gets to ${voice.place(s.place)} ${voice.by(full(s))}, and that way is closed with ${voice.piece(s.piece)} in place`
      : `until then ${voice.theWay(full(s))} to ${voice.place(s.place)} is closed by ${voice.piece(s.piece)}`,
  fills: (s, first, voice, it) =>
    first
      ? `${it} has to get to ${voice.place(s.place)}, and nothing does with ${voice.piece(s.piece)} in place`
      : `until then nothing gets to ${voice.place(s.place)} for ${voice.piece(s.piece)}`,
  makes: (s, first, voice, it) =>
    first
      ? `${it} gets to ${voice.place(s.place)} ${voice.by(full(s))}, a way that is there only with ${voice.piece(s.piece)}`
      : `${voice.theWay(full(s))} to ${voice.place(s.place)} is made by ${voice.piece(s.piece)}`,
  leans: (s, first, voice, it) =>
    first ? `${it} needs ${voice.piece(s.piece)} in place until it is done` : factClause(s, voice).replace(/^“[^”]*”/, it),
  "up-down": (s, _, voice) => `the one puts up and the other takes down ${voice.piece(s.piece)}`,
  "hold-point": (s, first, voice, it, [from, to]) => {
    const [place, look] = [voice.place(s.place), voice.step(s.step)];
    if (first) return `nothing fills ${place} before ${it} is done`;
    const later = (work: string): string =>
      `${voice.step(work)} is work at ${place}, which after ${look} goes on only while the place is closed`;
    if (s.step === to) return later(from);
    return closesPlace(from, s.place, voice) ? `${later(to)}; ${voice.step(from)} closes it` : `${later(from)}; ${voice.step(to)} opens it`;
  },
  held: (s, first, voice) =>
    first ? `else ${voice.piece(s.piece)} would stand with nothing to hold it` : `until then nothing holds ${voice.piece(s.piece)}`,
  wait: (s, _, voice) => {
    const why = voice.build?.waits.find((one) => one.id === s.id)?.why ?? "";
    if (why !== "") return voice.inside(why);
    return s.detail?.plain === true ? "it is written so" : factClause(s, voice);
  },
  asked: () => "you asked for it",
};

/** Whether a step puts up what closes or fills a place, or takes down what made a way to it. */
function closesPlace(step: string, place: string | undefined, { build }: Voice): boolean {
  const at = build?.at.step.get(step) ?? -1;
  const to = (refs: readonly { readonly place: string }[]): boolean => refs.some((ref) => ref.place === place);
  return (
    at >= 0 &&
    build?.pieces.some(
      ({ up, down, closes, fills, makes }) => (up === at && (to(closes) || fills.some((id) => id === place))) || (down === at && to(makes)),
    ) === true
  );
}

/** `alone`: without the names of both steps in front, so that the step that asks is named. */
function clause(ends: Ends, reason: Statement, voice: Voice, alone: boolean): string {
  const saying = reasons[reason.rule];
  const first = reason.step === ends[0];
  if (saying === undefined) return factClause(reason, voice);
  return saying(reason, first, voice, first && !alone ? "it" : voice.step(reason.step), ends);
}

const endsOf = ({ from, to }: WhyLink, build: Build): Ends => [build.steps[from]?.id ?? "", build.steps[to]?.id ?? ""];

/** "“Tie the bars” comes before “Last face on”: ..." of one link. */
export function linkSentence(link: WhyLink, build: Build, display?: Display): string {
  const say = voice(build, display);
  const ends = endsOf(link, build);
  return sentence(`${say.step(ends[0])} comes before ${say.step(ends[1])}: ${say.inside(clause(ends, link.reason, say, false))}`);
}

/** The reason of a precedence alone, for where both steps are named already: "“Tie the bars” gets to the wall steel from the north, and ...". */
export function reasonSentence(link: WhyLink, build: Build, display?: Display): string {
  return sentence(clause(endsOf(link, build), link.reason, voice(build, display), true));
}

/** Why one step comes before another: the verdict, then the links of the shortest chain. */
export function whySentences(why: Why, before: number, after: number, build: Build, display?: Display): string[] {
  const say = voice(build, display);
  const [a, b] = [say.step(build.steps[before]?.id), say.step(build.steps[after]?.id)];
  if (why.verdict === "none") return [sentence(`Nothing puts ${a} before ${b}`)];
  const head = why.verdict === "must" ? `${a} must come before ${b}` : `${a} comes before ${b} as chosen, and could also come after`;
  return [sentence(head), ...why.links.map((link) => linkSentence(link, build, display))];
}
