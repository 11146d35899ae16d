import * as v from "valibot";
import * as s from "./scalars";

const maybe = v.optional;
const from = maybe(v.string());

const lumberObject = v.looseObject({
  size: s.line,
  flat: maybe(s.yes),
  pieces: maybe(s.wholeIn("sideBySide")),
  grade: maybe(s.line),
  salvaged: maybe(s.yes),
  wet: maybe(s.yes),
  reused: maybe(s.yes),
  measured: maybe(v.looseObject({ wide: s.length, deep: s.length })),
  from,
});
/** A trade size alone ("2x4"), or with what is known of it. */
const lumber = v.union([s.line, lumberObject]);

const sheathing = v.looseObject({
  kind: maybe(v.picklist(["plywood", "boards"])),
  ply: maybe(s.line),
  class: maybe(v.picklist(["I", "II", "structural I"])),
  grain: maybe(v.picklist(["across", "along"])),
  boards: maybe(lumber),
  reused: maybe(s.yes),
  from,
});

const fastener = v.looseObject({ name: maybe(s.line), carries: s.force, washer: maybe(s.length), from });

const brace = v.looseObject({
  stuff: lumber,
  spacing: s.length,
  run: s.length,
  rise: s.length,
  lands: maybe(v.picklist(["stake", "old work", "footing", "slab", "deadman"])),
  foot: maybe(fastener),
});

const holdDown = v.looseObject({ by: fastener, spacing: maybe(s.length), number: maybe(s.wholeIn("alike")) });

const spaced = v.looseObject({ stuff: lumber, spacing: s.length });
const heights = v.array(s.length);

const columnForm = v.looseObject({
  kind: v.literal("column"),
  sheathing,
  battens: maybe(spaced),
  bands: v.looseObject({ stuff: lumber, at: heights, bolt: maybe(fastener) }),
  weight: maybe(s.mass),
  footSealed: maybe(s.yes),
  holdDown: maybe(holdDown),
  brace: maybe(brace),
});

const wallForm = v.looseObject({
  kind: v.literal("wall"),
  sheathing,
  studs: spaced,
  wales: v.looseObject({ stuff: lumber, at: heights }),
  ties: maybe(v.looseObject({ by: fastener, spacing: s.length })),
  strongbacks: maybe(v.looseObject({ stuff: lumber, spacing: s.length, top: fastener, foot: fastener })),
  weight: maybe(s.massPerLength),
  footSealed: maybe(s.yes),
  holdDown: maybe(holdDown),
  brace: maybe(brace),
});

const deckForm = v.looseObject({
  kind: v.literal("deck"),
  sheathing,
  joists: spaced,
  stringers: spaced,
  shores: v.looseObject({ stuff: lumber, spacing: s.length, high: s.length, unbraced: maybe(s.length) }),
  mudsills: maybe(
    v.looseObject({
      long: s.length,
      wide: s.length,
      stuff: maybe(lumber),
      soil: maybe(s.pressure),
      level: maybe(s.yes),
      ground: maybe(v.picklist(["firm", "rock", "slab", "fresh fill", "frozen"])),
    }),
  ),
  buggies: maybe(s.yes),
  brace: maybe(brace),
});

const edgeForm = v.looseObject({
  kind: v.literal("edge"),
  boards: lumber,
  stakes: v.looseObject({ spacing: s.length, by: maybe(fastener) }),
  holdDown: maybe(holdDown),
});

export const form = v.variant("kind", [columnForm, wallForm, deckForm, edgeForm]);

export type RawLumber = v.InferOutput<typeof lumber>;
export type RawSheathing = v.InferOutput<typeof sheathing>;
export type RawFastener = v.InferOutput<typeof fastener>;
export type RawBrace = v.InferOutput<typeof brace>;
export type RawHoldDown = v.InferOutput<typeof holdDown>;
export type RawForm = v.InferOutput<typeof form>;
