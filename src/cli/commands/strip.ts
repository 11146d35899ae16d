import { plan, stepTimes } from "../../core/plan";
import { cureSheet } from "../../core/pour";
import { careSentences, findingSentence, quoted, removalSentence, removalState, voice } from "../../words";
import { type Outcome, outcome, type Ports } from "../fault";
import { findingLines, inGravity } from "../findings";
import { openBuild } from "../open";

/** What comes off and goes on, in the order of the plan, on which ground, and what each pour needs until then. 1 when there are no dates. */
export async function stripCommand(file: string, ports: Ports): Promise<Outcome> {
  const { build } = await openBuild(file, ports);
  if (build.pours.length === 0) return outcome([`${quoted(build.name)} says nothing of a pour yet.`], 1);
  const made = plan(build);
  const dates = stepTimes(made);
  if (dates === null)
    return outcome(
      [
        ...inGravity(made.findings).flatMap((finding) => findingLines(finding, build)),
        "There is no plan, so nothing can be said of when forms come off.",
      ],
      1,
    );
  const say = voice(build);
  const cures = build.pours.map((pour, p) => ({ pour, sheet: cureSheet(build, p, dates) })).sort((a, b) => a.sheet.placed - b.sheet.placed);
  const rows = cures
    .flatMap(({ pour, sheet }) => sheet.removals.map((removal) => ({ pour, removal })))
    .sort((a, b) => a.removal.planned - b.removal.planned);
  return outcome([
    "What comes off, and when",
    ...rows.flatMap(({ pour, removal }) => {
      const state = removalState(removal);
      return [
        `  ${say.day(removal.planned).padEnd(12)} ${say.step(build.steps[removal.step]!.id)} (${pour.name}${state === "" ? "" : `, ${state}`})`,
        `  ${"".padEnd(12)} ${removalSentence(removal, build, pour.mix.strength_MPa)}`,
      ];
    }),
    "",
    ...cures.flatMap(({ pour, sheet }) => [
      `${pour.name}, placed ${say.day(sheet.placed)}`,
      ...careSentences(sheet, build).map(({ says, warn }) => `  ${warn ? "! " : ""}${says}`),
      ...sheet.findings.map((finding) => `  ${finding.severity === "note" ? "-" : "!"} ${findingSentence(finding, build)}`),
      "",
    ]),
    "Forms that carry come down when someone qualified says so. A curve is what is expected, never what is shown. Local code rules.",
  ]);
}
