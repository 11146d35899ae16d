import {
  asId,
  type BookingId,
  type CalendarId,
  type DeliveryId,
  type EquipmentId,
  type Finding,
  limits,
  nearest,
  type PersonId,
  type PieceId,
  type PlaceId,
  type StepId,
  type StockId,
  type Where,
} from "../../base";
import { type BuildCode, type DetailOf, found } from "../codes";
import type { GroupDraft } from "../read/drafts";
import { shown } from "../read/notes";

export interface IdOf {
  readonly place: PlaceId;
  readonly piece: PieceId;
  readonly step: StepId;
  readonly calendar: CalendarId;
  readonly person: PersonId;
  readonly stock: StockId;
  readonly equipment: EquipmentId;
  readonly delivery: DeliveryId;
  readonly booking: BookingId;
}

export type Sort = keyof IdOf;
type Unread = Sort | "group" | "group-member" | "pour";

/** One written id: alone, or as many copies. */
export interface Entry {
  readonly group: GroupDraft | null;
  /** All ids it is read as, in order; a single one for what stands alone. */
  readonly all: readonly string[];
}

/** The copy of a group that is being read: references to its own members mean the same copy. */
export interface Copy {
  readonly group: GroupDraft;
  readonly copy: number;
}

/** What is being put together, for findings. */
export interface Speaker {
  readonly list: string;
  readonly id: string;
  readonly copy: Copy | null;
}

const none: readonly never[] = [];
/** Comparing with every id there is costs too much to do for thousands of wrong ones. */
const mostGuesses = 50;

/** All ids of the document by sort, and what a reference to one means from where it stands. */
export class Names {
  readonly findings: Finding[] = [];
  readonly #sorts: Readonly<Record<Sort, Map<string, Entry>>> = {
    place: new Map(),
    piece: new Map(),
    step: new Map(),
    calendar: new Map(),
    person: new Map(),
    stock: new Map(),
    equipment: new Map(),
    delivery: new Map(),
    booking: new Map(),
  };
  /** Sorts of which the list cannot be read: nothing is said of references to them. */
  readonly #unread = new Set<string>();
  readonly #said = new Set<string>();
  #references = 0;
  #told = 0;

  /** Counts what was said, what had been said before included. */
  get saidSoFar(): number {
    return this.#told;
  }

  /** True once so many references came together that going on would only use up memory. */
  get isFull(): boolean {
    return this.#references > limits.references.most;
  }

  sort(sort: Sort): Map<string, Entry> {
    return this.#sorts[sort];
  }

  add(sort: Sort, id: string, entry: Entry): void {
    this.#sorts[sort].set(id, entry);
  }

  unreadable(sort: Unread): void {
    this.#unread.add(sort);
  }

  isUnreadable(sort: Unread): boolean {
    return this.#unread.has(sort);
  }

  entry(sort: Sort, ref: string): Entry | undefined {
    return this.#sorts[sort].get(ref);
  }

  /** Says a finding once, however many copies have it. */
  say<C extends BuildCode>(code: C, where: Where, detail: DetailOf<C>): void {
    this.#told++;
    const finding = found(code, where, detail);
    const key = JSON.stringify([code, where, detail]);
    if (this.#said.has(key)) return;
    this.#said.add(key);
    this.findings.push(finding);
  }

  /** Counts what a reference grows into; false once it is too much. */
  spend(count: number): boolean {
    this.#references += count;
    return !this.isFull;
  }

  unknown(sort: string, ref: string, known: Iterable<string>, speaker: Speaker, key: string, part: string): void {
    if (this.#unread.has(sort) || (this.#unread.has("group") && ref.includes("#"))) return;
    const meant = this.findings.length < mostGuesses ? nearest(ref, known) : null;
    const detail = { part, sort, value: shown(ref), nearest: meant ?? "" };
    this.say("build.unknown-id", { list: speaker.list, id: speaker.id, key }, detail);
  }

  /** Every id that a reference stands for: the same copy inside a group, all copies from outside, one where a copy is named. */
  many<S extends Sort>(sort: S, ref: string, speaker: Speaker, key: string, part = ""): readonly IdOf[S][] {
    if (!this.spend(1)) return none;
    const mark = ref.indexOf("#");
    const entry = this.#sorts[sort].get(mark < 0 ? ref : ref.slice(0, mark));
    if (!entry) {
      this.unknown(sort, ref, this.#sorts[sort].keys(), speaker, key, part);
      return none;
    }
    if (mark >= 0) {
      if (entry.all.includes(ref)) return [asId(ref)];
      this.unknown(sort, ref, entry.all, speaker, key, part);
      return none;
    }
    if (entry.group && speaker.copy && entry.group === speaker.copy.group) return [asId(`${ref}#${speaker.copy.copy}`)];
    return this.spend(entry.all.length - 1) ? (entry.all as readonly IdOf[S][]) : none;
  }

  /** As `many` for a list of references, each id once. */
  list<S extends Sort>(sort: S, refs: readonly string[], speaker: Speaker, key: string): readonly IdOf[S][] {
    if (refs.length === 0) return none;
    if (refs.length === 1) return this.many(sort, refs[0] as string, speaker, key);
    const ids = new Set<IdOf[S]>();
    refs.forEach((ref, i) => {
      for (const id of this.many(sort, ref, speaker, key, String(i + 1))) ids.add(id);
    });
    return [...ids];
  }

  /** The one id that a reference stands for; null with a finding where there is none or where a copy has to be named. */
  one<S extends Sort>(sort: S, ref: string, speaker: Speaker, key: string, part = ""): IdOf[S] | null {
    const ids = this.many(sort, ref, speaker, key, part);
    if (ids.length > 1) {
      this.say("build.which-copy", { list: speaker.list, id: speaker.id, key }, { part, value: ref, count: ids.length });
      return null;
    }
    return ids[0] ?? null;
  }
}
