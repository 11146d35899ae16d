import type { Display } from "../../core/base";
import type { Build } from "../../core/build";
import type { ChainLink, Holder, Plan } from "../../core/plan";
import { listed, sentence } from "../text";
import { type Voice, voice } from "../voice";

/** The name of a job: steps are counted first, then deliveries. */
export function jobWords(job: number, voice: Voice): string {
  const { build } = voice;
  const step = build?.steps[job];
  if (step !== undefined) return voice.step(step.id);
  const delivery = build?.deliveries[job - (build?.steps.length ?? 0)];
  return delivery === undefined ? "the work before" : voice.any(delivery.id);
}

/** "it comes 24 h after “Pour the wall”", by the row of the precedence that holds. */
function waitClause(plan: Plan, row: number, job: string, voice: Voice): string {
  const { arcs, amounts, statements } = plan.access;
  const amount = amounts[arcs.least[row] ?? -1];
  if (amount === undefined || amount.amount === 0) return `it waits for ${job} to be done`;
  const written = voice.amount(amount.text);
  const strong = / of the strength of .*$/;
  if (amount.on.kind === "strength")
    return `it waits until ${job} is expected to have ${written.replace(strong, written.includes("%") ? " of its strength" : "")}`;
  const wait = voice.build?.waits.find((one) => one.id === statements[arcs.reason[row] ?? -1]?.id);
  const named = wait !== undefined && !wait.plain && wait.name !== "" && wait.name !== wait.id.split("#")[0];
  return `it comes ${written} after ${job}${named ? ` (${wait.name})` : ""}`;
}

/** "it waits for “Tie the bars”": what keeps a job from being earlier, without a capital or a stop. */
export function holderClause(holder: Holder, plan: Plan, voice: Voice, start: number): string {
  const { build } = voice;
  switch (holder.kind) {
    case "start-of-build":
      return "nothing holds it: it is as early as the build begins";
    case "wait":
      return waitClause(plan, holder.row, jobWords(holder.job, voice), voice);
    case "delivery": {
      const delivery = build?.deliveries[holder.delivery];
      const arrives = plan.deliveries[holder.delivery]?.arrives;
      return `it waits for ${delivery === undefined ? "a delivery" : voice.any(delivery.id)}${arrives === undefined ? "" : `, there on ${voice.moment(arrives)}`}`;
    }
    case "people":
      return busyWords(holder.of, jobWords(holder.job, voice), voice);
    case "equipment":
      return `${voice.any(holder.of)} ${copula(voice.any(holder.of))} in use for ${jobWords(holder.job, voice)} until then`;
    case "stock":
      return `it needs ${voice.any(holder.of)}, out with ${jobWords(holder.job, voice)} until then`;
    case "room":
      return `${voice.place(holder.of)} has no more room until ${jobWords(holder.job, voice)} is done`;
    case "alone":
      return `nobody else may be at ${voice.place(holder.of)} until ${jobWords(holder.job, voice)} is done`;
    case "window":
      return `${voice.day(start)} is the next day that ${voice.thing("calendars", holder.calendar)} has for it`;
    case "not-before":
      return `it is not to begin before ${voice.moment(holder.date)}`;
    case "fixed":
      return `it is fixed for ${voice.moment(holder.date)}`;
    case "booking":
      return `it is booked for ${voice.moment(holder.date)}`;
    case "on-purpose":
      return `it is put late on purpose, close before ${jobWords(holder.job, voice)}`;
  }
}

const copula = (words: string): string => (/s$/.test(words) && !/ss$/.test(words) ? "are" : "is");

/** `of`: the ids of the people who could do it, with spaces between. */
function busyWords(of: string, job: string, voice: Voice): string {
  const ids = of.split(" ");
  const known = ids.filter((id) => voice.build?.at.person.has(id));
  const [only] = known;
  if (known.length === 1 && only !== undefined) return `${voice.thing("people", only)} is busy with ${job} until then`;
  if (known.length === 0 || known.length === voice.build?.people.length) return `too few people are free until ${job} is done`;
  return `too few of ${listed(known.map((id) => voice.thing("people", id)))} are free until ${job} is done`;
}

/** What holds a step where it is: "“Pour the slab” begins Sat 26 Jun, 7:30: it waits for the pump, there on ...". */
export function holderSentence(step: number, plan: Plan, build: Build, display?: Display): string {
  const dates = plan.steps[step];
  const say = voice(build, display);
  if (dates === undefined) return sentence(`${say.step(build.steps[step]?.id)} has no date`);
  return sentence(
    `${say.step(build.steps[step]?.id)} begins ${say.moment(dates.start)}: ${holderClause(dates.holder, plan, say, dates.start)}`,
  );
}

/** One link of the chain that sets the finish; says also that a site day had to come first, where the wait ended before. */
function chainSentence(link: ChainLink, plan: Plan, build: Build, display?: Display): string {
  const say = voice(build, display);
  const steps = build.steps.length;
  if (link.job >= steps) {
    const arrives = plan.deliveries[link.job - steps]?.arrives ?? link.ready;
    return sentence(`${jobWords(link.job, say)}: there on ${say.moment(arrives)}`);
  }
  const dates = plan.steps[link.job];
  const start = dates?.start ?? link.ready;
  const next = nextDay(link, plan, start, say);
  return sentence(`${jobWords(link.job, say)}, ${say.moment(start)}: ${holderClause(link.holder, plan, say, start)}${next}`);
}

/** "; Sat 26 Jun is the next day anyone is here for it", where the wait ended on a day before. */
export function nextDay({ job, holder, ready }: ChainLink, plan: Plan, start: number, say: Voice): string {
  if (holder.kind === "window" || holder.kind === "on-purpose" || holder.kind === "start-of-build") return "";
  const free = holder.kind === "delivery" ? Math.max(ready, plan.deliveries[holder.delivery]?.arrives ?? ready) : ready;
  if (free >= start || say.day(free) === say.day(start)) return "";
  const step = say.build?.steps[job];
  const here = step?.hands.length === 0 ? `the next day of ${say.thing("calendars", step.calendar)}` : "the next day anyone is here for it";
  return `; ${say.day(start)} is ${here}`;
}

/** The chain that sets the finish, from first to last. */
export function chainSentences(plan: Plan, build: Build, display?: Display): string[] {
  return plan.chain.map((link) => chainSentence(link, plan, build, display));
}

/** Names of the people on a step: "Ruth and Owen". */
export function peopleWords(ids: readonly string[], build: Build): string {
  const say = voice(build);
  return ids.length === 0 ? "" : listed(ids.map((id) => say.thing("people", id)));
}

/** What a plan rests on. */
export function assumptionSentence(code: string): string {
  const said: Readonly<Record<string, string>> = {
    "plan.strength-at-20":
      "Strength is expected as at a steady 20 °C (68 °F) after the 28 day strength; nothing has shown it. Before shores or loads rely on it, have it tested, or ask your engineer.",
    "plan.nobody-named": "Nobody is named in this build: it is planned by its calendars alone.",
  };
  return said[code] ?? "This plan rests on an assumption that is not described.";
}
