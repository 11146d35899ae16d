import type { Corner } from "./week";

/** Where something lies on the page. */
interface Box {
  readonly left: number;
  readonly top: number;
  readonly bottom: number;
  readonly width: number;
}

/**
 * The cell at a point: in the row given, else in the row it lies in, else in the nearest end of the strips; null between two of them.
 * @param cells the first cell shown, counted from midnight, and how many there are
 */
export function cornerAt(
  point: { readonly clientX: number; readonly clientY: number },
  strips: readonly Box[],
  cells: { readonly first: number; readonly count: number },
  row: number | null,
): Corner | null {
  const last = strips.length - 1;
  const inside = strips.findIndex(({ top, bottom }) => point.clientY >= top && point.clientY < bottom);
  const beyond = point.clientY < (strips[0]?.top ?? 0) ? 0 : point.clientY >= (strips[last]?.bottom ?? 0) ? last : -1;
  const on = row ?? (inside >= 0 ? inside : beyond);
  const box = strips[on];
  if (!box || box.width === 0) return null;
  const cell = Math.floor(((point.clientX - box.left) / box.width) * cells.count);
  return { row: on, cell: cells.first + Math.min(Math.max(cell, 0), cells.count - 1) };
}

/** How far a key goes: rows down, cells on; a whole day is 48. */
export const keySteps: Readonly<Record<string, readonly [row: number, cell: number]>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
  Home: [0, -48],
  End: [0, 48],
};
