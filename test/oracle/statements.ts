import type { Statement } from "../../src/core/base";
import type { Build, Passage } from "../../src/core/build";
import { type Either, type Rule, type Rules, rulesOf } from "./rules";
import type { Facts } from "./state";

/** Whether a statement's need is this one: the kind, and the depth or the unit. */
function sameNeed(statement: Statement, need: Passage): boolean {
  const detail = statement.detail ?? {};
  if (statement.need !== need.kind) return false;
  if (need.kind === "hand" || need.kind === "arm") return detail["depth_mm"] === need.depth_mm;
  if (need.kind !== "unit") return true;
  return (
    detail["long_mm"] === need.long_mm &&
    detail["wide_mm"] === need.wide_mm &&
    detail["thick_mm"] === need.thick_mm &&
    detail["mass_kg"] === need.mass_kg
  );
}

function factsOf(kept: readonly Statement[]): Facts {
  const said = (rule: string, about: Partial<Statement>) =>
    kept.some((k) => k.rule === rule && Object.entries(about).every(([key, value]) => k[key as keyof Statement] === value));
  return {
    closes: (piece, place, way) => said("closes", { piece, place, way }),
    makes: (piece, place, way) => said("makes", { piece, place, way }),
    fills: (piece, place) => said("fills", { piece, place }),
    through: (place, way) => said("through", { place, way }),
    walled: (place, need) => kept.some((k) => k.rule === "ways" && k.place === place && sameNeed(k, need)),
  };
}

function speaksOf(k: Statement, rule: Rule): boolean {
  switch (rule.kind) {
    case "reach":
      return k.rule === (rule.piece === undefined ? "reach" : "off") && k.step === rule.step && k.piece === rule.piece && k.id === rule.id;
    case "lean":
      return k.rule === "leans" && k.step === rule.step && k.piece === rule.piece;
    case "up-before-down":
      return k.rule === "up-down" && k.piece === rule.piece;
    case "held-up":
    case "held-after":
      return k.rule === "held" && k.piece === rule.piece;
    case "hold-work":
    case "hold-fill":
      return k.rule === "hold-point" && k.step === rule.step && k.place === rule.place;
    case "wait":
      return k.rule === "wait" && k.id === rule.id && k.step === rule.step && k.other === rule.other;
  }
}

const known = new Set([
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
  const strange = kept.find((k) => !known.has(k.rule));
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
    rules: [...all.rules.filter((rule) => kept.some((k) => speaksOf(k, rule))), ...asked],
    choices: [...all.choices.filter((c) => kept.some((k) => k.rule === "choice" && k.id === c.id)), ...refused],
  };
}
