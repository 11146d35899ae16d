import type { ListName } from "../build";
import { listOf } from "./document";
import { holidaysAt } from "./holidays";
import type { CommonName, Written } from "./kit";

interface Common {
  readonly list: ListName;
  readonly member: (document: unknown) => Written;
}

const weekdays = ["mon", "tue", "wed", "thu", "fri"] as const;
const days = (hours: string, saturday?: string) => ({
  ...Object.fromEntries(weekdays.map((day) => [day, [hours]])),
  ...(saturday === undefined ? {} : { sat: [saturday] }),
});

const calendar = (id: CommonName, name: string, week: Readonly<Record<string, readonly string[]>>, more: object = {}): Common => ({
  list: "calendars",
  member: (document) => ({ id, name, week, ...holidaysAt(document), ...more }),
});

/** Days of the build's usual calendar on which plants are open, from its first hour to its last without a break: a pour does not stop for lunch. */
function pourDays(document: unknown): Written {
  const usual = (document as { readonly usual?: unknown } | null)?.usual;
  const calendars = listOf(document, "calendars");
  const written = calendars.find(({ id }) => id === usual) ?? calendars[0];
  const week = (typeof written?.week === "object" && written.week !== null ? written.week : {}) as Readonly<Record<string, unknown>>;
  const worked = [...weekdays, "sat"].flatMap((day): (readonly [string, readonly string[]])[] => {
    const windows = Array.isArray(week[day]) ? (week[day] as readonly unknown[]).filter((one) => typeof one === "string") : [];
    const first = windows[0] as string | undefined;
    const last = windows[windows.length - 1] as string | undefined;
    if (first === undefined || last === undefined) return [];
    return [[day, [`${first.split(/ ?[-–] ?/)[0]}-${last.split(/ ?[-–] ?/)[1]}`]]];
  });
  const holidays = {
    ...(written?.off === undefined ? {} : { off: written.off }),
    ...(written?.holidays === undefined ? holidaysAt(document) : { holidays: written.holidays }),
  };
  return {
    id: "pour-days",
    name: "Pour days",
    week: Object.fromEntries(worked.length > 0 ? worked : [["sat", ["8:00-17:00"]]]),
    ...holidays,
  };
}

/** Members that kits share, each made the first time one is asked for. Hours of offices and yards are common practice, no source: the builder asks and changes them. */
export const commons: Readonly<Record<CommonName, Common>> = {
  ground: {
    list: "places",
    member: () => ({
      id: "ground",
      name: "Open ground",
      level: 0,
      ways: [{ id: "over", name: "over the ground", passes: ["person", "unit", "machine"] }],
    }),
  },
  dig: {
    list: "places",
    member: () => ({
      id: "dig",
      name: "Ground to be dug",
      layerOf: "ground",
      level: 0,
      ways: [{ id: "marked", name: "where the marks and lines are", passes: ["person", "machine"], through: "ground" }],
    }),
  },
  lines: {
    list: "places",
    member: () => ({
      id: "lines",
      name: "Lines over the work",
      level: 1,
      ways: [{ id: "strings", name: "along the strings", passes: ["sight"] }],
    }),
  },
  store: {
    list: "places",
    member: () => ({
      id: "store",
      name: "Store and bench",
      side: "off-site",
      level: -100,
      ways: [{ id: "door", name: "its door", passes: ["person", "unit", "machine"] }],
    }),
  },
  "pour-days": { list: "calendars", member: pourDays },
  inspector: calendar("inspector", "Building inspector", days("9:00-15:30"), { cutOff: "15:00" }),
  "utility-office": calendar("utility-office", "Utility-marking office", days("7:00-17:00"), { cutOff: "17:00" }),
  plant: calendar("plant", "Concrete plant", days("6:30-16:30", "6:30-12:00"), { cutOff: "14:00" }),
  "lumber-yard": calendar("lumber-yard", "Lumber yard", days("7:00-17:00", "8:00-12:00"), { cutOff: "16:00" }),
  "steel-yard": calendar("steel-yard", "Steel yard", days("7:00-16:00"), { cutOff: "14:00" }),
  pump: calendar("pump", "Pump hire", days("7:00-17:00", "7:00-15:00"), { cutOff: "15:00" }),
  electrician: calendar("electrician", "Electrician", days("8:00-16:00")),
};
