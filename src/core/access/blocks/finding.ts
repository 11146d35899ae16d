import type { Finding, Statement, Where } from "../../base";
import type { Build } from "../../build";

/**
 * What access finds. refused: what was asked cannot be. trapped: a piece cannot be taken down, or not be got out. hold-point: an inspection is in the way.
 * held: something would stand on nothing. blocked: a step cannot get to where it must. ring: links, waits and what is put up before it is taken down go round in a ring.
 * refuted: only dates rule out what is left. late: order and times together allow no way.
 */
export type AccessCode =
  | "access.refused"
  | "access.refuted"
  | "access.late"
  | "access.trapped"
  | "access.hold-point"
  | "access.held"
  | "access.blocked"
  | "access.ring"
  | "access.holds-nothing"
  | "access.holds-itself"
  | "access.too-hard";

/** A minimal set as a finding. Its statements stand in document order. */
export function findingOf(build: Build, because: readonly Statement[], code: AccessCode = codeOf(because)): Finding {
  const steps = [...new Set(because.flatMap((s) => [s.step, s.other].filter((id): id is string => id !== undefined)))];
  const inOrder = steps.sort((a, b) => (build.at.step.get(a) ?? 0) - (build.at.step.get(b) ?? 0));
  return { code, severity: "stop", where: whereOf(because), detail: { steps: inOrder }, because };
}

function codeOf(because: readonly Statement[]): AccessCode {
  const has = (...rules: string[]): boolean => because.some((s) => rules.includes(s.rule));
  if (has("asked")) return "access.refused";
  if (has("refused")) return "access.refuted";
  if (has("work", "not-before", "deadline", "fixed")) return "access.late";
  if (has("off") || takesDown(because)) return "access.trapped";
  if (has("hold-point")) return "access.hold-point";
  if (has("held")) return "access.held";
  return has("reach", "leans") ? "access.blocked" : "access.ring";
}

/** A step that must get somewhere, or stands on something, that it takes down itself. */
function takesDown(because: readonly Statement[]): boolean {
  const takers = new Set(because.filter((s) => s.rule === "up-down").map((s) => s.other));
  return because.some((s) => (s.rule === "reach" || s.rule === "leans") && takers.has(s.step));
}

/** The first step that is asked for something, else the first thing named. */
function whereOf(because: readonly Statement[]): Where {
  const asked =
    because.find((s) => s.rule === "asked") ??
    because.find((s) => s.step !== undefined && s.rule !== "up-down") ??
    because.find((s) => s.step !== undefined);
  if (asked?.step !== undefined) return { list: "steps", id: asked.step };
  const [first] = because;
  if (first?.piece !== undefined) return { list: "pieces", id: first.piece };
  return first?.place !== undefined
    ? { list: "places", id: first.place }
    : { list: "choices", ...(first?.id === undefined ? {} : { id: first.id }) };
}
