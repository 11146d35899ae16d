import { layers, type Mark, path, type Subject } from "../marks/mark";
import { type Frame, touches } from "./frame";
import { laneOfSteps } from "./lanes";
import type { Layout } from "./layout";
import { calmer } from "./route";

interface Spot {
  readonly band: number;
  readonly x0: number;
  readonly x1: number;
}

/** The chalk line: heavy below each block that sets the finish, thin and stepped from one to the next, in the channels and round other blocks. */
export function chalkMarks(frame: Frame, layout: Layout): Mark[] {
  const { plan, build, axis } = frame;
  const laneOf = laneOfSteps(build);
  const spotOf = (job: number): Spot | null => {
    if (job >= build.steps.length) {
      const delivery = plan.deliveries[job - build.steps.length];
      if (!delivery) return null;
      const x = axis.x(delivery.arrives);
      return { band: -1, x0: x, x1: x };
    }
    const block = layout.blocks.get(job);
    if (block) return { band: block.band, x0: block.x0, x1: block.x1 };
    const dates = plan.steps[job];
    const band = layout.bands.findIndex(({ lane }) => layout.lanes[lane]!.place === laneOf[job]);
    return dates && band >= 0 ? { band, x0: axis.x(dates.start), x1: axis.x(dates.finish) } : null;
  };
  const marks: Mark[] = [];
  let before: Spot | null = null;
  for (const link of plan.chain) {
    const spot = spotOf(link.job);
    if (!spot) continue;
    const step = build.steps[link.job];
    const of: Subject | undefined = step ? { list: "steps", id: step.id } : undefined;
    const id = step?.id ?? `delivery ${link.job - build.steps.length}`;
    if (before && touches(frame, Math.min(before.x1, spot.x0) - 160, Math.max(before.x1, spot.x0) + 160)) {
      const points = calmer(layout.bands, before.band, before.x1, spot.band, spot.x0);
      marks.push(path(`chalk to ${id}`, "chalk-thin", layers.chalkThin, points, of ? { of } : {}));
    }
    if (spot.band >= 0) {
      const y = layout.bands[spot.band]!.channel;
      marks.push(
        path(
          `chalk along ${id}`,
          "chalk-heavy",
          layers.chalkHeavy,
          [
            [spot.x0, y],
            [Math.max(spot.x1, spot.x0 + 2), y],
          ],
          of ? { of } : {},
        ),
      );
    }
    before = spot;
  }
  return marks;
}
