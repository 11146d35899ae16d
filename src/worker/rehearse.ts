import { readDocument } from "../core/build";
import { plan } from "../core/plan";
import { examples } from "../examples";

/** The two examples that can be built: the wall is read and planned in no time, the cellar has nearly everything a build can have. */
export const rehearsed = examples.slice(0, 2);

export interface Rehearsal {
  /** Builds, the smallest first. */
  readonly builds: readonly { load(): Promise<unknown> }[];
  /** Whether there is something to do: then the rest is left out. */
  asked(): boolean;
  /** Lets messages that have come in meanwhile be heard, for so many milliseconds at least. */
  later(work: () => void, wait_ms: number): void;
  /** Milliseconds since some instant. */
  now(): number;
}

/** Between two builds it is quiet for so many times as long as the one before took: where that is slow, so is the page that may still ask. */
const quiet = 5;

/**
 * Reads and plans builds for nothing but that the first real one is read and planned sooner: code is fast only after it has run. For the time in which nobody
 * has opened anything yet. Returns how many builds it got to read, and to plan.
 */
export async function rehearse({ builds, asked, later, now }: Rehearsal): Promise<{ readonly read: number; readonly planned: number }> {
  const pause = (wait_ms = 0): Promise<void> => new Promise((resume) => later(resume, wait_ms));
  let read = 0;
  let planned = 0;
  for (const { load } of builds) {
    const document = await load().catch(() => null);
    await pause();
    if (document === null || asked()) break;
    const from = now();
    const { build } = readDocument(document);
    read++;
    await pause();
    if (build === null || asked()) break;
    plan(build);
    planned++;
    await pause(quiet * (now() - from));
    if (asked()) break;
  }
  return { read, planned };
}
