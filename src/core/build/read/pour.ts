import { toModel } from "../../base";
import {
  aciRanges_si,
  aciRanges_us,
  cement_lb_yd3,
  evaporationRanges_si,
  evaporationRanges_us,
  pourDayRanges,
  truckRanges,
} from "../../concrete";
import type { Member } from "../schema/document";
import { maybeAmount } from "./amounts";
import { readMoment } from "./dates";
import { readElement } from "./element";
import type { Notes } from "./notes";
import type { MixDraft, PourDraft, RemovalDraft } from "./pour-drafts";
import { isOutside, isUs, publishedQuantity, sayOutside } from "./published";
import {
  convert,
  elapsed_min,
  inside,
  length_mm,
  mass_kg,
  type Quantity,
  type Spot,
  spot,
  strength_MPa,
  temperature_C,
  textOf,
  volume_m3,
  wind_km_h,
} from "./quantities";

type Raw = Member<"pours">;

const maybe = <T, R>(value: T | undefined, read: (value: T) => R): R | null => (value === undefined ? null : read(value));
const published = (us: keyof typeof aciRanges_us, si: keyof typeof aciRanges_si) => ({ us: aciRanges_us[us], si: aciRanges_si[si] });

/** Cement in the mix, kg/m3: written as such, or as sacks in a cubic yard. */
function cementOf(at: Spot, raw: Raw["mix"]): number | null {
  if (raw.cementContent !== undefined) return convert(inside(at, "cementContent"), "density", "cementContent", raw.cementContent);
  return raw.sacks === undefined ? null : toModel("density", cement_lb_yd3(raw.sacks), "lb/yd3");
}

function readMix(at: Spot, raw: Raw["mix"]): MixDraft {
  const in_ = (key: string): Spot => inside(at, key);
  return {
    strength_MPa: strength_MPa(in_("strength"), raw.strength),
    cement: raw.cement ?? null,
    retarder: raw.retarder ?? null,
    weight_kg_m3: maybe(raw.weight, (weight) => publishedQuantity(in_("weight"), "density", weight, published("weight", "density"))),
    slump_mm: maybe(raw.slump, (slump) => publishedQuantity(in_("slump"), "length", slump, published("slump", "slump"))),
    cement_kg_m3: cementOf(at, raw),
    aggregate_mm: maybe(raw.aggregate, (size) => length_mm(in_("aggregate"), "aggregate", size)),
    lowBleed: raw.lowBleed ?? false,
    consistency: raw.consistency ?? null,
    setting_min: maybe(raw.setting, (time) => Math.round(convert(in_("setting"), "time", "setting", time))),
    from: raw.from ?? null,
  };
}

/** Air does not stand still below nothing; a wind over the nomograph's is the pour room's business. */
function readWind(at: Spot, wind: Quantity): number {
  const text = textOf(wind);
  if (!text.trim().startsWith("-")) return wind_km_h(at, wind);
  sayOutside(at, text, isUs("speed", text) ? evaporationRanges_us.wind : evaporationRanges_si.wind);
  return 0;
}

function readWeather(at: Spot, raw: NonNullable<Raw["weather"]>): PourDraft["weather"] {
  const { humidity } = raw;
  const damp = evaporationRanges_us.humidity;
  if (humidity !== undefined && isOutside(damp, humidity)) sayOutside(inside(at, "humidity"), String(humidity), damp);
  const any = { us: pourDayRanges.temperature, si: pourDayRanges.temperature };
  return {
    concrete_C: maybe(raw.concrete, (concrete) => publishedQuantity(inside(at, "concrete"), "temperature", concrete, any)),
    air_C: maybe(raw.air, (air) => temperature_C(inside(at, "air"), air)),
    humidity_percent: humidity ?? null,
    wind_km_h: maybe(raw.wind, (wind) => readWind(inside(at, "wind"), wind)),
  };
}

function readRemoval(at: Spot, raw: NonNullable<Raw["removals"]>[number]): RemovalDraft {
  return {
    sort: raw.sort,
    step: raw.step,
    soffit: raw.soffit ?? null,
    span_mm: maybe(raw.span, (span) => length_mm(inside(at, "span"), "concreteSize", span)),
    liveExceedsDead: raw.liveExceedsDead ?? false,
    shoresStay: raw.shoresStay ?? false,
    share: maybe(raw.share, (share) => Math.ceil(share * 10 - 1e-6)),
    days: maybeAmount(inside(at, "days"), raw.days),
    saidBy: raw.saidBy ?? null,
  };
}

