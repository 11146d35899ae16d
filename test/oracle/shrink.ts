import type { Loose } from "./random-builds";

/** Every way to leave one thing out: a list member or a key, at any depth. Work stays: a step that takes no time is another case. */
function* smaller(value: unknown): Generator<unknown> {
  if (Array.isArray(value)) {
    for (let i = 0; i < value.length; i++) yield value.filter((_, j) => j !== i);
    for (let i = 0; i < value.length; i++) for (const inner of smaller(value[i])) yield value.map((v, j) => (j === i ? inner : v));
  } else if (typeof value === "object" && value !== null) {
    const entries = Object.entries(value);
    for (const [key] of entries) if (key !== "work") yield Object.fromEntries(entries.filter(([k]) => k !== key));
    for (const [key, v] of entries)
      for (const inner of smaller(v)) yield Object.fromEntries(entries.map(([k, w]) => [k, k === key ? inner : w]));
  }
}

/** Leaves out one thing after another as long as the document still fails, so that a failure can be read. */
export function shrink(document: Loose, fails: (document: Loose) => boolean): Loose {
  const still = (d: Loose) => {
    try {
      return fails(d);
    } catch {
      return false;
    }
  };
  for (let now = document; ; ) {
    let next: Loose | null = null;
    for (const part of ["steps", "choices", "waits", "pieces", "places"]) {
      for (const list of smaller(now[part])) {
        const tried = { ...now, [part]: list };
        if (still(tried)) {
          next = tried;
          break;
        }
      }
      if (next) break;
    }
    if (!next) return now;
    now = next;
  }
}
