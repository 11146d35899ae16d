import { StoreError, type StoreTrouble } from "../../store";

const sentences: Readonly<Record<StoreTrouble, string>> = {
  refused: "This browser keeps nothing for this page, so what you change is gone when it closes. Save a file before you leave.",
  full: "There is no room left on this machine, so the last changes are only in this page. Save a file now, or make room and try again.",
  taken: "Another tab changes this build now, and the last changes made here are not in it. Save a file to keep them.",
  upgraded:
    "A newer Batterboard runs in another tab and has taken over what is kept here. Save a file if you need to, then load this page again.",
  newer: "This build was written by a newer Batterboard and was left as it is. Load this page again to get the newer program.",
  gone: "This build is no longer kept in this browser. Another tab may have thrown it away for good.",
  failed: "The last changes could not be kept in this browser and are only in this page. Save a file now, or try again.",
};

/** What a builder is told when a build cannot be kept or fetched, and what can be done. */
export const troubleSentence = (trouble: StoreTrouble): string => sentences[trouble];

export const troubleOf = (error: unknown): StoreTrouble => (error instanceof StoreError ? error.trouble : "failed");

/** Whether trying again can help: the others last until the page is loaded again. */
export const mayPass = (trouble: StoreTrouble): boolean => trouble === "full" || trouble === "failed" || trouble === "refused";
