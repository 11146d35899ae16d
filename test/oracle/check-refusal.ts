import type { Finding, Statement } from "../../src/core/base";
import type { Amount, Build } from "../../src/core/build";
import type { Plan } from "../../src/core/plan";
import type { Faults } from "./check-access";
import { type End, type Gap, minutes, mostMinutes, usedWithin } from "./formula";
import { metInTime } from "./statements";
import { earliest, gap, minuteOf } from "./times";

/** Every amount that the build writes, by its text. */
function amountsOf(build: Build): Map<string, Amount> {
  const written = [
    ...build.pieces.flatMap((p) => [p.goesAfter, p.holdsItself]),
    ...build.steps.flatMap((s) => s.leansOn.map((l) => l.once)),
    ...[...build.waits, ...build.choices.flatMap((c) => c.either.flatMap((e) => e.waits))].flatMap((w) => [w.least, w.most]),
  ];
  return new Map(written.flatMap((a) => (a === null ? [] : [[a.text, a] as const])));
}

/** Minutes of an amount told by its text; "0 min" is one that nobody wrote. */
function minutesOf(build: Build, text: unknown, side: "least" | "most", because: unknown): number {
  if (text === "0 min") return 0;
  const amount = amountsOf(build).get(String(text));
  if (amount === undefined) throw new Error(`nowhere in the build: ${text}`);
  if (side === "least") return minutes(build, amount);
  return because === "wait" || because === "choice" ? mostMinutes(build, amount) : usedWithin(build, amount);
}

/** One statement of a set that dates have refuted, as what it asks of starts and finishes. A bare precedence is turned as in the plan's order. */
function gapsOf(build: Build, made: Plan, said: Statement): Gap[] {
  const detail = said.detail ?? {};
  const [s, t] = [said.step, said.other].map((id) => (id === undefined ? -1 : build.at.step.get(id)!)) as [number, number];
  const [fromEnd, toEnd] = [detail.fromEnd as End, detail.toEnd as End];
  const date = () => minuteOf(build, String(detail.date));
  switch (said.rule) {
    case "window.least":
      return [gap(s, fromEnd, t, toEnd, minutesOf(build, detail.amount, "least", detail.because))];
    case "window.most":
      return [gap(t, toEnd, s, fromEnd, -minutesOf(build, detail.amount, "most", detail.because))];
    case "window.length":
      return [gap(s, "start", s, "finish", Number(detail.minutes)), gap(s, "finish", s, "start", -Number(detail.minutes))];
    case "window.release":
      return [gap(-1, "finish", s, "start", date())];
    case "window.due":
      return [gap(s, "finish", -1, "finish", -date())];
    case "window.fixed":
      return [gap(-1, "finish", s, "start", date()), gap(s, "start", -1, "finish", -date())];
    default: {
      const turn = [...made.access.order];
      const [a, b] = turn.indexOf(s) < turn.indexOf(t) ? [s, t] : [t, s];
      return [gap(a, "finish", b, "start", 0)];
    }
  }
}

/** Whether what dates are said to refute cannot be met by plain earliest times, and can with any one left out; a step whose length is not said takes any time. */
function faultsOfWindows(build: Build, made: Plan, finding: Finding): Faults {
  const because = finding.because ?? [];
  const start = build.steps.map((_, s) => gap(-1, "finish", s, "start", 0));
  const met = (kept: readonly Statement[]) => {
    const unsaid = build.steps
      .filter((step) => !kept.some((k) => k.rule === "window.length" && k.step === step.id))
      .map((step) => build.at.step.get(step.id)!);
    const anyLength = unsaid.map((s) => gap(s, "start", s, "finish", 0));
    return earliest(1 + 2 * build.steps.length, [...start, ...anyLength, ...kept.flatMap((k) => gapsOf(build, made, k))]) !== null;
  };
  // An order that follows from a hold point is told without the step it holds up.
  if (because.some((k) => k.rule === "hold-point")) return [];
  const text = JSON.stringify(because);
  if (met(because)) return [`plan: can be met together: ${text}`];
  return because.filter((_, i) => !met(because.filter((_, j) => j !== i))).map((k) => `plan: not needed: ${JSON.stringify(k)} in ${text}`);
}

/** What the judges have against the reasons given for "no dates": that there are none, that they do not hold or say too much. */
export function faultsOfRefusal(build: Build, made: Plan): Faults {
  const sets = made.findings.filter((f) => f.severity === "stop" && f.because !== undefined);
  if (sets.length === 0) return ["plan: no-dates, and nothing says why"];
  return sets.flatMap((f) => (f.code === "plan.windows" ? faultsOfWindows(build, made, f) : faultsOfLate(build, f)));
}

/** Whether what is refuted by order and times together cannot be met, and can with any one left out. */
function faultsOfLate(build: Build, finding: Finding): Faults {
  const because = finding.because ?? [];
  const text = JSON.stringify(because);
  if (metInTime(build, because) === true) return [`plan: in time after all: ${text}`];
  return because
    .filter(
      (out, i) =>
        metInTime(
          build,
          because.filter((_, j) => j !== i),
          out,
        ) === false,
    )
    .map((k) => `plan: late without it too: ${JSON.stringify(k)} in ${text}`);
}
