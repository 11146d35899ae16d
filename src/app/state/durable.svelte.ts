import { remember, remembered } from "./stored";

/** promised: kept until the builder throws it away. open: nobody has asked yet. refused: may be cleared. unknown: this browser cannot be asked. */
export type Durable = "promised" | "open" | "refused" | "unknown";

/** Whether the browser has promised to keep what is stored here when the machine runs short of room. */
export class Durability {
  answer = $state<Durable>("unknown");
  used_bytes = $state<number | null>(null);
  #asked = false;

  async look(): Promise<void> {
    const storage = navigator.storage;
    if (!storage?.persisted || !storage.persist) return;
    this.answer = (await storage.persisted().catch(() => false)) ? "promised" : remembered("durable-refused") ? "refused" : "open";
  }

  /** At the first real change: only then is there something to keep. Asks once by itself; after a refusal only when told to. */
  askOnce(): void {
    if (this.#asked || this.answer !== "open") return;
    this.#asked = true;
    void this.ask();
  }

  async ask(): Promise<void> {
    if (this.answer === "unknown") return;
    const yes = await navigator.storage.persist().catch(() => false);
    this.answer = yes ? "promised" : "refused";
    remember("durable-refused", !yes);
  }

  async measure(): Promise<void> {
    this.used_bytes = (await navigator.storage?.estimate?.().catch(() => null))?.usage ?? null;
  }
}
