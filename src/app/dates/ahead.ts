import type { Slices } from "../../draw";

/** Of each frame so much is worked, so that the browser has the rest of it to draw. ms */
const share = 5;

/**
 * Works something out in slices, a few in each frame, while the page goes on showing what it showed. One thing at a time: what is asked anew takes the
 * place of what was not done yet.
 */
export class Ahead {
  #frame: number | null = null;
  /** Something was begun in this frame: what takes its place waits for the next. */
  #begun = false;
  /** Something was shown a frame or two ago: those frames have its rest to draw, and what comes next waits. */
  #shown = false;

  /** Something is being worked out. */
  get busy(): boolean {
    return this.#frame !== null;
  }

  /** `done` is called with what the slices come to, in a frame of its own. */
  run<T>(slices: Slices<T>, done: (made: T) => void): void {
    this.stop();
    const turn = () => {
      if (this.#shown && !document.hidden) {
        this.#frame = requestAnimationFrame(turn);
        return;
      }
      const start = performance.now();
      do {
        const { done: ended, value } = slices.next();
        if (!ended) continue;
        this.#frame = requestAnimationFrame(() => {
          this.#frame = null;
          this.#shown = true;
          requestAnimationFrame(() =>
            requestAnimationFrame(() => {
              this.#shown = false;
            }),
          );
          done(value);
        });
        return;
      } while (document.hidden || performance.now() - start < share);
      this.#frame = requestAnimationFrame(turn);
    };
    if (this.#begun) this.#frame = requestAnimationFrame(turn);
    else {
      this.#begun = true;
      requestAnimationFrame(() => {
        this.#begun = false;
      });
      turn();
    }
  }

  stop(): void {
    if (this.#frame !== null) cancelAnimationFrame(this.#frame);
    this.#frame = null;
  }
}
