import type { Display } from "../../core/base";
import type { Build } from "../../core/build";
import type { Comparison, Plan } from "../../core/plan";
import { findingSentence } from "../finding";
import { listed, sentence, spelled, spelledFigure } from "../text";
import { type Voice, voice } from "../voice";
import { siteDays } from "./findings";
import { heldClause, jobWords } from "./holders";

const mostNamed = 3;

/**
 * What a change moved, in sentences: the finish and the site days it costs, through what, the steps that moved furthest, and what did not move.
 * `build` and `plan` are the new ones. `undone`: the new plan is one that was there before, brought back.
 */
export function comparisonSentences(comparison: Comparison, build: Build, plan: Plan, display?: Display, undone = false): string[] {
  const say = voice(build, display);
  if (undone) return ["Back as it was."];
  const out = comparison.findings
    .filter(({ code }, i, all) => !(code === "compare.same" && all.length > 1 && i === 0))
    .map((finding) =>
      finding.code === "compare.inside-slack" ? sentence(insideSlack(comparison, say)) : findingSentence(finding, build, display),
    );
  if (comparison.findings.some((finding) => finding.code === "compare.no-plan")) return out;
  const through = throughWords(comparison, plan, say);
  if (through !== "") out.push(sentence(through));
  const moves = movedWords(comparison, say);
  if (moves !== "") out.push(sentence(moves));
  if (comparison.moved.length > 0) {
    const stayed =
      comparison.stayed === 0
        ? "Nothing stays where it was"
        : `${spelled(comparison.stayed, "step stays", "steps stay")} where ${comparison.stayed === 1 ? "it was" : "they were"}`;
    out.push(sentence(stayed));
  } else if (comparison.stayed > 0 && comparison.findings.some((finding) => finding.code === "compare.before-next-site-day")) {
    out.push(sentence(`The finish stays ${say.finish(comparison.finishAfter)}, and no step moves`));
  }
  return out;
}

/** From the cause to the finish: "It goes through the bars, “Tie the bars” and “Pour the slab”: the first ...". */
function throughWords({ through, finishBefore, finishAfter }: Comparison, plan: Plan, say: Voice): string {
  if (through.length === 0) return "";
  const names = through.map((link) => jobWords(link.job, say));
  const shown =
    names.length <= mostNamed + 1
      ? listed(names, "then")
      : `${names.slice(0, mostNamed).join(", ")}, ${spelled(names.length - mostNamed - 1, "more step")} and ${names[names.length - 1]}`;
  const steps = plan.steps.length;
  const held = through.find((link) => link.job < steps);
  const start = held === undefined ? undefined : plan.steps[held.job]?.start;
  const why =
    held === undefined || start === undefined
      ? ""
      : `. ${jobWords(held.job, say)} begins ${say.moment(start)}: ${heldClause(held.job, plan, say)}`;
  const goes = finishBefore === finishAfter ? "It moves" : "It goes through";
  return `${goes} ${shown}${why}`;
}

/** The finish stays: only what moves later takes slack. */
function insideSlack({ moved, finishAfter }: Comparison, say: Voice): string {
  const later = moved.filter((one) => one.startAfter > one.startBefore).length;
  const earlier = moved.filter((one) => one.startAfter < one.startBefore).length;
  const stays = `the finish stays ${say.finish(finishAfter)}`;
  if (later === 0 && earlier === moved.length) return `${spelled(earlier, "step comes", "steps come")} earlier; ${stays}`;
  if (earlier === 0 && later === moved.length)
    return `${spelled(later, "step comes", "steps come")} later and ${stays}: there was slack enough`;
  const parts = [later === 0 ? "" : `${spelledFigure(later)} later`, earlier === 0 ? "" : `${spelledFigure(earlier)} earlier`].filter(
    Boolean,
  );
  return `${spelled(moved.length, "step moves", "steps move")}${parts.length === 0 ? "" : `, ${listed(parts)}`}; ${stays}`;
}

function movedWords({ moved }: Comparison, say: Voice): string {
  if (moved.length === 0) return "";
  const furthest = [...moved]
    .sort((a, b) => Math.abs(b.startAfter - b.startBefore) - Math.abs(a.startAfter - a.startBefore))
    .slice(0, mostNamed);
  const told = furthest.map(({ step, startBefore, startAfter, siteDays: days }) => {
    const by =
      days === 0
        ? startAfter === startBefore
          ? "longer"
          : say.day(startBefore) === say.day(startAfter)
            ? "within its site day"
            : "with no site day between"
        : `${siteDays(days)} ${days > 0 ? "later" : "earlier"}`;
    return startAfter === startBefore
      ? `${say.step(step)} begins as before and takes ${by}`
      : `${say.step(step)} from ${say.moment(startBefore)} to ${say.moment(startAfter)}, ${by}`;
  });
  const rest = moved.length - furthest.length;
  return `${moved.length === 1 ? "One step moves" : `${spelled(moved.length, "step")} move`}: ${told.join("; ")}${rest > 0 ? `; and ${spelled(rest, "more step")} less far` : ""}`;
}
