import { across, type BarSize, bars, grades, metricBars, plyClasses, sections } from "../concrete";

/** Trade sizes of sawn lumber that the tables know, thin before thick. */
export const lumberSizes: readonly string[] = Object.keys(sections).filter((name) => !name.endsWith("flat"));

/** Grades of lumber by the id they are written with. */
export const lumberGrades: readonly { readonly id: string; readonly name: string }[] = Object.entries(grades).map(([id, { name }]) => ({
  id,
  name,
}));

/** Nominal thicknesses of form plywood, in, as they are written. */
export const plywoodSizes: readonly string[] = Object.keys(across);
export const plywoodClasses: readonly string[] = Object.keys(plyClasses);

/** Sizes of bars: numbers first, then diameters. */
export const barSizes: readonly BarSize[] = [...bars, ...metricBars].map(({ size }) => size);
