import type { FormSpec } from "../../core/build";
import type { FormSheet, MemberPart, MemberSheet } from "../../core/pour";

/** One part of a form that is written, with its figures where there are some. */
export interface PartRow {
  readonly part: MemberPart;
  readonly member: MemberSheet | null;
  readonly first: boolean;
}

/** The parts of each kind of form, from the concrete outwards; those that may be left out say where they are written. */
const partsOf: Readonly<Record<FormSpec["kind"], readonly (readonly [part: MemberPart, optional: readonly string[] | null])[]>> = {
  column: [
    ["sheathing", null],
    ["battens", ["battens"]],
    ["bands", null],
    ["corner bolts", ["bands", "bolt"]],
    ["braces", ["brace"]],
    ["brace feet", ["brace", "foot"]],
    ["hold-downs", ["holdDown"]],
  ],
  wall: [
    ["sheathing", null],
    ["studs", null],
    ["wales", null],
    ["ties", ["ties"]],
    ["strongbacks", ["strongbacks"]],
    ["braces", ["brace"]],
    ["brace feet", ["brace", "foot"]],
    ["hold-downs", ["holdDown"]],
  ],
  deck: [
    ["sheathing", null],
    ["joists", null],
    ["stringers", null],
    ["shores", null],
    ["mudsills", ["mudsills"]],
    ["braces", ["brace"]],
    ["brace feet", ["brace", "foot"]],
  ],
  edge: [
    ["boards", null],
    ["stakes", null],
    ["hold-downs", ["holdDown"]],
  ],
};

const at = (form: FormSpec, path: readonly string[]): unknown =>
  path.reduce<unknown>(
    (inner, key) => (typeof inner === "object" && inner !== null ? (inner as Record<string, unknown>)[key] : null),
    form,
  ) ?? null;

/** The parts of a form that are there. */
export function partRows(form: FormSpec, sheet: FormSheet | null): PartRow[] {
  return partsOf[form.kind].flatMap(([part, optional]): PartRow[] => {
    const member = sheet?.members.find((one) => one.part === part) ?? null;
    if (member === null && optional !== null && at(form, optional) === null) return [];
    return [{ part, member, first: member !== null && sheet?.members[sheet.first] === member }];
  });
}

/** Parts that could be added: what may be left out and is. The foot of a brace needs the brace. */
export function missingParts(form: FormSpec): { readonly part: MemberPart; readonly path: readonly string[] }[] {
  return partsOf[form.kind].flatMap(([part, optional]) => {
    if (optional === null || at(form, optional) !== null) return [];
    return optional.length > 1 && at(form, optional.slice(0, -1)) === null ? [] : [{ part, path: optional }];
  });
}

/** Where a part that may be left out is written; null for one that belongs to its form. */
export const optionalPath = (form: FormSpec, part: MemberPart): readonly string[] | null =>
  partsOf[form.kind].find(([one]) => one === part)?.[1] ?? null;
