import { siteTime } from "../../core/clock";
import { weekendsIn } from "../time/weekends";
import { sheetAxes } from "./axis-of";
import { hasElevation } from "./elevation";
import type { SheetAsked } from "./frame";
import { namesWide } from "./prepare";
import { sideWidth } from "./side";

/** Site days are never narrower, nor wider without being asked to be, px. */
const [narrowest, widest] = [24, 130];

/** Room beside the names of the lanes in a view so wide, px. */
export function roomBeside(asked: SheetAsked, width: number): number {
  return width - sideWidth(namesWide(asked.build, asked.plan, asked.text ?? 14), hasElevation(asked));
}

/** The widest day, px, at which ten weekends fit beside the names of the lanes wherever one has scrolled to; else the narrowest. */
export function dayWidthFor(asked: SheetAsked, width: number, weekends = 10): number {
  const room = roomBeside(asked, width);
  const time = siteTime(asked.build.site.zone, asked.build.start);
  const axisAt = sheetAxes({ ...asked, unfolded: false }, time, false);
  const fits = (dayWidth: number) => {
    const axis = axisAt(dayWidth);
    return axis.width <= room || weekendsIn(axis, time, room).count >= weekends;
  };
  let [low, high] = [narrowest, widest];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (fits(middle)) low = middle;
    else high = middle - 1;
  }
  return low;
}
