import type { Apply } from "../../access";
import type { DocumentEdit, ElapsedMinute, WayOut } from "../../base";
import type { Build } from "../../build";
import { earliest, netOf, type WitnessPart } from "../../schedule";
import type { Bound } from "../bound";
import { moreOf, otherDay } from "../one-more-edits";
import { type Offer, offersOf } from "../one-more-offers";
import { hasPlan, type Trying } from "./trying";

/** Most dates that are looked at, and on how many at most somebody can be asked to come, or a day off be spent. */
const mostDates = 40;
const mostAsked = { "helper-day": 6, "day-off": 3, "visit-day": 3 } as const;

/** Days after the parts could be done at the earliest in which one more day is still looked for where no latest date is among them. */
const beyond_min = 28 * 1440;

type Dated = keyof typeof mostAsked;
const isDated = (kind: string): kind is Dated => kind in mostAsked;

/** One more of what a refusal asks for, where the build then has a plan: days of a helper, days off, visits, another date, things. */
export function* moreWays(bound: Bound, parts: readonly WitnessPart[], edited: Apply): Trying<WayOut[]> {
  const { build, problem } = bound;
  const out: WayOut[] = [];
  const dated = offersOf(build, latest(bound, parts), "").filter((offer) => isAsked(bound, parts, offer));
  for (const offer of dated) {
    const way = yield* onDates(build, offer, edited);
    if (way !== null) out.push(way);
  }
  for (const part of parts) {
    const things = part.kind === "stock" ? problem.stocks : part.kind === "capacity" ? problem.capacities : [];
    const id = part.kind === "stock" || part.kind === "capacity" ? (things[part.index]?.id ?? "") : "";
    const kind = build.at.stock.has(id as never) ? "stock" : build.at.equipment.has(id as never) ? "equipment" : null;
    if (kind !== null) {
      const way = yield* ofThing(build, kind, id, edited);
      if (way !== null) out.push(way);
      continue;
    }
    const booked = bookedIn(bound, part);
    if (booked >= 0) {
      const booking = build.bookings.find((b) => b.step === build.steps[booked]!.id && b.date !== null)!;
      const edits = [otherDay(booking.id)];
      if (yield* hasPlan(edited(edits))) out.push(asWay("other-date", booking.id, [], 1, [], edits));
    }
  }
  return out;
}

/** The step whose booked date a part is; -1: it is none. Of a date without an hour the end of the day is what is asked for. */
function bookedIn({ fixedOf, dueOf }: Bound, part: WitnessPart): number {
  if (part.kind !== "fixed" && part.kind !== "due") return -1;
  return (part.kind === "fixed" ? fixedOf : dueOf)[part.job] === "booking" ? part.job : -1;
}

function asWay(offer: string, of: string, who: readonly string[], number: number, dates: readonly string[], edits: DocumentEdit[]): WayOut {
  return { kind: "one-more", detail: { offer, of, who, number, dates }, edits };
}

/** Until when one more day may help: the last of the latest dates among the parts. */
function latest({ problem }: Bound, parts: readonly WitnessPart[]): ElapsedMinute {
  const dues = parts.flatMap((part) =>
    part.kind === "due" ? [problem.due[part.job]!] : part.kind === "fixed" ? [problem.fixed[part.job]!] : [],
  );
  if (dues.length > 0) return Math.max(...dues) as ElapsedMinute;
  const { finish } = earliest(problem, netOf(problem));
  const jobs = parts.flatMap((part) => (part.kind === "job" ? [part.job] : []));
  return (Math.max(0, ...jobs.map((job) => finish[job]!)) + beyond_min) as ElapsedMinute;
}

/** More people, where they are what the parts are short of; a visit on another day, where the calendar of a step among them is. */
function isAsked({ build, problem }: Bound, parts: readonly WitnessPart[], { kind, id }: Offer): boolean {
  if (kind === "visit-day") return parts.some((part) => part.kind === "job" && build.steps[part.job]?.calendar === id);
  if (!isDated(kind)) return false;
  return parts.some((part) => part.kind === "capacity" && problem.capacities[part.index]!.kind === "people");
}

/** The first date on which one more mends it; where no single one does, as few of all dates as are found to be enough. */
function* onDates(build: Build, offer: Offer, edited: Apply): Trying<WayOut | null> {
  const { kind, id, who, number } = offer;
  if (!isDated(kind)) return null;
  const all = offer.choices(build).flatMap(({ date }) => date ?? []);
  const dates = all.slice(0, mostDates);
  const made = (asked: readonly string[]): { readonly edits: DocumentEdit[]; readonly build: Build | null } => {
    const edits: DocumentEdit[] = [];
    let now: Build | null = build;
    for (const date of asked) {
      const choice = now === null ? undefined : offer.choices(now).find((one) => one.date === date);
      if (choice === undefined) return { edits, build: null };
      edits.push(...choice.edits);
      now = edited(edits);
    }
    return { edits, build: now };
  };
  for (const date of dates) {
    const one = made([date]);
    if (yield* hasPlan(one.build)) return asWay(kind, id, who, number, [date], one.edits);
  }
  let left: readonly string[] = dates;
  if (left.length < 2 || !(yield* hasPlan(made(left).build))) return null;
  for (let size = left.length >> 1; size >= 1; size >>= 1) {
    for (let from = 0; from < left.length; ) {
      const fewer = [...left.slice(0, from), ...left.slice(from + size)];
      if (yield* hasPlan(made(fewer).build)) left = fewer;
      else from += size;
    }
  }
  return left.length > mostAsked[kind] ? null : asWay(kind, id, who, number, left, made(left).edits);
}

/** As few more of a stock or of equipment as are enough, up to as many again as anything asks for. */
function* ofThing(build: Build, kind: "stock" | "equipment", id: string, edited: Apply): Trying<WayOut | null> {
  const asked = [...build.pieces.flatMap(({ uses }) => uses), ...build.steps.flatMap(({ equipment }) => equipment)];
  const all = asked.reduce((sum, { of, number }) => (of === id ? sum + number : sum), 0);
  const made = (number: number): DocumentEdit[] => [moreOf(build, kind, id, number)];
  let enough = Math.ceil(all);
  if (enough < 1 || !(yield* hasPlan(edited(made(enough))))) return null;
  for (let tooFew = 0; enough - tooFew > 1; ) {
    const middle = (tooFew + enough) >> 1;
    if (yield* hasPlan(edited(made(middle)))) enough = middle;
    else tooFew = middle;
  }
  return asWay(kind, id, [], enough, [], made(enough));
}
