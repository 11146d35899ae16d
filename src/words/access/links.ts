import type { Why, WhyLink } from "../../core/access";
import type { Display, Statement } from "../../core/base";
import type { Build } from "../../core/build";
import { lower, sentence } from "../text";
import { type Voice, voice } from "../voice";
import { factClause } from "./statements";

type LinkSaying = (statement: Statement, first: boolean, voice: Voice) => string;

const full = ({ place, way }: Statement): string => (way?.includes(".") ? way : `${place ?? ""}.${way ?? ""}`);

/** Rules that say something of their own where they put one step before another. `first`: the step that asks is the earlier one. */
const reasons: Readonly<Record<string, LinkSaying>> = {
  closes: (s, first, voice) =>
    first
      ? `it gets ${voice.by(full(s))} to ${voice.place(s.place)}, and that way is closed once ${voice.piece(s.piece)} is in place`
      : `until then ${voice.piece(s.piece)} closes the way ${voice.by(full(s))} to ${voice.place(s.place)}`,
  fills: (s, first, voice) =>
    first
      ? `it has to get to ${voice.place(s.place)}, and nothing does with ${voice.piece(s.piece)} in place`
      : `until then nothing gets to ${voice.place(s.place)} for ${voice.piece(s.piece)}`,
  makes: (s, first, voice) =>
    first
      ? `it gets ${voice.by(full(s))} to ${voice.place(s.place)}, a way that is there only with ${voice.piece(s.piece)}`
      : `the way ${voice.by(full(s))} to ${voice.place(s.place)} is made by ${voice.piece(s.piece)}`,
  leans: (s, first, voice) =>
    first ? `it needs ${voice.piece(s.piece)} in place until it is done` : factClause(s, voice).replace(/^“[^”]*” /, "it "),
  "up-down": (s, _, voice) => `the one puts up and the other takes down ${voice.piece(s.piece)}`,
  "hold-point": (s, first, voice) =>
    first
      ? `nothing goes on at ${voice.place(s.place)} before it`
      : `it is work at ${voice.place(s.place)}, and that is seen before it goes on`,
  held: (s, first, voice) =>
    first ? `else ${voice.piece(s.piece)} would stand with nothing to hold it` : `until then nothing holds ${voice.piece(s.piece)}`,
  wait: (s, _, voice) => {
    const why = voice.build?.waits.find((one) => one.id === s.id)?.why ?? "";
    if (why !== "") return why;
    return s.detail?.plain === true ? "it is written so" : factClause(s, voice);
  },
  asked: () => "you asked for it",
};

function clause(from: string, reason: Statement, voice: Voice): string {
  const saying = reasons[reason.rule];
  return saying === undefined ? factClause(reason, voice) : saying(reason, reason.step === from, voice);
}

/** "“Tie the bars” comes before “Last face on”: ..." of one link. */
export function linkSentence(link: WhyLink, build: Build, display?: Display): string {
  const say = voice(build, display);
  const [from, to] = [build.steps[link.from]?.id ?? "", build.steps[link.to]?.id ?? ""];
  const reason = clause(from, link.reason, say);
  return sentence(`${say.step(from)} comes before ${say.step(to)}: ${lowerFirst(reason)}`);
}

const lowerFirst = (text: string): string => lower(text);

/** The reason of one precedence between two steps given by position. */
export function reasonSentence(from: number, to: number, reason: Statement, build: Build, display?: Display): string {
  return linkSentence({ from, to, reason }, build, display);
}

/** Why one step comes before another: the verdict, then the links of the shortest chain. */
export function whySentences(why: Why, before: number, after: number, build: Build, display?: Display): string[] {
  const say = voice(build, display);
  const [a, b] = [say.step(build.steps[before]?.id), say.step(build.steps[after]?.id)];
  if (why.verdict === "none") return [sentence(`Nothing puts ${a} before ${b}`)];
  const head = why.verdict === "must" ? `${a} must come before ${b}` : `${a} comes before ${b} as chosen, and could also come after`;
  return [sentence(head), ...why.links.map((link) => linkSentence(link, build, display))];
}
