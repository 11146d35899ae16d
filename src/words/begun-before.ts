import type { Build, Step } from "../core/build";
import { readMoment } from "../core/clock";
import { clockWords, writtenDate } from "./dates";

/** When something was done, as written down: a plan's clocks begin with the first day, so what was begun before has no other place on them. */
export interface BegunBefore {
  /** "Sat 20 Mar" */
  readonly day: string;
  /** "9:00"; empty where no time was written. */
  readonly time: string;
  /** "Sat 20 Mar, 9:00 to 12:00" */
  readonly span: string;
}

/** What is said of a step that was begun before the build's first day; null for any other. */
export function begunBefore({ done }: Pick<Step, "done">, { start, site }: Build): BegunBefore | null {
  if (!done || done.start.slice(0, 10) >= start) return null;
  const said = (moment: string) => writtenDate(moment, site.zone, start);
  const [from, to] = [readMoment(done.start), readMoment(done.finish)];
  const time = from && done.start.includes("T") ? clockWords(from.minute) : "";
  const ends = to && from?.number === to.number ? (done.finish.includes("T") ? clockWords(to.minute) : "") : said(done.finish);
  return { day: said(done.start.slice(0, 10)), time, span: [said(done.start), ends].filter((part) => part !== "").join(" to ") };
}
