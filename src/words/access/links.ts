import type { Why, WhyLink } from "../../core/access";
import type { Display, Statement } from "../../core/base";
import type { Build } from "../../core/build";
import { sentence } from "../text";
import { type Voice, voice } from "../voice";
import { factClause } from "./statements";

type LinkSaying = (statement: Statement, first: boolean, voice: Voice, it: string) => string;

const full = ({ place, way }: Statement): string => (way?.includes(".") ? way : `${place ?? ""}.${way ?? ""}`);

/**
 * Rules that say something of their own where they put one step before another. `first`: the step that asks is the earlier one. `it`: what that step is
 * called here.
 */
const reasons: Readonly<Record<string, LinkSaying>> = {
  closes: (s, first, voice, it) =>
    first
      ? `${it} gets to ${voice.place(s.place)} ${voice.by(full(s))}, and that way is closed with ${voice.piece(s.piece)} in place`
      : `until then the way ${voice.by(full(s))} to ${voice.place(s.place)} is closed by ${voice.piece(s.piece)}`,
  fills: (s, first, voice, it) =>
    first
      ? `${it} has to get to ${voice.place(s.place)}, and nothing does with ${voice.piece(s.piece)} in place`
      : `until then nothing gets to ${voice.place(s.place)} for ${voice.piece(s.piece)}`,
  makes: (s, first, voice, it) =>
    first
      ? `${it} gets to ${voice.place(s.place)} ${voice.by(full(s))}, a way that is there only with ${voice.piece(s.piece)}`
      : `the way ${voice.by(full(s))} to ${voice.place(s.place)} is made by ${voice.piece(s.piece)}`,
  leans: (s, first, voice, it) =>
    first ? `${it} needs ${voice.piece(s.piece)} in place until it is done` : factClause(s, voice).replace(/^“[^”]*”/, it),
  "up-down": (s, _, voice) => `the one puts up and the other takes down ${voice.piece(s.piece)}`,
  "hold-point": (s, first, voice, it) =>
    first
      ? `nothing goes on at ${voice.place(s.place)} before ${it}`
      : `${it} is work at ${voice.place(s.place)}, which has to be seen before work there goes on`,
  held: (s, first, voice) =>
    first ? `else ${voice.piece(s.piece)} would stand with nothing to hold it` : `until then nothing holds ${voice.piece(s.piece)}`,
  wait: (s, _, voice) => {
    const why = voice.build?.waits.find((one) => one.id === s.id)?.why ?? "";
    if (why !== "") return voice.inside(why);
    return s.detail?.plain === true ? "it is written so" : factClause(s, voice);
  },
  asked: () => "you asked for it",
};

/** `alone`: without the names of both steps in front, so that the step that asks is named. */
function clause(from: string, reason: Statement, voice: Voice, alone: boolean): string {
  const saying = reasons[reason.rule];
  const first = reason.step === from;
  return saying === undefined ? factClause(reason, voice) : saying(reason, first, voice, first && !alone ? "it" : voice.step(reason.step));
}

/** "“Tie the bars” comes before “Last face on”: ..." of one link. */
export function linkSentence(link: WhyLink, build: Build, display?: Display): string {
  const say = voice(build, display);
  const [from, to] = [build.steps[link.from]?.id ?? "", build.steps[link.to]?.id ?? ""];
  return sentence(`${say.step(from)} comes before ${say.step(to)}: ${say.inside(clause(from, link.reason, say, false))}`);
}

/** The reason of a precedence alone, for where both steps are named already: "“Tie the bars” gets to the wall steel from the north, and ...". */
export function reasonSentence({ from, reason }: WhyLink, build: Build, display?: Display): string {
  return sentence(clause(build.steps[from]?.id ?? "", reason, voice(build, display), true));
}

/** Why one step comes before another: the verdict, then the links of the shortest chain. */
export function whySentences(why: Why, before: number, after: number, build: Build, display?: Display): string[] {
  const say = voice(build, display);
  const [a, b] = [say.step(build.steps[before]?.id), say.step(build.steps[after]?.id)];
  if (why.verdict === "none") return [sentence(`Nothing puts ${a} before ${b}`)];
  const head = why.verdict === "must" ? `${a} must come before ${b}` : `${a} comes before ${b} as chosen, and could also come after`;
  return [sentence(head), ...why.links.map((link) => linkSentence(link, build, display))];
}
