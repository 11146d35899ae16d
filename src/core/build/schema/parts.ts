import * as v from "valibot";
import * as s from "./scalars";

const maybe = v.optional;

export const solidShapes = ["box", "cylinder", "wedge", "vault", "gable", "stairs"] as const;

/** One body of the structure drawing: where it stands, how big it is, and which members of the build say how far it has got. */
export const solid = v.looseObject({
  id: s.id,
  name: maybe(s.line),
  shape: maybe(v.picklist(solidShapes)),
  at: v.looseObject({ x: s.coordinate, y: s.coordinate, z: s.coordinate }),
  size: v.looseObject({ long: s.length, wide: s.length, high: s.length }),
  thick: maybe(s.length),
  steps: maybe(s.wholeIn("copies")),
  turn: maybe(s.numberIn("turn")),
  pour: maybe(s.ref),
  pieces: maybe(s.refs),
  form: maybe(s.refs),
  bars: maybe(s.refs),
  places: maybe(s.refs),
});

const answer = v.union([v.string(), v.number(), v.boolean(), v.array(v.string())]);

/** One use of a structure kit: what was answered, and the members that came of it. */
export const part = v.looseObject({
  id: s.id,
  name: maybe(s.line),
  kit: s.line,
  answers: maybe(v.record(v.string(), answer)),
  made: maybe(v.record(v.string(), s.refs)),
});
