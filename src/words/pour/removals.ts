import { type Display, type ElapsedMinute, formatLength, formatPressure } from "../../core/base";
import { type Build, isLoad, isVault, type RemovalSort } from "../../core/build";
import type { AlsoWaits, CureSheet, RemovalSheet } from "../../core/pour";
import { listed, sentence } from "../text";
import { type Voice, voice } from "../voice";

/** What a removal is about, at the front of a sentence, and whether it is one or many. */
const subjects: Readonly<Record<RemovalSort, string>> = {
  sides: "The side forms may come off",
  soffit: "The forms under it may come off",
  shores: "The shores may come out",
  backfill: "Backfill may go against it",
  load: "It may be loaded",
  anchors: "Nuts on its anchors may be drawn tight",
};

/** Earth over a vault is a load, whatever it is called. */
function subjectOf({ removal }: RemovalSheet, build: Build): string {
  const pour = build.pours.find(({ removals }) => removals.includes(removal));
  return pour !== undefined && isVault(pour) && isLoad(pour, removal) ? "Earth or another load may lie on it" : subjects[removal.sort];
}

/** A ground as what has to be over or reached, without its date. */
function ground({ by, detail }: RemovalSheet["grounds"][number], pour: Voice, strength_MPa: number): string {
  const share = typeof detail.share === "number" ? detail.share : 0;
  const days = typeof detail.days === "number" ? detail.days : 0;
  const warm = pour.display === "us" ? "50 °F" : "10 °C";
  const asked = `${share / 10} % (${formatPressure((share / 1000) * strength_MPa, pour.display)})`;
  if (by === "12 h") return `12 h at ${warm} or warmer`;
  if (by === "table") {
    const span =
      typeof detail.span_mm === "number" && detail.span_mm > 0 ? ` for a clear span of ${formatLength(detail.span_mm, pour.display)}` : "";
    return `${days} days at ${warm} or warmer by the table${span}`;
  }
  if (by === "28 days") return `28 days at ${warm} or warmer`;
  if (by === "days") return `${days} ${days === 1 ? "day" : "days"}`;
  return by === "shown" ? `${asked} shown by a test` : `${asked} expected`;
}

/** Whose word a choice of days is; days that are not written are what is usual. */
const said = (removal: RemovalSheet): string =>
  removal.removal.days === null
    ? ", as is usual"
    : removal.saidBy === null
      ? ""
      : removal.saidBy === "own guess"
        ? ", a guess of your own"
        : `, as the ${removal.saidBy} says`;

/** "a hold until shown": how far a date can be relied on. */
export function removalState(removal: RemovalSheet): string {
  const by = removal.grounds[removal.governs]?.by;
  if (by === "shown") return "shown";
  if (removal.hold) return "a hold until shown";
  if (by !== "days" || removal.removal.days === null || removal.saidBy === null) return "expected";
  return removal.saidBy === "own guess" ? "a guess of your own" : "";
}

/** Each ground with its date, the one that sets the date first. */
export function groundWords(removal: RemovalSheet, build: Build, strength_MPa: number, display?: Display): string {
  const say = voice(build, display);
  const dated = (one: RemovalSheet["grounds"][number]): string => `${ground(one, say, strength_MPa)} on ${say.day(one.at)}`;
  const first = removal.grounds[removal.governs];
  if (first === undefined) return "Nothing written down speaks for a date.";
  const others = removal.grounds.filter((_, index) => index !== removal.governs).map(dated);
  const by = first.by === "days" ? said(removal) : "";
  return sentence(`${dated(first)}${by}${others.length === 0 ? "" : `; before that ${listed(others)}`}`);
}

/** One sentence: when, on which ground, and whether it is expected or shown. */
export function removalSentence(removal: RemovalSheet, build: Build, strength_MPa: number, display?: Display): string {
  const say = voice(build, display);
  const first = removal.grounds[removal.governs];
  const subject = subjectOf(removal, build);
  if (first === undefined) return sentence(`${subject} when someone qualified says so; nothing written down speaks for a date`);
  const when: ElapsedMinute = first.at;
  const by = `${ground(first, say, strength_MPa)}${first.by === "days" ? said(removal) : ""}`;
  const others = removal.grounds.filter((_, index) => index !== removal.governs);
  const last = others.reduce<RemovalSheet["grounds"][number] | null>((late, one) => (late === null || one.at > late.at ? one : late), null);
  const also = last === null ? "" : `; before that ${ground(last, say, strength_MPa)} on ${say.day(last.at)}`;
  const hold =
    removal.hold && first.by !== "shown" ? "; nothing has shown its strength, so it stays a hold until a test or your engineer does" : "";
  return sentence(`${subject} from ${say.day(when)}: ${by}${also}${hold}`);
}

/** What a pour needs after it is placed: kept wet, kept warm, floated in daylight. One sentence each. */
export function careSentences(cure: CureSheet, build: Build, display?: Display): { readonly says: string; readonly warn: boolean }[] {
  const say = voice(build, display);
  const us = say.display === "us";
  const degrees = (celsius: number) => (us ? `${Math.round(celsius * 1.8 + 32)} °F` : `${Math.round(celsius)} °C`);
  const kelvin = (k: number) => (us ? `${Math.round(k * 1.8)} °F` : `${Math.round(k)} °C`);
  const { wet, cold, floating } = cure;
  const visits = wet.visits === 0 ? "" : `, with ${wet.visits === 1 ? "one visit" : `${wet.visits} visits`} to see to it`;
  const out = [
    {
      says: sentence(`Keep it wet or sealed for ${wet.days} days, until ${say.day(wet.until)}${visits} (from: ${wet.document})`),
      warn: false,
    },
  ];
  if (cold.called) {
    const days = cold.for_min === null ? "until its strength is shown" : `for ${cold.for_min / 1440} days`;
    out.push({
      says: sentence(
        `It may fall to ${degrees(cold.lowest_C)} while it is young: place it at ${degrees(cold.hold_C)} or warmer and hold it there ${days}, then let it cool by no more than ${kelvin(cold.drop_K)} in a day (ACI 306R)${cold.given ? "; the blankets written down here do that" : "; nothing written down here does that"}`,
      ),
      warn: !cold.given,
    });
  }
  if (floating !== null) {
    const sunset = floating.sunset === null ? "" : `; the sun sets at ${timeOf(say.moment(floating.sunset))}`;
    out.push({
      says: sentence(
        floating.inDaylight
          ? `It takes the float from about ${timeOf(say.moment(floating.from))} and is finished by ${timeOf(say.moment(floating.to))}, in daylight${sunset}`
          : `It takes the float from about ${timeOf(say.moment(floating.from))} and is finished only at ${timeOf(say.moment(floating.to))}${sunset}: start earlier, or have lights there`,
      ),
      warn: !floating.inDaylight,
    });
  }
  return out;
}

/** "15:30" of "Sat 19 Jun, 15:30". */
const timeOf = (moment: string): string => moment.split(", ").at(-1) ?? moment;

/** One sentence of a step that waits for the concrete by what it says itself. */
export function alsoSentence({ amount, by }: AlsoWaits, build: Build, display?: Display): string {
  const say = voice(build, display);
  const once = / of [a-z]/.test(amount) ? say.amount(amount) : `${say.amount(amount)} after it is placed`;
  return sentence(by === "leans" ? `It leans on this concrete, from ${once}` : `Not before ${once}`);
}
