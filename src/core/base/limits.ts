/** A range in which a figure is taken as meant; `unit` is the model's. Both ends belong to it. */
export interface Range {
  readonly least: number;
  readonly most: number;
  readonly unit: string;
  /** Only whole numbers. */
  readonly whole?: boolean;
}

/**
 * Ranges as data: the reader's checks, a form field's least and most, and the generators of the tests all read them here.
 * They catch slips of the pen (a missing point, a wrong unit), nothing more; common practice, no source.
 */
export const limits = {
  fileCharacters: { least: 2, most: 5_000_000, unit: "characters", whole: true },
  nesting: { least: 1, most: 64, unit: "levels", whole: true },
  membersInAList: { least: 0, most: 20_000, unit: "members", whole: true },
  references: { least: 0, most: 500_000, unit: "references", whole: true },
  year: { least: 1990, most: 2199, unit: "year", whole: true },
  latitude: { least: -90, most: 90, unit: "degrees" },
  longitude: { least: -180, most: 180, unit: "degrees" },
  work: { least: 0, most: 2000 * 60, unit: "min" },
  elapsed: { least: 0, most: 10 * 366 * 1440, unit: "min" },
  officeDays: { least: 1, most: 1000, unit: "days", whole: true },
  strengthShare: { least: 1, most: 150, unit: "%" },
  strength: { least: 5, most: 120, unit: "MPa" },
  people: { least: 0, most: 100, unit: "people", whole: true },
  number: { least: 0, most: 1_000_000, unit: "" },
  equipment: { least: 0, most: 10_000, unit: "", whole: true },
  copies: { least: 1, most: 200, unit: "copies", whole: true },
  rounds: { least: 1, most: 20, unit: "rounds", whole: true },
  daysOff: { least: 0, most: 366, unit: "days", whole: true },
  weeksLater: { least: 0, most: 52, unit: "weeks", whole: true },
  month: { least: 1, most: 12, unit: "month", whole: true },
  level: { least: -1000, most: 1000, unit: "" },
  depth: { least: 0, most: 30_000, unit: "mm" },
  opening: { least: 1, most: 100_000, unit: "mm" },
  size: { least: 0.01, most: 100_000, unit: "mm" },
  coordinate: { least: -1_000_000, most: 1_000_000, unit: "mm" },
  mass: { least: 0, most: 1_000_000, unit: "kg" },
  temperature: { least: -60, most: 60, unit: "C" },
  wind: { least: 0, most: 200, unit: "km/h" },
  broken: { least: 0.1, most: 200, unit: "MPa" },
  alike: { least: 1, most: 1000, unit: "", whole: true },
  sideBySide: { least: 1, most: 10, unit: "pieces", whole: true },
  bars: { least: 1, most: 10_000, unit: "bars", whole: true },
  concreteSize: { least: 10, most: 300_000, unit: "mm" },
  memberSize: { least: 5, most: 20_000, unit: "mm" },
  aggregate: { least: 1, most: 150, unit: "mm" },
  sacksOfMix: { least: 1, most: 15, unit: "sacks" },
  cementContent: { least: 50, most: 1000, unit: "kg/m3" },
  steel: { least: 200, most: 1000, unit: "MPa" },
  setting: { least: 60, most: 3 * 1440, unit: "min" },
  carries: { least: 0.01, most: 10_000, unit: "kN" },
  massPerLength: { least: 0.1, most: 10_000, unit: "kg/m" },
  soil: { least: 0.005, most: 5, unit: "MPa" },
  volume: { least: 0, most: 2000, unit: "m3" },
  waste: { least: 0, most: 50, unit: "%" },
  cureDays: { least: 0, most: 365, unit: "days" },
  turn: { least: -360, most: 360, unit: "degrees" },
  slope: { least: 0, most: 100, unit: "%" },
} as const satisfies Readonly<Record<string, Range>>;

export type LimitName = keyof typeof limits;

/** Whether a figure lies in its range (and is whole where it has to be). */
export function isWithin(range: Range, value: number): boolean {
  return value >= range.least && value <= range.most && (!range.whole || Number.isInteger(value));
}
