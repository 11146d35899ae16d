import type { DetailValue, Finding } from "../base";
import type { Part } from "../build";
import { kitOf } from "./all";
import { isObject, listOf, partsOf } from "./document";
import { contextOf, joinsOf } from "./offers";
import { bodiesOf, overlaps } from "./overlaps";

/** What is not right about parts as they lie and lean, with the keys of the detail. The sentences stand in words. */
export const remarkCodes = {
  /** A part joins what is no longer there. */
  "kit.hangs": ["name"],
  /** Bodies of two parts are in the same place. */
  "kit.overlap": ["name", "other"],
  /** It begins in the cold months, concrete is poured, and nobody has said how warm the site is. */
  "kit.winter-unknown": ["month"],
  /** Concrete is placed in a cold month, and nobody has said how warm the site is. */
  "kit.winter-pour": ["month"],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type RemarkCode = keyof typeof remarkCodes;

const remark = <C extends RemarkCode>(
  code: C,
  id: string | null,
  detail: Readonly<Record<(typeof remarkCodes)[C][number], DetailValue>>,
): Finding => ({ code, severity: "look", where: id === null ? { list: "parts" } : { list: "parts", id }, detail });

/** Parts that join an offer which nobody makes any more. */
function hanging(document: unknown): readonly Finding[] {
  return partsOf(document).flatMap((part) => {
    if (kitOf(part.kit) === undefined) return [];
    const offered = new Set(contextOf(document, part.id).offers.map(({ key }) => key));
    return joinsOf(part).every((key) => offered.has(key)) ? [] : [remark("kit.hangs", part.id, { name: part.name })];
  });
}

const joins = (part: Part, other: Part): boolean => joinsOf(part).some((key) => key.startsWith(`${other.id}/`));

/** Pairs of parts that lie over each other, told of the later one; what joins the other was put to it by its kit. */
function overlapping(document: unknown): readonly Finding[] {
  const parts = partsOf(document).map((part) => ({ part, bodies: bodiesOf(document, part) }));
  return parts.flatMap(({ part, bodies }, at) =>
    parts
      .slice(0, at)
      .filter((other) => !joins(part, other.part) && !joins(other.part, part))
      .filter((other) => bodies.some((one) => other.bodies.some((two) => overlaps(one, two))))
      .map((other) => remark("kit.overlap", part.id, { name: part.name, other: other.part.name })),
  );
}

/** From here on towards the poles a winter is cold enough to slow concrete down (own bound). */
const cold_deg = 25;

/** Months in which a usual day of the temperate latitudes is under 50 °F (10 °C): October to March in the north (common practice, no source). */
const isCold = (month: number, latitude: number): boolean => {
  const northern = latitude >= 0 ? month : ((month + 5) % 12) + 1;
  return Math.abs(latitude) >= cold_deg && (northern >= 10 || northern <= 3);
};

function winter(document: unknown, poured: readonly number[] | undefined): readonly Finding[] {
  if (!isObject(document) || !isObject(document.site) || listOf(document, "pours").length === 0) return [];
  const { usualTemperatures, days, latitude } = document.site;
  const isTold = [usualTemperatures, days].some((list) => Array.isArray(list) && list.length > 0);
  if (isTold || typeof latitude !== "number") return [];
  const begins = Number(/^\d{4}-(\d\d)-/.exec(String(document.start))?.[1] ?? Number.NaN);
  const month = (poured ?? [begins]).find((one) => isCold(one, latitude));
  return month === undefined ? [] : [remark(poured ? "kit.winter-pour" : "kit.winter-unknown", null, { month })];
}

/**
 * What somebody should look at: parts that hang, parts that lie over each other, a winter of which nobody knows how cold it is.
 * @param poured months in which concrete is placed, 1 to 12 in their order, where there are dates; left out, the month in which the build begins counts
 */
export const remarksOf = (document: unknown, poured?: readonly number[]): readonly Finding[] => [
  ...hanging(document),
  ...overlapping(document),
  ...winter(document, poured),
];
