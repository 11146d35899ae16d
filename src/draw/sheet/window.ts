import type { Bounds, Mark } from "../marks/mark";

const tile = 512;

/** Finds the marks that touch a window without looking at all of them. */
export interface MarkIndex {
  /** In drawing order; always with the marks of `kept` subjects ("steps pour"), wherever they are. */
  within(window: Bounds, kept?: ReadonlySet<string>): readonly Mark[];
}

/** Marks sorted into tiles along x. A mark as wide as the sheet stands in a list of its own. */
export function indexMarks(marks: readonly Mark[]): MarkIndex {
  const tiles = new Map<number, number[]>();
  const wide: number[] = [];
  const bySubject = new Map<string, number[]>();
  const put = <K>(map: Map<K, number[]>, key: K, index: number) => {
    const list = map.get(key);
    if (list) list.push(index);
    else map.set(key, [index]);
  };
  marks.forEach((mark, index) => {
    const [first, last] = [Math.floor(mark.x0 / tile), Math.floor(mark.x1 / tile)];
    if (last - first > 8) wide.push(index);
    else for (let at = first; at <= last; at += 1) put(tiles, at, index);
    if (mark.of) put(bySubject, `${mark.of.list} ${mark.of.id}`, index);
  });
  return {
    within(window, kept) {
      const chosen = new Set<number>();
      const test = (index: number) => {
        if (isWithin(marks[index]!, window)) chosen.add(index);
      };
      wide.forEach(test);
      for (let at = Math.floor(window.x0 / tile); at <= Math.floor(window.x1 / tile); at += 1) tiles.get(at)?.forEach(test);
      for (const key of kept ?? []) for (const index of bySubject.get(key) ?? []) chosen.add(index);
      return [...chosen].sort((a, b) => a - b).map((index) => marks[index]!);
    },
  };
}

const isWithin = (mark: Mark, { x0, x1, y0, y1 }: Bounds): boolean => mark.x1 >= x0 && mark.x0 <= x1 && mark.y1 >= y0 && mark.y0 <= y1;

/** The same for marks that may never be asked for again: to look at all of them once is quicker than to sort them. */
export function findMarks(marks: readonly Mark[]): MarkIndex {
  let index: MarkIndex | null = null;
  let asked = false;
  return {
    within(window, kept) {
      if (asked) index ??= indexMarks(marks);
      asked = true;
      if (index) return index.within(window, kept);
      return marks.filter((mark) => isWithin(mark, window) || (kept && mark.of && kept.has(`${mark.of.list} ${mark.of.id}`)));
    },
  };
}
