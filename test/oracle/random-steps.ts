import type { Draw } from "./draw";
import type { Loose, Size } from "./random-builds";
import { drawHoldPoints } from "./random-hold-points";
import { drawChoices, drawWaits } from "./random-links";
import type { DrawnPiece } from "./random-pieces";
import { type DrawnPlace, named } from "./random-places";
import { drawReach, standing } from "./random-reaches";
import { Strengths } from "./random-strength";

export function drawSteps(draw: Draw, size: Size, places: readonly DrawnPlace[], pieces: readonly DrawnPiece[], count: number): Loose {
  const names = written(draw, count);
  const strengths = new Strengths(draw, size, names);
  strengths.ofPieces(pieces);
  const steps = names.map((id, turn): Loose => {
    const reaches = Array.from({ length: draw.pick([0, 1, 1, 2]) }, () => drawReach(draw, size, places, pieces, turn, null)).flat();
    const leanable = draw.chance(size.careless) ? pieces : standing(pieces, turn).filter((p) => p.take > turn);
    const after = names.slice(0, turn);
    const puts = pieces.filter((p) => p.put === turn).map((p) => p.id);
    const takes = pieces.filter((p) => p.take === turn).map((p) => p.id);
    return {
      id,
      name: id,
      ...strengths.pour(turn),
      work: draw.pick<unknown>(["1 h", "2 h", "5 h", { low: "1 h", likely: "3 h", high: "6 h" }]),
      hands: draw.pick([1, 2]),
      ...(puts.length > 0 ? { puts } : {}),
      ...(takes.length > 0 ? { takes } : {}),
      ...(reaches.length > 0 ? { reaches } : {}),
      ...(leanable.length > 0 && draw.chance(22)
        ? { leansOn: [{ piece: draw.pick(leanable).id, ...(draw.chance(50) ? { once: strengths.or("4 h", turn) } : {}) }] }
        : {}),
      ...(after.length > 0 && draw.chance(12) ? { after: [draw.pick(after)] } : {}),
      ...(draw.chance(4) ? { calendar: "weekends", unbroken: draw.chance(50) } : {}),
      ...(draw.chance(4) ? { alone: [draw.pick(places).id] } : {}),
      ...(draw.chance(10) ? { place: draw.pick(places).id } : {}),
      ...(draw.chance(8) ? { notBefore: "2027-03-06T10:00" } : {}),
      ...(draw.chance(5) ? { deadline: draw.pick(["2027-03-06T16:00", "2027-03-07T02:00"]) } : {}),
    };
  });
  const inTurn = (id: unknown) => Number((id as string).slice("step-".length));
  drawHoldPoints(draw, size, places, pieces, steps);
  const waits = drawWaits(draw, size, names);
  strengths.ofWaits(waits);
  return { steps: steps.sort((a, b) => inTurn(a.id) - inTurn(b.id)), waits, choices: drawChoices(draw, size, names) };
}

/** Names by turn; where each stands in the document is drawn. */
function written(draw: Draw, count: number): string[] {
  const names = named("step", count);
  for (let i = count - 1; i > 0; i--) {
    const j = i - draw.below(i + 1);
    [names[i], names[j]] = [names[j]!, names[i]!];
  }
  return names;
}
