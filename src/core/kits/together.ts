import type { ListName } from "../build";
import type { Given, Written } from "./kit";

/** Members by list, as a kit makes them. */
export type Lists = Partial<Readonly<Record<ListName, readonly Written[]>>>;

/** The members of several makers, one list after the other. */
export function together(...some: readonly Lists[]): Lists {
  const out: Partial<Record<ListName, Written[]>> = {};
  for (const lists of some) {
    for (const [list, members] of Object.entries(lists) as [ListName, readonly Written[]][]) {
      out[list] = [...(out[list] ?? []), ...members];
    }
  }
  return out;
}

/** Lanes rise with the height of what they stand for, 4 in (100 mm) a level. */
export const levelAt = (z_mm: number): number => Math.max(-1000, Math.min(1000, Math.round(z_mm / 100)));

/** An id and a name of a part's own: "Lay the conduit (Trench to the house)". */
export const namer = ({ part, name }: Given) => ({
  id: (what: string): string => `${part}-${what}`,
  called: (what: string): string => `${what.charAt(0).toUpperCase()}${what.slice(1)} (${name})`,
});

/** Goods of the lumber yard, or hired there, with so many of its days from order to site. */
export function ordered(given: Given, what: string, name: string, lead_days: number): Written {
  const yard = given.common("lumber-yard");
  const { id, called } = namer(given);
  return {
    id: id(what),
    name: called(name),
    calendar: yard,
    lead: { is: `${lead_days} days of ${yard}`, from: "own guess" },
    ordered: false,
  };
}
