import type { Turn } from "../../draw";
import { remember, remembered } from "../state/stored";

/** Where it stands above the days and not beside them it would push them off the screen: there it is folded until somebody opens it. */
const stacked = (): boolean => matchMedia("(max-width: 64rem)").matches;

function foldedAtFirst(): boolean {
  const known = remembered("structure-folded");
  return typeof known === "boolean" ? known : stacked();
}

/** How the structure is looked at; nothing of it is in the document. */
export class StructureView {
  #folded = $state(foldedAtFirst());
  turn = $state<Turn>(0);
  /** The day drawn, counted from the build's first; null: today, or the last day. */
  day = $state<number | null>(null);
  /** The body that was chosen on the drawing. */
  body = $state<string | null>(null);
  keyShown = $state(remembered("structure-key") === true);

  get folded(): boolean {
    return this.#folded;
  }
  set folded(folded: boolean) {
    this.#folded = folded;
    remember("structure-folded", folded);
  }

  showKey(shown: boolean): void {
    this.keyShown = shown;
    remember("structure-key", shown);
  }

  turnBy(quarters: 1 | -1): void {
    this.turn = ((this.turn + quarters + 4) % 4) as Turn;
  }

  /** False for a key that is none of its own. */
  key(key: string): boolean {
    if (key !== "t" && key !== "T") return false;
    this.turnBy(key === "t" ? 1 : -1);
    return true;
  }
}
