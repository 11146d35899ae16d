import { never } from "../base";

const room = 32;

interface Chunk {
  readonly times: Int32Array;
  readonly free: Int32Array;
  size: number;
  most: number;
  fewest: number;
}

/**
 * What is free of one capacity over time: steps that hold from their time on, in chunks that know their own highest and lowest value, so that a search
 * jumps over what is full and a check jumps over what is empty.
 */
export class Profile {
  private chunks: Chunk[];

  constructor(times: Int32Array, levels: Int32Array) {
    this.chunks = [];
    const half = room >> 1;
    for (let at = 0; at < times.length; at += half) {
      const chunk = empty();
      chunk.size = Math.min(half, times.length - at);
      chunk.times.set(times.subarray(at, at + chunk.size));
      chunk.free.set(levels.subarray(at, at + chunk.size));
      measure(chunk);
      this.chunks.push(chunk);
    }
    if (this.chunks.length === 0) {
      const chunk = empty();
      chunk.size = 1;
      this.chunks.push(chunk);
    }
  }

  /** The end of the last stretch that reaches into [from, to) with fewer than `number` free (`never` when it does not end); -1 when there is none. */
  shortUntil(from: number, to: number, number: number): number {
    const { chunks } = this;
    let c = this.chunkAt(from);
    let i = indexAt(chunks[c]!, from);
    let ends = -1;
    let short = false;
    for (; c < chunks.length; c++, i = 0) {
      const { times, free, size, most, fewest } = chunks[c]!;
      if (short ? most < number : fewest >= number) {
        if (!short && times[size - 1]! >= to) return ends;
        continue;
      }
      for (; i < size; i++) {
        const t = times[i]!;
        if (free[i]! < number) {
          if (t < to) short = true;
        } else if (short) {
          short = false;
          ends = t;
        }
        if (t >= to && !short) return ends;
      }
    }
    return short ? never : ends;
  }

  /** Takes `number` from what is free in [from, to); a negative number gives back. */
  take(from: number, to: number, number: number): void {
    if (to <= from || number === 0) return;
    this.cut(from);
    this.cut(to);
    for (let c = this.chunkAt(from); c < this.chunks.length; c++) {
      const chunk = this.chunks[c]!;
      if (chunk.times[0]! >= to) break;
      lower(chunk, from, to, number);
    }
  }

  private cut(t: number): void {
    const c = this.chunkAt(t);
    const chunk = this.chunks[c]!;
    const i = indexAt(chunk, t);
    if (chunk.times[i] === t || (i === 0 && chunk.times[0]! > t)) return;
    if (chunk.size === room) {
      const half = room >> 1;
      const rest = empty();
      rest.times.set(chunk.times.subarray(half));
      rest.free.set(chunk.free.subarray(half));
      rest.size = room - half;
      chunk.size = half;
      measure(chunk);
      measure(rest);
      this.chunks.splice(c + 1, 0, rest);
      this.cut(t);
      return;
    }
    chunk.times.copyWithin(i + 2, i + 1, chunk.size);
    chunk.free.copyWithin(i + 2, i + 1, chunk.size);
    chunk.times[i + 1] = t;
    chunk.free[i + 1] = chunk.free[i]!;
    chunk.size++;
  }

  private chunkAt(t: number): number {
    let low = 0;
    let high = this.chunks.length - 1;
    while (low < high) {
      const mid = (low + high + 1) >> 1;
      if (this.chunks[mid]!.times[0]! <= t) low = mid;
      else high = mid - 1;
    }
    return low;
  }
}

function empty(): Chunk {
  return { times: new Int32Array(room), free: new Int32Array(room), size: 0, most: 0, fewest: 0 };
}

/** The entry that holds at `t`; the first one for times before it. */
function indexAt(chunk: Chunk, t: number): number {
  let low = 0;
  let high = chunk.size - 1;
  while (low < high) {
    const mid = (low + high + 1) >> 1;
    if (chunk.times[mid]! <= t) low = mid;
    else high = mid - 1;
  }
  return low;
}

/** Takes `number` from the entries at times in [from, to). */
function lower(chunk: Chunk, from: number, to: number, number: number): void {
  const { times, free, size } = chunk;
  let i = indexAt(chunk, from);
  if (times[i]! < from) i++;
  let known = number > 0;
  for (; i < size && times[i]! < to; i++) {
    if (free[i] === chunk.most) known = false;
    const left = free[i]! - number;
    free[i] = left;
    if (left < chunk.fewest) chunk.fewest = left;
  }
  if (!known) measure(chunk);
}

function measure(chunk: Chunk): void {
  let most = chunk.free[0]!;
  let fewest = most;
  for (let i = 1; i < chunk.size; i++) {
    const v = chunk.free[i]!;
    if (v > most) most = v;
    else if (v < fewest) fewest = v;
  }
  chunk.most = most;
  chunk.fewest = fewest;
}
