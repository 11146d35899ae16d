export { checkHolidays, checkSkipped, checkZone } from "./check";
export { type Clocks, clocksOf, type PourClockName } from "./clocks";
export { clockCodes } from "./codes";
export { readDate, readMoment } from "./dates";
export { elapsed } from "./elapsed";
export { type GainTable, gainClock } from "./gain";
export type { Gathering } from "./gathering";
export { heldClock } from "./held";
export { holidayName, holidayTables } from "./holidays";
export { RateClock } from "./rate";
export { both, type Runs } from "./runs";
export {
  type DateStyle,
  plainStyle,
  saidDay,
  saidTime,
  saidWeekdayDate,
  saidYearDate,
  sayDates,
} from "./said";
export { type SiteTime, siteTime } from "./site";
export { type Air, airOf } from "./temperatures";
export { WorkingClock } from "./working";
