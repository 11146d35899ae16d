import { type Build, readDocument } from "../core/build";

type Written = Readonly<Record<string, unknown>>;
const isObject = (value: unknown): value is Written => typeof value === "object" && value !== null && !Array.isArray(value);

const list = (document: Written, key: string): readonly Written[] => {
  const members = document[key];
  const seen = new Set<unknown>();
  if (!Array.isArray(members)) return [];
  return members.filter(isObject).filter(({ id, name }) => {
    const isNamed = typeof id === "string" && typeof name === "string" && !seen.has(id);
    seen.add(id);
    return isNamed;
  });
};
const named = (members: readonly Written[]): readonly Written[] => members.map(({ id, name }) => ({ id, name }));

/**
 * A build with nothing but the names of a document that cannot be read as one: enough to say what is wrong with it by the names its author gave.
 * Null where not even these can be read.
 */
export function namesOnly(document: unknown): Build | null {
  if (!isObject(document)) return null;
  const week = { sat: ["8:00-12:00"] };
  const start = typeof document.start === "string" && /^\d{4}-\d\d-\d\d$/.test(document.start) ? document.start : "2027-01-01";
  const of = (start: string): Build | null =>
    readDocument({
      batterboard: 1,
      site: {
        zone: "UTC",
        latitude: 0,
        longitude: 0,
        units: isObject(document.site) && document.site.units === "metric" ? "metric" : "us",
      },
      start,
      calendars: [...named(list(document, "calendars")).map((one) => ({ ...one, week })), { id: "any-days", week }],
      usual: "any-days",
      people: named(list(document, "people")),
      equipment: named(list(document, "equipment")),
      stock: named(list(document, "stock")),
      places: list(document, "places").map((place) => ({ id: place.id, name: place.name, ways: named(list(place, "ways")) })),
      pieces: named(list(document, "pieces")),
      steps: named(list(document, "steps")),
      deliveries: named(list(document, "deliveries")),
    }).build;
  return of(start) ?? of("2027-01-01");
}
