import { readDocument } from "../core/build";
import { plan } from "../core/plan";

export interface Rehearsal {
  /** A small build. */
  load(): Promise<unknown>;
  /** Whether there is something to do: then the rest is left out. */
  asked(): boolean;
  /** Lets messages that have come in meanwhile be heard. */
  later(work: () => void): void;
}

/**
 * Reads and plans a small build for nothing but that the first real one is read and planned sooner: code is fast only after it has run. For the time in which a
 * page still looks for its document. Returns how far it came.
 */
export async function rehearse({ load, asked, later }: Rehearsal): Promise<"nothing" | "read" | "planned"> {
  const pause = (): Promise<void> => new Promise((resume) => later(resume));
  const document = await load().catch(() => null);
  await pause();
  if (document === null || asked()) return "nothing";
  const { build } = readDocument(document);
  await pause();
  if (build === null || asked()) return "read";
  plan(build);
  return "planned";
}
