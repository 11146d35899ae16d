/** What is typed in one field without a pause this long is one change. */
const pause_ms = 4000;

/** Which changes are one: those made in the same field in one go. `Before` is what there was before the first of them. */
export class Typing<Before> {
  #now: { readonly field: string; readonly at_ms: number; readonly before: Before } | null = null;

  /** What there was before the change that one in this field is part of; null where it is a change of its own. A field without a name has changes of their own only. */
  goesOn(field: string | undefined, now_ms: number): { readonly before: Before } | null {
    const now = this.#now;
    return now !== null && field === now.field && now_ms - now.at_ms < pause_ms ? now : null;
  }

  /** A change was made. Only then: what changed nothing must not be joined by what comes after it, or that would join the change before. */
  made(field: string | undefined, now_ms: number, before: Before): void {
    this.#now = field === undefined ? null : { field, at_ms: now_ms, before };
  }

  /** Something else was done. */
  end(): void {
    this.#now = null;
  }
}
