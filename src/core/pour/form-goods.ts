import type { FormSpec, PourElement, Sheathing } from "../build";
import { arc_mm, facesOf, footThickness_mm } from "../concrete";
import type { Part } from "./cut-list";
import { uprightOf } from "./element";
import { deep_mm, type LumberNeed, lumber, type Skin, skin, thick_mm, wideFace_mm } from "./form-parts";
import { mmOfInches } from "./form-units";

export interface FastenerNeed {
  readonly name: string;
  readonly number: number;
  readonly what: "ties" | "fasteners";
}

/** What the form of one element is made of, `number` of the element counted in. */
export interface FormGoods {
  readonly sheathing: Sheathing | null;
  readonly panels: readonly Part[];
  readonly lumber: readonly LumberNeed[];
  readonly fasteners: readonly FastenerNeed[];
}

/** Bands run past the corner so far that a bolt has wood around it, each end (common practice, no source). */
const pastCorner_mm = mmOfInches(6);

/** Strongbacks stand over the form so that its top can be tied, braces run past what they are nailed to (common practice, no source). */
const over_mm = mmOfInches(12);

/** Members along a length, one at each end. */
const along = (long_mm: number, spacing_mm: number): number => (spacing_mm > 0 ? Math.ceil(long_mm / spacing_mm - 1e-6) + 1 : 0);

/** Panels, lumber, ties and bolts of the form written for an element; null where none is, or where it does not suit its shape. */
export function formGoods(element: PourElement): FormGoods | null {
  const { form } = element;
  if (form === null) return null;
  const one = of(element, form);
  if (one === null) return null;
  const times = <T extends { readonly number: number }>(list: readonly T[]): T[] =>
    list.filter((x) => x.number > 0).map((x) => ({ ...x, number: x.number * element.number }));
  return { sheathing: one.sheathing, panels: times(one.panels), lumber: times(one.lumber), fasteners: times(one.fasteners) };
}

function of(element: PourElement, form: FormSpec): FormGoods | null {
  if (form.kind === "column") return column(element, form);
  if (form.kind === "wall") return wall(element, form);
  return form.kind === "deck" ? deck(element, form) : edge(element, form);
}

/** Two sides as wide as the column, two that lap over their edges; four battens rows, four pieces and bolts a band. */
function column(element: PourElement, form: Extract<FormSpec, { kind: "column" }>): FormGoods | null {
  const up = uprightOf(element.shape);
  if (up === null) return null;
  const { long_mm, wide_mm, high_mm } = up;
  const lap = 2 * thick_mm(form.sheathing);
  const out = form.battens === null ? 0 : deep_mm(form.battens.stuff);
  const around = (side: number) => side + lap + 2 * out + 2 * pastCorner_mm;
  const bands = form.bands.at_mm.length;
  const battens = form.battens;
  const face = (name: string, wide: number): Skin =>
    battens === null ? { name, across_mm: high_mm, along_mm: wide, number: 2 } : { name, across_mm: wide, along_mm: high_mm, number: 2 };
  const { panels, boards } = skin(form.sheathing, [face("a", long_mm), face("ends", wide_mm + lap)]);
  return {
    sheathing: form.sheathing,
    panels,
    lumber: [
      ...boards,
      ...(battens === null
        ? []
        : [lumber(battens.stuff, high_mm, 2 * (along(long_mm, battens.spacing_mm) + along(wide_mm, battens.spacing_mm)))]),
      lumber(form.bands.stuff, around(long_mm), 2 * bands),
      lumber(form.bands.stuff, around(wide_mm), 2 * bands),
      ...braces(form, 2 * (long_mm + wide_mm)),
    ],
    fasteners: [
      ...(form.bands.bolt === null ? [] : [{ name: form.bands.bolt.name, number: 4 * bands, what: "fasteners" as const }]),
      ...held(form.holdDown, null),
    ],
  };
}

