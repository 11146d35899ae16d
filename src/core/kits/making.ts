import { formatLength } from "../base";
import type { ListName } from "../build";
import type { Given, Made, Unknown, Written } from "./kit";

type Fields = Readonly<Record<string, unknown>>;

/** A member's fields without those that are left out (undefined, or nothing in a list), so that files stay short. */
const filled = (fields: Fields): Fields =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined && !(Array.isArray(value) && value.length === 0)));

/** Collects what a kit makes: ids from the part's, lists in the order in which members come. */
export class Making {
  readonly #lists: Partial<Record<ListName, Written[]>> = {};
  readonly #unknown: Unknown[] = [];
  readonly #groups = new Map<string, { readonly name: string; readonly count: number; readonly members: string[] }>();
  #alike: string[] | null = null;

  constructor(readonly given: Given) {}

  /** The id of a member by its own word: "column-a-cage". */
  id(word: string): string {
    return `${this.given.part}-${word}`;
  }

  /** A length as the build writes it, to the sixteenth of an inch or the millimetre. */
  mm(length_mm: number): string {
    return formatLength(length_mm, this.given.units);
  }

  /** The length at or under (over) one that a builder lays out: on the half inch or 10 mm. */
  onTape_mm(length_mm: number, way: "down" | "up"): number {
    const grid_mm = this.either(12.7, 10);
    const count = length_mm / grid_mm;
    return (way === "down" ? Math.floor(count + 1e-6) : Math.ceil(count - 1e-6)) * grid_mm;
  }

  /** A length that is laid out or cut, as the build writes it: on the half inch or 10 mm, to the side that is safe. */
  laid(length_mm: number, way: "down" | "up"): string {
    return this.mm(this.onTape_mm(length_mm, way));
  }

  /** One of a figure's two faces. */
  either<T>(us: T, metric: T): T {
    return this.given.units === "us" ? us : metric;
  }

  /** Adds a member and gives its id. */
  add(list: ListName, word: string, fields: Fields): string {
    const id = this.id(word);
    const lists = this.#lists;
    const members = lists[list] ?? [];
    lists[list] = members;
    members.push({ id, ...filled(fields) });
    if (this.#alike !== null && ["places", "pieces", "steps", "waits"].includes(list)) this.#alike.push(id);
    return id;
  }

  /** Members added meanwhile are written once for `count` alike: a group where there are several. The same word again adds to the same group. */
  alike(count: number, word: string, name: string, make: () => void): void {
    if (count > 1) {
      const group = this.#groups.get(word) ?? { name, count, members: [] };
      this.#groups.set(word, group);
      this.#alike = group.members;
    }
    make();
    this.#alike = null;
  }

  unknown(code: string): void {
    this.#unknown.push({ code, part: this.given.part });
  }

  made(): Made {
    const groups = [...this.#groups].map(([word, group]) => ({ id: this.id(word), ...group }));
    return { lists: groups.length === 0 ? this.#lists : { ...this.#lists, groups }, unknown: this.#unknown };
  }
}

/** Ids of the copies of a member of a group of so many; the id itself where there is one. */
export const copiesOf = (id: string, count: number): readonly string[] =>
  count <= 1 ? [id] : Array.from({ length: count }, (_, index) => `${id}#${index + 1}`);

/** The first copy of a member of a group of so many: where only one can be meant. */
export const firstOf = (id: string, count: number): string => (count <= 1 ? id : `${id}#1`);

/** The same id once, in the order of first mention. */
export const once = (ids: readonly string[]): readonly string[] => [...new Set(ids)];
