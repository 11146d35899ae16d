const pound = 0.45359237;
/** m3 in a cubic foot. */
const foot3 = 0.3048 ** 3;
/** Standard gravity, m/s2 (ISO 80000-3). */
const gravity = 9.80665;

/**
 * The units a builder may write, by kind, each with what one of it is in the unit the model keeps (the one with factor 1).
 * Factors are exact by definition: international foot and pound of 1959, standard gravity; NIST SP 811 (2008) appendix B.8, from memory.
 */
export const unitsOf = {
  length: { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8, yd: 914.4 },
  mass: { g: 0.001, kg: 1, t: 1000, lb: pound },
  /** Degrees: see `offsets_C` for where each scale has its zero. */
  temperature: { C: 1, F: 5 / 9 },
  speed: { "km/h": 1, "m/s": 3.6, mph: 1.609344 },
  pressure: { MPa: 1, kPa: 0.001, psi: 0.006894757293168361, ksi: 6.894757293168361, psf: 0.006894757293168361 / 144 },
  time: { min: 1, h: 60, d: 1440, wk: 10080 },
  volume: { L: 0.001, ft3: foot3, yd3: 27 * foot3, m3: 1 },
  volumeRate: { "L/min": 0.06, "ft3/h": foot3, "yd3/h": 27 * foot3, "m3/h": 1 },
  density: { "lb/yd3": pound / (27 * foot3), "lb/ft3": pound / foot3, "kg/m3": 1, "t/m3": 1000, "kN/m3": 1000 / gravity },
  massPerLength: { "kg/m": 1, "lb/ft": pound / 0.3048 },
  /** "lb" is a pound of force here. */
  force: { N: 0.001, kN: 1, lb: (pound * gravity) / 1000, kip: pound * gravity },
} as const;

export type Kind = keyof typeof unitsOf;
export const kinds = Object.keys(unitsOf) as readonly Kind[];
export type UnitOf<K extends Kind> = keyof (typeof unitsOf)[K] & string;
export type Display = "us" | "metric";

/** Degrees Celsius at which each scale reads zero. */
export const offsets_C = { C: 0, F: -160 / 9 } as const;

/** Other spellings that builders use. */
export const spellings: Readonly<Record<Kind, Readonly<Record<string, string>>>> = {
  length: { '"': "in", "″": "in", inch: "in", inches: "in", "'": "ft", "′": "ft", foot: "ft", feet: "ft" },
  mass: { lbs: "lb" },
  temperature: { "°C": "C", "°F": "F", "° C": "C", "° F": "F" },
  speed: { "mi/h": "mph", kph: "km/h" },
  pressure: { "lb/in²": "psi", "lb/ft²": "psf", "N/mm²": "MPa" },
  time: { minute: "min", minutes: "min", hr: "h", hrs: "h", hour: "h", hours: "h", day: "d", days: "d", week: "wk", weeks: "wk" },
  volume: {
    l: "L",
    liter: "L",
    litre: "L",
    liters: "L",
    litres: "L",
    "ft³": "ft3",
    "cu ft": "ft3",
    "yd³": "yd3",
    "cu yd": "yd3",
    "m³": "m3",
  },
  volumeRate: { "l/min": "L/min", "ft³/h": "ft3/h", "yd³/h": "yd3/h", "m³/h": "m3/h" },
  density: {
    pcf: "lb/ft3",
    "lb/ft³": "lb/ft3",
    "lb/yd³": "lb/yd3",
    "lb/cu yd": "lb/yd3",
    "kg/m³": "kg/m3",
    "t/m³": "t/m3",
    "kN/m³": "kN/m3",
  },
  massPerLength: { plf: "lb/ft" },
  force: { lbf: "lb", lbs: "lb", kips: "kip" },
};

/** Names the unit of a kind that the model keeps, for findings and form fields. */
export const modelUnit = {
  length: "mm",
  mass: "kg",
  temperature: "C",
  speed: "km/h",
  pressure: "MPa",
  time: "min",
  volume: "m3",
  volumeRate: "m3/h",
  density: "kg/m3",
  massPerLength: "kg/m",
  force: "kN",
} as const;

const factor = (kind: Kind, unit: string): number => (unitsOf[kind] as Readonly<Record<string, number>>)[unit] ?? Number.NaN;
const offset = (kind: Kind, unit: string): number =>
  kind === "temperature" ? ((offsets_C as Readonly<Record<string, number>>)[unit] ?? Number.NaN) : 0;

/** What `value` of a unit is in the model's unit of its kind (see `modelUnit`). NaN for a unit of another kind. */
export function toModel<K extends Kind>(kind: K, value: number, unit: UnitOf<K>): number {
  return value * factor(kind, unit) + offset(kind, unit);
}

/** The other way: a figure of the model in the unit named. */
export function fromModel<K extends Kind>(kind: K, value: number, unit: UnitOf<K>): number {
  return (value - offset(kind, unit)) / factor(kind, unit);
}
