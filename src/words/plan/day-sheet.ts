import { type Display, formatTemperature } from "../../core/base";
import type { Build } from "../../core/build";
import type { DaySheet, Left, Plan, ToAsk } from "../../core/plan";
import { isSeveral } from "../several";
import { listed, sentence, spelled } from "../text";
import { type Voice, voice } from "../voice";

/** What a site day's sheet says besides its steps; every list in sentences or plain names, empty where there is nothing to say. */
export interface DayWords {
  /** "Light from 5:24 to 20:31; usually 58 to 79 °F." */
  readonly light: string;
  readonly rain: readonly string[];
  readonly bring: readonly string[];
  /** What is to be ordered and booked, each with what it is of. */
  readonly asks: readonly { readonly of: ToAsk; readonly says: string }[];
  readonly left: readonly string[];
}

export function dayWords(build: Build, plan: Plan, sheet: DaySheet, display?: Display): DayWords {
  const say = voice(build, display);
  return {
    light: lightWords(sheet, say),
    rain: rainWords(build, sheet, say),
    bring: bringWords(build, plan, sheet, say),
    asks: askWords(build, plan, sheet, say, display),
    left: [...new Set(sheet.left.map((one) => leftSentence(one, build, plan, display)))],
  };
}

/** Of the air, to the degree. */
const degrees = (C: number, say: Voice): string =>
  formatTemperature(say.display === "us" ? (Math.round(C * 1.8 + 32) - 32) / 1.8 : Math.round(C), say.display);

const clock = (say: Voice, t: number): string => say.moment(t).split(", ").at(-1) ?? "";

function lightWords({ day, air }: DaySheet, say: Voice): string {
  const light = day.sunrise === null || day.sunset === null ? "" : `light from ${clock(say, day.sunrise)} to ${clock(say, day.sunset)}`;
  const source = { usual: "usually", forecast: "forecast", measured: "measured" };
  const warmth = air === null ? "" : `${source[air.source]} ${degrees(air.low_C, say)} to ${degrees(air.high_C, say)}`;
  const parts = [light, warmth].filter((part) => part !== "");
  // A figure is not parted from its degree at the end of a line.
  return parts.length === 0 ? "" : sentence(parts.join("; ").replaceAll(" °", "\u00a0°"));
}

function rainWords(build: Build, { dry, shop }: DaySheet, say: Voice): string[] {
  const names = (steps: readonly number[]): string => listed(steps.map((s) => say.step(build.steps[s]?.id)));
  const out: string[] = [];
  if (dry.length > 0) out.push(sentence(`${names(dry)} ${dry.length === 1 ? "wants" : "want"} it dry`));
  if (shop.length > 0) out.push(sentence(`in the shop meanwhile: ${names(shop.slice(0, 5))}`));
  return out;
}

function bringWords(build: Build, plan: Plan, { tools, materials, arrives }: DaySheet, say: Voice): string[] {
  const things = [...new Set([...tools, ...materials.map(({ what }) => what)])];
  const delivery = (d: number): string => say.any(build.deliveries[d]?.id ?? "");
  return [
    ...(things.length > 0 ? [`bring ${listed(things.map(say.inside))}`] : []),
    ...arrives.map((d) => `on site from ${say.day(plan.deliveries[d]!.arrives)}: ${delivery(d)}`),
  ].map(sentence);
}

/** "Order the bars by Thu 15 Apr."; where that day is past, "Ordered by now, Thu 15 Apr at the latest: the bars." */
export function askSentence({ list, id, by }: ToAsk, build: Build, past: boolean, display?: Display): string {
  const say = voice(build, display);
  const [verb, done] = list === "deliveries" ? ["order", "ordered"] : ["book", "booked"];
  const what = say.any(id);
  return sentence(past ? `${done} by now, ${say.day(by)} at the latest: ${what}` : `${verb} ${what} by ${say.day(by)}`);
}

function askWords(build: Build, plan: Plan, { day, order, book }: DaySheet, say: Voice, display?: Display): DayWords["asks"] {
  const asks: readonly ToAsk[] = [
    ...order.map((at) => ({ list: "deliveries", id: build.deliveries[at]!.id, by: plan.deliveries[at]!.orderBy! }) as const),
    ...book.map((at) => ({ list: "bookings", id: build.bookings[at]!.id, by: plan.bookings[at]!.bookBy! }) as const),
  ];
  // On the sheet of a later day what should have been done before it does not read as if there still were time.
  return asks.map((of) => ({ of, says: askSentence(of, build, of.by < day.from && say.day(of.by) !== say.day(day.from), display) }));
}

/** "The hole stays open: cover it or fence it off." of what is left when everybody goes home. */
export function leftSentence(left: Left, build: Build, plan: Plan, display?: Display): string {
  const say = voice(build, display);
  return sentence(leftWords(left, build, plan, say));
}

const stays = (pieces: readonly number[], build: Build, say: Voice): string => {
  const names = pieces.slice(0, 3).map((p) => say.piece(build.pieces[p]?.id));
  const more = pieces.length - names.length;
  const all = more > 0 ? [...names, `${spelled(more, "other")}`] : names;
  const one = pieces.length === 1 && !isSeveral(build.pieces[pieces[0] ?? -1]?.name ?? "");
  return `${listed(all)} ${one ? "stays" : "stay"}`;
};

/** Common practice, no source; what has to be fenced and guarded is for the local code. */
function leftWords(left: Left, build: Build, plan: Plan, say: Voice): string {
  switch (left.kind) {
    case "hole":
      return `${stays(left.pieces, build, say)} open: cover or fence what people, children or animals could fall into, and keep water out`;
    case "forms":
      return `${stays(left.pieces, build, say)} open to the sky: cover against leaves and rain, and look in again before the pour`;
    case "shores":
      return `${stays(left.pieces, build, say)} under load: nobody takes one out or stores anything on top`;
    case "scaffold":
      return `${stays(left.pieces, build, say)} up: take the ladder away or lock it, and tie down what the wind can lift`;
    case "bars":
      return `bars of ${say.inside(build.solids[left.solid]?.name ?? "")} stand out: put caps on them`;
    case "wet":
      return `${say.step(build.steps[left.step]?.id)} is to be kept wet or covered until ${say.day(left.until)}${left.visits === 0 ? "" : ": somebody sees to it while nobody works here"}`;
    case "frost":
      return `nights down to ${degrees(left.low_C, say)} are expected on ${say.step(build.steps[left.step]?.id)}: cover it warm, fresh concrete must not freeze`;
    case "visit": {
      const visit = plan.visits[left.visit]!;
      const who = visit.who === "" ? "somebody" : visit.who;
      return `${say.moment(visit.at)}: ${who} comes by${visit.for === "" ? "" : ` to ${visit.for}`}`;
    }
  }
}
