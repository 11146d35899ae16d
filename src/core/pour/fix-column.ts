import type { Display } from "../base";
import type { ColumnFormSpec } from "../build";
import { lumberEdits, type Spot, written, writtenForce } from "./fix-edits";
import { heavier, type Trial } from "./fix-steps";
import type { FormSheet, MemberPart } from "./result";

const withBands = (form: ColumnFormSpec, at_mm: readonly number[]): ColumnFormSpec => ({ ...form, bands: { ...form.bands, at_mm } });

/** Changes of a column form that bear on a part, in steps of half an inch or a centimetre; several of a kind are tried in turn until one does. */
export function columnTrials(form: ColumnFormSpec, sheet: FormSheet, part: MemberPart, at: Spot, display: Display): Trial[][] {
  const onBands = part === "bands" || part === "corner bolts" || part === "battens" || (part === "sheathing" && form.battens === null);
  return [
    ...(onBands ? [oneMore(form, part, at, display), asProposed(form, sheet, part, at, display)] : []),
    ...(part === "bands" ? [stronger(form, at)] : []),
    ...(part === "corner bolts" ? [bolts(form, sheet, at, display)] : []),
  ];
}

/** A band between any two, under the lowest or over the highest. */
function oneMore(form: ColumnFormSpec, part: MemberPart, at: Spot, display: Display): Trial[] {
  const heights = [...form.bands.at_mm].sort((a, b) => a - b);
  const low = heights[0];
  const middles = heights.slice(1).map((height, i) => (height + (heights[i] as number)) / 2);
  const step = display === "us" ? 12.7 : 10;
  return [...(low === undefined ? [] : [low / 2]), ...middles].flatMap((middle) => {
    const more = written(Math.max(step, Math.round(middle / step) * step), display);
    if (heights.some((height) => Math.abs(height - more.mm) < 2 * step)) return [];
    const all = [...heights, more.mm].sort((a, b) => a - b);
    const texts = all.map((height) => written(height, display));
    return [
      {
        kind: "band more",
        part,
        detail: { at_mm: more.mm, at: more.text },
        form: withBands(
          form,
          texts.map(({ mm }) => mm),
        ),
        edits: [{ path: at("bands", "at"), value: texts.map(({ text }) => text) }],
      },
    ];
  });
}

function asProposed(form: ColumnFormSpec, sheet: FormSheet, part: MemberPart, at: Spot, display: Display): Trial[] {
  if (sheet.proposed_mm === null) return [];
  const texts = sheet.proposed_mm.map((height) => written(height, display));
  return [
    {
      kind: "bands as proposed",
      part,
      detail: { at: texts.map(({ text }) => text).join(", "), first_mm: texts[0]?.mm ?? 0, number: texts.length },
      form: withBands(
        form,
        texts.map(({ mm }) => mm),
      ),
      edits: [{ path: at("bands", "at"), value: texts.map(({ text }) => text) }],
    },
  ];
}

function stronger(form: ColumnFormSpec, at: Spot): Trial[] {
  const { stuff } = form.bands;
  return heavier(stuff).map(({ size, pieces }) => ({
    kind: "heavier bands",
    part: "bands",
    detail: { stuff: pieces > 1 ? `${pieces} of ${size}` : size, size, pieces },
    form: { ...form, bands: { ...form.bands, stuff: { ...stuff, size, pieces, measured_mm: null } } },
    edits: lumberEdits(at, ["bands", "stuff"], size, pieces, stuff.measured_mm !== null),
  }));
}

function bolts(form: ColumnFormSpec, sheet: FormSheet, at: Spot, display: Display): Trial[] {
  const load = sheet.members.find(({ part }) => part === "corner bolts")?.load.value;
  const { bolt } = form.bands;
  if (load === undefined || bolt === null) return [];
  const { text, kN } = writtenForce(load, display);
  return [
    {
      kind: "bigger bolts",
      part: "corner bolts",
      detail: { carries: text, carries_kN: kN },
      form: { ...form, bands: { ...form.bands, bolt: { ...bolt, carries_kN: kN } } },
      edits: [{ path: at("bands", "bolt", "carries"), value: text }],
    },
  ];
}
