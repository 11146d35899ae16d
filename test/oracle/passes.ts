import type { Passage, Way } from "../../src/core/build";

/** Whether `need` gets through `way` as far as the way itself goes; what closes it is not looked at. */
export function passes(way: Way, need: Passage): boolean {
  const has = (kind: Passage["kind"]) => way.passes.includes(kind);
  const deepEnough = (depth_mm: number) => way.depth_mm === null || depth_mm <= way.depth_mm;
  const anybody = has("person") || has("machine");
  switch (need.kind) {
    case "machine":
      return has("machine");
    case "person":
      return anybody;
    case "sight":
    case "hose":
      return anybody || has(need.kind);
    case "arm":
      return anybody || (has("arm") && deepEnough(need.depth_mm));
    case "hand":
      return anybody || ((has("arm") || has("hand")) && deepEnough(need.depth_mm));
    case "unit": {
      const [thin, middle, longest] = [need.long_mm, need.wide_mm, need.thick_mm].sort((a, b) => a - b) as [number, number, number];
      const hole = way.opening_mm;
      const fits = hole === null || (thin <= Math.min(hole.wide, hole.high) && middle <= Math.max(hole.wide, hole.high));
      const short = way.longest_mm === null || longest <= way.longest_mm;
      const light = way.bears_kg === null || need.mass_kg <= way.bears_kg;
      return has("unit") && fits && short && light;
    }
  }
}
