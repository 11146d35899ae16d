import { rememberedHere, rememberHere } from "./stored";

/** Texts by field. */
type Fields = Readonly<Record<string, string>>;

/**
 * What is typed and not yet put in: another view and a reload find it again, another tab does not. Made where a component begins; bind to `typed`.
 */
export class Unsent<T extends Fields> {
  typed: { -readonly [F in keyof T]: string };
  readonly #name: string;
  readonly #empty: T;

  /** @param name of these fields in this tab; `empty`: what they hold before anything is typed */
  constructor(name: string, empty: T) {
    this.#name = `unsent ${name}`;
    this.#empty = empty;
    const typed = $state({ ...empty, ...keptOf(rememberedHere(this.#name), empty) });
    this.typed = typed;
    $effect(() => this.#keep({ ...typed }));
  }

  /** It is put in. */
  clear(): void {
    Object.assign(this.typed, this.#empty);
    // Nothing may be left of this component by the time that effects run.
    rememberHere(this.#name, null);
  }

  #keep(typed: Fields): void {
    const same = Object.entries(this.#empty).every(([field, text]) => typed[field] === text);
    rememberHere(this.#name, same ? null : typed);
  }
}

/** Of what storage holds, texts of fields that there are. */
function keptOf(kept: unknown, empty: Fields): Partial<Fields> {
  if (typeof kept !== "object" || kept === null) return {};
  return Object.fromEntries(Object.entries(kept).filter(([field, text]) => Object.hasOwn(empty, field) && typeof text === "string"));
}
