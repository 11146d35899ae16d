import type { Finding } from "../../core/base";
import type { CompareCode, PlanCode } from "../../core/plan";
import type { Told } from "../build/sayings";
import { howMany, readable, spelled, spelledFigure } from "../text";
import { figure, hoursEndWords, list, text, workWords } from "../voice";
import { promisedWords } from "./promised";

const lacks: Readonly<Record<string, string>> = {
  people: "people",
  equipment: "equipment",
  room: "room",
  alone: "a place to itself",
  stock: "stock",
  deadline: "time before its latest date",
  wait: "a way to keep its longest wait",
};

/** Site days in words; none is said as such. */
export const siteDays = (days: number): string => spelled(Math.abs(days), "site day");

/** How many more orders the dates have ruled out; empty for none. */
function otherOrders(detail: Told["detail"]): string {
  const others = figure(detail, "otherOrders");
  if (others === 0) return "";
  return `; ${spelled(others, "other order")} ${others === 1 ? "was" : "were"} tried, and the dates rule ${others === 1 ? "it" : "them"} out too`;
}

/** What planning finds. */
export const planSayings: Readonly<Record<PlanCode, (told: Told) => string>> = {
  "plan.windows": ({ detail, voice, where }) =>
    `The dates cannot all be kept${where.id === undefined ? "" : `: it is ${voice.step(where.id)} that does not fit`}${otherOrders(detail)}`,
  "plan.hours-end": ({ detail, voice }) =>
    `${voice.step(text(detail, "step"))} comes too late: ${hoursEndWords(detail, voice)}${otherOrders(detail)}`,
  "plan.not-found": ({ detail, voice }) => {
    const what = lacks[text(detail, "lacks")] ?? "what it needs";
    const of = text(detail, "of");
    const bound = figure(detail, "boundAt");
    return `No plan was found: ${voice.step(text(detail, "step"))} lacks ${what}${of === "" ? "" : ` (${of === "hands" ? "hands" : voice.any(of)})`}. Without people, equipment, room and stock it could all be done by ${voice.finish(bound)}; whether with them takes a longer look`;
  },
  "plan.ruled-out": ({ where, voice }) =>
    `No plan can keep all of this${where.id === undefined ? "" : `: ${voice.step(where.id)} does not fit with the people, equipment, room and stock there are`}; every order and every date was ruled out`,
  "plan.calendar-never": ({ detail, voice }) =>
    `${voice.step(text(detail, "step"))} takes ${workWords(figure(detail, "minutes"))}${detail.unbroken === true ? " without a break" : ""}, and ${voice.thing("calendars", text(detail, "calendar"))} never ${detail.unbroken === true ? "has that much in one go" : "has that much, with the people it asks for"}; shorten it, lengthen the day, or let it pause`,
  "plan.too-few-people": ({ detail, voice }) => {
    const have = figure(detail, "have");
    const steps = list(detail, "steps");
    const step = voice.build?.steps[voice.build.at.step.get(text(detail, "step") as never) ?? -1];
    if (steps.length < 2 && step?.notAlone && step.hands.reduce((sum, { number }) => sum + number, 0) < 2)
      return `${voice.step(step.id)} is not to be done alone, and the build names one person; name somebody else who can be there`;
    const who =
      steps.length > 3
        ? `${voice.step(steps[0])} and ${spelled(steps.length - 1, "more step")} ask for`
        : steps.length > 1
          ? `${voice.steps(steps)} each ask for`
          : `${voice.step(text(detail, "step"))} asks for`;
    return `${who} ${voice.role(text(detail, "role"), figure(detail, "wanted"))}, and the build names ${have === 0 ? "nobody" : spelledFigure(have)}; name more, or ask for fewer there`;
  },
  "plan.room-too-small": ({ detail, voice }) =>
    `${voice.step(text(detail, "step"))} asks for ${spelled(figure(detail, "people"), "person", "people")}, and there is room for ${spelledFigure(figure(detail, "room"))} at ${voice.place(text(detail, "place"))}; it is planned as if they took turns`,
  "plan.stock-short": ({ detail, voice }) =>
    `${spelledFigure(figure(detail, "wanted"))} of ${voice.any(text(detail, "of"))} ${figure(detail, "wanted") === 1 ? "is" : "are"} wanted at once, and there are ${figure(detail, "have") === 0 ? "none; order some" : `never more than ${spelledFigure(figure(detail, "have"))}; order more or take some down first`}`,
  "plan.equipment-short": ({ detail, voice }) =>
    `${voice.step(text(detail, "step"))} asks for ${spelledFigure(figure(detail, "wanted"))} of ${voice.any(text(detail, "of"))}, and there ${figure(detail, "have") === 1 ? "is" : "are"} ${howMany(figure(detail, "have"))}`,
  "plan.delivery-late": ({ detail, voice }) =>
    `${voice.step(text(detail, "step"))} waits ${siteDays(figure(detail, "siteDays"))} for ${voice.any(text(detail, "delivery"))}, ${promisedWords(text(detail, "delivery"), figure(detail, "arrivesAt"), voice)}; all else would let it begin on ${voice.day(figure(detail, "readyAt"))}`,
  "plan.order-by-past": ({ detail, voice }) =>
    `${voice.any(text(detail, "delivery"))} would have to be ordered by ${voice.day(figure(detail, "orderAt"))}, before the build begins; ask for a shorter lead time or begin later`,
  "plan.book-by-past": ({ detail, voice }) =>
    `${voice.any(text(detail, "booking"))} would have to be booked by ${voice.day(figure(detail, "bookAt"))}, before the build begins; ask sooner or begin later`,
  "plan.waits-for-order": ({ detail, voice }) =>
    `${voice.any(text(detail, "delivery"))} is not ticked as ordered: asked for on ${voice.day(figure(detail, "goesOnAt"))}, from when work goes on, it is here on ${voice.day(figure(detail, "arrivesAt"))}, and ${voice.step(text(detail, "step"))} waits for it; if it was ordered, tick that or write the day that is promised`,
  "plan.waits-for-booking": ({ detail, voice }) =>
    `${voice.any(text(detail, "booking"))} is not ticked as booked: asked for on ${voice.day(figure(detail, "goesOnAt"))}, from when work goes on, it can be had from ${voice.day(figure(detail, "fromAt"))}, and ${voice.step(text(detail, "step"))} waits for it; if it was booked, tick that or write the date`,
  "plan.book-overdue": ({ detail, voice }) =>
    `${voice.any(text(detail, "booking"))} had to be booked by ${voice.day(figure(detail, "bookAt"))}, and work goes on from ${voice.day(figure(detail, "goesOnAt"))}; tick that this was done, or write a date that can be had`,
  "plan.nobody-named": () => "Nobody is named in this build, so it is planned by its calendars alone",
  "plan.done-first": ({ detail, voice }) =>
    `${voice.step(text(detail, "other"))} is done, though ${voice.step(text(detail, "step"))} was to come before it; tick that too if it was done, else it is planned after`,
  "plan.hand-over": ({ detail, voice }) =>
    `${voice.step(text(detail, "step"))} wants ${spelled(figure(detail, "wanted"), "person", "people")}, and ${figure(detail, "named") === 0 ? "nobody is" : spelled(figure(detail, "named"), "is", "are")} there for all of it; somebody has to take over in the middle`,
};

