import type { Build } from "../../core/build";
import { buildFileText } from "../../files";
import type { ListPort } from "../../store";

/** Wait after a change until cover and size are made again. */
const leisure_ms = 4000;

interface Lying {
  readonly port: ListPort;
  readonly key: string;
  readonly build: Build;
  readonly document: unknown;
}

/** What the list of kept builds shows of the open one, made when there is time, or before another is opened. */
export class Looks {
  readonly #of: () => Lying | null;
  readonly #done: () => Promise<void>;
  #leisure: ReturnType<typeof setTimeout> | undefined;

  /** `of`: the open build where this tab keeps it. */
  constructor(of: () => Lying | null, done: () => Promise<void>) {
    this.#of = of;
    this.#done = done;
  }

  soon(): void {
    clearTimeout(this.#leisure);
    this.#leisure = setTimeout(() => requestIdle(() => this.now()), leisure_ms);
  }

  now(): void {
    clearTimeout(this.#leisure);
    const lying = this.#of();
    // Where there is no room for a picture there is none; it is made again another time.
    if (lying) void this.#describe(lying).catch(() => undefined);
  }

  async #describe({ port, key, build, document }: Lying): Promise<void> {
    const { coverOf } = await import("./cover");
    const size_bytes = new TextEncoder().encode(buildFileText(document)).length;
    await port.describe(key, { cover: coverOf(build), size_bytes });
    await this.#done();
  }
}

/** Not every browser says when it has time. */
const requestIdle = (work: () => void): void => {
  if ("requestIdleCallback" in globalThis) requestIdleCallback(work);
  else work();
};
