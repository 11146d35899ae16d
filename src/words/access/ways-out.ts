import type { Display, WayOut, WayOutKind } from "../../core/base";
import type { Build } from "../../core/build";
import { ofThing } from "../plan/of-thing";
import { listed, sentence, spelled } from "../text";
import { type Detail, figure, list, text, type Voice, voice } from "../voice";

const piece = (detail: Detail, voice: Voice): string => {
  const many = list(detail, "pieces");
  return many.length > 0 ? voice.pieces(many) : voice.piece(text(detail, "piece") === "" ? undefined : text(detail, "piece"));
};
const step = (detail: Detail, voice: Voice): string => voice.step(text(detail, "step") === "" ? undefined : text(detail, "step"));
const place = (detail: Detail, voice: Voice): string => voice.place(text(detail, "place") === "" ? undefined : text(detail, "place"));
const other = (detail: Detail, voice: Voice): string => (text(detail, "other") === "" ? "" : voice.step(text(detail, "other")));

/** What a step asked for by name no longer does: else it would be had in name only. */
function without(detail: Detail, voice: Voice): string {
  const left = list(detail, "emptied");
  if (left.length === 0) return "";
  const what = left.length === 1 && left[0] === text(detail, "piece") ? "it" : voice.pieces(left);
  return `; ${step(detail, voice)} is then done without ${what}`;
}

/** What to do, kind by kind. */
export const ways: Readonly<Record<WayOutKind, (detail: Detail, voice: Voice) => string>> = {
  bench: (detail, voice) => {
    if (other(detail, voice) !== "") return `Do ${step(detail, voice)} on the bench, before ${other(detail, voice)}`;
    const unit = text(detail, "piece") === "" ? "it" : piece(detail, voice);
    return `Do ${step(detail, voice)} beforehand on the bench, and bring ${unit} in as one`;
  },
  "leave-face-off": (detail, voice) =>
    `Leave ${piece(detail, voice)} off until ${other(detail, voice) || step(detail, voice)} is done${without(detail, voice)}`,
  "clean-out": (detail, voice) => {
    const id = text(detail, "place");
    if (id === "") return `Cut a clean-out at the foot for ${step(detail, voice)}, and shut it again`;
    // Nothing closes or fills the place: there is nothing to shut again.
    if (detail.open === true)
      return `Put up another way to ${place(detail, voice)} (a ladder, a scaffold), and have it there before ${step(detail, voice)}`;
    const filled = voice.build?.pieces.some(({ fills, sort }) => sort !== "earth" && fills.some((one) => one === id)) === true;
    const inForm = voice.build?.pieces.some(({ closes, sort }) => sort === "form" && closes.some((one) => one.place === id)) === true;
    if (!filled && !inForm)
      return `Make another way to ${place(detail, voice)} for ${step(detail, voice)} (a clean-out, a ladder, a scaffold), and shut it again`;
    return `Cut a clean-out to ${place(detail, voice)} for ${step(detail, voice)}, and shut it ${filled ? "before that is filled" : "again"}`;
  },
  split: (detail, voice) => {
    if (text(detail, "way") !== "") {
      const parts = figure(detail, "parts");
      return `Make ${piece(detail, voice)} in ${parts > 1 ? spelled(parts, "equal part") : "parts"} that fit ${voice.by(text(detail, "way"))}`;
    }
    if (text(detail, "piece") !== "") return `Split ${step(detail, voice)} in two, with a step of its own for ${piece(detail, voice)}`;
    return `Split ${step(detail, voice)} in two${other(detail, voice) === "" ? "" : `, one part before and one after ${other(detail, voice)}`}`;
  },
  later: (detail, voice) => `Put ${piece(detail, voice)} up later${other(detail, voice) === "" ? "" : `, after ${other(detail, voice)}`}`,
  "down-between": (detail, voice) => `Take ${piece(detail, voice)} down for ${step(detail, voice)}, and put it up again`,
  "second-inspection": (detail, voice) =>
    `Have a second inspection${text(detail, "place") === "" ? "" : ` at ${place(detail, voice)}`}${other(detail, voice) === "" ? "" : `, after ${other(detail, voice)}`}, besides ${step(detail, voice)}`,
  tick: (detail, voice) => `Tick ${step(detail, voice)} too, if it was done before ${other(detail, voice)}, and correct when that was`,
  untick: (detail, voice) => `Take the tick off ${step(detail, voice)}, if it is not done after all`,
  "move-date": (detail, voice) => {
    if (text(detail, "begins") !== "")
      return `Let the build begin on ${voice.written(text(detail, "begins"))}, and go on with what is left on ${voice.written(text(detail, "goesOn"))}`;
    const id = text(detail, "step") || text(detail, "delivery") || text(detail, "booking");
    const many = list(detail, "steps");
    const what = many.length > 0 ? voice.steps(many) : text(detail, "step") === "" ? voice.any(id) : voice.step(id);
    const to = text(detail, "to") || text(detail, "date");
    const key = { notBefore: "the earliest date", deadline: "the latest date", fixed: "the fixed date" }[text(detail, "key")];
    const thing = key === undefined ? what : `${key} of ${what}`;
    return to === "" ? `Give up ${thing}` : `Move ${thing} to ${voice.written(to)}`;
  },
  "asked-for": (detail, voice) =>
    text(detail, "booking") === ""
      ? `Tick that ${voice.any(text(detail, "delivery"))} is ordered, if that was done`
      : `Tick that ${voice.any(text(detail, "booking"))} is booked, if that was done`,
  "drop-wait": (detail, voice) => {
    const choice = voice.build?.choices.find((one) => one.id === text(detail, "choice"));
    if (choice !== undefined) return `Drop the choice between ${listed(choice.either.map(({ name }) => voice.inside(name)))}`;
    const wait = voice.build?.waits.find((one) => one.id === text(detail, "wait") || one.id === text(detail, "id"));
    if (wait !== undefined) {
      const side = text(detail, "side");
      const limit =
        wait.least !== null && wait.most !== null && side !== "" ? `the ${side === "most" ? "longest" : "shortest"} wait of ` : "";
      const named = wait.plain || wait.name === "" || wait.name === wait.id.split("#")[0];
      const between = `${voice.step(wait.from)} and ${voice.step(wait.to)}`;
      return `Drop ${limit === "" ? "the link" : limit.trimEnd().replace(/ of$/, "")} between ${between}${named ? "" : ` (${voice.inside(wait.name)})`}`;
    }
    const to = other(detail, voice);
    return to === "" ? `Drop the link at ${step(detail, voice)}` : `Drop the link between ${step(detail, voice)} and ${to}`;
  },
  "one-more": (detail, voice) => {
    const who = list(detail, "who");
    const of = text(detail, "of");
    const on = listed(list(detail, "dates").map((date) => voice.written(date)));
    switch (text(detail, "offer")) {
      case "helper-day":
        return who.length === 0 ? `Have one more helper on ${on}` : `Have ${voice.people(who)} come on ${on} too`;
      case "day-off":
        return `Spend ${list(detail, "dates").length > 1 ? "days off" : "a day off"} on ${on} (${voice.people(who)})`;
      case "visit-day":
        return `Have ${voice.thing("calendars", of)} on ${on} too`;
      case "other-date":
        return `Ask for another date for ${voice.thing("bookings", of)}`;
      default:
        return `Have ${ofThing(of, figure(detail, "number"), voice)}`;
    }
  },
};

