import type { Display, Severity } from "../../core/base";
import type { Build, Pour } from "../../core/build";
import { plan } from "../../core/plan";
import { type ElementSheet, type PourSheet, type Pressure, pourSheet } from "../../core/pour";
import {
  checkWords,
  daySentences,
  findingSentence,
  firstSentence,
  fixSentence,
  formCaution,
  fullHeadReasons,
  liftSentences,
  listed,
  memberName,
  of100 as ofHundred,
  pressureSentences,
  quoted,
  voice,
  volumeWords,
} from "../../words";
import { Fault, type Outcome, outcome, type Ports } from "../fault";
import { openBuild } from "../open";

/** The sheet of one pour, or of all: how its forms are filled, what carries what, what would make it hold, the pour day. 1 when one is not ready. */
export async function pourCommand(file: string, name: string | undefined, ports: Ports): Promise<Outcome> {
  const { build } = await openBuild(file, ports);
  if (build.pours.length === 0) return outcome([`${quoted(build.name)} says nothing of a pour yet.`], 1);
  const made = plan(build);
  const placed = (p: number): string => {
    const step = build.at.step.get(build.pours[p]!.step) ?? -1;
    return made.status === "planned" && made.steps[step] !== undefined ? `, ${voice(build).day(made.steps[step].start)}` : "";
  };
  const sheets = chosen(build, name).map((p) => pourSheet(build, p));
  const lines = sheets.flatMap((sheet) => {
    const pour = build.pours[sheet.pour]!;
    return [
      `${pour.name}${placed(sheet.pour)}`,
      ...sheet.findings.map((finding) => `  ${marks[finding.severity]} ${findingSentence(finding, build)}`),
      `  ${verdict(sheet)}`,
      "",
      ...sheet.elements.flatMap((element) => elementLines(build, pour, element)),
      ...(sheet.day === null ? [] : ["  The day", ...daySentences(sheet.day, build.site.units).map((line) => `    ${line}`), ""]),
    ];
  });
  return outcome([...lines, formCaution], sheets.every(({ ready }) => ready) ? 0 : 1);
}

const marks: Readonly<Record<Severity, string>> = { stop: "!!", look: "! ", note: "- " };

/** Never more than what was looked for: no sheet releases a pour. */
function verdict({ ready, findings }: PourSheet): string {
  if (!ready) return "Not ready to pour: what is marked !! stands in the way.";
  const looks = findings.some(({ severity }) => severity === "look") ? " Look at what is marked ! first." : "";
  return `Nothing found here stands in the way of pouring.${looks} That is no release: somebody qualified gives it.`;
}

function chosen(build: Build, name: string | undefined): number[] {
  const all = build.pours.map((_, p) => p);
  if (name === undefined) return all;
  const wanted = name.toLowerCase();
  const exact = all.filter((p) => [build.pours[p]!.id, build.pours[p]!.name.toLowerCase()].includes(wanted));
  const found = exact.length > 0 ? exact : all.filter((p) => build.pours[p]!.name.toLowerCase().includes(wanted));
  if (found.length === 1) return found;
  const names = listed((found.length > 1 ? found : all).map((p) => quoted(build.pours[p]!.name)));
  throw new Fault(found.length > 1 ? `${quoted(name)} may be ${names}.` : `There is no pour ${quoted(name)}; there are ${names}.`);
}

function elementLines(build: Build, pour: Pour, sheet: ElementSheet): string[] {
  const { units } = build.site;
  const { pressure, form } = sheet;
  const { name, number } = pour.elements[sheet.element]!;
  return [
    `  ${name}, ${volumeWords(sheet.volume_m3, units)}${number > 1 ? ` each, ${number} of them` : ""}`,
    ...(pressure === null ? [] : pressedLines(pressure, units, pour.placed).map((line) => `    ${line}`)),
    ...(form === null
      ? []
      : [
          `    ${firstSentence(form, units)}`,
          ...form.members.map(
            (member) => `      ${ofHundred(member.of100).padStart(11)}  ${memberName(member, units)}, ${checkWords(member.governs)}`,
          ),
          ...liftSentences(sheet, units).map(({ says, warn }) => `    ${warn ? "! " : ""}${says}`),
        ]),
    ...(sheet.fixes.length === 0
      ? []
      : [
          `    ${sheet.fixes.some(({ of100 }) => of100 <= 100) ? "What would make it hold, each computed again" : "What would help, each computed again; none is enough alone"}:`,
          ...sheet.fixes.map((fix) => `      ${fixSentence(fix, units)}`),
        ]),
    "",
  ];
}

/** Why it is full head is told where the form is judged by that. */
const pressedLines = (pressure: Pressure, units: Display, placed: Pour["placed"]): string[] => [
  ...pressureSentences(pressure, units, placed),
  ...(pressure.design === "hose" ? fullHeadReasons(pressure, units, placed) : []),
];
