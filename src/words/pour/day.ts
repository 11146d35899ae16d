import { type Display, formatFigure, formatLength, formatWork } from "../../core/base";
import type { PourDay } from "../../core/pour";
import { readable, sentence, spelled, spelledFigure, upper } from "../text";

/** 5.4 yd³ or 4.1 m³; of less than one 0.54 m³ */
export function volumeWords(volume_m3: number, display: Display): string {
  const value = display === "us" ? volume_m3 * 1.307950619 : volume_m3;
  return `${formatFigure(value, value < 1 ? 2 : value < 20 ? 1 : 0)} ${display === "us" ? "yd³" : "m³"}`;
}

const evaporationWords = (rate: number, unit: NonNullable<PourDay["evaporation"]>["unit"]): string =>
  unit === "lb/ft2/h" ? `${formatFigure(rate, 2)} lb/ft² an hour` : `${formatFigure(rate, 2)} kg/m² an hour`;

/** The pour day in sentences: what to order, how long it takes, who is wanted, what limits it. */
export function daySentences(day: PourDay, display: Display): string[] {
  const trucks = day.trucks.length === 0 ? "" : `, in ${spelled(day.trucks.length, "truck")}`;
  const gap = day.trucks.length > 1 ? day.trucks[1]!.after_min - day.trucks[0]!.after_min : 0;
  const stays = day.order_m3 > day.net_m3 * (1 + day.waste_percent / 100) + 1e-6;
  const out = [
    sentence(
      `${day.bags === null ? "Order" : "Mix"} ${volumeWords(day.order_m3, display)}: ${volumeWords(day.net_m3, display)} in the forms, ${formatFigure(day.waste_percent)} % for waste${stays ? ", and what stays in line and hopper" : ""}${trucks}${gap > 0 ? `, ${formatWork(Math.round(gap))} apart` : ""}`,
    ),
    sentence(
      `It takes ${formatWork(Math.round(day.total_min))} from the first concrete ${day.finishing_min > 0 ? "to the last stroke of the float" : "until all is washed up"}: ${[
        `${formatWork(Math.round(day.placing_min))} of placing`,
        ...(day.pause_min > 0 ? [`${formatWork(Math.round(day.pause_min))} of waiting for the columns to settle`] : []),
        ...(day.floatAfter_min > 0 && day.finishing_min > 0
          ? [`${formatWork(Math.round(day.floatAfter_min))} until it takes the float`]
          : []),
        ...(day.finishing_min > 0 ? [`${formatWork(Math.round(day.finishing_min))} of finishing`] : []),
        ...(day.clearing_min > 0 ? [`${formatWork(Math.round(day.clearing_min))} of striking off and washing up`] : []),
      ].join(", ")}`,
    ),
  ];
  out.push(
    sentence(`A layer knits with the one below for about ${formatWork(Math.round(day.coldJoint_min))}; after that it is a cold joint`),
  );
  if (day.hands.length > 0)
    out.push(
      sentence(
        `Hands wanted: ${day.hands.map(({ role, number }) => (role === "hands" ? spelled(number, "more", "more") : `${spelled(number, "for the", "for the")} ${readable(role)}`)).join(", ")}`,
      ),
    );
  if (day.helpers > 0)
    out.push(
      sentence(
        day.helpers === 1
          ? "One of them comes as a helper for this pour alone"
          : `${upper(spelledFigure(day.helpers))} of them come as helpers for this pour alone`,
      ),
    );
  if (day.cement_kg !== null)
    out.push(
      sentence(
        `Cement in it: ${display === "us" ? `${formatFigure(day.cement_kg / 0.45359237)} lb` : `${formatFigure(day.cement_kg)} kg`}${day.sacks === null || display === "metric" ? "" : `, ${formatFigure(Math.ceil(day.sacks))} sacks of 94 lb`}`,
      ),
    );
  if (day.bags !== null) out.push(sentence(`Bags of mix for it: ${formatFigure(day.bags)}`));
  if (day.aggregate !== null) {
    const { given_mm, most_mm, because } = day.aggregate;
    const why = { bars: "what passes between the bars", form: "a fifth of the narrowest form", slab: "a third of the slab" }[because];
    out.push(
      sentence(
        `Its stone of ${formatLength(given_mm, display)} ${given_mm <= most_mm ? "is within" : "is more than"} ${formatLength(most_mm, display)}, ${why}`,
      ),
    );
  }
  if (day.evaporation !== null) {
    const { rate, unit, act, protect } = day.evaporation;
    out.push(
      sentence(
        `In that weather ${evaporationWords(rate, unit)} dries off; from ${evaporationWords(act, unit)} on fresh concrete cracks${protect ? ": shade it, fog it, cover it as you go" : ""}`,
      ),
    );
  }
  return out;
}
