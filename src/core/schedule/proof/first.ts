import { randomFrom } from "../../base";
import { type Ground, generate, groundOf } from "./generate";
import type { Model } from "./model";

/**
 * A better first schedule where lengths and waits are fixed and waits form no ring: passes of serial generation along the starts of the best schedule so far,
 * shaken, each pushed as late and then as early as it goes (forward-backward improvement: Tormos & Lova 2001, Annals of Operations Research 102:65-81;
 * double justification: Valls, Ballestin & Quintanilla 2005, EJOR 165:375-386). Gives back `start` itself where the problem is of another kind.
 */
export function improved(m: Model, start: Int32Array, passes: number): Int32Array {
  const ground = groundOf(m);
  if (ground === null) return start;
  const random = randomFrom(1);
  let best = start;
  let finish = lastOf(ground, start);
  for (let pass = 0; pass < passes && finish > m.low[m.jobs]!; pass += 3) {
    const spread = Math.ceil((finish * random.int(1, 12)) / 100);
    const key = pass === 0 ? best : best.map((s) => 4 * s + random.int(-4 * spread, 4 * spread));
    const found = justified(ground, key);
    if (found === null) return best;
    const now = lastOf(ground, found);
    if (now > finish || (now === finish && random.int(0, 1) === 0) || found.some((s, j) => s > m.high[j]!)) continue;
    best = found;
    finish = now;
  }
  return best;
}

/** Generates along a key, then backwards from the end, then forwards again. */
function justified(g: Ground, key: Int32Array): Int32Array | null {
  const early = generate(g, g.before, g.low, key);
  if (early === null) return null;
  const none = new Int32Array(g.jobs);
  const late = generate(g, g.after, none, turned(g, early));
  return late === null ? null : generate(g, g.before, g.low, turned(g, late));
}

/** The same schedule read from its end. */
function turned(g: Ground, start: Int32Array): Int32Array {
  const last = lastOf(g, start);
  return start.map((s, j) => last - s - g.length[j]!);
}

function lastOf(g: Ground, start: Int32Array): number {
  return start.reduce((last, s, j) => Math.max(last, s + g.length[j]!), 0);
}