/** Each formed face with its own sheathing, studs and wales; ties once for both. */
function wall(element: PourElement, form: Extract<FormSpec, { kind: "wall" }>): FormGoods | null {
  const up = uprightOf(element.shape);
  if (up === null || element.shape.kind !== "wall") return null;
  const { long_mm, high_mm } = up;
  const formed = facesOf(element.shape, element.faces).filter((f) => f.against === "form");
  const sides = formed.filter((f) => f.face === "a" || f.face === "b");
  const ends = formed.some((f) => f.face === "ends") ? 2 : 0;
  const steep = (face: string) => high_mm * Math.hypot(1, face === "a" ? up.batter.a : up.batter.b);
  const studs = along(long_mm, form.studs.spacing_mm);
  const rows = form.wales.at_mm.length;
  const backs = form.strongbacks;
  const backRows = backs === null ? 0 : along(long_mm, backs.spacing_mm);
  const { panels, boards } = skin(form.sheathing, [
    ...sides.map((f): Skin => ({ name: f.face, across_mm: long_mm, along_mm: steep(f.face), number: 1 })),
    { name: "ends", across_mm: Math.max(element.shape.thick_mm, footThickness_mm(element.shape)), along_mm: high_mm, number: ends },
  ]);
  return {
    sheathing: form.sheathing,
    panels,
    lumber: [
      ...boards,
      ...sides.map((f) => lumber(form.studs.stuff, steep(f.face), studs)),
      lumber(form.wales.stuff, long_mm, rows * sides.length, true),
      ...(backs === null ? [] : [lumber(backs.stuff, high_mm + over_mm, backRows * sides.length)]),
      ...braces(form, long_mm * sides.length),
    ],
    fasteners: [
      ...(form.ties === null
        ? []
        : [{ name: form.ties.by.name, number: rows * along(long_mm, form.ties.spacing_mm), what: "ties" as const }]),
      ...(backs === null
        ? []
        : [
            { name: backs.top.name, number: backRows, what: "fasteners" as const },
            { name: backs.foot.name, number: backRows, what: "fasteners" as const },
          ]),
      ...held(form.holdDown, long_mm * sides.length),
    ],
  };
}

/** Joists across the width on stringers along the length, shores under every stringer; over a barrel the arc takes the place of the width. */
function deck(element: PourElement, form: Extract<FormSpec, { kind: "deck" }>): FormGoods | null {
  const under = soffit(element.shape);
  if (under === null) return null;
  const { long_mm, wide_mm } = under;
  const stringers = along(wide_mm, form.stringers.spacing_mm);
  const shores = stringers * along(long_mm, form.shores.spacing_mm);
  const { panels, boards } = skin(form.sheathing, [{ name: "soffit", across_mm: long_mm, along_mm: wide_mm, number: 1 }]);
  return {
    sheathing: form.sheathing,
    panels,
    lumber: [
      ...boards,
      lumber(form.joists.stuff, wide_mm, along(long_mm, form.joists.spacing_mm), true),
      lumber(form.stringers.stuff, long_mm, stringers, true),
      lumber(form.shores.stuff, form.shores.high_mm, shores),
      ...braces(form, 2 * (long_mm + wide_mm)),
    ],
    fasteners: [],
  };
}

function soffit(shape: PourElement["shape"]): { long_mm: number; wide_mm: number } | null {
  if (shape.kind === "deck slab") return { long_mm: shape.long_mm, wide_mm: shape.wide_mm };
  if (shape.kind === "barrel") return { long_mm: shape.long_mm, wide_mm: arc_mm(shape.span_mm, shape.rise_mm) };
  return shape.kind === "stair" ? { long_mm: shape.steps * Math.hypot(shape.riser_mm, shape.tread_mm), wide_mm: shape.wide_mm } : null;
}

/** Boards around what is formed, a stake at every spacing; boards side by side until they are as high as the concrete. */
function edge(element: PourElement, form: Extract<FormSpec, { kind: "edge" }>): FormGoods | null {
  const up = uprightOf(element.shape);
  if (up === null) return null;
  const formed = facesOf(element.shape, element.faces).filter((f) => f.against === "form" && ["a", "b", "ends", "sides"].includes(f.face));
  const around_mm = formed.reduce((sum, f) => sum + (f.area_m2 * 1e6) / up.high_mm, 0);
  const board = wideFace_mm(form.boards);
  const rows = board > 0 ? Math.ceil(up.high_mm / board - 1e-6) : 1;
  const stakes = formed.length === 0 ? 0 : along(around_mm, form.stakes.spacing_mm);
  return {
    sheathing: null,
    panels: [],
    lumber: [lumber(form.boards, around_mm, rows, true)].filter((need) => need.long_mm > 0),
    fasteners: [
      { name: form.stakes.by?.name ?? "", number: form.stakes.by === null ? 0 : stakes, what: "fasteners" },
      ...held(form.holdDown, around_mm),
    ],
  };
}

function braces(form: Extract<FormSpec, { kind: "column" | "wall" | "deck" }>, around_mm: number): LumberNeed[] {
  const { brace } = form;
  return brace === null ? [] : [lumber(brace.stuff, Math.hypot(brace.run_mm, brace.rise_mm) + over_mm, along(around_mm, brace.spacing_mm))];
}

/** Each `spacing` along, or all together. */
function held(holdDown: Extract<FormSpec, { kind: "column" }>["holdDown"], long_mm: number | null): FastenerNeed[] {
  if (holdDown === null) return [];
  const rows = long_mm === null || holdDown.spacing_mm === null ? 1 : along(long_mm, holdDown.spacing_mm);
  return [{ name: holdDown.by.name, number: rows * holdDown.number, what: "fasteners" }];
}
