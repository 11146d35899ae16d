import type { Display } from "../../core/base";
import type { Build } from "../../core/build";
import type { Plan } from "../../core/plan";
import { sentence } from "../text";
import { type Voice, voice, workWords } from "../voice";

/** How much later a step may end with nothing that matters moved; where it may not, what would move. */
export function slackSentence(step: number, plan: Plan, build: Build, display?: Display): string {
  const dates = plan.steps[step];
  if (dates === undefined) return "It has no date.";
  const say = voice(build, display);
  const until = say.finish(dates.latestFinish);
  if (dates.slack > 0 && dates.onChain) return sentence(`it is on the chalk line, yet may slide to ${until} before a site day goes`);
  if (dates.slack > 0)
    return sentence(`it can be done as late as ${until} with nothing that matters moved: ${workWords(dates.slack)} of its working time`);
  if (dates.onChain) return "None: it sets the finish.";
  const why =
    kept(step, plan, say) || (dates.finish >= plan.finish ? "the build ends with it" : "what comes right after it has none either");
  return sentence(`none: ${why}`);
}

/** What must be kept, so that a step off the chain cannot slide: its own date, a limit, or what waits for it. */
function kept(at: number, plan: Plan, say: Voice): string {
  const { build } = say;
  const step = build?.steps[at];
  if (build === null || step === undefined) return "";
  if (step.fixed !== null) return `it is fixed for ${say.written(step.fixed)}`;
  const booking = build.bookings.find((one) => one.step === step.id);
  if (booking !== undefined)
    return `${say.any(booking.id)} ${booking.booked ? "is booked for" : "is to be booked for"} ${say.moment(plan.steps[at]?.start ?? 0)}`;
  const next = follows(at, plan);
  for (const one of next) {
    const other = build.steps[one];
    if (other === undefined) continue;
    const name = say.step(other.id);
    if (plan.steps[one]?.onChain) return `${name} waits for it, and that sets the finish`;
    const date = other.fixed ?? build.bookings.find(({ step: booked }) => booked === other.id)?.date;
    if (date !== null && date !== undefined) return `${name} waits for it, and that is set for ${say.written(date)}`;
    if (other.deadline !== null) return `${name} waits for it, and is to be done ${say.due(other.deadline)}`;
  }
  if (step.deadline !== null) return `it is to be done ${say.due(step.deadline)}`;
  const limit = limited(at, plan);
  if (limit >= 0) return `it may not be further apart from ${say.step(build.steps[limit]?.id)}`;
  const [first] = next;
  return first === undefined ? "" : `${say.step(build.steps[first]?.id)} waits for it and has none either`;
}

/** Steps without slack that come after this one by the order or wait for its people and things. */
function follows(at: number, plan: Plan): number[] {
  const { arcs } = plan.access;
  const after = new Set(
    plan.steps.flatMap(({ holder }, step) => ("job" in holder && holder.kind !== "on-purpose" && holder.job === at ? [step] : [])),
  );
  for (let row = 0; row < arcs.count; row += 1) {
    if (arcs.from[row] === at && arcs.orders[row] !== 0) after.add(arcs.to[row] ?? -1);
  }
  return [...after].filter((step) => plan.steps[step]?.slack === 0).sort((a, b) => a - b);
}

/** The step that this one must stay close to; -1 where there is none. */
function limited(at: number, plan: Plan): number {
  const { arcs } = plan.access;
  for (let row = 0; row < arcs.count; row += 1) {
    if ((arcs.most[row] ?? -1) >= 0 && arcs.to[row] === at) return arcs.from[row] ?? -1;
  }
  return -1;
}