const short: Readonly<Record<string, string>> = {
  "no-order": "Mends this; what else is wrong stays.",
  "no-dates": "Gives an order, but the dates still cannot be met.",
  "not-found": "Gives an order; no plan was found for it.",
};

/** What a way out does to the finish: "The finish stays.", "Four site days lost: finishes Sat 19 Jun, 16:00."; empty where that was not tried. */
export function effectSentence({ detail }: WayOut, build: Build): string {
  const leads = text(detail, "leads");
  if (leads !== "planned") return short[leads] ?? "";
  const at = voice(build).finish(figure(detail, "finishAt"));
  if (detail.finishWas === undefined) return sentence(`gives dates: finishes ${at}`);
  if (detail.finishAt === detail.finishWas) return "The finish stays.";
  const days = figure(detail, "siteDays");
  if (days === 0) return sentence(`finishes ${at}, within the same site day`);
  return sentence(`${spelled(Math.abs(days), "site day")} ${days > 0 ? "lost" : "gained"}: finishes ${at}`);
}

/** The second change of a pair. */
const besides: Readonly<Record<WayOutKind, string>> = {
  bench: "work done on the bench",
  "leave-face-off": "a face left off",
  "clean-out": "a clean-out",
  split: "a step split in two",
  later: "a piece put up later",
  "down-between": "a piece taken down in between",
  "second-inspection": "a second inspection",
  tick: "one more tick",
  untick: "a tick taken off",
  "move-date": "a date moved",
  "asked-for": "a tick at what is ordered or booked",
  "drop-wait": "a link dropped",
  "one-more": "one more of something",
};

/** One checked way out, as what to do. */
export function wayOutSentence(way: WayOut, build: Build, display?: Display): string {
  const also = besides[text(way.detail, "with") as WayOutKind];
  return sentence(`${ways[way.kind](way.detail, voice(build, display))}${also === undefined ? "" : `; with it goes ${also}`}`);
}
