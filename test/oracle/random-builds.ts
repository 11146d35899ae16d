import fc from "fast-check";
import { type Draw, drawFromList, drawFromStart } from "./draw";
import { drawPieces } from "./random-pieces";
import { drawPlaces } from "./random-places";
import { drawSteps } from "./random-steps";

/** A document as the reader takes it; only what these builds use. */
export type Loose = Record<string, unknown>;

export interface Size {
  readonly steps: readonly [least: number, most: number];
  readonly places: readonly [least: number, most: number];
  readonly pieces: readonly [least: number, most: number];
  /** Of a hundred things drawn, how many look only at chance and not at an order that would do. */
  readonly careless: number;
  /** Of a hundred builds, how many have choices at odds with each other. */
  readonly twisted: number;
}

export const small: Size = { steps: [3, 7], places: [1, 4], pieces: [2, 6], careless: 4, twisted: 42 };
export const large: Size = { steps: [15, 25], places: [4, 9], pieces: [8, 16], careless: 1, twisted: 20 };

/** A build drawn from the start number: the same number gives the same document. */
export const randomDocument = (start: number, size: Size = small): Loose => drawDocument(drawFromStart(start), size);

/** Builds that fast-check can make smaller. */
export const anyDocument = (size: Size = small): fc.Arbitrary<Loose> =>
  fc.array(fc.nat(999), { minLength: 60, maxLength: 400 }).map((list) => drawDocument(drawFromList(list), size));

const allDay = ["0:00-24:00"];
const week = { sun: allDay, mon: allDay, tue: allDay, wed: allDay, thu: allDay, fri: allDay, sat: allDay };

function drawDocument(draw: Draw, size: Size): Loose {
  const places = drawPlaces(draw, size);
  const steps = size.steps[0] + draw.below(size.steps[1] - size.steps[0] + 1);
  const pieces = drawPieces(draw, size, places, steps);
  const drawn = drawSteps(draw, size, places, pieces, steps);
  return {
    batterboard: 1,
    id: "random",
    name: "Random",
    site: { zone: "UTC", latitude: 45, longitude: 0, units: "metric" },
    start: "2027-03-06",
    usual: "always",
    calendars: [
      { id: "always", name: "Always", week },
      { id: "weekends", name: "Weekends", week: { sat: ["8:00-18:00"], sun: ["8:00-18:00"] } },
    ],
    people: ["ann", "ben"].map((id) => ({ id, name: id, calendar: "always" })),
    places: places.map(({ id, ways }) => ({ id, name: id, ways: ways.map((w) => w.written) })),
    pieces: pieces.map((p) => p.written),
    ...drawn,
  };
}
