import type { Display, ElapsedMinute } from "../../core/base";
import { amountOf, type Build } from "../../core/build";
import { clocksOf } from "../../core/clock";
import type { ChainLink, Holder, Plan, StepDates } from "../../core/plan";
import { listed, sentence, spelled, spelledFigure } from "../text";
import { type Voice, voice } from "../voice";
import { promisedWords } from "./promised";

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
  const written = voice.amount(amountOf(amount));
  const strong = / of the strength of .*$/;
  if (amount.on.kind === "strength")
    return `it waits until ${job} is expected to have ${written.replace(strong, written.includes("%") ? " of its strength" : "")}; nothing has shown it yet`;
  const wait = voice.build?.waits.find((one) => one.id === statements[arcs.reason[row] ?? -1]?.id);
  const named = wait !== undefined && !wait.plain && wait.name !== "" && wait.name !== wait.id.split("#")[0];
  return `it comes ${written} after ${job}${named ? ` (${voice.inside(wait.name)})` : ""}`;
}

/** "it waits for “Tie the bars”": what keeps a job from being earlier, without a capital or a stop. */
function holderClause(step: number, { holder, start }: StepDates, plan: Plan, voice: Voice): string {
  switch (holder.kind) {
    case "start-of-build":
      return "nothing holds it: it is as early as the build begins";
    case "wait":
      return waitClause(plan, holder.row, jobWords(holder.job, voice), voice);
    case "delivery":
      return `it waits for ${jobWords(plan.steps.length + holder.delivery, voice)}, ${deliveryClause(holder.delivery, plan, voice)}`;
    case "people":
      return busyWords(holder, step, plan, voice);
    case "equipment":
      return `until then ${jobWords(holder.job, voice)} has ${voice.any(holder.of)}`;
    case "stock":
      return `it needs ${voice.any(holder.of)}, out with ${jobWords(holder.job, voice)} until then`;
    case "room":
      return `there is no more room at ${voice.place(holder.of)} until ${jobWords(holder.job, voice)} is done`;
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
    case "notice":
      return `what it needs booked can be had from ${voice.moment(holder.date)}`;
    case "resumes":
      return `what is not done yet goes on from ${voice.moment(holder.date)}`;
    case "done":
      return "it is done";
    case "kept":
      return "it stays where the kept plan has it, as nothing is gained by doing it earlier";
    case "aim":
      return "it waits on purpose, for what this plan is to be good at";
    case "on-purpose":
      return `it is put late on purpose, close before ${jobWords(holder.job, voice)}`;
  }
}

/** "promised for Mon 14 Jun", "which could be there from Tue 13 Apr; order by Thu 15 Apr": goods are there or not, they do not begin. */
function deliveryClause(index: number, plan: Plan, voice: Voice): string {
  const delivery = voice.build?.deliveries[index];
  const dates = plan.deliveries[index];
  if (delivery === undefined || dates === undefined) return "which has no date";
  if (delivery.promised !== null) return promisedWords(delivery.id, dates.arrives, voice);
  const from = plan.chain.find(({ job }) => job === plan.steps.length + index)?.ready;
  const there =
    from === undefined || from >= dates.arrives
      ? `which could be there on ${voice.day(dates.arrives)}`
      : `which could be there from ${voice.day(from)}`;
  return dates.orderBy === null ? there : `${there}; order by ${voice.day(dates.orderBy)}`;
}

/** Of a delivery by itself: "Promised for Mon 14 Jun." */
export function deliverySentence(index: number, plan: Plan, build: Build, display?: Display): string {
  return sentence(deliveryClause(index, plan, voice(build, display)).replace(/^which /, "it "));
}

/**
 * Who of those that a step takes are on another until it is done; `of`: the ids of those who could do it, with spaces between. Worded so that any name
 * goes, "you" and plurals too.
 */
function busyWords({ of, job }: { readonly of: string; readonly job: number }, step: number, plan: Plan, voice: Voice): string {
  const other = jobWords(job, voice);
  const dates = plan.steps[job];
  const until = dates === undefined || dates.finish === plan.steps[step]?.start ? "then" : voice.moment(dates.finish);
  const known = of.split(" ").filter((id) => voice.build?.at.person.has(id));
  const busy = (id: string): boolean => dates?.people.includes(id) === true;
  const all = voice.build?.people.length ?? 0;
  const both = new Set([...known, ...(plan.steps[step]?.people ?? [])].filter(busy));
  if (both.size > 1 && both.size === all) return `${all === 2 ? "both" : `all ${spelledFigure(all)}`} are on ${other} until ${until}`;
  if (both.size > 0) return `${other} takes ${voice.people([...both])} until ${until}`;
  return known.length === 0 || known.length === all
    ? `too few people are free until ${other} is done`
    : `too few of ${voice.people(known)} are free until ${other} is done`;
}

/** When what holds a step lets go; null where its start says it all. */
function freeAt(holder: Holder, plan: Plan): number | null {
  switch (holder.kind) {
    case "wait": {
      const { fromEnd } = plan.access.arcs;
      const dates = plan.steps[holder.job];
      const waited = plan.waits?.find(({ row }) => row === holder.row)?.ready;
      return waited ?? (fromEnd[holder.row] === 0 ? dates?.start : dates?.finish) ?? null;
    }
    case "delivery": {
      const link = plan.chain.find(({ job }) => job === plan.steps.length + holder.delivery);
      return link?.ready ?? plan.deliveries[holder.delivery]?.arrives ?? null;
    }
    case "people":
    case "equipment":
    case "room":
    case "alone":
    case "stock":
      return plan.steps[holder.job]?.finish ?? null;
    case "not-before":
    case "notice":
    case "resumes":
      return holder.date;
    default:
      return null;
  }
}

