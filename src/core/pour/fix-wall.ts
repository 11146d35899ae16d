import type { Display } from "../base";
import type { WallFormSpec } from "../build";
import { type Spot, written, writtenForce } from "./fix-edits";
import { downFrom, type Trial } from "./fix-steps";
import type { FormSheet, MemberPart } from "./result";

/** Changes of a wall form that bear on a part. */
export function wallTrials(form: WallFormSpec, sheet: FormSheet, part: MemberPart, at: Spot, display: Display): Trial[][] {
  const onWales = part === "wales" || part === "studs" || part === "ties";
  return [
    ...(onWales ? [oneWaleMore(form, part, at, display), walesAsProposed(form, sheet, part, at, display)] : []),
    ...(part === "wales" || part === "ties" ? [closerTies(form, part, at, display)] : []),
    ...(part === "ties" ? [strongerTies(form, sheet, at, display)] : []),
    ...(part === "strongbacks" ? [closerStrongbacks(form, at, display)] : []),
  ];
}

function wales(form: WallFormSpec, heights: readonly number[], part: MemberPart, more: Trial["detail"], at: Spot, display: Display): Trial {
  const texts = [...heights].sort((a, b) => a - b).map((height) => written(height, display));
  const at_mm = texts.map(({ mm }) => mm);
  return {
    kind: "closer wales",
    part,
    detail: { ...more, number: texts.length },
    form: { ...form, wales: { ...form.wales, at_mm } },
    edits: [{ path: at("wales", "at"), value: texts.map(({ text }) => text) }],
  };
}

function oneWaleMore(form: WallFormSpec, part: MemberPart, at: Spot, display: Display): Trial[] {
  const heights = [...form.wales.at_mm].sort((a, b) => a - b);
  const step = display === "us" ? 25.4 : 20;
  const between = heights.slice(1).map((height, i) => (height + (heights[i] as number)) / 2);
  return [...(heights[0] === undefined ? [] : [heights[0] / 2]), ...between].flatMap((middle) => {
    const more = written(Math.max(step, Math.round(middle / step) * step), display);
    if (heights.some((height) => Math.abs(height - more.mm) < 2 * step)) return [];
    return [wales(form, [...heights, more.mm], part, { at_mm: more.mm, at: more.text }, at, display)];
  });
}

function walesAsProposed(form: WallFormSpec, sheet: FormSheet, part: MemberPart, at: Spot, display: Display): Trial[] {
  const heights = sheet.proposed_mm;
  if (heights === null) return [];
  const gaps = heights.slice(1).map((height, i) => height - (heights[i] as number));
  const spacing_mm = gaps.length > 0 ? Math.min(...gaps) : (heights[0] ?? 0);
  const text = heights.map((height) => written(height, display).text).join(", ");
  return [wales(form, heights, part, { heights: text, spacing_mm }, at, display)];
}

/** Ties stand at studs or between them; every two inches (5 cm) down to a foot is tried. */
function closerTies(form: WallFormSpec, part: MemberPart, at: Spot, display: Display): Trial[] {
  const { ties } = form;
  if (ties === null) return [];
  return downFrom(ties.spacing_mm, display, 300).map((spacing) => {
    const { text, mm } = written(spacing, display);
    return {
      kind: "closer ties",
      part,
      detail: { spacing_mm: mm },
      form: { ...form, ties: { ...ties, spacing_mm: mm } },
      edits: [{ path: at("ties", "spacing"), value: text }],
    };
  });
}

function strongerTies(form: WallFormSpec, sheet: FormSheet, at: Spot, display: Display): Trial[] {
  const load = sheet.members.find(({ part }) => part === "ties")?.load.value;
  const { ties } = form;
  if (load === undefined || ties === null) return [];
  const { text, kN } = writtenForce(load, display);
  return [
    {
      kind: "stronger ties",
      part: "ties",
      detail: { carries: text, carries_kN: kN },
      form: { ...form, ties: { ...ties, by: { ...ties.by, carries_kN: kN } } },
      edits: [{ path: at("ties", "by", "carries"), value: text }],
    },
  ];
}

function closerStrongbacks(form: WallFormSpec, at: Spot, display: Display): Trial[] {
  const { strongbacks } = form;
  if (strongbacks === null) return [];
  return downFrom(strongbacks.spacing_mm, display, 300).map((spacing) => {
    const { text, mm } = written(spacing, display);
    return {
      kind: "closer members",
      part: "strongbacks",
      detail: { spacing_mm: mm },
      form: { ...form, strongbacks: { ...strongbacks, spacing_mm: mm } },
      edits: [{ path: at("strongbacks", "spacing"), value: text }],
    };
  });
}
