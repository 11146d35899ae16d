import type { Lists, ReadLists } from "../read/members";
import { type ListName, listNames } from "../schema/document";
import type { Entered, Written } from "./groups";
import type { Names } from "./names";

/**
 * What putting a member together looks up outside of it. As long as that stays as it was, a member that stands alone and was put together without a
 * finding is the same again: an edit of one step among a thousand puts one together.
 */
export class Frame {
  readonly usual: string;
  readonly start: string;
  readonly units: string;
  lists: Lists;
  readonly #memory = new WeakMap<object, object>();

  constructor(lists: Lists, usual: string, start: string, units: string) {
    this.lists = lists;
    this.usual = usual;
    this.start = start;
    this.units = units;
  }

  once<L extends ListName, T extends object>(written: Written<L>, names: Names, make: () => T): T {
    if (written.copy) return make();
    const known = this.#memory.get(written.draft as object);
    if (known) return known as T;
    const before = names.saidSoFar;
    const made = make();
    if (names.saidSoFar === before && !names.isFull) this.#memory.set(written.draft as object, made);
    return made;
  }
}

let last: Frame | null = null;

/**
 * The frame of the document read before where this one has the same, else a new one. A member that cannot be read leaves an id without a draft to compare:
 * such a document has a frame of its own.
 */
export function frameOf({ lists, ids }: ReadLists, usual: string, start: string, units: string): Frame {
  const whole = listNames.every((list) => ids.get(list)?.size === lists[list].length);
  if (!whole) return new Frame(lists, usual, start, units);
  if (last && last.usual === usual && last.start === start && last.units === units && agree(last.lists, lists)) last.lists = lists;
  else last = new Frame(lists, usual, start, units);
  return last;
}

type Same<L extends ListName> = (a: Entered<L>["draft"], b: Entered<L>["draft"]) => boolean;

function sameList<L extends ListName>(list: L, before: Lists, now: Lists, same: Same<L>): boolean {
  const [a, b] = [before[list] as readonly Entered<L>[], now[list] as readonly Entered<L>[]];
  return (
    a.length === b.length &&
    a.every((one, i) => {
      const other = b[i] as Entered<L>;
      return one.draft === other.draft || (one.id === other.id && same(one.draft, other.draft));
    })
  );
}

const sameId = (): boolean => true;

function agree(a: Lists, b: Lists): boolean {
  return (
    sameList("groups", a, b, (x, y) => x === y) &&
    sameList("places", a, b, (x, y) => x.ways.length === y.ways.length && x.ways.every((way, i) => way.id === y.ways[i]?.id)) &&
    sameList("pieces", a, b, ({ fixed: x }, { fixed: y }) => x.mass_kg === y.mass_kg && sameSize(x.size_mm, y.size_mm)) &&
    sameList(
      "steps",
      a,
      b,
      (x, y) =>
        x.trial?.rounds === y.trial?.rounds &&
        x.closes.length > 0 === y.closes.length > 0 &&
        x.own.pour?.strength_MPa === y.own.pour?.strength_MPa,
    ) &&
    sameList("pours", a, b, (x, y) => x.step === y.step && x.mix.strength_MPa === y.mix.strength_MPa) &&
    (["calendars", "people", "stock", "equipment", "deliveries", "bookings"] as const).every((list) => sameList(list, a, b, sameId))
  );
}

type Size = { readonly long: number; readonly wide: number; readonly thick: number } | null;
const sameSize = (a: Size, b: Size): boolean => a?.long === b?.long && a?.wide === b?.wide && a?.thick === b?.thick;
