import { nothingPicked, onlyThose, type Picking, ranged, toggled } from "./picking";

/** The steps chosen together, whatever view is shown; nothing of it is in the document. */
export class Picked {
  #picking = $state.raw<Picking>(nothingPicked);
  /** Boxes to tick stand before the steps. */
  choosing = $state(false);

  get ids(): ReadonlySet<string> {
    return this.#picking.ids;
  }
  get size(): number {
    return this.#picking.ids.size;
  }

  toggle(id: string): void {
    this.#picking = toggled(this.#picking, id);
  }
  /** From where one began to this one, as the list is shown. */
  range(id: string, shown: readonly string[]): void {
    this.#picking = ranged(this.#picking, id, shown);
  }
  /** One looked at alone: ranges count from it, and none is chosen. */
  begin(id: string | null): void {
    this.#picking = { ids: new Set(), anchor: id };
  }
  take(ids: Iterable<string>): void {
    this.#picking = { ids: new Set(ids), anchor: null };
  }
  clear(): void {
    this.#picking = nothingPicked;
    this.choosing = false;
  }
  keepThose(there: (id: string) => boolean): void {
    this.#picking = onlyThose(this.#picking, there);
  }
}
