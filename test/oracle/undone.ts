import type { Build } from "../../src/core/build";
import { type Formula, formulaOf } from "./formula";

/**
 * Whether the usual choices lead astray: whatever follows is taken, then of the first open "or" the first option that is not yet refuted, and so
 * on; true when that ends in a contradiction after something was chosen. Then a search that keeps to the usual choices must take one back.
 */
export function mustUndo(build: Build): boolean {
  const n = build.steps.length;
  const before = Array.from({ length: n }, () => new Set<number>());
  let open: Formula[] = [formulaOf(build)];
  let sound = true;

  const add = (from: number, to: number): void => {
    const firsts = [from, ...before.keys()].filter((x) => x === from || before[x]!.has(from));
    for (const x of firsts) for (const y of [to, ...before[to]!]) before[x]!.add(y);
    if (before.some((after, x) => after.has(x))) sound = false;
  };
  const value = (f: Formula): boolean | null => {
    if ("all" in f) {
      const each = f.all.map(value);
      return each.includes(false) ? false : each.includes(null) ? null : true;
    }
    if ("any" in f) {
      const each = f.any.map(value);
      return each.includes(true) ? true : each.includes(null) ? null : false;
    }
    if (!f.order) return true;
    return before[f.from]!.has(f.to) ? true : before[f.to]!.has(f.from) ? false : null;
  };
  const take = (f: Formula): void => {
    const now = value(f);
    if (now === true) return;
    if (now === false) sound = false;
    else if ("all" in f) f.all.forEach(take);
    else if ("any" in f) {
      const left = f.any.filter((option) => value(option) !== false);
      if (left.length === 1) take(left[0]!);
      else open.push({ any: left });
    } else add(f.from, f.to);
  };
  const follow = (): void => {
    for (let known = -1; sound && known !== size(before); ) {
      known = size(before);
      const todo = open;
      open = [];
      todo.forEach(take);
    }
  };

  follow();
  if (!sound) return false;
  while (sound) {
    const next = open.find((f) => value(f) === null);
    if (next === undefined || !("any" in next)) return false;
    open = open.filter((f) => f !== next);
    take(next.any.find((option) => value(option) !== false)!);
    follow();
  }
  return true;
}

const size = (before: readonly ReadonlySet<number>[]): number => before.reduce((sum, after) => sum + after.size, 0);
