/**
 * Water leaving a fresh slab: ACI 305R, after Menzel 1954 and Uno 1998 (ACI Materials Journal 95). Read. Two published forms; the metric one runs about
 * 4 % lower than the US one, and they are kept apart. The true rate can differ by 40 % (Hover 2020, read).
 */
import { type Checked, checked } from "./range";

export const evaporationRanges_us = {
  concrete: { name: "concrete temperature", least: 40, most: 110, unit: "°F", source: "ACI 305 nomograph" },
  air: { name: "air temperature", least: 20, most: 120, unit: "°F", source: "ACI 305 nomograph, widened for cold air over warm concrete" },
  humidity: { name: "relative humidity", least: 0, most: 100, unit: "%", source: "physics" },
  wind: { name: "wind 20 in above the slab", least: 0, most: 40, unit: "mph", source: "ACI 305 nomograph runs to 25 mph; own bound above" },
} as const;

/** lb/ft2/h; act at 0.2, at 0.1 with silica fume or little bleed. */
export function evaporation_us(concrete_F: number, air_F: number, humidity_percent: number, wind_mph: number): Checked<number> {
  const given = { concrete: concrete_F, air: air_F, humidity: humidity_percent, wind: wind_mph };
  return checked(evaporationRanges_us, given, () => {
    const driving = concrete_F ** 2.5 - (humidity_percent / 100) * air_F ** 2.5;
    return Math.max(0, driving * (1 + 0.4 * wind_mph) * 1e-6);
  });
}

export const evaporationRanges_si = {
  concrete: { name: "concrete temperature", least: 4, most: 43, unit: "°C", source: "ACI 305 nomograph" },
  air: { name: "air temperature", least: -7, most: 49, unit: "°C", source: "ACI 305 nomograph, widened for cold air over warm concrete" },
  humidity: { name: "relative humidity", least: 0, most: 100, unit: "%", source: "physics" },
  wind: {
    name: "wind 0.5 m above the slab",
    least: 0,
    most: 64,
    unit: "km/h",
    source: "ACI 305 nomograph runs to 40 km/h; own bound above",
  },
} as const;

/** kg/m2/h; act at 1.0, at 0.5 with silica fume or little bleed. */
export function evaporation_si(concrete_C: number, air_C: number, humidity_percent: number, wind_km_h: number): Checked<number> {
  const given = { concrete: concrete_C, air: air_C, humidity: humidity_percent, wind: wind_km_h };
  return checked(evaporationRanges_si, given, () => {
    const driving = (concrete_C + 18) ** 2.5 - (humidity_percent / 100) * (air_C + 18) ** 2.5;
    return Math.max(0, 5 * driving * (wind_km_h + 4) * 1e-6);
  });
}

/** Rate from which a fresh slab is protected: 0.2 lb/ft2/h, half of it where it bleeds little (ACI 305R, read: about half). */
export function actOnEvaporation_us(lowBleed: boolean): number {
  return lowBleed ? 0.1 : 0.2;
}

/** 1.0 kg/m2/h, half of it where it bleeds little. */
export function actOnEvaporation_si(lowBleed: boolean): number {
  return lowBleed ? 0.5 : 1;
}

/** Warmest concrete as placed: 95 °F, 35 °C (ACI 305.1, from memory). */
export const hottest_F = 95;
