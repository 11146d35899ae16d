import { readFileSync } from "node:fs";

/** Jobs, capacities and precedences: the classical resource-constrained sets. */
export interface PlainRow {
  readonly n: number;
  readonly dur: readonly number[];
  readonly req: readonly (readonly number[])[];
  readonly cap: readonly number[];
  readonly succ: readonly (readonly number[])[];
}

/** [i, j, lag]: start(j) >= start(i) + lag; below zero a most-wait the other way round. */
export interface LagRow {
  readonly n: number;
  readonly dur: readonly number[];
  readonly req: readonly (readonly number[])[];
  readonly cap: readonly number[];
  readonly arcs: readonly (readonly [number, number, number])[];
}

export interface Act {
  readonly kind: "dummy" | "work" | "solid" | "cure";
  readonly cal: number;
  readonly work: number;
  readonly req: readonly number[];
  readonly cureHours?: readonly number[];
}

/** [i, j, min, max]: from the completion of i to the start of j, in hours by the clock on the wall. */
export interface ClockRow {
  readonly n: number;
  readonly cap: readonly number[];
  readonly acts: readonly Act[];
  readonly arcs: readonly (readonly [number, number, number, number | null])[];
  readonly horizon: number;
}

export interface Calendar {
  readonly name: string;
  readonly days: readonly number[];
  readonly from: number;
  readonly to: number;
}

export type Row = ({ readonly kind: "plain" } & PlainRow) | ({ readonly kind: "lags" } & LagRow) | ({ readonly kind: "clocks" } & ClockRow);

/** What is published or was found by others; never shown to the solver. */
export interface Known {
  readonly critical: number | null;
  readonly lb: number | null;
  readonly ub: number | null;
  /** null: not known. */
  readonly feasible: boolean | null;
}

export interface Instance {
  readonly name: string;
  readonly row: Row;
  readonly known: Known;
}

export interface DataSet {
  readonly set: string;
  readonly calendars: readonly Calendar[];
  readonly instances: readonly Instance[];
}

type Raw = Record<string, unknown>;

/** Reads a file of instances: its kind is told by what its rows hold. */
export function readSet(path: string): DataSet {
  const raw = objectIn(path);
  if (!Array.isArray(raw.instances)) throw new Error(`${path} has no list "instances"; a file of problems has one.`);
  const calendars = (raw.calendars ?? []) as readonly Calendar[];
  return { set: String(raw.set ?? path), calendars, instances: instancesOf(path, raw.instances) };
}

function objectIn(path: string): Raw {
  let text: string;
  try {
    text = readFileSync(path, "utf8");
  } catch {
    throw new Error(`${path} cannot be read; a file of instances is needed.`);
  }
  try {
    const raw: unknown = JSON.parse(text);
    if (typeof raw === "object" && raw !== null) return raw as Raw;
  } catch {
    // Told below.
  }
  throw new Error(`${path} is not a JSON object; a file of problems is one.`);
}

/** Instances from rows as a file holds them. */
export function instancesOf(path: string, rows: readonly object[]): Instance[] {
  return rows.map((i, k) => instanceOf(path, i as Raw, k));
}

function instanceOf(path: string, raw: Raw, k: number): Instance {
  const number = (key: string): number | null => (typeof raw[key] === "number" ? (raw[key] as number) : null);
  const row = rowOf(raw);
  if (row === null)
    throw new Error(`${path}, instance ${k + 1}: neither "succ" nor "arcs" is there; one of them says what comes after what.`);
  const feasible = row.kind === "plain" ? true : typeof raw.feasible === "boolean" ? raw.feasible : null;
  const critical = number("cpm") ?? number("tlb") ?? number("temporalOpt");
  return { name: String(raw.name ?? k), row, known: { critical, lb: number("lb"), ub: number("ub"), feasible } };
}

/** Copies the fields of the problem and nothing else. */
function rowOf(raw: Raw): Row | null {
  const { n, dur, req, cap, succ, arcs, acts, horizon } = raw as Record<string, never>;
  if (succ !== undefined) return { kind: "plain", n, dur, req, cap, succ };
  if (acts !== undefined && arcs !== undefined) return { kind: "clocks", n, cap, acts, arcs, horizon };
  return arcs === undefined ? null : { kind: "lags", n, dur, req, cap, arcs };
}
