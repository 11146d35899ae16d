import { degreesOf } from "../parts/figure";
import { idFrom } from "../write/written";

export interface NewBuild {
  readonly name: string;
  /** The first step's name; empty: none yet. */
  readonly first: string;
  /** "2027-06-26" */
  readonly start: string;
  readonly hands: string;
  readonly latitude: string;
  readonly longitude: string;
  readonly zone: string;
  readonly units: "us" | "metric" | "build";
}

const mostHands = 50;

/** A sentence for each field that cannot be taken as typed. */
export function faultsOf(wanted: NewBuild): Partial<Record<"name" | "start" | "hands" | "latitude" | "longitude", string>> {
  const hands = wanted.hands.trim();
  const count = /^\d+$/.test(hands) ? Number(hands) : 0;
  const degrees = (of: "latitude" | "longitude"): Record<string, string> => {
    const read = degreesOf(wanted[of], of);
    return typeof read === "string" ? { [of]: read } : {};
  };
  return {
    ...(wanted.name.trim() === "" ? { name: "Write what it is called, like Garden wall." } : {}),
    ...(/^\d{4}-\d\d-\d\d$/.test(wanted.start) ? {} : { start: "Choose the first day, like 2027-06-26." }),
    ...(count >= 1 && count <= mostHands
      ? {}
      : {
          hands: `${hands === "" ? "How many? Write" : `“${hands}” is not a number of hands; write`} a whole number from 1 to ${mostHands}, like 2.`,
        }),
    ...degrees("latitude"),
    ...degrees("longitude"),
  };
}

/** A document with weekends, so many hands, and one step where one is named. Only for what has no faults. */
export function newBuild(wanted: NewBuild): unknown {
  const name = wanted.name.trim();
  const first = wanted.first.trim();
  const windows = ["8:00-12:00", "12:30-17:00"];
  return {
    batterboard: 1,
    id: idFrom(name, {}),
    name,
    site: {
      zone: wanted.zone,
      latitude: degreesOf(wanted.latitude, "latitude"),
      longitude: degreesOf(wanted.longitude, "longitude"),
      units: wanted.units === "build" ? "us" : wanted.units,
    },
    start: wanted.start,
    usual: "weekends",
    calendars: [{ id: "weekends", name: "weekends", week: { sat: windows, sun: windows } }],
    people: Array.from({ length: Number(wanted.hands) }, (_, index) => ({
      id: index === 0 ? "you" : `hand-${index + 1}`,
      name: index === 0 ? "You" : `Hand ${index + 1}`,
      calendar: "weekends",
    })),
    places: [],
    pieces: [],
    steps: first === "" ? [] : [{ id: idFrom(first, {}), name: first, work: "2 h" }],
  };
}

/** Where and when it probably is: the next Saturday, and the middle of the clock's zone in temperate latitudes. */
export function guessOf(
  now: Date,
  zone: string,
): { readonly start: string; readonly latitude: number; readonly longitude: number; readonly zone: string } {
  const saturday = new Date(now);
  saturday.setDate(now.getDate() + ((6 - now.getDay() + 7) % 7));
  const two = (value: number): string => String(value).padStart(2, "0");
  const winter_min = new Date(now.getFullYear(), 0, 1).getTimezoneOffset();
  return {
    start: `${saturday.getFullYear()}-${two(saturday.getMonth() + 1)}-${two(saturday.getDate())}`,
    latitude: /^(Australia|Antarctica|Pacific\/Auckland|America\/(Sao|Arg|Sant|Mont)|Africa\/J)/.test(zone) ? -35 : 40,
    longitude: -winter_min / 4 || 0,
    zone,
  };
}
