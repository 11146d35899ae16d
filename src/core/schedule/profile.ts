import { never } from "../base";

/** Entries of a chunk. */
const room = 32;

/**
 * Steps of all profiles of a schedule, in chunks: entries `room * chunk .. room * chunk + size - 1`, each a time and what is free from then on. A chunk knows the
 * most and the fewest of its entries.
 */
export class Chunks {
  times: Int32Array;
  free: Int32Array;
  size: Int32Array;
  most: Int32Array;
  fewest: Int32Array;
  count = 0;

  /** @param entries about how many there will be */
  constructor(entries: number) {
    const chunks = 64 + Math.ceil(entries / (room >> 1));
    this.times = new Int32Array(chunks * room);
    this.free = new Int32Array(chunks * room);
    this.size = new Int32Array(chunks);
    this.most = new Int32Array(chunks);
    this.fewest = new Int32Array(chunks);
  }

  /** A new chunk without entries. */
  add(): number {
    if (this.count === this.size.length) {
      this.times = twice(this.times);
      this.free = twice(this.free);
      this.size = twice(this.size);
      this.most = twice(this.most);
      this.fewest = twice(this.fewest);
    }
    return this.count++;
  }

  measure(chunk: number): void {
    const { free } = this;
    const first = room * chunk;
    const end = first + this.size[chunk]!;
    let most = free[first]!;
    let fewest = most;
    for (let i = first + 1; i < end; i++) {
      const v = free[i]!;
      if (v > most) most = v;
      else if (v < fewest) fewest = v;
    }
    this.most[chunk] = most;
    this.fewest[chunk] = fewest;
  }

  /** The entry of a chunk that holds at `t`; the first one for times before it. */
  at(chunk: number, t: number): number {
    const { times } = this;
    let low = room * chunk;
    let high = low + this.size[chunk]! - 1;
    while (low < high) {
      const mid = (low + high + 1) >> 1;
      if (times[mid]! <= t) low = mid;
      else high = mid - 1;
    }
    return low;
  }
}

/**
 * What is free of one capacity over time: steps that hold from their time on, in chunks, so that a search jumps over what is full and a check jumps over what is
 * empty.
 */
export class Profile {
  /** Its chunks, in time order. */
  private readonly own: number[] = [];

  constructor(
    private readonly all: Chunks,
    times: Int32Array,
    levels: Int32Array,
  ) {
    const half = room >> 1;
    for (let at = 0; at === 0 || at < times.length; at += half) {
      const chunk = all.add();
      const size = Math.max(1, Math.min(half, times.length - at));
      all.size[chunk] = size;
      all.times.set(times.subarray(at, at + size), room * chunk);
      all.free.set(levels.subarray(at, at + size), room * chunk);
      all.measure(chunk);
      this.own.push(chunk);
    }
  }

  /** The end of the last stretch that reaches into [from, to) with fewer than `number` free (`never` when it does not end); -1 when there is none. */
  shortUntil(from: number, to: number, number: number): number {
    const { own, all } = this;
    const { times, free } = all;
    let ends = -1;
    let short = false;
    for (let k = this.chunkAt(from), i = all.at(own[k]!, from); k < own.length; k++) {
      const chunk = own[k]!;
      const end = room * chunk + all.size[chunk]!;
      if (i < 0) i = room * chunk;
      if (short ? all.most[chunk]! >= number : all.fewest[chunk]! < number) {
        for (; i < end; i++) {
          const t = times[i]!;
          if (free[i]! < number) {
            if (t < to) short = true;
          } else if (short) {
            short = false;
            ends = t;
          }
          if (t >= to && !short) return ends;
        }
      } else if (!short && times[end - 1]! >= to) return ends;
      i = -1;
    }
    return short ? never : ends;
  }

  /** Takes `number` from what is free in [from, to); a negative number gives back. */
  take(from: number, to: number, number: number): void {
    if (to <= from || number === 0) return;
    this.cut(from);
    this.cut(to);
    const { own, all } = this;
    for (let k = this.chunkAt(from); k < own.length && all.times[room * own[k]!]! < to; k++) this.lower(own[k]!, from, to, number);
  }

  /** Takes `number` from the entries of a chunk at times in [from, to). */
  private lower(chunk: number, from: number, to: number, number: number): void {
    const { all } = this;
    const { times, free } = all;
    const end = room * chunk + all.size[chunk]!;
    let i = all.at(chunk, from);
    if (times[i]! < from) i++;
    let known = number > 0;
    for (; i < end && times[i]! < to; i++) {
      if (free[i] === all.most[chunk]) known = false;
      const left = free[i]! - number;
      free[i] = left;
      if (left < all.fewest[chunk]!) all.fewest[chunk] = left;
    }
    if (!known) all.measure(chunk);
  }

  /** Sees to it that an entry begins at `t`. */
  private cut(t: number): void {
    const { own, all } = this;
    const k = this.chunkAt(t);
    const chunk = own[k]!;
    const i = all.at(chunk, t);
    if (all.times[i]! >= t) return;
    if (all.size[chunk] === room) {
      const rest = all.add();
      const first = room * chunk;
      all.times.copyWithin(room * rest, first + (room >> 1), first + room);
      all.free.copyWithin(room * rest, first + (room >> 1), first + room);
      all.size[rest] = room - (room >> 1);
      all.size[chunk] = room >> 1;
      all.measure(chunk);
      all.measure(rest);
      own.splice(k + 1, 0, rest);
      this.cut(t);
      return;
    }
    const { times, free } = all;
    const end = room * chunk + all.size[chunk]!;
    for (let m = end; m > i + 1; m--) {
      times[m] = times[m - 1]!;
      free[m] = free[m - 1]!;
    }
    times[i + 1] = t;
    free[i + 1] = free[i]!;
    all.size[chunk]!++;
  }

  private chunkAt(t: number): number {
    const { own } = this;
    const { times } = this.all;
    let low = 0;
    let high = own.length - 1;
    while (low < high) {
      const mid = (low + high + 1) >> 1;
      if (times[room * own[mid]!]! <= t) low = mid;
      else high = mid - 1;
    }
    return low;
  }
}

function twice(list: Int32Array): Int32Array {
  const larger = new Int32Array(2 * list.length);
  larger.set(list);
  return larger;
}
