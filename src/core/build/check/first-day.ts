import type { Finding, WayOut } from "../../base";
import type { Head } from "../read/head";

/** What lies further back is more likely a slip of the pen. */
const mostBack_ms = 366 * 24 * 3600 * 1000;

const day = (moment: unknown): string => String(moment).slice(0, 10);

/**
 * Work ticked for a day before the build begins counts from then. Each finding that says so comes with the way out: let the build begin by the first of these days,
 * and go on with what is left no sooner than before.
 */
export function withFirstDay(findings: readonly Finding[], { start, resumes }: Head): readonly Finding[] {
  const isDone = ({ code, where }: Finding): boolean => code === "build.before-start" && where.key === "done";
  const days = findings.filter(isDone).map(({ detail }) => day(detail.value));
  const [first] = days.sort();
  if (first === undefined || Date.parse(start) - Date.parse(first) > mostBack_ms) return findings;
  const goesOn = resumes !== null && resumes > start ? resumes : start;
  const way: WayOut = {
    kind: "move-date",
    detail: { begins: first, goesOn },
    edits: [
      { path: ["start"], value: first },
      { path: ["resumes"], value: goesOn },
    ],
  };
  return findings.map((finding) => (isDone(finding) ? { ...finding, waysOut: [way] } : finding));
}
