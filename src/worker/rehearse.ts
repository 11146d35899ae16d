import { readDocument } from "../core/build";
import { plan } from "../core/plan";
import { examples } from "../examples";

interface Rehearsed {
  load(): Promise<unknown>;
  /** How often it is planned. */
  readonly times: number;
}

const [wall, cellar] = examples;

/**
 * The two examples that can be built: the wall is read and planned in no time, the cellar has nearly everything a build can have. Neither has work that waits for
 * people for long; the cellar by two people has, and only there the rounds are gone through that a large build needs. Most of that code is fast after some twenty
 * plans.
 */
export const rehearsed: readonly Rehearsed[] = [
  { load: wall!.load, times: 1 },
  { load: cellar!.load, times: 1 },
  { load: async () => byTwo((await cellar!.load()) as Built), times: 20 },
];

/** What of a document is changed here. */
interface Built {
  readonly people: readonly { readonly roles?: readonly string[] }[];
  readonly steps: readonly { readonly hands?: unknown }[];
  readonly deliveries: readonly object[];
}

/** The build as the first two people have it who do everything, and with no delivery promised for a day: they are what it waits for. Read as if never seen. */
function byTwo(build: Built): unknown {
  const roles = [...new Set(build.people.flatMap((person) => person.roles ?? []))];
  return structuredClone({
    ...build,
    people: build.people.slice(0, 2).map((person) => ({ ...person, roles })),
    steps: build.steps.map((step) => (Array.isArray(step.hands) ? { ...step, hands: 2 } : step)),
    deliveries: build.deliveries.map((delivery) => ({ ...delivery, promised: undefined })),
  });
}

export interface Rehearsal {
  /** Builds, the smallest first. */
  readonly builds: readonly Rehearsed[];
  /** Whether there is something to do: then the rest is left out. */
  asked(): boolean;
  /** Lets messages that have come in meanwhile be heard, for so many milliseconds at least. */
  later(work: () => void, wait_ms: number): void;
  /** Milliseconds since some instant. */
  now(): number;
}

/** After a plan it is quiet for so many times as long as it took: where that is slow, so is the page that may still ask. */
const quiet = 2;
/** So long it works at most, in milliseconds: on a slow device the battery is worth more than the last few plans. */
const mostWork_ms = 4000;

/**
 * Reads and plans builds for nothing but that the first real one is read and planned sooner: code is fast only after it has run. For the time in which nobody
 * has opened anything yet. Returns how often it got to read a build, and to plan one.
 */
export async function rehearse({ builds, asked, later, now }: Rehearsal): Promise<{ readonly read: number; readonly planned: number }> {
  const pause = (wait_ms = 0): Promise<void> => new Promise((resume) => later(resume, wait_ms));
  let read = 0;
  let planned = 0;
  let worked_ms = 0;
  for (const { load, times } of builds) {
    for (let time = 0; time < times; time++) {
      const document = await load().catch(() => null);
      await pause();
      if (document === null || asked()) return { read, planned };
      const from = now();
      const { build } = readDocument(document);
      read++;
      await pause();
      if (build === null || asked()) return { read, planned };
      plan(build);
      planned++;
      const took_ms = now() - from;
      await pause(quiet * took_ms);
      worked_ms += took_ms;
      if (worked_ms >= mostWork_ms) return { read, planned };
    }
  }
  return { read, planned };
}
