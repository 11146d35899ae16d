import type { DocumentEdit, Finding } from "../../core/base";
import type { Build } from "../../core/build";
import { siteTime } from "../../core/clock";
import type { Plan, PlanMay } from "../../core/plan";
import { dateLabel } from "../../draw";
import type { Shop } from "../state";
import { shownName } from "../state/names";
import { quickUpTo } from "../state/planner";
import { idsOf, memberOf, putKey } from "../write/written";

/** What came of trying one step before another. */
export interface Verdict {
  readonly kind: "yes" | "already" | "no" | "unknown";
  readonly sentence: string;
  /** For a no: the reasons that forbid it, and ways out. */
  readonly finding: Finding | null;
  /** For a yes: what to write down to keep it like that. */
  readonly edits: readonly DocumentEdit[];
  readonly words: string;
}

/**
 * May the step `before` be done before the step `after`? Told at once for a build of usual size; after a no it is told again with the ways out, which
 * the worker tries.
 */
export async function verdictOn(
  shop: Shop,
  build: Build,
  plan: Plan | null,
  [before, after]: readonly [string, string],
  tell: (verdict: Verdict) => void,
): Promise<void> {
  if (before === after) return tell(plain("no", "A step is not done before itself: pick another."));
  const [first, second] = [build.at.step.get(before), build.at.step.get(after)];
  if (first === undefined || second === undefined) return;
  const names = [shownName(build.steps[first]), shownName(build.steps[second])] as const;
  const dates = plan?.status === "planned" ? [plan.steps[first], plan.steps[second]] : [];
  if (dates[0] && dates[1] && dates[0].finish <= dates[1].start)
    return tell(plain("already", `So it is planned: “${names[0]}” comes before “${names[1]}”.`));
  const document = shop.desk.document;
  const told = (answer: PlanMay): void => tell(verdictOf(answer, document, build, plan, [before, after], names));
  const engine = build.steps.length <= quickUpTo ? await import("../state/engine").catch(() => null) : null;
  const quick = engine?.planMay(build, first, second);
  if (quick) told(quick);
  if (quick && quick.verdict !== "no") return;
  const answer = await shop.may(before, after);
  if (answer) told(answer);
}

function verdictOf(
  answer: PlanMay,
  document: unknown,
  build: Build,
  plan: Plan | null,
  [before, after]: readonly [string, string],
  [first, second]: readonly [string, string],
): Verdict {
  if (answer.verdict === "no") {
    const sentence = `No. “${first}” cannot be done before “${second}”.`;
    return { kind: "no", sentence, finding: answer.finding, edits: [], words: "" };
  }
  if (answer.verdict === "not-found") {
    return plain("unknown", `No plan was found with “${first}” before “${second}”. Nothing shows that there is none.`);
  }
  const time = siteTime(build.site.zone, build.start);
  const now = plan?.status === "planned" ? plan.finish : null;
  const moved =
    now === null
      ? "it would finish"
      : answer.finish === now
        ? "the finish stays"
        : answer.finish > now
          ? "it finishes later,"
          : "it finishes earlier,";
  const links = idsOf(memberOf(document, "steps", after)?.after);
  return {
    kind: "yes",
    sentence: `Yes. “${first}” can be done before “${second}”; ${moved} ${dateLabel(time, answer.finish)}.`,
    finding: null,
    edits: links.includes(before) ? [] : [putKey("steps", after, "after", [...links, before])],
    words: `do ${first} before ${second}`,
  };
}

const plain = (kind: Verdict["kind"], sentence: string): Verdict => ({ kind, sentence, finding: null, edits: [], words: "" });
