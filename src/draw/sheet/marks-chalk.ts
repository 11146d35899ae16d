import { layers, type Mark, path, round, type Subject, shape } from "../marks/mark";
import { chalkRoute } from "./chalk-route";
import { type Frame, touches } from "./frame";
import type { Layout } from "./layout";
import type { Point } from "./route";

interface Spot {
  readonly band: number;
  readonly x0: number;
  readonly x1: number;
  /** Where the line may run along the block: left of it, and right of it with its closing mark. */
  readonly left: number;
  readonly right: number;
}
/** How near to the edge of its own block the line runs, px. */
const beside = 2;
const bareSpot = (band: number, x0: number, x1: number): Spot => ({ band, x0, x1, left: x0 - beside, right: x1 + beside });

/** The chalk line: heavy below each block that sets the finish, thin and stepped from one to the next, in the channels and round other blocks. */
export function* chalkMarks(frame: Frame, layout: Layout): Generator<Mark, void, void> {
  const { plan, build, axis, ground } = frame;
  const spotOf = (job: number): Spot | null => {
    if (job >= build.steps.length) {
      const delivery = plan.deliveries[job - build.steps.length];
      if (!delivery) return null;
      const x = axis.x(delivery.arrives);
      return { band: -1, x0: x, x1: x, left: x, right: x };
    }
    const block = layout.blocks.get(job);
    if (block) return { ...bareSpot(block.band, block.x0, block.x1), right: block.x1 + block.closingRoom + beside };
    const dates = plan.steps[job];
    const band = layout.bands.findIndex(({ lane }) => layout.lanes[lane]!.place === ground.laneOf[job]);
    return dates && band >= 0 ? bareSpot(band, axis.x(dates.start), axis.x(dates.finish)) : null;
  };
  let before: Spot | null = null;
  for (const link of plan.chain) {
    const spot = spotOf(link.job);
    if (!spot) continue;
    const step = build.steps[link.job];
    const of: Subject | undefined = step ? { list: "steps", id: step.id } : undefined;
    const id = step?.id ?? `delivery ${link.job - build.steps.length}`;
    if (before && touches(frame, Math.min(before.x1, spot.x0) - 160, Math.max(before.x1, spot.x0) + 160)) {
      const lines = chalkRoute(
        layout.bands,
        { band: before.band, x: before.x1, side: before.right },
        { band: spot.band, x: spot.x0, side: spot.left },
      );
      yield thin(`chalk to ${id}`, lines, of);
    }
    if (spot.band >= 0) {
      const y = layout.bands[spot.band]!.channel;
      yield path(
        `chalk along ${id}`,
        "chalk-heavy",
        layers.chalkHeavy,
        [
          [spot.x0, y],
          [Math.max(spot.x1, spot.x0 + 2), y],
        ],
        of ? { of } : {},
      );
    }
    before = spot;
  }
}

function thin(id: string, lines: readonly (readonly Point[])[], of: Subject | undefined): Mark {
  const points = lines.flat();
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const d = lines.map((line) => `M${line.map(([x, y]) => `${round(x)} ${round(y)}`).join("L")}`).join("");
  const bounds = { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) };
  return shape(id, "chalk-thin", layers.chalkThin, d, bounds, of);
}
