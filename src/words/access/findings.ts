import type { AccessCode } from "../../core/access";
import type { Statement } from "../../core/base";
import type { Told } from "../build/sayings";
import { listed, spelled } from "../text";
import { list, text } from "../voice";

type AccessSayings = Readonly<Record<AccessCode, (told: Told) => string>>;

const heads: AccessSayings = {
  "access.refused": ({ because, voice, ...told }) => {
    const asked = because.find(({ rule }) => rule === "asked");
    return asked === undefined
      ? `${who({ because, voice, ...told })} cannot come in the order asked for`
      : `${voice.step(asked.step)} cannot come before ${voice.step(asked.other)}`;
  },
  "access.refuted": (told) => `${who(told)} cannot be put in an order that the dates allow`,
  "access.late": (told) => `${who(told)} cannot be done in the time they are given`,
  "access.trapped": (told) => {
    const pieces = trapped(told.because);
    return pieces.length === 0
      ? `What ${who(told)} must take down cannot be got off again`
      : `${told.voice.pieces(pieces)} cannot be got off and out again`;
  },
  "access.hold-point": (told) => `${steps(told, ["hold-point"])} cannot be had as written`,
  "access.held": ({ because, voice }) => {
    const pieces = unique(because.filter(({ rule }) => rule === "held").map(({ piece }) => piece));
    return pieces.length === 0
      ? "Something would stand with nothing to hold it"
      : `${voice.pieces(pieces)} would stand with nothing to hold it`;
  },
  "access.blocked": (told) => {
    const places = unique(told.because.filter(({ rule }) => rule === "reach").flatMap(({ place }) => (place === undefined ? [] : [place])));
    const closed = places.length === 0 ? "" : `: there is no way left to ${listed(places.map((id) => told.voice.place(id)))}`;
    return `${steps(told, ["reach", "leans"])} cannot be done as written${closed}`;
  },
  "access.ring": (told) =>
    list(told.detail, "steps").length === 1
      ? `${who(told)} would have to wait for itself, so it can never begin`
      : `${who(told)} wait for each other in a ring, so none can begin`,
  "access.holds-nothing": ({ detail, voice }) =>
    `${voice.piece(text(detail, "holder"))} cannot hold ${voice.piece(text(detail, "piece"))}: what goes by itself holds nothing; name something that stays until a step takes it down`,
  "access.holds-itself": ({ detail, voice }) =>
    `Saying that ${voice.piece(text(detail, "piece"))} holds itself is worth nothing without saying from when on, like 70 % of its pour; until then what holds it must stay`,
  "access.too-hard": () =>
    "The order could not be settled within the work allowed: neither one that holds nor a proof that there is none; write down more of what must come before what",
};

/** Where the work allowed ran out: its reasons may be more than are needed, or there may be more than this. */
function cutShort({ detail }: Told): string {
  const spent = list(detail, "spent");
  return [
    spent.includes("set") ? ". Finding the fewest reasons took too long: some of those given may play no part" : "",
    spent.includes("rest") ? ". The search ended here: there may be more that cannot be built" : "",
  ].join("");
}

/** The head of each finding of order; its reasons follow one by one, each in a sentence of its own. */
export const accessSayings = Object.fromEntries(
  Object.entries(heads).map(([code, head]) => [code, (told: Told) => `${head(told)}${cutShort(told)}`]),
) as unknown as AccessSayings;

const unique = (ids: readonly (string | undefined)[]): string[] => [...new Set(ids.filter((id): id is string => id !== undefined))];

/** Pieces whose taking down is asked for something that cannot be had. */
function trapped(because: readonly Statement[]): string[] {
  const asked = unique(because.filter(({ rule }) => rule === "off").map(({ piece }) => piece));
  return asked.length > 0 ? asked : unique(because.filter(({ rule }) => rule === "up-down").map(({ piece }) => piece));
}

/** The steps that ask for what cannot be had: of the first rule that says so; else all that take part. */
function steps(told: Told, rules: readonly string[]): string {
  for (const rule of rules) {
    const ids = unique(told.because.filter((one) => one.rule === rule).map(({ step }) => step));
    if (ids.length > 0 && ids.length <= 3) return told.voice.steps(ids);
  }
  return who(told);
}

/** "“A” and “B”"; where many are concerned, the first three and how many more. */
function who({ detail, voice }: Told): string {
  const ids = list(detail, "steps");
  if (ids.length === 0) return "The pieces of this build";
  if (ids.length <= 4) return voice.steps(ids);
  return `${ids
    .slice(0, 3)
    .map((id) => voice.step(id))
    .join(", ")} and ${spelled(ids.length - 3, "more step")}`;
}
