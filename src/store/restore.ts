import type { Kept } from "./port";

/** The state after the snapshot and every entry that follows it without a gap, and the seq it stands at. */
export function replay<State>(
  kept: Pick<Kept, "snapshot" | "entries">,
  apply: (state: State, action: unknown) => State,
): { readonly state: State; readonly seq: number } {
  let state = kept.snapshot.state as State;
  let seq = kept.snapshot.seq;
  for (const entry of [...kept.entries].sort((a, b) => a.seq - b.seq)) {
    if (entry.seq <= seq) continue;
    if (entry.seq !== seq + 1) break;
    state = apply(state, entry.action);
    seq = entry.seq;
  }
  return { state, seq };
}
