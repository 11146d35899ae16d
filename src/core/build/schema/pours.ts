import * as v from "valibot";
import { form } from "./forms";
import * as s from "./scalars";

const maybe = v.optional;
const from = maybe(v.string());

export const cements = ["I", "II", "III", "blend", "slow blend"] as const;
export const pressureDocuments = ["aci-us", "aci-si", "ciria", "din"] as const;
const removalSorts = ["sides", "soffit", "shores", "backfill", "load", "anchors"] as const;

const mix = v.looseObject({
  strength: s.pressure,
  cement: maybe(v.picklist(cements)),
  retarder: maybe(s.yes),
  weight: maybe(s.published.density),
  slump: maybe(s.published.length),
  sacks: maybe(s.numberIn("sacksOfMix")),
  cementContent: maybe(s.density),
  aggregate: maybe(s.length),
  lowBleed: maybe(s.yes),
  consistency: maybe(v.picklist(["F1", "F2", "F3", "F4", "F5", "F6", "SCC"])),
  setting: maybe(s.time),
  from,
});

const sized = { long: s.length, wide: s.length };
const shape = v.variant("kind", [
  v.looseObject({ kind: v.picklist(["column", "pier"]), ...sized, high: s.published.length, round: maybe(s.yes) }),
  v.looseObject({
    kind: v.literal("wall"),
    long: s.length,
    thick: s.length,
    high: s.published.length,
    batter: maybe(v.union([s.ratio, v.looseObject({ a: maybe(s.ratio), b: maybe(s.ratio) })])),
  }),
  v.looseObject({ kind: v.picklist(["slab", "deck slab", "footing"]), ...sized, thick: s.length }),
  v.looseObject({ kind: v.literal("barrel"), long: s.length, span: s.length, rise: s.length, thick: s.length }),
  v.looseObject({
    kind: v.literal("stair"),
    wide: s.length,
    steps: s.wholeIn("alike"),
    riser: s.length,
    tread: s.length,
    thick: s.length,
  }),
]);

const bars = v.looseObject({
  name: maybe(s.line),
  size: v.union([v.number(), v.string()]),
  number: maybe(s.wholeIn("bars")),
  long: s.length,
  spacing: maybe(s.length),
  yield: maybe(s.pressure),
  cover: maybe(s.length),
  exposure: maybe(v.picklist(["against ground", "weather or ground", "inside slab or wall", "inside beam or column"])),
  sort: maybe(v.picklist(["bar", "tie", "mat"])),
  supported: maybe(s.length),
  from,
});

const element = v.looseObject({
  id: s.id,
  name: maybe(s.line),
  number: maybe(s.wholeIn("alike")),
  shape,
  faces: maybe(
    v.array(
      v.looseObject({
        face: v.picklist(["a", "b", "ends", "sides", "edges", "soffit", "top"]),
        against: maybe(v.picklist(["form", "earth", "old work", "free"])),
        visible: maybe(s.yes),
      }),
    ),
  ),
  rebates: maybe(v.array(v.looseObject({ ...sized, deep: s.length, number: maybe(s.wholeIn("alike")) }))),
  held: maybe(v.looseObject({ pass: s.published.length, every: s.time, who: maybe(s.ref) })),
  form: maybe(form),
  bars: maybe(v.array(bars)),
  pieces: maybe(s.refs),
});

const removal = v.looseObject({
  sort: v.picklist(removalSorts),
  step: s.ref,
  soffit: maybe(v.picklist(["arch", "beam", "slab"])),
  span: maybe(s.length),
  liveExceedsDead: maybe(s.yes),
  shoresStay: maybe(s.yes),
  share: maybe(s.numberIn("strengthShare")),
  days: maybe(s.amount),
  saidBy: maybe(v.string()),
});

export const pour = v.looseObject({
  id: s.id,
  name: maybe(s.line),
  step: s.ref,
  mix,
  weather: maybe(
    v.looseObject({
      concrete: maybe(s.temperature),
      air: maybe(s.temperature),
      humidity: maybe(v.number()),
      wind: maybe(s.published.speed),
    }),
  ),
  placed: maybe(v.picklist(["chute", "hose", "from the base", "by hand"])),
  rate: maybe(s.published.volumeRate),
  vibrated: maybe(s.published.length),
  externalVibration: maybe(s.yes),
  elements: v.array(element),
  pause: maybe(v.looseObject({ least: s.time, most: s.time })),
  truck: maybe(s.volume),
  waste: maybe(s.numberIn("waste")),
  hopper: maybe(s.volume),
  prime: maybe(s.volume),
  cure: maybe(
    v.looseObject({
      how: maybe(v.picklist(["wet", "covered", "compound", "in the form"])),
      days: maybe(s.numberIn("cureDays")),
      held: maybe(s.temperature),
      heldFor: maybe(s.time),
      exposed: maybe(s.yes),
    }),
  ),
  breaks: maybe(v.array(v.looseObject({ at: s.moment, strength: s.pressure, by: maybe(v.string()) }))),
  removals: maybe(v.array(removal)),
  ground: maybe(
    v.looseObject({
      truckWeight: maybe(s.mass),
      slope: maybe(s.numberIn("slope")),
      wiresAbove: maybe(v.union([v.literal("none"), s.length])),
      hoseReach: maybe(s.length),
      hoseNeeded: maybe(s.length),
      washout: maybe(s.line),
    }),
  ),
  sacks: maybe(s.ref),
  helpers: maybe(s.wholeIn("alike")),
  from,
});

export type RawPour = v.InferOutput<typeof pour>;
export type RawElement = v.InferOutput<typeof element>;
export type RawShape = v.InferOutput<typeof shape>;
export type RawBars = v.InferOutput<typeof bars>;
export type RawRemoval = v.InferOutput<typeof removal>;
