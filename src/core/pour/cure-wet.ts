import { type ElapsedMinute, type Finding, never } from "../base";
import { isVouched, type Pour } from "../build";
import { wet_days, wetBlend_days, wetEnds_share, wetGuide_days } from "../concrete";
import { type CureContext, later } from "./cure-context";
import { found } from "./found";
import type { CureSheet } from "./result";

const day_min = 1440;

/** Wet curing that waits for warm days goes on no longer than this. Own bound. */
const most_days = 28;

interface Asked {
  readonly days: number;
  readonly document: string;
}

const guide = "UFGS 03 30 00";

function askedOf(cement: Pour["mix"]["cement"]): Asked & { readonly beside: Asked | null } {
  if (cement === "blend" || cement === "slow blend") return { days: wetBlend_days[cement], document: guide, beside: null };
  const beside = wetGuide_days[cement] === wet_days[cement] ? null : { days: wetGuide_days[cement], document: guide };
  return { days: wet_days[cement], document: "ACI 308R", beside };
}

/** Between looks, in days: kept wet it is seen to every day, covered every third, in its form every third (common practice, no source); sealed never. */
const every_days: Readonly<Record<NonNullable<Pour["cure"]["how"]>, number | null>> = {
  wet: 1,
  covered: 3,
  "in the form": 3,
  compound: null,
};

/**
 * How long it is kept wet or sealed. Days that are written run by the calendar; those of a document count at 50 °F and above, or end when a result that
 * somebody stands for shows 70 % of the specified strength.
 */
export function wetOf(c: CureContext): CureSheet["wet"] {
  const { how, days: written } = c.pour.cure;
  const { days, document, beside } = askedOf(c.pour.mix.cement);
  const until = written !== null && written > 0 ? later(c.placed, written * day_min) : endOf(c, days);
  const every = how === null ? 1 : every_days[how];
  return {
    days: written !== null && written > 0 ? written : days,
    until,
    document: written !== null && written > 0 ? (c.pour.from ?? "as written") : document,
    visits: every === null ? 0 : Math.max(1, Math.ceil((until - c.placed) / (every * day_min)) - 1),
    least: { days, document },
    beside,
  };
}

function endOf({ placed, pour, warm, clocks }: CureContext, days: number): ElapsedMinute {
  const wanted = (wetEnds_share / 1000) * pour.mix.strength_MPa;
  const shown = pour.breaks.filter((b) => isVouched(b.by) && b.strength_MPa >= wanted).map(({ at }) => clocks.time.minuteOf(at) ?? never);
  const warmed = Math.min(warm.advance(placed, days * day_min), later(placed, most_days * day_min), ...shown.filter((at) => at > placed));
  return warmed as ElapsedMinute;
}

export function wetFindings({ pour }: CureContext, wet: CureSheet["wet"]): Finding[] {
  const out: Finding[] = [];
  if (pour.cure.how === null) out.push(found(pour, "cure.how-unknown", "note", { days: wet.days }, "cure"));
  if (wet.days < wet.least.days)
    out.push(found(pour, "cure.wet-short", "look", { days: wet.days, least_days: wet.least.days, document: wet.least.document }, "cure"));
  return out;
}
