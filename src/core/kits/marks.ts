import { formatLength } from "../base";
import type { Given } from "./kit";
import { type Lists, namer, together } from "./together";

interface Asked {
  /** Way of the ground to be dug that the marks make: nobody digs there without them. */
  readonly makes: string;
  /** Place that the marks lie on. */
  readonly on: string;
  /** Working days of the office from the request to the marks. */
  readonly notice_days: number;
  /** Days from marks to expiry. */
  readonly valid_days: number;
  /** Asked for again in time as long as anybody digs; false: all digging ends before they expire. */
  readonly renewed: boolean;
}

/** How near a mark is dug by hand only: two feet on either side (read in safety pages of utilities and towns); states differ. */
const handDig_mm = 609.6;

export const handDigCaution = (units: "us" | "metric"): string =>
  `Dig by hand within ${formatLength(units === "us" ? handDig_mm : 600, units)} of every mark, more where the office says so. Pipes and cables of the plot's own are marked by nobody: ask, look, probe.`;

/** Somebody asks again a week before marks expire: weekends lie between. */
const everyFor = (valid_days: number): number => Math.max(3, valid_days - 7);

/** Marks that are kept alive: asked for again while anybody digs, and done with after. */
function renewal(given: Given, { on, valid_days }: Asked): Lists {
  const { id, called } = namer(given);
  return {
    steps: [
      {
        id: id("marks-done"),
        name: called("all dug: let the marks go"),
        sort: "office",
        place: on,
        work: given.hours("office", 0.5),
        takes: [id("marks")],
      },
    ],
    waits: [
      {
        id: id("renewals"),
        from: id("paint-marks"),
        to: id("marks-done"),
        visits: { every: `${everyFor(valid_days)} d`, lasts: "30 min", for: "ask for the marks again before they expire" },
        why: `Marks hold ${valid_days} days and are asked for again as long as anybody digs.`,
      },
    ],
  };
}

/**
 * Marks of utilities: asked for, painted by the locators after the office's notice, photographed, gone by themselves when they expire.
 * Notice and validity are local law; usual here: two full working days, so that they come on the third, and 28 days (common practice, no source).
 */
export function utilityMarks(given: Given, asked: Asked): Lists {
  const { makes, on, notice_days, valid_days, renewed } = asked;
  const ends = renewed ? {} : { goesAfter: { is: `${valid_days} d`, from: "own guess" } };
  const office = given.common("utility-office");
  const { id, called } = namer(given);
  const once: Lists = {
    pieces: [
      { id: id("marks"), name: called("utility marks"), sort: "other", ...ends, makes: [makes] },
      // Digging wipes the marks out, so the picture is there first.
      { id: id("record"), name: called("pictures of the marks"), sort: "other", makes: [makes] },
    ],
    steps: [
      {
        id: id("ask-marks"),
        name: called("ask for utility marks"),
        sort: "office",
        place: on,
        work: given.hours("office", 1),
        reaches: [{ place: on }],
        notes: "Call before you dig: say where, how deep, and with what.",
      },
      {
        id: id("paint-marks"),
        name: called("locators paint the marks"),
        sort: "office",
        place: on,
        work: given.hours("locate", 1),
        hands: 0,
        calendar: office,
        reaches: [{ place: on }],
        puts: [id("marks")],
        cautions: [
          renewed
            ? `Marks hold ${valid_days} days: asked for again before, as long as anybody digs.`
            : `Marks hold ${valid_days} days by what was answered: all digging ends before.`,
        ],
      },
      {
        id: id("photo-marks"),
        name: called("photograph the marks with a tape"),
        sort: "photograph",
        place: on,
        work: given.hours("photograph", 1),
        reaches: [{ place: on, need: "sight" }],
        puts: [id("record")],
        leansOn: [{ piece: id("marks") }],
      },
    ],
    waits: [
      {
        id: id("notice"),
        from: id("ask-marks"),
        to: id("paint-marks"),
        least: { is: `${notice_days} days of ${office}`, from: "own guess" },
        why: "The office's notice, in its own working days.",
      },
    ],
  };
  return renewed ? together(once, renewal(given, asked)) : once;
}
