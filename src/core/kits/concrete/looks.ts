import type { Making } from "../making";

interface Looked {
  /** "Footing A": what is looked at. */
  readonly what: string;
  readonly place: string;
  readonly places: readonly string[];
  readonly leansOn: readonly string[];
}

const lean = (pieces: readonly string[]) => pieces.map((piece) => ({ piece }));

/** Photographs with a tape, and the inspection where one is asked for: both stop the work until they are done. */
export function addLooks(making: Making, { what, place, places, leansOn }: Looked): void {
  const { given } = making;
  const looks = places.map((one) => ({ place: one, need: "sight" }));
  making.add("steps", "photo", {
    name: `Photograph ${what} with a tape`,
    sort: "photograph",
    place,
    work: given.hours("photograph", 1),
    reaches: looks,
    leansOn: lean(leansOn),
    holdPoint: { places },
  });
  if (!given.answers.yes("inspected")) return;
  const step = making.add("steps", "inspect", {
    name: `Inspection of ${what}`,
    sort: "inspection",
    place,
    work: { is: "1 h", from: "own guess" },
    hands: 0,
    calendar: given.common("inspector"),
    unbroken: true,
    reaches: looks,
    leansOn: lean(leansOn),
    holdPoint: { places },
  });
  making.add("bookings", "ask-inspector", {
    name: `Inspector: ${what}`,
    step,
    calendar: given.common("inspector"),
    lead: { is: `1 days of ${given.common("inspector")}`, from: "own guess" },
    booked: false,
  });
}

/** Bars for a part, cut and bent by the steel yard. */
export const addBarsDelivery = (making: Making): string =>
  making.add("deliveries", "bars-come", {
    name: `Bars for ${making.given.name}, cut and bent`,
    calendar: making.given.common("steel-yard"),
    lead: { is: `10 days of ${making.given.common("steel-yard")}`, from: "own guess" },
    ordered: false,
  });
