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

/** A pressure on a form or on the ground in kPa: psf to the whole, kPa with one decimal. */
export function formatSoilPressure(pressure_kPa: number, display: Display): string {
  return display === "us"
    ? `${formatFigure(fromModel("pressure", pressure_kPa / 1000, "psf"))} psf`
    : `${formatFigure(pressure_kPa, Math.abs(pressure_kPa) < 100 ? 1 : 0)} kPa`;
}

/** A volume in m3, with one decimal in cubic yards and two in cubic metres. */
export function formatVolume(volume_m3: number, display: Display): string {
  return display === "us" ? `${formatFigure(fromModel("volume", volume_m3, "yd3"), 1)} yd³` : `${formatFigure(volume_m3, 2)} m³`;
}

/** A rate of volume in m3/h. */
export function formatVolumeRate(rate_m3_h: number, display: Display): string {
  const value = display === "us" ? fromModel("volumeRate", rate_m3_h, "yd3/h") : rate_m3_h;
  return `${formatFigure(value, Math.abs(value) < 1 ? 2 : 1)} ${display === "us" ? "yd³/h" : "m³/h"}`;
}

/** A rise of concrete in a form in m/h. */
export function formatRise(rise_m_h: number, display: Display): string {
  const value = display === "us" ? fromModel("length", rise_m_h * 1000, "ft") : rise_m_h;
  return `${formatFigure(value, Math.abs(value) < 10 ? 1 : 0)} ${display === "us" ? "ft/h" : "m/h"}`;
}

/** A unit weight of concrete, or cement in a volume of it, in kg/m3: lb/ft3 from 1000 kg/m3 on, else lb/yd3. */
export function formatDensity(density_kg_m3: number, display: Display): string {
  if (display === "metric") return `${formatFigure(density_kg_m3)} kg/m³`;
  return density_kg_m3 >= 1000
    ? `${formatFigure(fromModel("density", density_kg_m3, "lb/ft3"))} lb/ft³`
    : `${formatFigure(fromModel("density", density_kg_m3, "lb/yd3"))} lb/yd³`;
}

/** A mass for each length in kg/m. */
export function formatMassPerLength(mass_kg_m: number, display: Display): string {
  const value = display === "us" ? fromModel("massPerLength", mass_kg_m, "lb/ft") : mass_kg_m;
  return `${formatFigure(value, Math.abs(value) < 10 ? 1 : 0)} ${display === "us" ? "lb/ft" : "kg/m"}`;
}

/** A force in kN: to the ten pounds of force from 1000 lb on, or kN with one decimal (two below one). */
export function formatForce(force_kN: number, display: Display): string {
  if (display === "metric") return `${formatFigure(force_kN, Math.abs(force_kN) < 1 ? 2 : 1)} kN`;
  const pounds = fromModel("force", force_kN, "lb");
  return `${formatFigure(Math.abs(pounds) < 1000 ? pounds : Math.round(pounds / 10) * 10)} lb`;
}

/** A force for each length in kN/m, to the whole pound for each foot, or kN/m with one decimal (two below one). */
export function formatLineLoad(load_kN_m: number, display: Display): string {
  return display === "us"
    ? `${formatFigure(fromModel("force", load_kN_m * 0.3048, "lb"))} lb/ft`
    : `${formatFigure(load_kN_m, Math.abs(load_kN_m) < 1 ? 2 : 1)} kN/m`;
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
