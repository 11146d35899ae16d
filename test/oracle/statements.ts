import type { Statement } from "../../src/core/base";
import type { Build, Passage } from "../../src/core/build";
import { partsOf } from "./formula";
import { type About, type Either, type Rule, type Rules, rulesOf } from "./rules";
import type { Facts } from "./state";
import { gap, minuteOf, settle } from "./times";

/** Whether a statement's need is this one: the kind, and the depth or the unit. */
function sameNeed(statement: Statement, need: Passage): boolean {
  const detail = statement.detail ?? {};
  if (statement.need !== need.kind) return false;
  if (need.kind === "hand" || need.kind === "arm") return detail.depth_mm === need.depth_mm;
  if (need.kind !== "unit") return true;
  const sizes = [need.long_mm, need.wide_mm, need.thick_mm, need.mass_kg].join();
  return [detail.long_mm, detail.wide_mm, detail.thick_mm, detail.mass_kg].join() === sizes && (detail.unit ?? null) === need.piece;
}

function factsOf(kept: readonly Statement[]): Facts {
  const said = (rule: string, about: Partial<Statement>) =>
    kept.some((k) => k.rule === rule && Object.entries(about).every(([key, value]) => k[key as keyof Statement] === value));
  return {
    closes: (piece, place, way) => said("closes", { piece, place, way: `${place}.${way}` }),
    makes: (piece, place, way) => said("makes", { piece, place, way: `${place}.${way}` }),
    fills: (piece, place) => said("fills", { piece, place }),
    through: (place, way) => said("through", { place, way: `${place}.${way}` }),
    walled: (place, need) => kept.some((k) => k.rule === "ways" && k.place === place && sameNeed(k, need)),
  };
}

function speaksOf(k: Statement, rule: About): boolean {
  switch (rule.kind) {
    case "reach": {
      if (k.rule !== (rule.piece === undefined ? "reach" : "off")) return false;
      const same = k.step === rule.step && k.piece === rule.piece && k.id === rule.id;
      const { places, needs } = k.detail as { places: readonly string[]; needs: readonly string[] };
      const goal = places.map((place, i) => `${needs[i]} to ${place}`).join();
      return same && goal === rule.goal;
    }
    case "lean":
      return k.rule === "leans" && k.step === rule.step && k.piece === rule.piece;
    case "up-before-down":
      return k.rule === "up-down" && k.piece === rule.piece;
    case "held":
      return k.rule === "held" && k.piece === rule.piece;
    case "hold-point":
      return k.rule === "hold-point" && k.step === rule.step && k.place === rule.place;
    case "wait":
      return k.rule === "wait" && k.id === rule.id && k.step === rule.step && k.other === rule.other;
    case "choice":
      return k.rule === "choice" && k.id === rule.id;
  }
}

const ofOrder = new Set([
  "ways",
  "through",
  "closes",
  "makes",
  "fills",
  "up-down",
  "reach",
  "off",
  "leans",
  "held",
  "hold-point",
  "wait",
  "choice",
  "refused",
  "asked",
]);

/**
 * The rules of a build in which only the statements kept are said, by what core/access/rules.ts says each would mean if it were left out.
 * @throws for a statement that is none of order
 */
export function rulesOfStatements(build: Build, kept: readonly Statement[]): Rules {
  const strange = kept.find((k) => !ofOrder.has(k.rule));
  if (strange) throw new Error(`no statement of order: ${strange.rule}`);
  const at = (id: string) => build.at.step.get(id)!;
  const all = rulesOf(build, factsOf(kept));
  const asked = kept
    .filter((k) => k.rule === "asked")
    .map((k): Rule => ({ kind: "wait", at: at(k.other!), holds: (done) => (done & (1 << at(k.step!))) !== 0 }));
  const refused = kept
    .filter((k) => k.rule === "refused")
    .map((k): Either => {
      const { before, after } = k.detail as { before: readonly string[]; after: readonly string[] };
      return { kind: "choice", id: k.id!, options: before.map((b, i) => [[at(after[i]!), at(b)]]) };
    });
  return {
    rules: [...all.rules.filter((r) => kept.some((k) => speaksOf(k, r))), ...asked],
    choices: [...all.choices.filter((c) => kept.some((k) => speaksOf(k, c))), ...refused],
  };
}

/**
 * Whether some times meet what the statements kept say: steps, waits, pieces as written, a step kept as work for so long at least, others for any time.
 * All on elapsed time. @returns null when that could not be settled within `inTime`'s budget
 */
export function metInTime(build: Build, kept: readonly Statement[], out?: Statement): boolean | null {
  const at = (id: string | undefined) => build.at.step.get(id!)!;
  // A step whose work was left out takes no time: it may finish the moment it starts, where others meet too.
  const idle = out?.rule === "work" ? at(out.step) : -1;
  const gaps = build.steps.flatMap((_, s) => [gap(-1, "finish", s, "start", 0), gap(s, "start", s, "finish", s === idle ? -1 : 0)]);
  const parts = partsOf(build, factsOf(kept)).filter(({ about }) => kept.some((k) => speaksOf(k, about)));
  const formulas = parts.map(({ formula }) => formula);
  for (const k of kept) {
    const date = () => minuteOf(build, String(k.detail?.date));
    if (ofOrder.has(k.rule) && k.rule !== "asked" && k.rule !== "refused") continue;
    if (k.rule === "work") gaps.push(gap(at(k.step), "start", at(k.step), "finish", Number(k.detail?.minutes)));
    else if (k.rule === "not-before") gaps.push(gap(-1, "finish", at(k.step), "start", date()));
    else if (k.rule === "deadline") gaps.push(gap(at(k.step), "finish", -1, "finish", -date()));
    else if (k.rule === "fixed") gaps.push(gap(-1, "finish", at(k.step), "start", date()), gap(at(k.step), "start", -1, "finish", -date()));
    else throw new Error(`no statement of order and times: ${k.rule}`);
  }
  return settle(build, gaps, { all: formulas })?.possible ?? null;
}
