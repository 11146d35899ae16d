/**
 * Every finding of this room, with the keys of its detail; words are complete against this table. `where` is the pour; `element` and `bars` are the id and
 * name written in it. Lengths mm, masses kg, amounts of time minutes, forces kN.
 */
export const pourCodes = {
  /** An input leaves the range its formula was published for; the figure is withheld. `element` is empty where it is the pour's. */
  "pour.out-of-range": ["element", "what", "given", "least", "most", "unit", "source"],
  /** More is left out of an element than there is. */
  "pour.nothing-left": ["element", "left_m3"],

  // The day.
  "pour.short-load": ["load_m3", "short_m3"],
  /** At this rate a truck stands longer than its concrete is usually good for; a load of `fits_m3` would not. */
  "pour.truck-waits": ["load_m3", "stands_min", "most_min", "fits_m3"],
  /** A truck that is later than this leaves a cold joint. */
  "pour.truck-late": ["late_min"],
  /** The limit of time after mixing is on the ticket (ASTM C94). */
  "pour.ticket-time": [],
  "pour.hands-short": ["step", "wanted", "have"],
  /** What stands is listed after what is laid on it. */
  "pour.columns-after": ["element", "before"],
  /** None is written between columns and what lies on them; this one is counted. */
  "pour.pause-usual": ["least_min", "most_min"],
  "pour.pause-short": ["least_min", "usual_min"],
  /** Waited out to its most, the top of the columns no longer knits. */
  "pour.pause-cold": ["most_min", "coldJoint_min"],
  /** One layer takes longer than the one below stays soft. */
  "pour.layer-cold": ["element", "layer_min", "coldJoint_min"],
  "pour.pass-cold": ["element", "every_min", "coldJoint_min"],
  "pour.dries-fast": ["rate", "unit", "act"],
  /** `lacks`: air, humidity, wind. */
  "pour.drying-unknown": ["lacks"],
  "pour.hot": ["concrete_C", "most_C"],
  "pour.cold-weather": ["air_C", "below_C", "mixed_C"],
  "pour.cold-concrete": ["element", "concrete_C", "least_C", "air_C"],
  /** `because`: bars, form, slab. */
  "pour.aggregate-large": ["element", "given_mm", "most_mm", "because"],
  "pour.aggregate-unknown": ["element", "most_mm", "because"],
  "pour.aggregate-pumped": ["given_mm", "most_mm", "hose_mm"],
  "pour.cement-low-for-pump": ["cement_kg_m3", "least_kg_m3"],
  /** Bought in sacks, and nothing says how much cement is in it. */
  "pour.cement-unknown": [],
  "pour.hose-short": ["reach_mm", "needed_mm"],
  "pour.hose-unknown": [],
  /** No machine `machine_mm` high keeps `clear_mm` from the wires. */
  "pour.wires-near": ["wires_mm", "clear_mm", "machine_mm"],
  "pour.wires": ["wires_mm", "clear_mm", "highest_mm"],
  "pour.wires-unknown": ["clear_mm"],
  "pour.truck-slope": ["slope_percent", "most_percent"],
  "pour.truck-weight": ["truck_kg"],
  "pour.washout-unknown": [],
  /** Called off without cost up to this minute of the supplier's day before. */
  "pour.call-off": ["step", "delivery", "calendar", "cutOff_min"],
  "pour.call-off-unknown": ["step", "delivery", "calendar"],
  /** A formed soffit, and no step in which it comes out: nothing keeps it in. */
  "pour.stays-unsaid": ["element"],

  // Pressure of the fresh concrete. A held rate that does not count leaves the hose as the design.
  /** `what`: the dimension that is no positive figure. */
  "pressure.no-dimension": ["element", "what"],
  /** DIN 18218 and CIRIA 108 speak of faces within `most_deg` of plumb. */
  "pressure.batter": ["element", "batter_deg", "most_deg", "document"],
  /** What is laid on it in the same pour adds its depth to the head, whatever the wait between them. */
  "pressure.laid-on": ["element", "over_mm"],
  "pressure.consistency-unknown": ["element"],
  /** A retarder, and no time of setting for the formula. */
  "pressure.setting-unknown": ["element"],
  "pressure.nobody-holds": ["element"],
  /** So deep at once is a lift and a pause, which earns nothing. */
  "pressure.pass-deep": ["element", "pass_mm", "most_mm"],
  "pressure.vibration-unknown": ["element"],
  /** `why`: the first reason of WhyFullHead. */
  "pressure.held-earns-nothing": ["element", "why"],
  /** Judged by the held rate, and small enough to be full in minutes if it is not kept. */
  "pressure.held-small": ["element", "hose_min", "held_of100", "hose_of100"],

  /** Not written and taken as usual: mix.weight, mix.slump, mix.cement, mix.retarder, weather.concrete. */
  "pressure.assumed": ["keys"],

  // Forms. Forces of a wall are for each metre of it, of a column all together: `each` is "metre" or "all".
  "form.none": ["element"],
  "form.other-kind": ["element", "form", "shape"],
  /** A spacing, length or height that is no positive figure. */
  "form.no-figure": ["element", "part", "what"],
  "form.size-unknown": ["element", "part", "size"],
  "form.ply-unknown": ["element", "ply", "grain"],
  /** No bands, wales: `part`. */
  "form.nothing-across": ["element", "part"],
  "form.over": ["element", "part", "of100", "governs", "at_mm"],
  /** Nothing says what a bolt, stake or brace's foot carries; asked of it. */
  "form.carries-unknown": ["element", "part", "load_kN"],
  /** Nothing says how large its washer is: `area_mm2` of wood is needed under it. */
  "form.washer-unknown": ["element", "part", "on", "load_kN", "area_mm2"],
  "form.soil-unknown": ["element", "load_kN", "press_kPa"],
  /** `what`: grade, section, figure, soil, plank. */
  "form.guess": ["element", "part", "what"],
  /** Values of its wood are only known from memory. */
  "form.memory": ["element", "parts"],
  "form.lifts": ["element", "up_kN", "weight_kN", "needed_kN", "each"],
  "form.mass-unknown": ["element", "up_kN", "each"],
  "form.one-sided": ["element", "thrust_kN_m", "at_mm"],
  /** A raking brace lifts what it holds: it wants a hold-down too. */
  "form.one-sided-lifts": ["element"],
  "form.one-sided-ties": ["element", "load_kN"],
  "form.foot-thrust": ["element", "thrust_kN_m"],
  "form.brace-one-height": ["element"],
  "form.brace-lands": ["element", "load_kN"],
  "form.no-brace": ["element", "asked_kN_m"],
  "form.foot-open": ["element"],
  /** No ties, strongbacks or braces. */
  "form.wales-loose": ["element"],
  "form.no-mudsill": ["element", "load_kN"],
  "form.mudsill-ground": ["element", "ground"],
  "form.mudsill-ground-unknown": ["element"],
  "form.mudsill-level": ["element"],
  /** Shores on a slab: whether it bears them is for whoever designed it. */
  "form.slab-below": ["element", "load_kN"],
  /** A side of what stands is neither formed nor cast against anything: `face`. */
  "form.open-side": ["element", "face"],
  /** A face leans out over its form, and the concrete lies on it. */
  "form.leans-out": ["element", "down_kN_m"],
  /** An outer form, a lid or what holds a steep haunch, is not judged here. */
  "form.outer-unjudged": ["element", "slope_deg"],
  "form.barrel-sideways": ["element", "push_kN_m"],
  /** A round column in bands is judged as a square of its diameter. */
  "form.round": ["element"],

  // Bars.
  "bars.size-unknown": ["element", "bars", "size"],
  "bars.cover-thin": ["element", "bars", "given_mm", "least_mm", "exposure"],
  "bars.cover-unknown": ["element", "bars", "least_mm", "exposure"],
  /** Longer than the stock length: spliced, with this lap. */
  "bars.lap": ["element", "bars", "long_mm", "stock_mm", "lap_mm"],
  /** Too short to develop its yield from end to end. */
  "bars.short": ["element", "bars", "long_mm", "development_mm"],
  "bars.ties-wide": ["element", "bars", "given_mm", "most_mm"],
  /** Under the foot of a person it is bent for good. `fits_mm`: the free length that would do. */
  "bars.bent-underfoot": ["element", "bars", "supported_mm", "stress_MPa", "yield_MPa", "fits_mm"],
  "bars.sags-underfoot": ["element", "bars", "supported_mm", "sag_mm", "most_mm", "fits_mm"],
  "bars.sags": ["element", "bars", "supported_mm", "sag_mm", "most_mm", "fits_mm"],
  "bars.support-unknown": ["element", "bars", "fits_mm"],
  /** A soffit that stays visible shows chairs: hang them from above. */
  "bars.hang": ["element", "bars", "fits_mm"],
  "bars.cage-heavy": ["element", "cage_kg", "each_kg", "hands", "wanted"],

  // Quantities.
  /** A sum, and no design: what stands on a footing. */
  "quantity.ask-before-you-dig": ["element", "force_kN", "pressure_kPa", "presumed_kPa"],
  "quantity.footing-part": ["element", "lacks"],
  /** Wider both ways than a sheet: it is made of several. */
  "quantity.panel-joins": ["element", "panel", "sheets"],
  /** No stock length is long enough. */
  "quantity.too-long": ["element", "what", "long_mm", "stock_mm"],

  // Trenches.
  "trench.protect": ["element", "deep_mm", "from_mm", "soil", "top_mm"],
  "trench.engineer": ["element", "deep_mm", "from_mm"],
  "trench.ladder": ["element", "deep_mm", "from_mm"],
  "trench.spoil": ["element", "back_mm", "loose_m3"],
  "trench.marks": ["element"],

  // The cure, once the plan says when it is placed. `at`: minutes since the epoch; shares are thousandths of the specified strength.
  /** The site gives no usual temperatures: a constant 20 °C is counted, and no cold is seen. */
  "cure.air-unknown": [],
  /** The air entered for the day is far from what the site usually has on that date. */
  "cure.air-differs": ["air_C", "low_C", "high_C"],
  /** In the air of the date, where the air as entered did not say so. */
  "cure.dries-fast": ["rate", "unit", "act", "air_C"],
  /** The step is written shorter than placing and finishing take. */
  "cure.step-short": ["step", "work_min", "total_min"],
  /** It may freeze with `has` there, before `share` is expected. */
  "cure.frost": ["at", "low_C", "share", "has"],
  "cure.cools-fast": ["at", "from_C", "to_C", "drop_K", "most_K"],
  "cure.placed-cold": ["concrete_C", "least_C", "low_C"],
  /** Nobody says how it is kept wet or sealed. */
  "cure.how-unknown": ["days"],
  "cure.wet-short": ["days", "least_days", "document"],
  "cure.below-expected": ["at", "share", "expected"],
  /** Results from before the planned day of the pour: they count for nothing. */
  "cure.result-before": ["results"],
  /** Earth against a wall whose top may have nothing to lean on. */
  "cure.backfill": ["step"],
  /** `shored`: the shores stay until after it; `vault`: it is one, and earth on it is a load. */
  "cure.load": ["step", "shored", "vault"],
  /** Days that stand for strength, and so few of them with a mean at 50 °F (10 °C) or above. */
  "cure.days-cold": ["step", "days", "warm_days"],
  /** The curve of a slow blend may lie lower still. */
  "cure.slow-blend": [],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type PourCode = keyof typeof pourCodes;
