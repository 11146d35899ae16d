import { never } from "../base";
import type { Problem } from "./problem";

/** What is left of every stock over time while a schedule is being made, as changes in time order. */
export class StockRoom {
  private readonly times: number[][];
  private readonly change: number[][];
  /** What is left of each in the end, by all that has been put so far. */
  private readonly atLast: number[];

  constructor(private readonly problem: Problem) {
    this.times = problem.stocks.map(() => []);
    this.change = problem.stocks.map(() => []);
    this.atLast = problem.stocks.map((s) => s.inHand);
  }

  /** What is left of a stock once all that has been put has happened. */
  leftAtLast(stock: number): number {
    return this.atLast[stock]!;
  }

  /** The earliest time at or after `t` from which on `number` is left for good; `never` if only something still to be placed can bring it. */
  leftFrom(stock: number, t: number, number: number): number {
    const times = this.times[stock]!;
    const change = this.change[stock]!;
    let left = this.atLast[stock]!;
    if (left < number) return never;
    for (let i = times.length - 1; i >= 0 && times[i]! > t; i--) {
      left -= change[i]!;
      if (left < number && (i === 0 || times[i - 1]! < times[i]!)) return times[i]!;
    }
    return t;
  }

  /** From `t` on there is `number` more (less, where negative). Changes at one time count together. */
  put(stock: number, t: number, number: number): void {
    const times = this.times[stock]!;
    const at = after(times, t);
    this.atLast[stock]! += number;
    times.splice(at, 0, t);
    this.change[stock]!.splice(at, 0, number);
  }

  undo(stock: number, t: number, number: number): void {
    const times = this.times[stock]!;
    const change = this.change[stock]!;
    for (let i = after(times, t) - 1; i >= 0 && times[i] === t; i--) {
      if (change[i] !== number) continue;
      times.splice(i, 1);
      change.splice(i, 1);
      this.atLast[stock] = change.reduce((left, by) => left + by, this.problem.stocks[stock]!.inHand);
      return;
    }
  }
}

function after(times: readonly number[], t: number): number {
  let low = 0;
  let high = times.length;
  while (low < high) {
    const mid = (low + high) >> 1;
    if (times[mid]! <= t) low = mid + 1;
    else high = mid;
  }
  return low;
}
