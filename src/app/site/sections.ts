import { saidYearDate } from "../../core/clock";
import { idsOf, isObject, listOf, textOf, type Written } from "../write/written";
import { figuresOf } from "./figures";
import { guessedHolidays } from "./holiday-tables";

/** What the view is divided into. */
export const sections = [
  { id: "build", name: "The build" },
  { id: "calendars", name: "Calendars" },
  { id: "people", name: "People" },
  { id: "things", name: "Equipment and stock" },
  { id: "deliveries", name: "Deliveries" },
  { id: "bookings", name: "Bookings" },
  { id: "temperatures", name: "Temperatures" },
  { id: "cautions", name: "Cautions" },
  { id: "guesses", name: "What rests on a guess" },
] as const;

export type SectionId = (typeof sections)[number]["id"];

const nameOf = (thing: Written): string => textOf(thing.name) || textOf(thing.id).replaceAll("-", " ");
/** "13 Feb 2027", or as dates are said on this machine. */
const dateWords = (date: string): string =>
  /^\d{4}-\d{2}-\d{2}$/.test(date) ? saidYearDate(Number(date.slice(8)), Number(date.slice(5, 7)), date.slice(0, 4)) : date;
const number = (count: number, one: string, many = `${one}s`): string =>
  count === 0 ? `no ${many}` : `${count} ${count === 1 ? one : many}`;

/** One line for a section that is folded. */
export function sectionSays(id: SectionId, document: unknown): string {
  if (!isObject(document)) return "";
  const site = isObject(document.site) ? document.site : {};
  const of = (list: Parameters<typeof listOf>[1]): readonly Written[] => listOf(document, list);
  switch (id) {
    case "build":
      return [nameOf(document), `from ${dateWords(textOf(document.start))}`].join(", ");
    case "calendars":
      return number(of("calendars").length, "calendar");
    case "people":
      return of("people").length > 5
        ? number(of("people").length, "person", "people")
        : of("people").map(nameOf).join(", ") || "nobody yet";
    case "things":
      return `${number(of("equipment").length, "piece of equipment", "pieces of equipment")}, ${number(of("stock").length, "stock", "stocks")}`;
    case "deliveries": {
      const open = of("deliveries").filter(({ ordered }) => ordered !== true).length;
      return `${number(of("deliveries").length, "delivery", "deliveries")}${open > 0 ? `, ${open} not ordered` : ""}`;
    }
    case "bookings": {
      const open = of("bookings").filter(({ booked }) => booked !== true).length;
      return `${number(of("bookings").length, "booking")}${open > 0 ? `, ${open} not booked` : ""}`;
    }
    case "temperatures": {
      const days = Array.isArray(site.days) ? site.days.length : 0;
      return [
        Array.isArray(site.usualTemperatures) ? "usual months written" : "not written",
        ...(days > 0 ? [number(days, "single day")] : []),
      ].join(", ");
    }
    case "cautions": {
      const own = of("steps").reduce((count, { cautions }) => count + idsOf(cautions).length, 0);
      return own === 0 ? "the usual ones" : `the usual ones, and ${own} written here`;
    }
    default:
      return [
        number(figuresOf(document).filter(({ from }) => from === "own guess").length, "figure"),
        ...(guessedHolidays(document).length > 0 ? ["holidays kept"] : []),
      ].join(", ");
  }
}
