import type { Display } from "../base";
import type { Brace, FormSpec, HoldDown } from "../build";
import { lumberEdits, type Spot, written, writtenForce } from "./fix-edits";
import { closer, downFrom, type Trial, thicker } from "./fix-steps";
import type { FormSheet, MemberPart } from "./result";

/** Changes that several kinds of form know: what lies under the sheathing, thicker plywood. */
export function sheathingTrials(form: FormSpec, part: MemberPart, at: Spot, display: Display): Trial[][] {
  if (form.kind === "edge") return part === "boards" || part === "stakes" ? [closerStakes(form, at, display)] : [];
  return [
    ...(["sheathing", "battens", "studs", "joists"].includes(part) ? [closerUnder(form, part, at, display)] : []),
    ...(part === "sheathing" ? [thickerPly(form, at)] : []),
  ];
}

const under = { column: "battens", wall: "studs", deck: "joists" } as const;

/** Battens, studs or joists closer together. */
function closerUnder(form: Exclude<FormSpec, { kind: "edge" }>, part: MemberPart, at: Spot, display: Display): Trial[] {
  const key = under[form.kind];
  const row = form.kind === "column" ? form.battens : form.kind === "wall" ? form.studs : form.joists;
  if (row === null || (part !== "sheathing" && part !== key)) return [];
  return closer(row.spacing_mm, display).map((spacing) => {
    const { text, mm } = written(spacing, display);
    return {
      kind: "closer members",
      part: key,
      detail: { spacing_mm: mm },
      form: { ...form, [key]: { ...row, spacing_mm: mm } } as FormSpec,
      edits: [{ path: at(key, "spacing"), value: text }],
    };
  });
}

function thickerPly(form: Exclude<FormSpec, { kind: "edge" }>, at: Spot): Trial[] {
  const { sheathing } = form;
  if (sheathing.kind !== "plywood" || sheathing.ply === null) return [];
  return thicker(sheathing.ply, sheathing.grain).map((ply) => ({
    kind: "thicker sheathing",
    part: "sheathing",
    detail: { ply },
    form: { ...form, sheathing: { ...sheathing, ply } },
    edits: [{ path: at("sheathing", "ply"), value: ply }],
  }));
}

function closerStakes(form: Extract<FormSpec, { kind: "edge" }>, at: Spot, display: Display): Trial[] {
  return downFrom(form.stakes.spacing_mm, display, 200).map((spacing) => {
    const { text, mm } = written(spacing, display);
    return {
      kind: "closer members",
      part: "stakes",
      detail: { spacing_mm: mm },
      form: { ...form, stakes: { ...form.stakes, spacing_mm: mm } },
      edits: [{ path: at("stakes", "spacing"), value: text }],
    };
  });
}

/** Hold-downs for what lifts: as many again where some are written, otherwise a strap every 4 ft (1.2 m) or at four corners, with what each has to carry. */
export function holdDownTrials(form: Exclude<FormSpec, { kind: "deck" }>, sheet: FormSheet, at: Spot, display: Display): Trial[] {
  const { needed } = sheet.lift;
  if (needed <= 0) return [];
  const isWall = form.kind !== "column";
  const spacing = written(form.holdDown?.spacing_mm ?? (display === "us" ? 1219.2 : 1200), display);
  const number = isWall ? 1 : 4;
  const { text, kN } = writtenForce(isWall ? (needed * spacing.mm) / 1000 : needed / number, display);
  const by = { name: form.holdDown?.by.name ?? "hold-down", carries_kN: kN, from: null };
  const holdDown: HoldDown = { by, spacing_mm: isWall ? spacing.mm : null, number };
  return [
    {
      kind: "hold down",
      part: "hold-downs",
      detail: { carries: text, carries_kN: kN, spacing_mm: isWall ? spacing.mm : 0, number },
      form: { ...form, holdDown },
      edits: [
        {
          path: at("holdDown"),
          value: { by: { name: by.name, carries: text }, ...(isWall ? { spacing: spacing.text } : {}), number },
        },
      ],
    },
  ];
}

/** Braces closer together or of thicker stuff; or where a one-sided form has none, raking at 45° to two thirds of its height. */
export function braceTrials(form: Exclude<FormSpec, { kind: "edge" }>, high_mm: number, at: Spot, display: Display): Trial[][] {
  const { brace } = form;
  if (brace === null) return [newBraces(form, high_mm, at, display)];
  return [...(form.kind === "column" ? [] : [closerBraces(form, brace, at, display)]), thickerBraces(form, brace, at)];
}

function newBraces(form: Exclude<FormSpec, { kind: "edge" }>, high_mm: number, at: Spot, display: Display): Trial[] {
  const reach = written(Math.round((high_mm * 2) / 3 / 50.8) * 50.8, display);
  const stuff = {
    size: "2x6",
    flat: false,
    pieces: 2,
    grade: null,
    salvaged: false,
    measured_mm: null,
    wet: false,
    reused: true,
    from: null,
  };
  return downFrom(display === "us" ? 1270 : 1250, display, 300).map((spacing) => {
    const apart = written(spacing, display);
    const brace: Brace = { stuff, spacing_mm: apart.mm, run_mm: reach.mm, rise_mm: reach.mm, lands: null, foot: null };
    return {
      kind: "braces",
      part: "braces",
      detail: { spacing_mm: apart.mm, run_mm: reach.mm, rise_mm: reach.mm },
      form: { ...form, brace },
      edits: [
        {
          path: at("brace"),
          value: { stuff: { size: stuff.size, pieces: stuff.pieces }, spacing: apart.text, run: reach.text, rise: reach.text },
        },
      ],
    };
  });
}

/** A slender brace is no better for being closer to the next: square stuff is. */
function thickerBraces(form: Exclude<FormSpec, { kind: "edge" }>, brace: Brace, at: Spot): Trial[] {
  if (brace.stuff.size === "4x4") return [];
  const stuff = { ...brace.stuff, size: "4x4", pieces: 1, measured_mm: null };
  return [
    {
      kind: "braces",
      part: "braces",
      detail: { spacing_mm: brace.spacing_mm, stuff: "4x4" },
      form: { ...form, brace: { ...brace, stuff } },
      edits: lumberEdits(at, ["brace", "stuff"], "4x4", 1, brace.stuff.measured_mm !== null),
    },
  ];
}

function closerBraces(form: Exclude<FormSpec, { kind: "edge" }>, brace: Brace, at: Spot, display: Display): Trial[] {
  return downFrom(brace.spacing_mm, display, 300).map((spacing) => {
    const { text, mm } = written(spacing, display);
    return {
      kind: "braces",
      part: "braces",
      detail: { spacing_mm: mm },
      form: { ...form, brace: { ...brace, spacing_mm: mm } },
      edits: [{ path: at("brace", "spacing"), value: text }],
    };
  });
}
