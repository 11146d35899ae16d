import type { StoreTrouble } from "../../store";

const sentences: Readonly<Record<StoreTrouble, string>> = {
  refused: "This browser keeps nothing for this page, so what you change is gone when it closes. Save a file before you leave.",
  full: "There is no room left on this machine, so the last changes are not kept here. Save a file, or make room; the next change tries again.",
  taken: "Another tab changes this build now. What you see here is as it was; nothing you do here is kept.",
  upgraded:
    "A newer Batterboard runs in another tab and has taken over what is kept here. Save a file if you need to, then load this page again.",
  newer: "This build was written by a newer Batterboard and was left as it is. Load this page again to get the newer program.",
  failed: "The last changes could not be kept in this browser. Save a file; the next change tries again.",
};

/** What a builder is told when a build cannot be kept or fetched, and what can be done. */
export const troubleSentence = (trouble: StoreTrouble): string => sentences[trouble];
