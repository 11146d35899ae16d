import type { Part } from "../build";
import { kitOf } from "./all";
import { listOf, partsOf } from "./document";
import { makePart } from "./given";
import type { Unknown } from "./kit";
import { contextOf } from "./offers";

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const objects = (value: unknown): readonly Readonly<Record<string, unknown>>[] => (Array.isArray(value) ? value.filter(isObject) : []);

/** Somebody's word: written down, and not a guess. */
const isWord = (from: unknown): boolean =>
  typeof from === "string" && from.trim() !== "" && from !== "own guess" && !/^common practice/.test(from);

const poursOf = (document: unknown, part: Part) => listOf(document, "pours").filter(({ id }) => part.made.pours?.includes(id));

/** Every set of bars of the part says whose it is. */
const barsAreSaid = (document: unknown, part: Part): boolean => {
  const sets = poursOf(document, part).flatMap((pour) => objects(pour.elements).flatMap(({ bars }) => objects(bars)));
  return sets.length > 0 && sets.every(({ from }) => isWord(from));
};

/** A result was measured, or somebody stands for the days of what carries. */
const soffitIsShown = (document: unknown, part: Part): boolean =>
  poursOf(document, part).some(
    ({ breaks, removals }) =>
      objects(breaks).length > 0 ||
      objects(removals).some(({ sort, saidBy }) => (sort === "soffit" || sort === "shores") && isWord(saidBy)),
  );

/** What a mudsill presses on was said by somebody who looked. */
const sillsAreSaid = (document: unknown, part: Part): boolean =>
  poursOf(document, part).some((pour) =>
    objects(pour.elements).some(({ form }) => {
      const sills = isObject(form) ? form.mudsills : undefined;
      const soil = isObject(sills) ? sills.soil : undefined;
      return isObject(soil) && isWord(soil.from);
    }),
  );

/**
 * How the document itself may answer what a kit could not know. A code that is not here is answered by the part's own answers only: its kit then no longer names it.
 */
const answered: Readonly<Record<string, (document: unknown, part: Part) => boolean>> = {
  bars: barsAreSaid,
  soffit: soffitIsShown,
  "shore-ground": sillsAreSaid,
};

/** What nobody has said yet and somebody has to, part by part. */
export function unknownOf(document: unknown): readonly Unknown[] {
  return partsOf(document).flatMap((part) => {
    const kit = kitOf(part.kit);
    if (kit === undefined) return [];
    const { unknown } = makePart(kit, part, contextOf(document, part.id));
    return unknown.filter(({ code }) => !(answered[code]?.(document, part) ?? false));
  });
}
