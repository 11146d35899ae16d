/** So many of some people, who are there by calendars: how many of them go by each. */
export interface Quorum {
  readonly number: number;
  /** By calendar, one or more. */
  readonly people: ReadonlyMap<string, number>;
}

/**
 * The plainest quorum that is there at the same times, so that many can share a clock: calendars that make no difference are left out, and where all of the
 * rest are wanted, or any one of them will do, each counts once.
 */
export function plainest({ number, people }: Quorum): Quorum {
  const all = [...people.values()].reduce((sum, n) => sum + n, 0);
  if (number <= 0 || number > all) return { number: number <= 0 ? 0 : 1, people: new Map() };
  const deciding = [...people].filter(([calendar]) => decides(calendar, people, number));
  const total = deciding.reduce((sum, [, n]) => sum + n, 0);
  const fewest = deciding.reduce((least, [, n]) => Math.min(least, n), total);
  const wanted = total - fewest < number ? deciding.length : fewest >= number ? 1 : null;
  return wanted === null ? { number, people: new Map(deciding) } : { number: wanted, people: new Map(deciding.map(([id]) => [id, 1])) };
}

/** The same text for as many by the same calendars. */
export const textOf = (people: Quorum["people"]): string =>
  [...people]
    .map(([calendar, number]) => `${number} by ${calendar}`)
    .sort()
    .join(", ");

const known = new Map<string, Quorum & { readonly text: string }>();
const mostKnown = 512;

/** The plainest quorum and its text, kept, as every plan of a build asks for the same few. */
export function plainQuorum(number: number, people: Quorum["people"]): Quorum & { readonly text: string } {
  const asked = `${number} of ${textOf(people)}`;
  let plain = known.get(asked);
  if (plain === undefined) {
    const fresh = plainest({ number, people });
    plain = { ...fresh, text: `${fresh.number} of ${textOf(fresh.people)}` };
    if (known.size >= mostKnown) known.clear();
    known.set(asked, plain);
  }
  return plain;
}

/** Whether some of the others together are too few without this calendar's people, and enough with them. */
function decides(calendar: string, people: Quorum["people"], number: number): boolean {
  // How many can be there without them, below the number.
  let sums = [0];
  for (const [other, n] of people)
    if (other !== calendar) sums = [...new Set([...sums, ...sums.map((sum) => sum + n)])].filter((sum) => sum < number);
  return sums.some((sum) => sum + (people.get(calendar) ?? 0) >= number);
}
