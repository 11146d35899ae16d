import type { Display, Finding } from "../base";
import type { FormSpec } from "../build";
import { type FormAsk, type FormJudged, Tally } from "./form-ask";
import { firstOf } from "./form-judge";
import { proposed } from "./form-propose";
import type { FormSheet } from "./result";

export interface Sheeted {
  readonly sheet: FormSheet | null;
  readonly findings: readonly Finding[];
}

/** A form judged, as a sheet with what is found of it. */
export function formSheet(ask: FormAsk, form: FormSpec | null, judged: FormJudged, display: Display): Sheeted {
  const tally = new Tally(ask);
  for (const { sheet, doubts } of judged.members) {
    const { part, of100, governs, each } = sheet;
    if (of100 > 100) {
      const worst = each.reduce<(typeof each)[number] | null>((most, one) => (most === null || one.of100 > most.of100 ? one : most), null);
      tally.say("form.over", "stop", { part, of100, governs, at_mm: worst === null ? "" : worst.at_mm });
    }
    for (const what of new Set(doubts)) if (what !== "memory") tally.say("form.guess", "look", { part, what });
  }
  const known = judged.members.flatMap(({ sheet, doubts }) => (doubts.includes("memory") ? [sheet.part] : []));
  if (known.length > 0) tally.say("form.memory", "note", { parts: known });
  const findings = [...judged.findings, ...tally.findings];
  if (form === null || judged.members.length === 0) return { sheet: null, findings };
  const { members, thrust, thrustAt_mm, oneSided, lift, bracing_kN_m } = judged;
  const heights = proposed(ask, form, display);
  return {
    sheet: {
      members: members.map(({ sheet }) => sheet),
      first: firstOf(judged),
      thrust,
      thrustAt_mm,
      oneSided,
      lift,
      bracing_kN_m,
      proposed_mm: heights === null ? null : heights.map(({ mm }) => mm),
    },
    findings,
  };
}
