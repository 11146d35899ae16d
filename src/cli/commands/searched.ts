import { type Build, readDocument } from "../../core/build";
import { siteTime } from "../../core/clock";
import { apply } from "../../core/edit";
import { type Plan, PlanSearch, rungs, type Sought } from "../../core/plan";
import { boundSentence, earlierSentence, foundSentence, verdictSentence } from "../../words";
import { Fault } from "../fault";

export interface Searched {
  readonly made: Plan;
  readonly sought: Sought;
  readonly search: PlanSearch;
}

/** The plan at the end of a rung of the search for an earlier finish. @throws Fault when `upTo` is no rung */
export function searched(build: Build, document: unknown, upTo: string): Searched {
  const rung = rungs.find((one) => one === Number(upTo));
  if (rung === undefined) throw new Fault(`A search goes as far as 1e3, 1e4, 3e4 or 1e5 tries, not “${upTo}”.`);
  const search = new PlanSearch(build, (edits) => readDocument(apply(document, edits).document).build);
  while (!search.done && search.rung < rung) search.step(1000);
  return { made: search.plan(), sought: search.sought(), search };
}

/** What came of it, and why nothing can be earlier than the bound. */
export function searchedLines({ sought }: Searched, build: Build): string[] {
  const { finishWas, finish, gain, bound } = sought;
  const lines: string[] = [];
  if (build.steps.length === 0) return lines;
  if (finish !== null && finishWas === null) lines.push(foundSentence(sought, build));
  else if (gain > 0 || (finish ?? 0) < (finishWas ?? 0)) lines.push(earlierSentence(sought, build));
  lines.push(verdictSentence(sought, build));
  if (bound !== null) lines.push(boundSentence(bound, build));
  return lines;
}

/** The same for other programs. */
export function searchedJson({ sought, search }: Searched, build: Build): unknown {
  const time = siteTime(build.site.zone, build.start);
  const { tried, rung, proved, bound, gain, gap } = sought;
  return {
    tried,
    rung,
    proved,
    gained_siteDays: gain,
    notBefore: bound === null ? null : time.momentOf(bound.at),
    gap_siteDays: gap,
    says: searchedLines({ made: search.plan(), sought, search }, build),
    served: search.served(),
  };
}
