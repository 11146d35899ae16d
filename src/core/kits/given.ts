import { formatWork, invariant, parseQuantity } from "../base";
import type { Part } from "../build";
import { type AnswerContext, asPutIn, readAnswers } from "./answers";
import { commons } from "./common";
import type { CommonName, Given, Kit, Made, Written, WrittenWork } from "./kit";
import { type RateName, rates } from "./rates";

/** Work is written in quarters of an hour, and never as less than one. */
const quarter_min = 15;
const rounded = (time_min: number): number => Math.max(1, Math.round(time_min / quarter_min)) * quarter_min;

/** A part as its kit makes it, and the shared members it asked for. */
export interface MadePart extends Made {
  readonly commons: readonly CommonName[];
}

/** Work of a rate; where the answers replace it, their time stands for likely and the spread stays in proportion. */
function hoursOf(part: Part, name: RateName, quantity: number, hands: number): WrittenWork {
  const { low_h, likely_h, high_h, from } = rates[name];
  const replaced = part.answers[`rate.${name}`];
  const own_min = typeof replaced === "string" ? parseQuantity("time", replaced) : null;
  const scale = own_min === null ? 1 : own_min / 60 / likely_h;
  const written = (hours: number) => formatWork(rounded((hours * scale * 60 * quantity) / hands));
  return { low: written(low_h), likely: written(likely_h), high: written(high_h), from: own_min === null ? from : "own guess" };
}

/** What a kit makes of a part: pure, the same for the same answers, units and offers. */
export function makePart(kit: Kit, part: Part, context: AnswerContext): MadePart {
  const asked = new Set<CommonName>();
  const given: Given = {
    answers: readAnswers(kit, asPutIn(kit, part.answers), context),
    units: context.units,
    name: part.name,
    part: part.id,
    common: (name) => {
      invariant(commons[name] !== undefined, `nothing shared is called ${name}`);
      asked.add(name);
      return name;
    },
    hours: (rate, quantity, hands = 1) => {
      invariant(kit.rates.includes(rate), `the kit ${kit.id} does not name the rate ${rate}`);
      return hoursOf(part, rate, quantity, hands);
    },
  };
  const made = kit.make(given);
  return { ...made, lists: named(made.lists), commons: [...asked] };
}

/** Whatever is put in begins with a capital, as the names in lists and lanes do; sentences make it small again. */
function named(lists: Made["lists"]): Made["lists"] {
  const upper = (member: Written): Written =>
    typeof member.name === "string" ? { ...member, name: member.name.charAt(0).toUpperCase() + member.name.slice(1) } : member;
  return Object.fromEntries(Object.entries(lists).map(([list, members]) => [list, members.map(upper)]));
}
