/** One run of a bench. */
export interface Run {
  readonly name: string;
  readonly bench: "schedule" | "peers" | "builds" | "worker" | "memory";
  /** Files of instances, without their ending. */
  readonly data: readonly string[];
  readonly args: readonly string[];
}

/** A result as it is kept. */
export interface Kept {
  readonly name: string;
  /** To the minute, in universal time. */
  readonly date: string;
  readonly machine: string;
  readonly commit: string;
  readonly seed: number;
  readonly command: string;
  /** As the bench wrote it. */
  readonly result: unknown;
}

/** Seconds of the processor an instance in proof mode, so that it does not matter who else is at the machine; beside others, seconds on the wall. */
const allowed = "10";

/** Every run, with how many instances are passed over; about two hours in all, half of one for the proof of J120. `thin` times more where less will do. */
export function runsOf(thin: number): Run[] {
  const every = (n: number): string[] => (n * thin === 1 ? [] : ["--every", String(n * thin)]);
  const heuristic = (schedules: number, sets: readonly string[], n: number): Run[] =>
    sets.map((set) => ({
      name: `heuristic-${set}-${schedules}`,
      bench: "schedule",
      data: [set],
      args: ["--mode", "heuristic", "--schedules", String(schedules), "--seed", "1", ...every(n)],
    }));
  const proof = (set: string, n: number): Run => ({
    name: `proof-${set}`,
    bench: "schedule",
    data: [set],
    args: ["--mode", "proof", "--seconds", allowed, "--cpu", ...every(n)],
  });
  const peers = (set: string, n: number): Run => ({
    name: `peers-${set}`,
    bench: "peers",
    data: [set],
    args: ["--seconds", allowed, ...every(n)],
  });
  const plain = ["j30", "j60", "j120"];
  return [
    { name: "builds", bench: "builds", data: [], args: ["--seconds", "20"] },
    { name: "worker", bench: "worker", data: [], args: [] },
    { name: "memory", bench: "memory", data: [], args: [] },
    ...heuristic(1000, plain, 1),
    ...heuristic(5000, plain, 1),
    ...heuristic(50000, plain, 1),
    ...["patterson", "sm_j10", "sm_j20", "clock30", "clock60", "j30"].map((set) => proof(set, 1)),
    proof("ubo50", 1),
    proof("sm_j30", 1),
    proof("j60", 1),
    proof("j120", 1),
    peers("j30", 16),
    peers("j60", 16),
    peers("clock30", 4),
  ];
}
