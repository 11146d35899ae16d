import type { PourCode } from "../../core/pour";
import type { Told } from "../build/sayings";
import { clockWords } from "../dates";
import { listed, quoted, readable, spelledFigure } from "../text";
import { figure, list, text } from "../voice";
import { atMost, cement, degrees, elementWords, force, length, mass, minutes, percent, place, soil, stress, volume } from "./told";

const stone: Readonly<Record<string, string>> = {
  bars: "what passes between the bars",
  form: "a fifth of the narrowest form",
  slab: "a third of the slab",
};
const rate = (told: Told, key: string): string =>
  `${figure(told.detail, key).toFixed(2)} ${text(told.detail, "unit") === "lb/ft2/h" ? "lb/ft²" : "kg/m²"} an hour`;
const barsWords = ({ detail }: Told): string => (text(detail, "bars") === "" ? "its bars" : `bars ${quoted(text(detail, "bars"))}`);
const exposures: Readonly<Record<string, string>> = {
  "against ground": "against the ground",
  "weather or ground": "in weather or against ground",
  "inside slab or wall": "inside a slab or wall",
  "inside beam or column": "inside a beam or column",
};

/** What can be found about a pour day, bars, quantities and trenches. */
export const daySayings = {
  "pour.out-of-range": (told) => {
    const { detail } = told;
    const unit = text(detail, "unit") === "" ? "" : ` ${text(detail, "unit")}`;
    const given = text(detail, "given") === "" ? "is no figure" : `is ${Number(figure(detail, "given").toPrecision(4))}${unit}`;
    return `${place(told)}: the ${text(detail, "what")} ${given}, outside ${figure(detail, "least")} to ${figure(detail, "most")}${unit} (${text(detail, "source")}); nothing is computed from it until it lies inside`;
  },
  "pour.nothing-left": (told) =>
    `${place(told)}: more is left out of it than there is, so nothing would be poured; look at what is left out`,
  "pour.short-load": (told) =>
    `${place(told)}: the last truck brings only ${volume(told, "load_m3")}; under about ${volume(told, "short_m3")} many plants charge for a short load`,
  "pour.truck-waits": (told) =>
    `${place(told)}: at this rate a truck with ${volume(told, "load_m3")} stands for ${minutes(told, "stands_min")}, longer than ${minutes(told, "most_min")}; order loads of ${volume(told, "fits_m3")} or place it faster`,
  "pour.truck-late": (told) =>
    `${place(told)}: a truck more than ${minutes(told, "late_min")} late leaves a cold joint; agree with the plant what happens then`,
  "pour.ticket-time": (told) =>
    `${place(told)}: how long after mixing it may be placed stands on the truck's ticket (ASTM C94); turn a load away that is older`,
  "pour.hands-short": (told) =>
    `${place(told)}: it wants ${spelledFigure(figure(told.detail, "wanted"))} people, and ${told.voice.step(text(told.detail, "step"))} asks for ${spelledFigure(figure(told.detail, "have"))}`,
  "pour.columns-after": (told) =>
    `${place(told)}: it is placed after ${elementWords(told, text(told.detail, "before"))}, which lies on it; list it first`,
  "pour.pause-usual": (told) =>
    `${place(told)}: no wait is written between the columns and what lies on them; ${minutes(told, "least_min")} to ${minutes(told, "most_min")} is counted, so that the columns settle first`,
  "pour.pause-short": (told) =>
    `${place(told)}: ${minutes(told, "least_min")} between the columns and what lies on them is short; they settle for about ${minutes(told, "usual_min")}`,
  "pour.pause-cold": (told) =>
    `${place(told)}: waited out to ${minutes(told, "most_min")}, the tops of the columns no longer knit: they do for about ${minutes(told, "coldJoint_min")}`,
  "pour.layer-cold": (told) =>
    `${place(told)}: one layer takes ${minutes(told, "layer_min")}, longer than the one below stays soft (about ${minutes(told, "coldJoint_min")}); place it faster or in parts`,
  "pour.pass-cold": (told) =>
    `${place(told)}: passes ${minutes(told, "every_min")} apart are longer than a layer stays soft (about ${minutes(told, "coldJoint_min")})`,
  "pour.dries-fast": (told) =>
    `${place(told)}: in that weather ${rate(told, "rate")} dries off, and from ${rate(told, "act")} on fresh concrete cracks; shade it, break the wind, fog it and cover it as you go`,
  "pour.drying-unknown": (told) =>
    `${place(told)}: how fast it dries cannot be said without the ${listed(list(told.detail, "lacks"))} of that day; write it down when the forecast is known`,
  "pour.hot": (told) =>
    `${place(told)}: concrete at ${degrees(told, "concrete_C")} is over the usual limit of ${degrees(told, "most_C")} (ACI 305R); ask for it cooler`,
  "pour.cold-weather": (told) =>
    `${place(told)}: with air at ${degrees(told, "air_C")}, below ${degrees(told, "below_C")}, it is cold weather: order it at ${degrees(told, "mixed_C")} and protect it (ACI 306R)`,
  "pour.cold-concrete": (told) =>
    `${place(told)}: placed at ${degrees(told, "concrete_C")} with air at ${degrees(told, "air_C")} it is under the ${degrees(told, "least_C")} asked for a section like this (ACI 306R)`,
  "pour.aggregate-large": (told) =>
    `${place(told)}: stone of ${length(told, "given_mm")} is more than ${length(told, "most_mm")}, ${stone[text(told.detail, "because")] ?? "what fits"}; order it smaller`,
  "pour.aggregate-unknown": (told) =>
    `${place(told)}: say how large its stone is; at most ${length(told, "most_mm")} fits, ${stone[text(told.detail, "because")] ?? "by its dimensions"}`,
  "pour.aggregate-pumped": (told) =>
    `${place(told)}: stone of ${length(told, "given_mm")} is large for a ${length(told, "hose_mm")} hose; a pumped mix takes ${length(told, "most_mm")} or smaller`,
  "pour.cement-low-for-pump": (told) =>
    `${place(told)}: ${cement(told, "cement_kg_m3")} of cement is lean for a pump; it usually wants ${cement(told, "least_kg_m3")} or more`,
  "pour.cement-unknown": (told) =>
    `${place(told)}: it is bought in sacks, and nothing says how much cement is in it; say how many sacks a yard`,
  "pour.hose-short": (told) =>
    `${place(told)}: the hose reaches ${length(told, "reach_mm")}, and ${length(told, "needed_mm")} is needed; ask for more hose or a longer boom`,
  "pour.hose-unknown": (told) => `${place(told)}: say how far the hose reaches and how far it has to`,
  "pour.wires-near": (told) =>
    `${place(told)}: the wires hang at ${length(told, "wires_mm")}; ${length(told, "clear_mm")} has to stay clear of them, and no pump or truck of ${length(told, "machine_mm")} keeps that. Move it, or ask the utility`,
  "pour.wires": (told) =>
    `${place(told)}: wires hang at ${length(told, "wires_mm")}; keep boom, hose and chute ${length(told, "clear_mm")} clear of them, so no higher than ${length(told, "highest_mm")}`,
  "pour.wires-unknown": (told) =>
    `${place(told)}: look up before the pump comes: ${length(told, "clear_mm")} has to stay clear of overhead wires; write down how high they hang, or that there are none`,
  "pour.stays-unsaid": (told) =>
    `${place(told)}: nothing says in which step the forms and shores under it come out, so nothing here keeps them in; write that step under removals`,
  "pour.truck-slope": (told) =>
    `${place(told)}: the truck's way slopes ${percent(told, "slope_percent")}, steeper than about ${percent(told, "most_percent")}; ask the plant whether they come`,
  "pour.truck-weight": (told) =>
    `${place(told)}: a loaded truck weighs ${mass(told, "truck_kg")}; ask whether drive, pipes and the edge of the cut bear it`,
  "pour.washout-unknown": (told) => `${place(told)}: say where truck and pump wash out; it is caustic and may not run off`,
  "pour.call-off": (told) => {
    const cut = figure(told.detail, "cutOff_min");
    const at = clockWords(cut);
    return `${place(told)}: it can be called off without cost until ${at} on the day before that ${told.voice.thing("calendars", text(told.detail, "calendar"))} works`;
  },
  "pour.call-off-unknown": (told) =>
    `${place(told)}: ask ${told.voice.any(text(told.detail, "delivery"))} until when it can be called off without cost`,
  "bars.size-unknown": (told) =>
    `${place(told)}, ${barsWords(told)}: there is no bar of that size; sizes are numbers 3 to 11, 14 and 18, or diameters from 6 mm to 40 mm`,
  "bars.cover-thin": (told) =>
    `${place(told)}, ${barsWords(told)}: ${length(told, "given_mm")} of cover is less than the ${length(told, "least_mm")} asked for ${exposures[text(told.detail, "exposure")] ?? "there"} (ACI 318)`,
  "bars.cover-unknown": (told) =>
    `${place(told)}, ${barsWords(told)}: say how much concrete covers them; ${length(told, "least_mm")} or more ${exposures[text(told.detail, "exposure")] ?? "there"} (ACI 318)`,
  "bars.lap": (told) =>
    `${place(told)}, ${barsWords(told)}: ${length(told, "long_mm")} is longer than a bar of ${length(told, "stock_mm")}, so they are spliced; lap them ${length(told, "lap_mm")}, unless the drawing says otherwise`,
  "bars.short": (told) =>
    `${place(told)}, ${barsWords(told)}: ${length(told, "long_mm")} is too short to grip at both ends (${length(told, "development_mm")} each); ask whoever drew it about hooks`,
  "bars.ties-wide": (told) =>
    `${place(told)}, ${barsWords(told)}: ${length(told, "given_mm")} apart is wider than ${length(told, "most_mm")} (ACI 318 25.7.2.1)`,
  "bars.bent-underfoot": (told) =>
    `${place(told)}, ${barsWords(told)}: free over ${length(told, "supported_mm")} they are bent for good under a foot (${stress(told, "stress_MPa")} of ${stress(told, "yield_MPa")}); support them every ${atMost(told, "fits_mm")}, or lay boards`,
  "bars.sags-underfoot": (told) =>
    `${place(told)}, ${barsWords(told)}: free over ${length(told, "supported_mm")} they sag ${length(told, "sag_mm")} under a foot; support them every ${atMost(told, "fits_mm")} for ${length(told, "most_mm")}`,
  "bars.sags": (told) =>
    `${place(told)}, ${barsWords(told)}: free over ${length(told, "supported_mm")} they sag ${length(told, "sag_mm")} of themselves; support them every ${atMost(told, "fits_mm")}`,
  "bars.support-unknown": (told) =>
    `${place(told)}, ${barsWords(told)}: say how far apart they are held up; ${atMost(told, "fits_mm")} would do with somebody walking on them`,
  "bars.hang": (told) =>
    `${place(told)}, ${barsWords(told)}: its underside stays visible and would show chairs; hang them from above every ${atMost(told, "fits_mm")}`,
  "bars.cage-heavy": (told) =>
    `${place(told)}: the cage weighs ${mass(told, "cage_kg")}, ${mass(told, "each_kg")} for each of ${spelledFigure(figure(told.detail, "hands"))}; have ${spelledFigure(figure(told.detail, "wanted"))} to lift it, or tie it in place`,
  "quantity.ask-before-you-dig": (told) =>
    `${place(told)}: ${force(told, "force_kN")} stands on it, ${soil(told, "pressure_kPa")} under it. That is a sum, no design: ask before you dig whether the ground bears it (weak ground is often taken for ${soil(told, "presumed_kPa")})`,
  "quantity.footing-part": (told) =>
    `${place(told)}: what stands on it is not all written down (${readable(text(told.detail, "lacks"))}), so its load is only a part`,
  "quantity.panel-joins": (told) =>
    `${place(told)}: a panel is wider than a sheet and is made of ${spelledFigure(figure(told.detail, "sheets"))}; back the joint`,
  "quantity.too-long": (told) =>
    `${place(told)}: ${readable(text(told.detail, "what"))} ${length(told, "long_mm")} long are not sold (${length(told, "stock_mm")} at most); splice them over a support`,
  "trench.protect": (told) =>
    `${place(told)}: a cut ${length(told, "deep_mm")} deep has to be shored, or sloped to ${length(told, "top_mm")} wide at its top for such soil, from ${length(told, "from_mm")} on; someone competent classes the soil and decides (29 CFR 1926 Subpart P)`,
  "trench.engineer": (told) =>
    `${place(told)}: a cut ${length(told, "deep_mm")} deep, over ${length(told, "from_mm")}, is designed by an engineer`,
  "trench.ladder": (told) =>
    `${place(told)}: in a cut ${length(told, "deep_mm")} deep a ladder stands within 25 ft (7.6 m) of everyone, from ${length(told, "from_mm")} on`,
  "trench.spoil": (told) =>
    `${place(told)}: ${volume(told, "loose_m3")} of loose spoil comes out; keep it ${length(told, "back_mm")} back from the edge, and never above the cut on a slope`,
  "trench.marks": (told) =>
    `${place(told)}: have the utilities marked before you dig; two full working days' notice is usual, and marks expire`,
} as const satisfies Partial<Readonly<Record<PourCode, (told: Told) => string>>>;
