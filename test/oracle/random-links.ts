import type { Draw } from "./draw";
import type { Loose, Size } from "./random-builds";
import { named } from "./random-places";

function pair(draw: Draw, size: Pick<Size, "careless">, names: readonly string[]): { from: string; to: string } {
  const from = draw.below(names.length - 1);
  const to = from + 1 + draw.below(names.length - 1 - from);
  const [a, b] = [names[from]!, names[to]!];
  return draw.chance(size.careless) ? { from: b, to: a } : { from: a, to: b };
}

export function drawWaits(draw: Draw, size: Size, names: readonly string[]): Loose[] {
  return named("wait", draw.pick([0, 1, 1, 2])).map((id) => ({
    id,
    name: id,
    ...pair(draw, size, names),
    ...draw.pick<Loose>([
      { least: "3 h" },
      { least: "1 h", most: "12 h" },
      { most: "2 h" },
      { fromEnd: "start", least: "1 h" },
      { fromEnd: "start", toEnd: "finish", most: "9 h" },
      { toEnd: "finish", least: "4 h" },
    ]),
    why: "drawn",
  }));
}

/** A cold joint now and then; in some builds a twist: what one choice offers first, both options of another forbid. */
export function drawChoices(draw: Draw, size: Size, names: readonly string[]): Loose[] {
  const joints = draw.chance(30) ? [coldJoint(draw, size, names)] : [];
  return [...joints, ...(draw.chance(size.twisted) ? twist(draw, size, names) : [])];
}

const choice = (id: string, ...either: readonly (readonly Loose[])[]): Loose => ({
  id,
  name: id,
  either: either.map((waits, i) => ({ name: `option ${i + 1}`, waits })),
});

/** Fresh on fresh within an hour, or after a day and cleaning in between. */
function coldJoint(draw: Draw, size: Size, names: readonly string[]): Loose {
  const { from, to } = pair(draw, size, names);
  const cleaning = draw.pick(names);
  const prepared = [
    { from, to: cleaning, least: "24 h" },
    { from: cleaning, to },
  ].filter((w) => w.from !== w.to);
  return choice("joint", [...(draw.chance(50) ? [{ from, to }] : []), { from, to, most: "1 h" }], prepared);
}

function twist(draw: Draw, size: Size, names: readonly string[]): Loose[] {
  const { from, to } = pair(draw, size, names);
  const other = () => pair(draw, size, names);
  return [
    choice("first-knot", [{ from: to, to: from }], [{ from, to }, other()]),
    choice("second-knot", [{ from, to }, other()], [{ from, to }, other()]),
  ];
}
