import type { ElapsedMinute, Finding, Statement, WayOut } from "../base";
import type { Build, LocalMoment } from "../build";
import type { Clocks } from "../clock";
import { earliest, netOf } from "../schedule";
import { bind } from "./bind";
import type { Bound } from "./bound";
import { type Fix, firstClash, fixesOf } from "./fixes";
import { dateEdits, withDates } from "./moved-dates";

const one_min = 1 as ElapsedMinute;

/** For each step that is to start on two dates at once: the first two that differ, as a minimal set, and which of them can be moved to the other. */
export function clashFindings(bound: Bound): Finding[] {
  const { build } = bound;
  return [...fixesOf(build)].flatMap(([s, fixes]): Finding[] => {
    const clash = firstClash(fixes);
    if (clash === null) return [];
    const [a, b] = clash;
    return [
      {
        code: "plan.windows",
        severity: "stop",
        where: { list: "steps", id: build.steps[s]!.id },
        detail: { otherOrders: 0 },
        because: [a, b].map((fix) => statementOf(build, s, fix)),
        waysOut: [moved(bound, s, a, b.moment), moved(bound, s, b, a.moment)].filter((way) => way !== null),
      },
    ];
  });
}

function statementOf(build: Build, s: number, { booking, moment }: Fix): Statement {
  const step = build.steps[s]!.id;
  if (booking < 0) return { rule: "window.fixed", step, detail: { date: moment, of: "fixed" } };
  return { rule: "window.fixed", step, id: build.bookings[booking]!.id, detail: { date: moment, of: "booking" } };
}

/** The build with one of the dates moved, offered when the step then has dates that agree and the links and dates have times. */
function moved(bound: Bound, s: number, { booking }: Fix, to: LocalMoment): WayOut | null {
  const { build, access, clocks } = bound;
  const tried: Build =
    booking < 0
      ? withDates(build, [s], "fixed", to)
      : { ...build, bookings: build.bookings.map((b, i) => (i === booking ? { ...b, date: to } : b)) };
  if (firstClash(fixesOf(tried).get(s)!) !== null || !timed(tried, access, clocks)) return null;
  const { id } = build.steps[s]!;
  if (booking < 0) return { kind: "move-date", detail: { step: id, key: "fixed", to }, edits: dateEdits(build, [s], "fixed", to) };
  const name = build.bookings[booking]!.id;
  return { kind: "move-date", detail: { booking: name, to }, edits: [{ path: ["bookings", `id=${name}`, "date"], value: to }] };
}

function timed(build: Build, access: Bound["access"], clocks: Clocks): boolean {
  const { problem } = bind(build, access, clocks, one_min);
  return earliest(problem, netOf(problem)).broken < 0;
}
