import type { Build } from "../../core/build";
import { type Plan, solidStages } from "../../core/plan";
import { stateWords } from "../../words";
import { bodiesOf } from "./fallback";
import { matterOf } from "./matter";

/** One row of the table that says what the drawing shows: a body, or several of one name that have got equally far. */
export interface StructureTwinRow {
  readonly key: string;
  readonly name: string;
  readonly state: string;
  readonly form: string;
  /** When it got so far, and what comes next and when; minutes since the build's epoch, null where there is none. */
  readonly since: number | null;
  readonly next: { readonly state: string; readonly at: number } | null;
}

export const structureTwinHeadings = ["Part", "State", "Form", "Since", "Next"] as const;

/** The bodies of a build at an instant of its plan, as rows in the order of the document. */
export function structureTwin(build: Build, plan: Plan, minute: number): StructureTwinRow[] {
  const { solids } = bodiesOf(build);
  const stages = solidStages(build, plan, solids);
  const rows = new Map<string, StructureTwinRow & { count: number }>();
  solids.forEach((solid, index) => {
    const hole = matterOf(build, solid) === "hole";
    const own = stages[index] ?? [];
    const now = own.findLastIndex(({ from }) => from <= minute);
    const here = own[now];
    if (!here) return;
    const came = own[own.slice(0, now + 1).findLastIndex(({ state }, i) => i === 0 || own[i - 1]?.state !== state)] ?? here;
    const next = own.slice(now + 1).find(({ state }) => state !== here.state) ?? null;
    const row = {
      name: solid.name,
      state: stateWords(here.state, hole),
      form: here.form ? "stands" : "",
      since: Number.isFinite(came.from) ? came.from : null,
      next: next && { state: stateWords(next.state, hole), at: next.from },
    };
    const key = JSON.stringify(row);
    const known = rows.get(key);
    rows.set(key, { ...row, key: solid.id, ...(known ? { key: known.key } : {}), count: (known?.count ?? 0) + 1 });
  });
  return [...rows.values()].map(({ count, ...row }) => (count > 1 ? { ...row, name: `${row.name} (${count})` } : row));
}
