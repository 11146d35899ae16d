/** A line of points from left to right, the underside of what is cast over it. */
export type Line = readonly (readonly [x: number, y: number])[];

/** The same line so far below it, square to it. */
export function below(line: Line, by: number): Line {
  return line.map(([x, y], index) => {
    const [x0, y0] = line[Math.max(0, index - 1)] as readonly [number, number];
    const [x1, y1] = line[Math.min(line.length - 1, index + 1)] as readonly [number, number];
    const long = Math.hypot(x1 - x0, y1 - y0) || 1;
    return [x + ((y1 - y0) / long) * by, y - ((x1 - x0) / long) * by] as const;
  });
}

/** Points on the line every `spacing` from its start, with the direction there. */
export function every(line: Line, spacing: number, from: number): { x: number; y: number; dx: number; dy: number }[] {
  const found: { x: number; y: number; dx: number; dy: number }[] = [];
  let gone = 0;
  let next = from;
  for (let index = 1; index < line.length; index++) {
    const [x0, y0] = line[index - 1] as readonly [number, number];
    const [x1, y1] = line[index] as readonly [number, number];
    const long = Math.hypot(x1 - x0, y1 - y0);
    while (long > 0 && next <= gone + long) {
      const share = (next - gone) / long;
      found.push({ x: x0 + (x1 - x0) * share, y: y0 + (y1 - y0) * share, dx: (x1 - x0) / long, dy: (y1 - y0) / long });
      next += Math.max(spacing, 1);
    }
    gone += long;
  }
  return found;
}

/** Height of the line at `x`; its ends beyond them. */
export function heightAt(line: Line, x: number): number {
  const first = line[0] as readonly [number, number];
  if (x <= first[0]) return first[1];
  for (let index = 1; index < line.length; index++) {
    const [x0, y0] = line[index - 1] as readonly [number, number];
    const [x1, y1] = line[index] as readonly [number, number];
    if (x <= x1) return x1 === x0 ? y1 : y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
  }
  return (line[line.length - 1] as readonly [number, number])[1];
}
