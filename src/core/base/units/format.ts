import { type Display, fromModel } from "./kinds";

const sixteenths = 16;
/** Up to here a length in US units stays in inches ("58 in"), as on a tape; beyond, feet and inches. */
const inchesUpTo = 72;

/** At most `digits` decimals, without trailing zeros, with a point whatever the machine's language. */
export function formatFigure(value: number, digits = 0): string {
  const text = value.toFixed(digits);
  const short = digits > 0 ? text.replace(/\.?0+$/, "") : text;
  return short === "-0" ? "0" : short;
}

function fraction(parts: number): string {
  let above = parts;
  let below = sixteenths;
  while (above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  return `${above}/${below}`;
}

function inches(count: number): string {
  const whole = Math.floor(count / sixteenths);
  const rest = count % sixteenths;
  if (rest === 0) return `${whole} in`;
  return whole === 0 ? `${fraction(rest)} in` : `${whole} ${fraction(rest)} in`;
}

/** A length in mm: to the sixteenth of an inch, or to the millimetre (metres with three decimals at most from 1 m on). */
export function formatLength(length_mm: number, display: Display): string {
  const sign = length_mm < 0 ? "-" : "";
  const size_mm = Math.abs(length_mm);
  if (display === "metric") return size_mm < 1000 ? `${sign}${formatFigure(size_mm)} mm` : `${sign}${formatFigure(size_mm / 1000, 3)} m`;
  const count = Math.round(fromModel("length", size_mm, "in") * sixteenths);
  if (count <= inchesUpTo * sixteenths) return sign + inches(count);
  const feet = Math.floor(count / (12 * sixteenths));
  const rest = count % (12 * sixteenths);
  return rest === 0 ? `${sign}${feet} ft` : `${sign}${feet} ft ${inches(rest)}`;
}

/** A mass in kg, to the whole pound or kilogram (one decimal below ten). */
export function formatMass(mass_kg: number, display: Display): string {
  const value = display === "us" ? fromModel("mass", mass_kg, "lb") : mass_kg;
  return `${formatFigure(value, Math.abs(value) < 10 ? 1 : 0)} ${display === "us" ? "lb" : "kg"}`;
}

/** A temperature in °C, to the whole degree. */
export function formatTemperature(temperature_C: number, display: Display): string {
  return display === "us" ? `${formatFigure(fromModel("temperature", temperature_C, "F"))} °F` : `${formatFigure(temperature_C)} °C`;
}

/** A wind speed in km/h. */
export function formatSpeed(speed_km_h: number, display: Display): string {
  return display === "us" ? `${formatFigure(fromModel("speed", speed_km_h, "mph"))} mph` : `${formatFigure(speed_km_h)} km/h`;
}

/** A strength or stress in MPa: psi to the ten, or MPa with one decimal. */
export function formatPressure(pressure_MPa: number, display: Display): string {
  return display === "us"
    ? `${formatFigure(Math.round(fromModel("pressure", pressure_MPa, "psi") / 10) * 10)} psi`
    : `${formatFigure(pressure_MPa, 1)} MPa`;
}

/** Working time in minutes as hours and minutes: never as days, which would be read as calendar days. */
export function formatWork(time_min: number): string {
  const hours = Math.floor(time_min / 60);
  const rest = Math.round(time_min - hours * 60);
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}

/** Elapsed time in minutes: from two days on in days and hours. */
export function formatElapsed(time_min: number): string {
  if (time_min < 2 * 1440) return formatWork(time_min);
  const days = Math.floor(time_min / 1440);
  const rest = time_min - days * 1440;
  return rest === 0 ? `${days} d` : `${days} d ${formatWork(rest)}`;
}