/** What a comparison comes to. */
export const compareSayings: Readonly<Record<CompareCode, (told: Told) => string>> = {
  "compare.same": ({ detail, voice }) => `Nothing moves: the finish stays ${voice.finish(figure(detail, "finishAt"))}`,
  "compare.later": ({ detail, voice }) => {
    const days = figure(detail, "siteDays");
    const cost = days === 0 ? "within the same site day" : `${siteDays(days)} lost`;
    return `The finish goes from ${voice.finish(figure(detail, "beforeAt"))} to ${voice.finish(figure(detail, "finishAt"))}: ${cost}`;
  },
  "compare.earlier": ({ detail, voice }) => {
    const days = figure(detail, "siteDays");
    const gain = days === 0 ? "within the same site day" : `${siteDays(days)} gained`;
    return `The finish comes forward from ${voice.finish(figure(detail, "beforeAt"))} to ${voice.finish(figure(detail, "finishAt"))}: ${gain}`;
  },
  "compare.inside-slack": ({ detail, voice }) =>
    `${spelled(figure(detail, "moved"), "step moves", "steps move")} and the finish stays ${voice.finish(figure(detail, "finishAt"))}`,
  "compare.before-next-site-day": ({ detail, voice }) => {
    const [before, arrives] = [figure(detail, "beforeAt"), figure(detail, "arrivesAt")];
    const shift = Math.round(Math.abs(arrives - before) / 1440);
    const by = shift === 0 ? "at another hour" : `${spelled(shift, "day")} ${arrives > before ? "late" : "early"}`;
    return `${voice.any(text(detail, "delivery"))} coming ${by} costs nothing: ${voice.day(before)} and ${voice.day(arrives)} both fall before work with it begins on ${voice.day(figure(detail, "nextAt"))}`;
  },
  "compare.no-plan": ({ detail }) => {
    const status = text(detail, "status");
    const why =
      status === "no-order"
        ? "no order works"
        : status === "no-dates"
          ? "the dates cannot be kept"
          : status === "not-found"
            ? "none was found with these people and this stock"
            : readable(status);
    return `There is no plan to compare: ${why}`;
  },
};

/**
 * Findings with one for one cause: steps that ask in vain for the same people are told together, and what planning stops at is not told a second time as
 * something to look at in the file.
 */
export function gathered(findings: readonly Finding[]): Finding[] {
  const people = new Map<string, Finding>();
  for (const finding of findings.filter(({ code }) => code === "plan.too-few-people")) {
    const before = people.get(cause(finding));
    const steps = [...(before === undefined ? [] : list(before.detail, "steps")), text(finding.detail, "step")];
    people.set(cause(finding), { ...finding, ...before, detail: { ...finding.detail, ...before?.detail, steps } });
  }
  const asked = new Set([...people.values()].flatMap(({ detail }) => list(detail, "steps").map(written)));
  const short = new Set(findings.flatMap(({ code, detail }) => (/^plan\.(stock|equipment)-short$/.test(code) ? [text(detail, "of")] : [])));
  return findings.flatMap((finding) => {
    // That there is not enough of it has been said, and no longer look finds more.
    const { code, detail } = finding;
    if (code === "plan.not-found" && (short.has(text(detail, "of")) || (asked.size > 0 && text(detail, "lacks") === "people"))) return [];
    if (code === "plan.calendar-never" && asked.has(written(text(detail, "step")))) return [];
    if (finding.code === "build.nobody-can" && asked.has(finding.where.id ?? "")) return [];
    if (finding.code === "build.too-few" && short.has(text(finding.detail, "of"))) return [];
    if (finding.code !== "plan.too-few-people") return [finding];
    const all = people.get(cause(finding));
    people.delete(cause(finding));
    return all === undefined ? [] : [all];
  });
}

const cause = ({ detail }: Finding): string => `${text(detail, "role")} ${figure(detail, "wanted")} ${figure(detail, "have")}`;
const written = (id: string): string => id.split("#")[0] ?? "";
