import { redundantArcs } from "../../graph";
import type { Program } from "../compile/program";
import type { Arcs } from "../result";
import { graphOfRows, type Rows } from "./rows";

/** The rows as the table that is handed over. @param order of the steps, topological for the rows that order */
export function arcsTable(program: Program, rows: Rows, forced: Uint8Array, order: Int32Array): Arcs {
  const column = (list: { at(atom: number): number }) => rows.atom.map((atom) => list.at(atom));
  const ends = column(program.ends);
  const { graph, rowOf } = graphOfRows(program, rows);
  const redundant = new Uint8Array(rows.atom.length);
  redundantArcs(graph, order).forEach((yes, arc) => {
    const r = rowOf[arc] as number;
    const atom = rows.atom[r] as number;
    if (program.bare.at(atom) === atom) redundant[r] = yes;
  });
  return {
    count: rows.atom.length,
    from: column(program.from),
    to: column(program.to),
    fromEnd: Uint8Array.from(ends, (e) => e >> 1),
    toEnd: Uint8Array.from(ends, (e) => e & 1),
    least: column(program.least),
    most: column(program.most),
    orders: Uint8Array.from(rows.atom, (atom) => (program.orders(atom) ? 1 : 0)),
    reason: rows.reason,
    forced,
    redundant,
    link: rows.atom,
  };
}

export const noArcs: Arcs = {
  count: 0,
  from: new Int32Array(),
  to: new Int32Array(),
  fromEnd: new Uint8Array(),
  toEnd: new Uint8Array(),
  least: new Int32Array(),
  most: new Int32Array(),
  orders: new Uint8Array(),
  reason: new Int32Array(),
  forced: new Uint8Array(),
  redundant: new Uint8Array(),
  link: new Int32Array(),
};
