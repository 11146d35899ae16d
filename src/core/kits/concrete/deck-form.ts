import type { Making } from "../making";
import { brace } from "./column-form";
import { type Lumber, lumber, onTape_in } from "./lay";

/** A plank under a shore: longer ones of salvaged lumber bend more over weak ground than they may. */
const us_sill_in = 18;
/** What a plank so long and wide may bring on ground of 1,500 psf, lb: the weaker classes of ground (IRC R401.4.1, from memory). A guess: somebody looks at it. */
const sillCarries_lb = (long_in: number, wide_in: number): number => (1500 * long_in * wide_in) / 144;
/** Over two spans and more a stringer, and a shore under it, gets up to a quarter more than its share (coefficients of the form handbooks). */
const through = 1.25 * 1.25;

export interface DeckSize {
  /** Thickness measured plumb, where it is deepest. */
  readonly deep_mm: number;
  /** From the ground to the soffit. */
  readonly under_mm: number;
  readonly buggies?: boolean;
  readonly sheathing?: object;
}

export interface DeckDesign {
  readonly form: object;
  readonly shores_mm: number;
  readonly stringers_mm: number;
  readonly shore_mm: number;
}

/** Under a deck stand sills of 1 1/2 in, shores, stringers of 2x6, joists of 2x6 and the sheathing: 13 in without the shores. */
const aboveAndBelow_mm = 330;
const leastShore_mm = 300;

/** Deck for concrete so deep: joists at 12 in, stringers of two 2x6, 4x4 shores so close that a plank under each brings no more on weak ground than it carries. */
export function deckForm(making: Making, { deep_mm, under_mm, sheathing, buggies = false }: DeckSize, from: Lumber): DeckDesign {
  const load_psf = Math.max(buggies ? 125 : 100, (150 * deep_mm) / 304.8 + 12 + (buggies ? 75 : 50));
  const grid_in = making.either(3, 50 / 25.4);
  const salvaged = from === "salvaged";
  const joists_in = onTape_in(making, deep_mm > 200 || salvaged ? 9 : 12);
  const [sill_in, sillWide_in] = [making.either(us_sill_in, 450 / 25.4), making.either(9.25, 220 / 25.4)];
  // Two 2x6 over a span of 3 ft, less where the lumber is of no known grade or the slab is thick; then what the sill allows.
  const stringers_in = Math.min(salvaged ? 30 : 36, Math.sqrt(9 * 144 * (250 / load_psf)));
  const bySill_in = (sillCarries_lb(sill_in, sillWide_in) / (through * load_psf * (stringers_in / 12))) * 12;
  const shores_in = Math.max(12, Math.floor(Math.min(bySill_in, salvaged ? 24 : 33) / grid_in) * grid_in);
  const wide_in = Math.max(12, Math.floor(stringers_in / grid_in) * grid_in);
  const shore_mm = Math.max(leastShore_mm, under_mm - aboveAndBelow_mm);
  const braced = shore_mm > 1800;
  const form = {
    kind: "deck",
    sheathing: sheathing ?? { kind: "plywood", ply: "3/4", class: "I", grain: "across", reused: true },
    joists: { stuff: lumber(making, "2x6", from), spacing: making.mm(joists_in * 25.4) },
    stringers: { stuff: lumber(making, "2x6", from, { pieces: 2 }), spacing: making.mm(wide_in * 25.4) },
    shores: {
      stuff: lumber(making, "4x4", from),
      spacing: making.mm(shores_in * 25.4),
      high: making.laid(shore_mm, "up"),
      unbraced: making.laid(braced ? shore_mm / 2 : shore_mm, "up"),
    },
    mudsills: {
      long: making.mm(sill_in * 25.4),
      wide: making.mm(sillWide_in * 25.4),
      stuff: lumber(making, "2x10", from),
      soil: { is: making.either("1500 psf", "72 kPa"), from: "own guess" },
      level: true,
      ground: "firm",
    },
    ...(buggies ? { buggies } : {}),
    brace: brace(making, shore_mm, from, 900, "stake", making.either("2000 lb", "8.9 kN")),
  };
  return { form, shores_mm: shores_in * 25.4, stringers_mm: wide_in * 25.4, shore_mm };
}
