import type { Option } from "../parts/option";
import { optionOf, optionsOf } from "./options";
import { isObject, listOf, textOf } from "./written";

/** An amount to wait for as two fields show it: a figure, and whose strength or days it counts. */
export interface AmountParts {
  /** "24 h", "70 %", "3 days", "500 psi" */
  readonly figure: string;
  /** Id of a pour or a calendar; empty for plain time. */
  readonly of: string;
}

/** What the second field offers. */
export interface AmountChoices {
  readonly pours: readonly Option[];
  readonly calendars: readonly Option[];
}

/** The steps that pour to a strength, by what they say or by the pour written for them, and the calendars. */
export function amountChoices(document: unknown): AmountChoices {
  const poured = new Set(listOf(document, "pours").map((pour) => textOf(pour.step)));
  return {
    pours: listOf(document, "steps")
      .filter((step) => isObject(step.pour) || poured.has(textOf(step.id)))
      .map(optionOf),
    calendars: optionsOf(document, "calendars"),
  };
}

const isStrength = (figure: string): boolean => /(%|psi|MPa)$/.test(figure);
const isWarm = (figure: string): boolean => /^\d+ warm (days?|hours?)$/.test(figure);
const isDays = (figure: string): boolean => /^\d+ days?$/.test(figure);
const plain = (text: string): string => text.replace(/[“”"]/g, "").trim().toLowerCase();

/** An amount as written, taken apart. */
export function partsOf(value: unknown): AmountParts {
  const text = isObject(value) ? textOf(value.is) : textOf(value);
  const [, figure, of] = /^(.+?) of (.+)$/.exec(text) ?? [];
  return figure !== undefined && of !== undefined ? { figure, of } : { figure: text, of: isObject(value) ? textOf(value.on) : "" };
}

/** What was typed; "70 % of Pour the pad" names the pour as well, by its name or its id. A sentence where nothing is called so. */
export function typedParts(typed: string, of: string, { pours, calendars }: AmountChoices): AmountParts | string {
  const [, figure, named] = /^(.+?) of (.+)$/.exec(typed.trim()) ?? [];
  if (figure === undefined || named === undefined) return { figure: typed.trim(), of };
  const found = [...pours, ...calendars].find((one) => one.id === named || plain(one.name) === plain(named));
  return found ? { figure, of: found.id } : `No pour and no calendar is called “${named}”; choose one from the list.`;
}

/** The document's form, or the sentence that says what does not go together. Where it comes from stays with it. */
export function writtenAmount(
  before: unknown,
  { figure, of }: AmountParts,
  { pours, calendars }: AmountChoices,
): { readonly value: unknown } | string {
  if (figure === "") return { value: undefined };
  const kept = isObject(before) ? before : {};
  const put = (is: string, on: string | undefined): { readonly value: unknown } => {
    const { is: _is, on: _on, ...rest } = kept;
    return { value: on === undefined && Object.keys(rest).length === 0 ? is : { is, ...(on === undefined ? {} : { on }), ...rest } };
  };
  const isCalendar = calendars.some((one) => one.id === of);
  if (isStrength(figure) || isWarm(figure)) {
    if (of !== "" && !isCalendar) return put(`${figure} of ${of}`, undefined);
    const [only] = pours;
    if (pours.length === 1 && only && of === "") return put(`${figure} of ${only.id}`, undefined);
    return pours.length === 0
      ? "No step here pours to a stated strength, so none can be awaited; write a time, like 24 h."
      : isWarm(figure)
        ? `“${figure}” counts from a pour: choose which.`
        : `“${figure}” is a strength: choose the pour that it is of.`;
  }
  if (of === "") return put(figure, undefined);
  if (isDays(figure))
    return isCalendar ? put(`${figure} of ${of}`, undefined) : `“${figure}” is no strength; write 70 %, 500 psi or 10 MPa.`;
  return isCalendar ? put(figure, of) : `“${figure}” is no strength; write 70 %, 500 psi or 10 MPa.`;
}

/** An amount in one line, names in place of ids: "70 % of Pour the pad". */
export function amountText(value: unknown, { pours, calendars }: AmountChoices): string {
  const { figure, of } = partsOf(value);
  const name = [...pours, ...calendars].find((one) => one.id === of)?.name ?? of;
  return of === "" ? figure : `${figure} of ${name}`;
}
