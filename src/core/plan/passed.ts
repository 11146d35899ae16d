import type { Build } from "../build";
import type { NetworkPart } from "../schedule";
import type { Bound } from "./bound";

/** What a step that is not done cannot keep any more: work goes on only after its date. */
export type Passed = readonly [release: NetworkPart, date: NetworkPart];

export function passedDates({ build, problem, releaseOf }: Bound): Passed[] {
  return build.steps.flatMap((_, job): Passed[] => {
    if (releaseOf[job] !== "resumes") return [];
    const release = { kind: "release", job } as const;
    if (problem.fixed[job]! >= 0 && problem.fixed[job]! < problem.release[job]!) return [[release, { kind: "fixed", job }]];
    return problem.due[job]! <= problem.release[job]! ? [[release, { kind: "due", job }]] : [];
  });
}

/** The build without these dates, to see what else stands in the way. */
export function withoutDates({ build, dueOf, fixedOf }: Bound, passed: readonly Passed[]): Build {
  const gone = new Map(passed.map(([, date]) => [build.steps[(date as { job: number }).job]!.id as string, date.kind]));
  const of = (id: string): string | null => {
    const s = build.at.step.get(id)!;
    return gone.has(id) ? (gone.get(id) === "fixed" ? fixedOf : dueOf)[s]! : null;
  };
  return {
    ...build,
    steps: build.steps.map((step) => {
      const date = of(step.id);
      if (date === "deadline") return { ...step, deadline: null };
      return date === "fixed" ? { ...step, fixed: null } : step;
    }),
    bookings: build.bookings.map((booking) => (of(booking.step) === "booking" ? { ...booking, date: null } : booking)),
  };
}
