import { formatFigure, formatLength, formatMass, formatTemperature } from "../../core/base";
import type { Told } from "../build/sayings";
import { lower, quoted, readable } from "../text";
import { figure, text } from "../voice";

/** The pour a finding is about. */
const pourOf = ({ voice, where }: Told) => voice.build?.pours.find(({ id }) => id === where.id);

/** "Pour “Porch”, the columns": a pour and the element of it that is meant, at the front of a sentence. */
export function place(told: Told): string {
  const pour = pourOf(told);
  const name = pour === undefined || pour.name === "" ? readable(told.where.id ?? "") : pour.name;
  const element = text(told.detail, "element");
  return element === "" ? `Pour ${quoted(name)}` : `Pour ${quoted(name)}, ${elementWords(told, element)}`;
}

/** "the columns" of the id of an element. */
export function elementWords(told: Told, id: string): string {
  const found = pourOf(told)?.elements.find((one) => one.id === id);
  const name = lower(found === undefined || found.name === "" ? readable(id) : found.name);
  return /^(the|a|an) /.test(name) ? name : `the ${name}`;
}

const us = ({ voice }: Told): boolean => voice.display === "us";

export const length = (told: Told, key: string): string => formatLength(figure(told.detail, key), told.voice.display);
/** A length that must not be more: cut down to the inch or to 10 mm. */
export const atMost = (told: Told, key: string): string => {
  const step = us(told) ? 25.4 : 10;
  const value = figure(told.detail, key);
  return formatLength(value < step ? value : Math.floor(value / step + 1e-9) * step, told.voice.display);
};
export const mass = (told: Told, key: string): string => formatMass(figure(told.detail, key), told.voice.display);
export const degrees = (told: Told, key: string): string => formatTemperature(figure(told.detail, key), told.voice.display);
export const percent = (told: Told, key: string): string => `${formatFigure(figure(told.detail, key), 1)} %`;
/** Minutes as hours and minutes, to the minute. */
export const minutes = (told: Told, key: string): string => {
  const all = Math.round(figure(told.detail, key));
  const [hours, rest] = [Math.floor(all / 60), all % 60];
  return hours === 0 ? `${rest} min` : rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
};
export const volume = (told: Told, key: string): string => {
  const value = figure(told.detail, key) * (us(told) ? 1.307950619 : 1);
  return `${formatFigure(value, Math.abs(value) < 20 ? 1 : 0)} ${us(told) ? "yd³" : "m³"}`;
};
export const force = (told: Told, key: string): string =>
  us(told) ? `${formatFigure(figure(told.detail, key) * 224.80894387)} lb` : `${formatFigure(figure(told.detail, key), 1)} kN`;
export const soil = (told: Told, key: string): string =>
  us(told) ? `${formatFigure(figure(told.detail, key) * 20.885434)} lb/ft²` : `${formatFigure(figure(told.detail, key))} kPa`;
export const stress = (told: Told, key: string): string =>
  us(told) ? `${formatFigure(figure(told.detail, key) * 0.1450377377, 0)} ksi` : `${formatFigure(figure(told.detail, key))} MPa`;
export const cement = (told: Told, key: string): string =>
  us(told) ? `${formatFigure(figure(told.detail, key) * 1.6855549)} lb/yd³` : `${formatFigure(figure(told.detail, key))} kg/m³`;
/** A small area, up to the tenth of a square inch or to 10 mm². */
export const smallArea = (told: Told, key: string): string => {
  const value = figure(told.detail, key);
  return us(told)
    ? `${formatFigure(Math.ceil(value / 64.516 - 1e-9) / 10, 1)} in²`
    : `${formatFigure(10 * Math.ceil(value / 10 - 1e-9))} mm²`;
};
/** A force along a length: lb for each foot, kN for each metre. */
export const lineForce = (told: Told, key: string): string =>
  us(told)
    ? `${formatFigure(figure(told.detail, key) * 68.52176586)} lb for each foot`
    : `${formatFigure(figure(told.detail, key), 1)} kN for each metre`;
