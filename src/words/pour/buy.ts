import { type Display, formatFigure, formatLength } from "../../core/base";
import type { Build } from "../../core/build";
import type { Bought } from "../../core/pour";
import { counted } from "../text";
import { voice } from "../voice";
import { barSizeWords } from "./bars";
import { volumeWords } from "./day";
import { plyWords } from "./ply";

/** One line of the shopping list, in the parts a table has. */
export interface BuyWords {
  readonly what: string;
  readonly number: string;
  /** "2 in hand, 6 come back": what is taken off; nothing where nothing is. */
  readonly less: string;
  readonly orderBy: string;
  readonly neededBy: string;
  readonly for: string;
}

function whatWords(one: Bought, display: Display): string {
  const long = one.long_mm === null ? "" : `, ${formatLength(one.long_mm, display)}`;
  if (one.what === "plywood" && /^[\d/-]+$/.test(one.name)) return `form plywood, ${plyWords(one.name, display)}`;
  if (one.what === "bars") return `bars, ${barSizeWords(one.name)}${long}`;
  if (one.what === "concrete") return `concrete for ${one.name}`;
  if (one.what === "cover") return `sheet to cover ${one.name}`;
  return `${one.name}${long}`;
}

function numberWords(value: number, { unit }: Bought, display: Display): string {
  if (unit === "m3") return volumeWords(value, display);
  if (unit === "m2") return display === "us" ? `${formatFigure(value * 10.76391042)} ft²` : `${formatFigure(value)} m²`;
  if (unit === "piece") return formatFigure(value);
  if (unit === "sheet") return counted(Number(formatFigure(value)), "sheet");
  return `${formatFigure(value, 1)} ${unit}`;
}

export function buyWords(one: Bought, build: Build, display: Display = build.site.units): BuyWords {
  const say = voice(build, display);
  const less = [
    ...(one.inHand > 0 ? [`${formatFigure(one.inHand, 1)} in hand`] : []),
    ...(one.ordered > 0 ? [`${formatFigure(one.ordered, 1)} ordered`] : []),
    ...(one.back > 0 ? [`${formatFigure(one.back, 1)} come back`] : []),
  ];
  return {
    what: whatWords(one, display),
    number: numberWords(one.toBuy, one, display),
    less: less.length === 0 ? "" : `of ${numberWords(one.needed, one, display)} wanted, ${less.join(", ")}`,
    orderBy: one.orderBy === null ? "" : say.day(one.orderBy),
    neededBy: one.neededBy === null ? "" : say.day(one.neededBy),
    for: one.for.join(", "),
  };
}