/**
 * "it waits for “Tie the bars” to be done; Sat 26 Jun is the next day anyone is here for it": what holds a step, and why it does not start as soon as
 * that lets go.
 */
export function heldClause(step: number, plan: Plan, voice: Voice): string {
  const dates = plan.steps[step];
  if (dates === undefined) return "it has no date";
  return `${holderClause(step, dates, plan, voice)}${nextDay(step, plan, voice)}`;
}

/** What holds a step where it is: "“Pour the slab” begins Sat 26 Jun, 7:30: it waits for the pump, there on ...". */
export function holderSentence(step: number, plan: Plan, build: Build, display?: Display): string {
  const dates = plan.steps[step];
  const say = voice(build, display);
  if (dates === undefined) return sentence(`${say.step(build.steps[step]?.id)} has no date`);
  return sentence(`${say.step(build.steps[step]?.id)} begins ${say.moment(dates.start)}: ${heldClause(step, plan, say)}`);
}

/** One link of the chain that sets the finish, without the name of its job: why it is when it is. */
function linkClause({ job }: ChainLink, plan: Plan, voice: Voice): string {
  const steps = plan.steps.length;
  return job < steps ? heldClause(job, plan, voice) : deliveryClause(job - steps, plan, voice).replace(/^which /, "it ");
}

/** As `chainSentences` says it of one link, without the name of its job and its start. */
export function chainReason(link: ChainLink, plan: Plan, build: Build, display?: Display): string {
  return sentence(linkClause(link, plan, voice(build, display)));
}

function chainSentence(link: ChainLink, plan: Plan, build: Build, display?: Display): string {
  const say = voice(build, display);
  const start = plan.steps[link.job]?.start;
  const when = start === undefined ? "" : `, ${say.moment(start)}`;
  return sentence(`${jobWords(link.job, say)}${when}: ${linkClause(link, plan, say)}`);
}

/** "; Sat 26 Jun is the next day anyone is here for it", where what held the step let go on a day before. */
function nextDay(job: number, plan: Plan, say: Voice): string {
  const { build } = say;
  const dates = plan.steps[job];
  const step = build?.steps[job];
  if (build === null || step === undefined || dates === undefined) return "";
  const free = freeAt(dates.holder, plan);
  if (free === null || free >= dates.start || say.day(free) === say.day(dates.start)) return "";
  const day = say.day(dates.start);
  if (step.hands.length === 0) return `; ${day} is the next day of ${say.thing("calendars", step.calendar)}`;
  const begins = clocksOf(build)
    .work(step.calendar)
    .begin(Math.max(0, free) as ElapsedMinute);
  return say.day(begins) === day
    ? `; ${day} is the next day anyone is here for it`
    : `; ${day} is the next day with people and time enough for it`;
}

/** The chain that sets the finish, from first to last. */
export function chainSentences(plan: Plan, build: Build, display?: Display): string[] {
  return plan.chain.map((link) => chainSentence(link, plan, build, display));
}

/** Links of the chain; a run of `least` or more that wait for people, one after the other, comes as one. */
export function chainRuns(plan: Plan, least = 3): readonly (readonly ChainLink[])[] {
  const runs: ChainLink[][] = [];
  for (const link of plan.chain) {
    const last = runs[runs.length - 1];
    const [mine, theirs] = [link.holder, last?.[0]?.holder];
    if (last !== undefined && mine.kind === "people" && theirs?.kind === "people") last.push(link);
    else runs.push([link]);
  }
  return runs.flatMap((run) => (run.length < least ? run.map((link) => [link]) : [run]));
}

/** What a folded run says: "Five steps one after the other, since all of them take Ruth." */
export function runSentence(run: readonly ChainLink[], build: Build): string {
  const ids = new Set(
    run.flatMap(({ holder }) => (holder.kind === "people" ? holder.of.split(" ") : [])).filter((id) => build.at.person.has(id)),
  );
  const who = ids.size === 1 && build.people.length > 1 ? voice(build).people([...ids]) : "the same people";
  return sentence(`${spelled(run.length, "step")} one after the other, since all of them take ${who}`);
}

/** Names of the people on a step: "Ruth and Owen". */
export function peopleWords(ids: readonly string[], build: Build): string {
  const say = voice(build);
  return ids.length === 0 ? "" : listed(ids.map((id) => say.thing("people", id)));
}

/** What a plan rests on. */
export function assumptionSentence(code: string): string {
  const said: Readonly<Record<string, string>> = {
    "plan.strength-at-site":
      "Strength is expected after the usual temperatures of the site, or those forecast or measured; nothing has shown it. Before shores or loads rely on it, have it tested, or ask your engineer.",
    "plan.strength-at-20":
      "Strength is expected as at a steady 20 °C (68 °F) after the 28 day strength; nothing has shown it. Before shores or loads rely on it, have it tested, or ask your engineer.",
    "plan.nobody-named": "Nobody is named in this build: it is planned by its calendars alone.",
  };
  return said[code] ?? "This plan rests on an assumption that is not described.";
}