function readPause(at: Spot, raw: NonNullable<Raw["pause"]>): NonNullable<PourDraft["pause"]> {
  const pause = { least_min: elapsed_min(inside(at, "least"), raw.least), most_min: elapsed_min(inside(at, "most"), raw.most) };
  if (pause.least_min > pause.most_min)
    at.notes.say("build.most-under-least", at.key, { least: textOf(raw.least), most: textOf(raw.most) });
  return pause;
}

function readCure(at: Spot, raw: NonNullable<Raw["cure"]>): PourDraft["cure"] {
  return {
    how: raw.how ?? null,
    days: raw.days ?? null,
    held_C: maybe(raw.held, (held) => convert(inside(at, "held"), "temperature", "temperature", held)),
    heldFor_min: maybe(raw.heldFor, (time) => elapsed_min(inside(at, "heldFor"), time)),
    exposed: raw.exposed ?? true,
  };
}

function readGround(at: Spot, raw: NonNullable<Raw["ground"]>): PourDraft["ground"] {
  const long = (key: "hoseReach" | "hoseNeeded"): number | null =>
    maybe(raw[key], (length) => length_mm(inside(at, key), "concreteSize", length));
  return {
    truck_kg: maybe(raw.truckWeight, (weight) => mass_kg(inside(at, "truckWeight"), weight)),
    slope_percent: raw.slope ?? null,
    wiresAbove_mm: maybe(raw.wiresAbove, (high) => (high === "none" ? high : length_mm(inside(at, "wiresAbove"), "concreteSize", high))),
    hoseReach_mm: long("hoseReach"),
    hoseNeeded_mm: long("hoseNeeded"),
    washout: raw.washout ?? null,
  };
}

/** The elements in their order of placing, each with an id of its own in the pour. */
function readElements(raw: Raw["elements"], notes: Notes): PourDraft["elements"] {
  if (raw.length === 0) notes.say("build.empty", "elements", { part: "" });
  const first = new Map<string, number>();
  raw.forEach(({ id }, i) => {
    const before = first.get(id);
    if (before === undefined) first.set(id, i);
    else notes.say("build.id-twice", "elements", { first: before + 1, second: i + 1 });
  });
  return raw.map((element, i) => readElement(spot(notes, "elements", String(i + 1)), element));
}

/** What the hose, chute or mixer gives; told in the published range of a pour day. */
const readRate = (at: Spot, rate: Quantity): number =>
  publishedQuantity(at, "volumeRate", rate, { us: pourDayRanges.rate, si: pourDayRanges.rate });

export function readPour(raw: Raw, notes: Notes): PourDraft {
  const at = (key: string, part = ""): Spot => spot(notes, key, part);
  const volume = (key: "hopper" | "prime"): number | null => maybe(raw[key], (size) => volume_m3(at(key), size));
  return {
    id: raw.id,
    name: raw.name ?? raw.id,
    step: raw.step,
    mix: readMix(at("mix"), raw.mix),
    weather: readWeather(at("weather"), raw.weather ?? {}),
    placed: raw.placed ?? null,
    rate_m3_h: maybe(raw.rate, (rate) => readRate(at("rate"), rate)),
    vibrated_mm: maybe(raw.vibrated, (deep) => publishedQuantity(at("vibrated"), "length", deep, published("vibrated", "vibrated"))),
    externalVibration: raw.externalVibration ?? false,
    elements: readElements(raw.elements, notes),
    pause: maybe(raw.pause, (pause) => readPause(at("pause"), pause)),
    truck_m3: maybe(raw.truck, (size) => publishedQuantity(at("truck"), "volume", size, truckRanges)),
    waste_percent: raw.waste ?? null,
    hopper_m3: volume("hopper"),
    prime_m3: volume("prime"),
    cure: readCure(at("cure"), raw.cure ?? {}),
    breaks: (raw.breaks ?? []).map((broken, i) => ({
      at: readMoment(at("breaks", `${i + 1}.at`), broken.at),
      strength_MPa: broken_MPa(at("breaks", `${i + 1}.strength`), broken.strength),
      by: broken.by ?? "measured",
    })),
    removals: (raw.removals ?? []).map((removal, i) => readRemoval(at("removals", String(i + 1)), removal)),
    ground: readGround(at("ground"), raw.ground ?? {}),
    sacks: raw.sacks ?? null,
    ...(raw.helpers === undefined ? {} : { helpers: raw.helpers }),
    from: raw.from ?? null,
  };
}

/** A young cylinder breaks at less than any mix is specified for. */
const broken_MPa = (at: Spot, strength: Quantity): number => convert(at, "pressure", "broken", strength);
