import type { Passage, Way } from "../build";

/**
 * Whether `need` gets through the way itself; what closes it or lies before it is not looked at. What a person passes, sight, a hand, an arm and a
 * hose pass at any depth; what a machine passes, a person does; what an arm passes, a hand does to the same depth. A unit passes where units
 * do, or where a person or machine does and the opening is given: its two smaller sides through the opening either way round, no longer and no heavier than is said.
 */
export function passes(way: Way, need: Passage): boolean {
  const has = (kind: Passage["kind"]): boolean => way.passes.includes(kind);
  const person = has("person") || has("machine");
  switch (need.kind) {
    case "machine":
      return has("machine");
    case "person":
      return person;
    case "sight":
    case "hose":
      return person || has(need.kind);
    case "arm":
      return person || (has("arm") && deepEnough(way, need.depth_mm));
    case "hand":
      return person || ((has("arm") || has("hand")) && deepEnough(way, need.depth_mm));
    case "unit":
      return (has("unit") || (person && way.opening_mm !== null)) && fits(way, need);
  }
}

const deepEnough = (way: Way, depth_mm: number): boolean => way.depth_mm === null || depth_mm <= way.depth_mm;

function fits(way: Way, need: Extract<Passage, { kind: "unit" }>): boolean {
  const [small, middle, long] = [need.long_mm, need.wide_mm, need.thick_mm].sort((a, b) => a - b) as [number, number, number];
  const hole = way.opening_mm;
  const through = hole === null || (small <= Math.min(hole.wide, hole.high) && middle <= Math.max(hole.wide, hole.high));
  return through && (way.longest_mm === null || long <= way.longest_mm) && (way.bears_kg === null || need.mass_kg <= way.bears_kg);
}
