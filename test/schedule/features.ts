import type { Problem } from "../../src/core/schedule";

/** What of all there can be a problem has. */
export function featuresOf(p: Problem): string[] {
  const out: string[] = [];
  const some = (name: string, is: boolean): unknown => is && out.push(name);
  const job = (of: (j: number) => boolean): boolean => Array.from({ length: p.jobs }, (_, j) => j).some(of);
  const row = (of: (l: number) => boolean): boolean => Array.from({ length: p.links.count }, (_, l) => l).some(of);
  const asked = (of: (capacity: number, number: number) => boolean): boolean =>
    Array.from({ length: p.demands.length / 3 }, (_, d) => 3 * d).some(
      (d) => p.amount[p.demands[d]!]! > 0 && of(p.demands[d + 1]!, p.demands[d + 2]!),
    );
  const spans = p.spans.filter((x) => x.number > 0);
  some(
    "pausing job",
    job((j) => p.clock[j]! > 0 && p.unbroken[j] === 0 && p.amount[j]! > 1),
  );
  some(
    "unbroken job",
    job((j) => p.clock[j]! > 0 && p.unbroken[j] === 1),
  );
  some(
    "job without length",
    job((j) => p.amount[j] === 0),
  );
  some(
    "release",
    job((j) => p.release[j]! > 0),
  );
  some(
    "due",
    job((j) => p.due[j]! < p.horizon),
  );
  some(
    "fixed",
    job((j) => p.fixed[j]! >= 0),
  );
  some(
    "least wait",
    row((l) => p.links.least[l]! > 0 && p.links.clock[l] === 0),
  );
  some(
    "least wait on a calendar",
    row((l) => p.links.least[l]! > 0 && [1, 2].includes(p.links.clock[l]!)),
  );
  some(
    "least wait on strength",
    row((l) => p.links.least[l]! > 0 && p.links.clock[l] === 3),
  );
  some(
    "most wait",
    row((l) => p.links.most[l]! >= 0 && p.links.clock[l] === 0),
  );
  some(
    "most wait on a calendar",
    row((l) => p.links.most[l]! >= 0 && [1, 2].includes(p.links.clock[l]!)),
  );
  some(
    "most wait on strength",
    row((l) => p.links.most[l]! >= 0 && p.links.clock[l] === 3),
  );
  for (const [ends, name] of [
    ["FS", 2],
    ["SS", 0],
    ["FF", 3],
    ["SF", 1],
  ] as const)
    some(
      `wait ${ends}`,
      row((l) => 2 * p.links.fromEnd[l]! + p.links.toEnd[l]! === name),
    );
  some(
    "people who are away for a while",
    asked((c) => c === 0),
  );
  some(
    "equipment through pauses",
    asked((c) => c === 1),
  );
  some(
    "place taken alone",
    asked((c, number) => c === 2 && number === 3),
  );
  some(
    "place shared",
    asked((c, number) => c === 2 && number < 3),
  );
  some(
    "stock over a span",
    spans.some((x) => x.back >= 0),
  );
  some(
    "stock for good",
    spans.some((x) => x.back < 0),
  );
  some(
    "loss",
    spans.some((x) => x.back >= 0 && x.loss > 0),
  );
  some("arrival", spans.length > 0 && p.stocks[0]!.arrivals.length > 0);
  return out;
}

/** The same problem with one feature made plain, for each: where the answer becomes another, the feature decided it. */
export function plainer(p: Problem): [name: string, Problem][] {
  const links = (of: Partial<Problem["links"]>): Problem => ({ ...p, links: { ...p.links, ...of } });
  const capacities = (of: (c: Problem["capacities"][number]) => Problem["capacities"][number]): Problem => ({
    ...p,
    capacities: p.capacities.map(of),
  });
  const most = (c: Problem["capacities"][number]): number => Math.max(...c.levels);
  return [
    ["pauses of jobs", { ...p, clock: new Int32Array(p.jobs) }],
    ["unbroken jobs", { ...p, unbroken: new Uint8Array(p.jobs) }],
    ["releases", { ...p, release: new Int32Array(p.jobs) }],
    ["dues", { ...p, due: p.due.map(() => p.horizon) }],
    ["fixed starts", { ...p, fixed: p.fixed.map(() => -1) }],
    ["clocks of waits", links({ clock: new Int32Array(p.links.count) })],
    ["least waits", links({ least: p.links.least.map(() => -1) })],
    ["most waits", links({ most: p.links.most.map(() => -1) })],
    ["people who go away", capacities((c) => ({ ...c, levels: c.levels.map(() => most(c)) }))],
    ["people free in pauses", capacities((c) => (c.kind === "people" ? { ...c, holds: "span" } : c))],
    ["equipment held through pauses", capacities((c) => (c.kind === "equipment" ? { ...c, holds: "working" } : c))],
    ["places alone", capacities((c) => (c.kind === "alone" ? { ...c, kind: "room" } : c))],
    ["what comes back to stock", { ...p, spans: p.spans.map((x) => ({ ...x, back: -1 })) }],
    ["loss", { ...p, spans: p.spans.map((x) => ({ ...x, loss: 0 })) }],
    ["arrivals", { ...p, stocks: p.stocks.map((s) => ({ ...s, arrivals: [] })) }],
  ];
}
