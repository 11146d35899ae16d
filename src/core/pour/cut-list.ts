/**
 * Rectangles out of sheets by cuts that go through from edge to edge, as a saw guided along a straightedge makes them. Each part goes where the shorter rest is
 * least, the rest is split in two, and of a few orders and ways of splitting the one with the fewest sheets stays (guillotine best short side fit; Jylänki
 * 2010, "A thousand ways to pack the bin", from memory). Not proved to be the fewest; `sheetsAtLeast` is what area alone would need.
 */
export interface Part {
  readonly name: string;
  readonly long_mm: number;
  readonly wide_mm: number;
  readonly number: number;
  /** May lie across the sheet; not where the grain has to run one way. */
  readonly turns: boolean;
}

export interface Sheet {
  readonly long_mm: number;
  readonly wide_mm: number;
  /** Width of a cut. */
  readonly kerf_mm: number;
}

export interface PlacedPart {
  readonly name: string;
  /** From the sheet's corner, along its length and its width. */
  readonly x_mm: number;
  readonly y_mm: number;
  readonly long_mm: number;
  readonly wide_mm: number;
  readonly turned: boolean;
}

export interface CutList {
  readonly sheets: readonly (readonly PlacedPart[])[];
  readonly sheetsAtLeast: number;
  /** Names of parts no sheet is large enough for; they are not in `sheets`. */
  readonly tooLarge: readonly string[];
}

interface Free {
  readonly sheet: number;
  readonly x_mm: number;
  readonly y_mm: number;
  readonly long_mm: number;
  readonly wide_mm: number;
}

type Single = Omit<Part, "number">;

/** Rounded conversions, no play: a cut is never narrower than its kerf. */
const same_mm = 1e-6;

const orders: readonly ((a: Single, b: Single) => number)[] = [
  (a, b) => b.long_mm * b.wide_mm - a.long_mm * a.wide_mm,
  (a, b) => Math.max(b.long_mm, b.wide_mm) - Math.max(a.long_mm, a.wide_mm),
  (a, b) => Math.min(b.long_mm, b.wide_mm) - Math.min(a.long_mm, a.wide_mm),
];

/** From so many parts on one order is tried: the gain is small and the time is not. */
const many = 400;

/**
 * A face wider or longer than a sheet as the parts it is made of, whole sheets first. The last strip may be short by a saw cut, so that half a sheet counts as
 * half (common practice, no source).
 */
export function tiles(part: Part, sheet: Sheet): Part[] {
  const cut = (length: number, most: number): [number, number][] => {
    const whole = Math.floor(length / most + 1e-9);
    const rest = length - whole * most;
    return [
      [most, whole],
      [whole > 0 ? rest - sheet.kerf_mm : rest, rest > 2 * sheet.kerf_mm ? 1 : 0],
    ];
  };
  return cut(part.long_mm, sheet.long_mm).flatMap(([long_mm, rows]) =>
    cut(part.wide_mm, sheet.wide_mm).flatMap(([wide_mm, columns]) =>
      rows * columns === 0 ? [] : [{ ...part, long_mm, wide_mm, number: part.number * rows * columns }],
    ),
  );
}

const fits = (free: Free, long_mm: number, wide_mm: number): boolean =>
  long_mm <= free.long_mm + same_mm && wide_mm <= free.wide_mm + same_mm;

/** Every part on as few sheets as the orders tried give. */
export function cutSheets(parts: readonly Part[], sheet: Sheet): CutList {
  const whole: Free = { sheet: 0, x_mm: 0, y_mm: 0, long_mm: sheet.long_mm, wide_mm: sheet.wide_mm };
  const goes = (p: Single) => fits(whole, p.long_mm, p.wide_mm) || (p.turns && fits(whole, p.wide_mm, p.long_mm));
  const singles = parts.flatMap((p) => Array.from({ length: p.number }, (): Single => p)).filter(goes);
  const tooLarge = [...new Set(parts.filter((p) => !goes(p)).map((p) => p.name))];
  const area_mm2 = singles.reduce((sum, p) => sum + p.long_mm * p.wide_mm, 0);
  const sheetsAtLeast = Math.max(0, Math.ceil(area_mm2 / (sheet.long_mm * sheet.wide_mm) - 1e-9));
  let best: PlacedPart[][] | null = null;
  for (const order of singles.length > many ? orders.slice(0, 1) : orders) {
    for (const alongFirst of [true, false]) {
      const packed = pack([...singles].sort(order), sheet, whole, alongFirst);
      if (best === null || packed.length < best.length) best = packed;
      if (best.length <= sheetsAtLeast) return { sheets: best, sheetsAtLeast, tooLarge };
    }
  }
  return { sheets: best ?? [], sheetsAtLeast, tooLarge };
}

