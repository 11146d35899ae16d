import { type IntList, membersAt, redundantArcs } from "../../graph";
import type { Program } from "../compile/program";
import type { Arcs } from "../result";
import { graphOfRows, type Rows } from "./rows";

/** The rows as the table that is handed over. @param order of the steps, topological for the rows that order */
export function arcsTable(program: Program, rows: Rows, forced: Uint8Array, order: Int32Array): Arcs {
  const column = (list: IntList) => membersAt(list.data, rows.atom);
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
    fromEnd: bytes(rows, (atom) => program.ends.at(atom) >> 1),
    toEnd: bytes(rows, (atom) => program.ends.at(atom) & 1),
    least: column(program.least),
    most: column(program.most),
    orders: bytes(rows, (atom) => (program.orders(atom) ? 1 : 0)),
    reason: rows.reason,
    forced,
    redundant,
    link: rows.atom,
  };
}

function bytes({ atom }: Rows, value: (atom: number) => number): Uint8Array {
  const list = new Uint8Array(atom.length);
  for (let r = 0; r < list.length; r++) list[r] = value(atom[r] as number);
  return list;
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
