import type { FormSheet, MemberPart, MemberSheet } from "../../core/pour";
import { of100 as ofHundred, partWords } from "../../words";
import type { At, Tag, TagLine } from "./section";

/** Beside a line: without its article. */
const nameOf = (part: MemberPart): string => partWords(part).replace(/^the /, "");
/** One of those that stand at several heights. */
const single: Partial<Record<MemberPart, string>> = { "corner bolts": "bolt", ties: "tie" };

/** A member of the form's sheet, null where it has none of that sort. */
export const memberOf = (form: FormSheet | null, part: MemberPart): MemberSheet | null =>
  form?.members.find((member) => member.part === part) ?? null;

/** Position in `each` of what gives first; null where it is another member, -1 where it is this one as a whole. */
export function firstOf(form: FormSheet | null, part: MemberPart): number | null {
  const first = form?.members[form.first];
  if (first === undefined || first.part !== part) return null;
  return first.each.reduce((worst, one, index) => (worst < 0 || one.of100 > (first.each[worst]?.of100 ?? 0) ? index : worst), -1);
}

/** How a member is drawn: heavy where it gives first, in the warning colour where it carries more than it may. `index`: one of several at their heights. */
export function roleOf<Kind extends "timber" | "ply" | "tie">(
  form: FormSheet | null,
  part: MemberPart,
  kind: Kind,
  index?: number,
): Kind | `${Kind}-first` | `${Kind}-over` {
  const first = firstOf(form, part);
  if (first === null || (index !== undefined && first !== index && first !== -1)) return kind;
  return (form?.members[form.first]?.of100 ?? 0) > 100 ? `${kind}-over` : `${kind}-first`;
}

export const isFirst = (form: FormSheet | null, part: MemberPart): boolean => firstOf(form, part) !== null;

function lines(of100: number, first: boolean, name: string): TagLine[] {
  const over = of100 > 100;
  const text = name === "" ? ofHundred(of100) : `${name} ${ofHundred(of100)}`;
  return [{ text, first, over }, ...(first ? [{ text: "gives first", first, over }] : [])];
}

/** The tag of a member that is drawn as a whole; none where it was not computed. */
export function wholeTag(form: FormSheet | null, part: MemberPart, at: At): Tag[] {
  const member = memberOf(form, part);
  if (member === null) return [];
  return [{ id: `tag ${part}`, at, height_mm: null, lines: lines(member.of100, isFirst(form, part), nameOf(part)) }];
}

/** A tag for every height at which something stands: `main` without its name, what is fastened there with it. */
export function heightTags(
  form: FormSheet | null,
  main: MemberPart,
  also: readonly MemberPart[],
  at_mm: readonly number[],
  from: (y: number) => At,
): Tag[] {
  return [...at_mm]
    .sort((a, b) => a - b)
    .map((y, index) => {
      const own = [main, ...also].flatMap((part) => {
        const member = memberOf(form, part);
        const one = member?.each[index];
        if (member === null || one === undefined) return [];
        const first = firstOf(form, part) === index;
        if (part !== main && !first && one.of100 <= 100) return [];
        return lines(one.of100, first, part === main ? "" : (single[part] ?? nameOf(part)));
      });
      return { id: `tag ${main} ${index}`, at: from(y), height_mm: y, lines: own };
    });
}
