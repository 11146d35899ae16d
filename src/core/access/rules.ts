import type { Statement } from "../base";

/** In minimal sets, facts are tried for leaving out in this order of kinds, each kind in document order backwards. */
export type RuleKind = "fact" | "reach" | "date" | "link";

export interface Rule {
  readonly kind: RuleKind;
  /** What is always there when the statement stands in a minimal set: it then speaks of the build, and leaving it out means taking that fact out of the build. */
  readonly fields: readonly (keyof Statement)[];
  /** What is there besides when the statement is the reason of one precedence: `step` is the step it is asked of, `other` the step at the far end. */
  readonly inArc: readonly (keyof Statement)[];
  /** Keys of `detail`, each with what it holds. "?" marks one that may be missing. */
  readonly detail: Readonly<Record<string, string>>;
  /** What it says, and what leaving it out would mean. */
  readonly says: string;
}

const need = {
  "depth_mm?": "how deep a hand or an arm must get",
  "unit?": "id of the piece that must pass as one",
  "long_mm?": "the unit's size",
  "wide_mm?": "the unit's size",
  "thick_mm?": "the unit's size",
  "mass_kg?": "the unit's mass",
} as const;

const strength = { "pour?": "in the reason of a row: id of the pour whose strength it waits for" } as const;

/**
 * Every kind of statement that access makes. `need` is the kind of passage ("arm"). A reason for "s before t" has `step` and `other`; which of the
 * two is s is told by the arc.
 */
export const rules = {
  ways: {
    kind: "fact",
    fields: ["place", "need"],
    inArc: ["step"],
    detail: { ...need, passing: "full names of the ways that let it pass", narrow: "full names of those that do not" },
    says: "A place has no ways in but these for such a need. Without it: it has one more, open to all.",
  },
  through: {
    kind: "fact",
    fields: ["place", "way"],
    inArc: ["step"],
    detail: { through: "id of the place that the way leads through" },
    says: "A way leads through another place. Without it: it leads straight in.",
  },
  closes: {
    kind: "fact",
    fields: ["piece", "place", "way"],
    inArc: ["step", "other", "need"],
    detail: { ...need, ...strength },
    says: "A piece closes a way while it stands. As a reason: `step` gets in before `other` puts it up, or after `other` takes it down.",
  },
  makes: {
    kind: "fact",
    fields: ["piece", "place", "way"],
    inArc: ["step", "other", "need"],
    detail: { ...need, ...strength },
    says: "A way is there only while a piece stands. As a reason: `step` uses it after `other` puts the piece up, and before `other` takes it down.",
  },
  fills: {
    kind: "fact",
    fields: ["piece", "place"],
    inArc: ["step", "other", "need"],
    detail: { ...need, ...strength },
    says: "A piece fills a place: nothing gets in by any way, old or new, while it is there.",
  },
  "up-down": {
    kind: "fact",
    fields: ["piece", "step", "other"],
    inArc: [],
    detail: {},
    says: "A piece is put up (by `step`) before it is taken down (by `other`).",
  },
  work: {
    kind: "fact",
    fields: ["step"],
    inArc: [],
    detail: { minutes: "least elapsed minutes from its start to its finish" },
    says: "A step takes at least so long. Only in sets found with times.",
  },
  reach: {
    kind: "reach",
    fields: ["step", "id"],
    inArc: [],
    detail: { places: "ids of the places, any one of which is enough", needs: "kinds of passage, one a place", ...need },
    says: "A step must get to a place (or to any one of several). `id` counts the step's reaches from 1; `place` and `need` are there when it is one place.",
  },
  off: {
    kind: "reach",
    fields: ["step", "piece", "id"],
    inArc: [],
    detail: { places: "ids of the places, any one of which is enough", needs: "kinds of passage, one a place", ...need },
    says: "Taking a piece down must get to a place: its fasteners, or the way out for its size. `id` counts from 1.",
  },
  leans: {
    kind: "reach",
    fields: ["step", "piece"],
    inArc: ["other"],
    detail: { "once?": "what the piece must have by then, as written", ...strength },
    says: "A step leans on a piece: after `other` puts it up (and it has what it must have), before `other` takes it down.",
  },
  held: {
    kind: "reach",
    fields: ["piece", "pieces"],
    inArc: ["step", "other"],
    detail: {
      sets: "one text a set of holders: their ids joined by ' and '",
      claims: "true when it is said to hold itself without an amount",
      ...strength,
    },
    says: "A piece must be held by one of its sets of holders, when `step` puts it up and whenever `step` takes a holder down. `pieces`: all holders.",
  },
  "hold-point": {
    kind: "reach",
    fields: ["step", "place"],
    inArc: ["other"],
    detail: {},
    says: "An inspection stops the work at a place: it sees the place, whoever works there does so before it or while the place is closed, nothing fills it before.",
  },
  done: {
    kind: "fact",
    fields: ["step", "other"],
    inArc: [],
    detail: { date: "when it was finished, as written" },
    says: "A step is done, and another is not: it can only come after. Without it: the tick is taken back.",
  },
  "not-before": { kind: "date", fields: ["step"], inArc: [], detail: { date: "as written" }, says: "A step does not start before a date." },
  deadline: { kind: "date", fields: ["step"], inArc: [], detail: { date: "as written" }, says: "A step is done by a date." },
  fixed: { kind: "date", fields: ["step"], inArc: [], detail: { date: "as written" }, says: "A step starts at a date." },
  wait: {
    kind: "link",
    fields: ["id", "step", "other"],
    inArc: [],
    detail: {
      plain: "true when it is only written as `after`",
      "least?": "as written",
      "most?": "as written",
      "fromEnd?": "start, when not finish",
      "toEnd?": "finish, when not start",
      ...strength,
    },
    says: "A wait or link that is written down: `other` after `step`.",
  },
  choice: {
    kind: "link",
    fields: ["id"],
    inArc: ["step", "other"],
    detail: {
      either: "names of the alternatives",
      "by?": "name of the alternative taken",
      "least?": "as written",
      "most?": "as written",
      ...strength,
    },
    says: "One of several alternatives holds, all its waits together.",
  },
  refused: {
    kind: "link",
    fields: ["id"],
    inArc: [],
    detail: {
      before: "ids of the steps that come first",
      after: "ids of those that follow them, one each",
      "amounts?": "the amounts refuted, as written, one each; empty for a bare precedence",
    },
    says: "Dates have refuted that all of these hold together: a bare precedence is the other way round, or an amount is not what settles it.",
  },
  asked: { kind: "link", fields: ["step", "other"], inArc: [], detail: {}, says: "What was asked: `step` is done before `other` starts." },
} as const satisfies Readonly<Record<string, Rule>>;

export type RuleName = keyof typeof rules;

/** The rule of a statement; null for a name that is none of access's. */
export const ruleOf = (statement: Statement): Rule | null =>
  Object.hasOwn(rules, statement.rule) ? rules[statement.rule as RuleName] : null;
