import type { Given } from "./kit";
import { type Lists, namer } from "./together";

interface Visit {
  /** End of the ids: "inspect-trench". */
  readonly id: string;
  readonly name: string;
  /** Places that are looked at and that nothing may be done to afterwards. */
  readonly places: readonly string[];
  /** What must be there to be seen. */
  readonly pieces: readonly string[];
  /** Working days of the inspector from request to visit. */
  readonly notice_days: number;
}

/** A visit of the inspector on a weekday: a hold point on places, and the appointment asked for in time. */
export function inspected(given: Given, { id, name, places, pieces, notice_days }: Visit): Lists {
  const inspector = given.common("inspector");
  const own = namer(given);
  return {
    steps: [
      {
        id: own.id(id),
        name: own.called(name),
        sort: "inspection",
        place: places[0],
        work: given.hours("inspection", 1),
        hands: 0,
        calendar: inspector,
        unbroken: true,
        reaches: places.map((place) => ({ place, need: "sight" })),
        leansOn: pieces.map((piece) => ({ piece })),
        holdPoint: { places },
      },
    ],
    bookings: [
      {
        id: own.id(`ask-${id}`),
        name: own.called(`inspector: ${name}`),
        step: own.id(id),
        calendar: inspector,
        lead: { is: `${notice_days} days of ${inspector}`, from: "inspector" },
        booked: false,
      },
    ],
  };
}
