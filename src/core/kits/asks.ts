import type { Range } from "../base";
import type { Answer, Answers, Ask, Offer } from "./kit";

/** What any ask may have beside its kind. */
interface More {
  readonly help?: string;
  readonly when?: (answers: Answers) => boolean;
  readonly unasked?: Answer;
}

/** A length: usual in both systems, and the range in mm. */
export const lengthAsk = (
  key: string,
  label: string,
  us: string,
  metric: string,
  least: number,
  most: number,
  more: More & { within_mm?: (answers: Answers) => Range } = {},
): Ask => ({
  key,
  label,
  kind: "length",
  usual: { us, metric },
  range_mm: { least, most, unit: "mm" },
  ...more,
});

/** A whole number. */
export const countAsk = (key: string, label: string, usual: number, least: number, most: number, more: More = {}): Ask => ({
  key,
  label,
  kind: "number",
  usual,
  range: { least, most, unit: "", whole: true },
  ...more,
});

const optionsOf = (options: Readonly<Record<string, string>>) => Object.entries(options).map(([value, name]) => ({ value, name }));

/** One of several, by value and name; the first is usual. */
export const choiceAsk = (
  key: string,
  label: string,
  options: Readonly<Record<string, string>>,
  more: More & { usual?: string } = {},
): Ask => {
  const { usual = Object.keys(options)[0] as string, ...rest } = more;
  return { key, label, kind: "choice", usual, options: optionsOf(options), ...rest };
};

/** Any of several; all are usual where nothing is said. */
export const severalAsk = (
  key: string,
  label: string,
  options: Readonly<Record<string, string>>,
  more: More & { usual?: readonly string[] } = {},
): Ask => {
  const { usual = Object.keys(options), ...rest } = more;
  return { key, label, kind: "several", usual, options: optionsOf(options), ...rest };
};

export const yesAsk = (key: string, label: string, usual: boolean, more: More = {}): Ask => ({ key, label, kind: "yes", usual, ...more });

/** Whose word something is, or a name; empty: nobody has said. */
export const wordAsk = (key: string, label: string, more: More = {}): Ask => ({ key, label, kind: "text", usual: "", ...more });

/** Near enough to the ground for what stands on it, or is stepped up to from it. */
export const isWithin_mm =
  (high_mm: number) =>
  ({ at_mm }: Pick<Offer, "at_mm">): boolean =>
    at_mm.z <= high_mm;

/** What where a part stands is measured from. */
export const datumHelp = "The datum is the one mark from which everything on the site is measured: a stake or a nail that stays.";

const far_mm = 100_000;
/** Where the middle of the first one is, seen from above. */
export const placeAsks: readonly Ask[] = [
  lengthAsk("right", "Middle of the first one, to the right of the datum", "0 in", "0 mm", -far_mm, far_mm, {
    help: `Left of it is below zero. ${datumHelp}`,
  }),
  lengthAsk("back", "Middle of the first one, behind the datum", "0 in", "0 mm", -far_mm, far_mm, {
    help: `Before it is below zero. ${datumHelp}`,
  }),
];
