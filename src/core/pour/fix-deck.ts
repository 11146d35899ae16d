import type { Display } from "../base";
import type { DeckFormSpec } from "../build";
import { type Spot, written } from "./fix-edits";
import { downFrom, type Trial } from "./fix-steps";
import type { FormSheet, MemberPart } from "./result";

/** Changes of a deck form that bear on a part. */
export function deckTrials(form: DeckFormSpec, sheet: FormSheet, part: MemberPart, at: Spot, display: Display): Trial[][] {
  const closerRows = part === "joists" || part === "stringers" || part === "shores";
  return [
    ...(closerRows ? [closerStringers(form, at, display)] : []),
    ...(part === "shores" ? [braced(form, at, display)] : []),
    ...(part === "stringers" || part === "shores" || part === "mudsills" ? [closerShores(form, part, at, display)] : []),
    ...(part === "mudsills" ? [bigger(form, sheet, at, display)] : []),
  ];
}

function closerStringers(form: DeckFormSpec, at: Spot, display: Display): Trial[] {
  return downFrom(form.stringers.spacing_mm, display, 300).map((spacing) => {
    const { text, mm } = written(spacing, display);
    return {
      kind: "closer members",
      part: "stringers",
      detail: { spacing_mm: mm },
      form: { ...form, stringers: { ...form.stringers, spacing_mm: mm } },
      edits: [{ path: at("stringers", "spacing"), value: text }],
    };
  });
}

/** Held in their weak direction at half height, then at thirds. */
function braced(form: DeckFormSpec, at: Spot, display: Display): Trial[] {
  const free = form.shores.unbraced_mm ?? form.shores.high_mm;
  return [2, 3].flatMap((parts): Trial[] => {
    const { text, mm } = written(form.shores.high_mm / parts, display);
    if (mm > free - 1) return [];
    return [
      {
        kind: "brace shores",
        part: "shores",
        detail: { unbraced_mm: mm },
        form: { ...form, shores: { ...form.shores, unbraced_mm: mm } },
        edits: [{ path: at("shores", "unbraced"), value: text }],
      },
    ];
  });
}

function closerShores(form: DeckFormSpec, part: MemberPart, at: Spot, display: Display): Trial[] {
  return downFrom(form.shores.spacing_mm, display, 300).map((spacing) => {
    const { text, mm } = written(spacing, display);
    return {
      kind: "closer shores",
      part,
      detail: { spacing_mm: mm },
      form: { ...form, shores: { ...form.shores, spacing_mm: mm } },
      edits: [{ path: at("shores", "spacing"), value: text }],
    };
  });
}

/** For the ground longer first, up to the spacing of the shores, then wider; only wider where the plank would bend too far. In steps of two inches or 5 cm. */
function bigger(form: DeckFormSpec, sheet: FormSheet, at: Spot, display: Display): Trial[] {
  const sills = form.mudsills;
  const member = sheet.members.find(({ part }) => part === "mudsills");
  if (sills === null || member === undefined) return [];
  const ground = member.result.checks.find(({ kind }) => kind === "ground")?.of100 ?? 0;
  const step = display === "us" ? 50.8 : 50;
  const up = (length_mm: number) => written(Math.ceil(length_mm / step - 1e-9) * step, display);
  const area = (Math.min(sills.long_mm, form.shores.spacing_mm) * sills.wide_mm * Math.max(100, ground)) / 100;
  const longer = up(Math.max(sills.long_mm, Math.min(form.shores.spacing_mm - step, area / sills.wide_mm)));
  const sizes = [
    [longer, up(Math.max(sills.wide_mm, area / Math.min(longer.mm, form.shores.spacing_mm)))],
    [written(sills.long_mm, display), up((sills.wide_mm * Math.max(100, member.of100)) / 100)],
  ] as const;
  return sizes.map(([long, wide]) => ({
    kind: "bigger mudsills",
    part: "mudsills",
    detail: { long_mm: long.mm, wide_mm: wide.mm },
    form: { ...form, mudsills: { ...sills, long_mm: long.mm, wide_mm: wide.mm } },
    edits: [
      { path: at("mudsills", "long"), value: long.text },
      { path: at("mudsills", "wide"), value: wide.text },
    ],
  }));
}
