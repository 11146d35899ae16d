import type { Build } from "../build";
import type { Problem } from "../schedule";
import type { Bound } from "./bound";

/** A date that a step, which is not done, cannot keep any more: work goes on only after it. */
export interface Passed {
  readonly kind: "due" | "fixed";
  readonly job: number;
}

export function passedDates({ build, problem, releaseOf }: Bound): Passed[] {
  return build.steps.flatMap((_, job): Passed[] => {
    const kind = releaseOf[job] === "resumes" ? before(problem, job) : null;
    return kind === null ? [] : [{ kind, job }];
  });
}

/** Which of a job's dates lies before it can begin, whatever else stands in the way. */
export function before({ due, fixed, release }: Problem, job: number): Passed["kind"] | null {
  if (fixed[job]! >= 0 && fixed[job]! < release[job]!) return "fixed";
  return due[job]! <= release[job]! ? "due" : null;
}

/** The build without these dates, to see what else stands in the way. */
export function withoutDates({ build, dueOf, fixedOf }: Bound, passed: readonly Passed[]): Build {
  const gone = new Map(passed.map(({ kind, job }) => [build.steps[job]!.id as string, (kind === "fixed" ? fixedOf : dueOf)[job]]));
  return {
    ...build,
    steps: build.steps.map((step) => {
      const date = gone.get(step.id);
      if (date === "deadline") return { ...step, deadline: null };
      return date === "fixed" ? { ...step, fixed: null } : step;
    }),
    bookings: build.bookings.map((booking) => (gone.get(booking.step) === "booking" ? { ...booking, date: null } : booking)),
  };
}
