import type { Roster, Seat } from "./roster";

/** Who may take a seat for a while: has its role and is there. In the order in which they are asked. */
export type Able = (role: string, from: number, to: number) => readonly number[];

/**
 * Fills a seat that nobody can hold to its end: between any two instants at which somebody sits down or gets up, by a matching over everybody at work then (one
 * augmenting path, Kuhn 1955). Others change places inside their stretch where that is needed.
 * @returns the jobs in which somebody hands over, the seat's own among them; `whole` is false where nobody could be found
 */
export function handOver(roster: Roster, seat: Seat, able: Able): { readonly jobs: ReadonlySet<number>; readonly whole: boolean } {
  const jobs = new Set<number>([seat.job]);
  let whole = true;
  const cuts = roster.changes(seat.from, seat.to);
  let last = -1;
  cuts.forEach((from, k) => {
    const to = cuts[k + 1] ?? seat.to;
    const asked = new Set<number>();
    const place = (wanted: Seat): boolean => {
      const all = able(wanted.role, from, to);
      // Free people before those who would have to change places; whoever did the last part before others.
      const free = (i: number): boolean => roster.meeting(i, from, to).length === 0;
      const order = [...all.filter((i) => i === last && free(i)), ...all.filter((i) => free(i)), ...all.filter((i) => !free(i))];
      for (const i of order) {
        if (asked.has(i)) continue;
        asked.add(i);
        const [met] = roster.meeting(i, from, to);
        if (met !== undefined) {
          if (met.job === wanted.job && wanted.role === met.role) continue;
          roster.cut(i, met, from, to);
          if (!place({ ...met, from, to })) {
            roster.add(i, { ...met, from, to });
            continue;
          }
          jobs.add(met.job);
        }
        roster.add(i, { ...wanted, from, to });
        if (wanted.job === seat.job) last = i;
        return true;
      }
      return false;
    };
    if (!place(seat)) whole = false;
  });
  return { jobs, whole };
}