function pack(singles: readonly Single[], sheet: Sheet, whole: Free, alongFirst: boolean): PlacedPart[][] {
  const sheets: PlacedPart[][] = [];
  const free: Free[] = [];
  for (const part of singles) {
    let spot = bestSpot(free, part);
    if (spot === null) {
      free.push({ ...whole, sheet: sheets.length });
      sheets.push([]);
      spot = bestSpot(free, part);
      if (spot === null) continue;
    }
    const [taken] = free.splice(spot.at, 1) as [Free];
    const [long_mm, wide_mm] = spot.turned ? [part.wide_mm, part.long_mm] : [part.long_mm, part.wide_mm];
    (sheets[taken.sheet] as PlacedPart[]).push({
      name: part.name,
      x_mm: taken.x_mm,
      y_mm: taken.y_mm,
      long_mm,
      wide_mm,
      turned: spot.turned,
    });
    free.push(...rests(taken, long_mm, wide_mm, sheet.kerf_mm, alongFirst));
  }
  return sheets;
}

/** The free rectangle, first sheet first, that leaves the shorter side least over. */
function bestSpot(free: readonly Free[], part: Single): { at: number; turned: boolean } | null {
  let best: { at: number; turned: boolean; left: number; sheet: number } | null = null;
  free.forEach((one, at) => {
    for (const turned of part.turns ? [false, true] : [false]) {
      const [long_mm, wide_mm] = turned ? [part.wide_mm, part.long_mm] : [part.long_mm, part.wide_mm];
      if (!fits(one, long_mm, wide_mm)) continue;
      const left = Math.min(one.long_mm - long_mm, one.wide_mm - wide_mm);
      if (best === null || one.sheet < best.sheet || (one.sheet === best.sheet && left < best.left))
        best = { at, turned, left, sheet: one.sheet };
    }
  });
  return best;
}

/** What is left of a rectangle after a part is cut from its corner: two rectangles, the cut through going along or across. */
function rests(of: Free, long_mm: number, wide_mm: number, kerf_mm: number, alongFirst: boolean): Free[] {
  const right_mm = of.long_mm - long_mm - kerf_mm;
  const above_mm = of.wide_mm - wide_mm - kerf_mm;
  const right: Free = { ...of, x_mm: of.x_mm + long_mm + kerf_mm, long_mm: right_mm, wide_mm: alongFirst ? wide_mm : of.wide_mm };
  const above: Free = { ...of, y_mm: of.y_mm + wide_mm + kerf_mm, wide_mm: above_mm, long_mm: alongFirst ? of.long_mm : long_mm };
  return [right, above].filter((rest) => rest.long_mm > 0 && rest.wide_mm > 0);
}

/** Edges that a saw has opened, mm: those of every part that do not lie on an edge of the sheet. Unsealed they drink and bond (common practice, no source). */
export function cutEdge_mm(cut: CutList, sheet: Sheet): number {
  const open = (from: number, to: number, whole: number): number => (from > same_mm ? 1 : 0) + (to < whole - same_mm ? 1 : 0);
  return cut.sheets
    .flat()
    .reduce(
      (sum, p) =>
        sum + open(p.x_mm, p.x_mm + p.long_mm, sheet.long_mm) * p.wide_mm + open(p.y_mm, p.y_mm + p.wide_mm, sheet.wide_mm) * p.long_mm,
      0,
    );
}
