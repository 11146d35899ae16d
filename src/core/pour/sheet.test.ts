import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { columnOf, deckOf, formDocument, readForms, wallOf } from "../../../test/fixtures/form-documents";
import type { Build, ElementShape, FormSpec, Lumber, Pour, PourElement, PressureDocument } from "../build";
import { grades, sections } from "../concrete";
import { pourSheet } from "./sheet";

const plain = { stuff: "2x4", spacing: "2 ft", top: { carries: "900 lb" }, foot: { carries: "900 lb" } };
const base = readForms(
  formDocument([
    columnOf(),
    wallOf({ batter: "1:8" }),
    wallOf({}, { ties: undefined, strongbacks: plain }, { id: "tieless" }),
    wallOf({}, { ties: undefined, strongbacks: plain }, { id: "one-sided", faces: [{ face: "b", against: "earth" }] }),
    deckOf(),
    deckOf({}, { id: "vault", shape: { kind: "barrel", long: "10 ft", span: "8 ft", rise: "2 ft", thick: "6 in" } }),
    deckOf({}, { id: "stair", shape: { kind: "stair", wide: "4 ft", steps: 6, riser: "7 in", tread: "11 in", thick: "5 in" } }),
    {
      id: "footing",
      shape: { kind: "footing", long: "20 ft", wide: "3 ft", thick: "18 in" },
      form: { kind: "edge", boards: "2x12", stakes: { spacing: "3 ft", by: { carries: "300 lb" } } },
    },
  ]),
);
const pour = base.pours[0] as Pour;

/** Every number in a value, with the way to it. */
function* numbers(value: unknown, path = ""): Generator<readonly [string, number]> {
  if (typeof value === "number") yield [path, value];
  else if (value !== null && typeof value === "object")
    for (const [key, inner] of Object.entries(value)) yield* numbers(inner, `${path}.${key}`);
}

function sound(build: Build): void {
  const sheet = pourSheet(build, 0);
  const ours = sheet.findings.filter(({ code }) => /^(pressure|form)\./.test(code));
  for (const [path, value] of numbers([sheet.elements, ours])) expect(Number.isFinite(value), `${path} is ${value}`).toBe(true);
  for (const { form } of sheet.elements)
    for (const { of100, largestSpan_mm, result } of form?.members ?? []) {
      expect(of100).toBeGreaterThanOrEqual(0);
      expect(largestSpan_mm === null || largestSpan_mm >= 0).toBe(true);
      if (result.governs.span_in === null) expect(largestSpan_mm).toBeNull();
    }
  expect(sheet.ready).toBe(!sheet.findings.some(({ severity }) => severity === "stop"));
}

const odd = fc.oneof(
  fc.double({ min: 1, max: 20_000, noNaN: true }),
  fc.constantFrom(0, -1, 0.001, 1e-9, 1e7, Number.NaN, Number.POSITIVE_INFINITY, Number.MAX_VALUE),
);

const lumber: fc.Arbitrary<Partial<Lumber>> = fc.record(
  {
    size: fc.constantFrom("2x4", "1x6", "6x6", "9x9", ...Object.keys(sections)),
    flat: fc.boolean(),
    pieces: fc.constantFrom(1, 2, 3),
    grade: fc.constantFrom(null, "no such grade", ...Object.keys(grades)),
    salvaged: fc.boolean(),
    measured_mm: fc.option(fc.record({ wide: odd, deep: odd })),
    wet: fc.boolean(),
    reused: fc.boolean(),
  },
  { requiredKeys: [] },
);

/** Replaces some figures of a plain value by odd ones, and lumber by other lumber. */
function shaken<T>(value: T, pick: (odds: number) => boolean, figure: () => number, stuff: () => Partial<Lumber>): T {
  if (typeof value === "number") return (pick(20) ? figure() : value) as T;
  if (value === null || typeof value !== "object") return value;
  if (Array.isArray(value)) return value.map((one) => shaken(one, pick, figure, stuff)) as T;
  const changed = Object.fromEntries(Object.entries(value).map(([key, one]) => [key, shaken(one, pick, figure, stuff)]));
  return ("size" in value && "grade" in value && pick(2) ? { ...changed, ...stuff() } : changed) as T;
}

describe("no figure of any sheet is none", () => {
  test("whatever is written in shapes and forms", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...pour.elements),
        fc.infiniteStream(fc.nat(1000)),
        fc.array(odd, { minLength: 5, maxLength: 5 }),
        fc.array(lumber, { minLength: 4, maxLength: 4 }),
        fc.constantFrom<PressureDocument>("aci-us", "aci-si", "ciria", "din"),
        fc.constantFrom<"us" | "metric">("us", "metric"),
        (element, dice, figures, woods, pressure, units) => {
          const pick = (odds: number) => dice.next().value! % odds === 0;
          const figure = () => figures[dice.next().value! % figures.length]!;
          const stuff = () => woods[dice.next().value! % woods.length]!;
          const shape = shaken(element.shape, pick, figure, stuff) as ElementShape;
          const form = shaken(element.form, pick, figure, stuff) as FormSpec;
          const changed: PourElement = { ...element, shape, form };
          sound({ ...base, pressure, site: { ...base.site, units }, pours: [{ ...pour, elements: [changed] }] });
        },
      ),
      { numRuns: 400 },
    );
  });

  test("whatever is written of the mix, the rate and the way of placing", () => {
    fc.assert(
      fc.property(
        fc.record({ weight_kg_m3: odd, slump_mm: odd, setting_min: fc.option(odd) }),
        fc.record({ concrete_C: odd, rate_m3_h: odd, vibrated_mm: fc.option(odd) }),
        fc.record({ pass_mm: odd, every_min: odd, who: fc.constantFrom(null, base.people[0]!.id) }),
        fc.constantFrom<Pour["placed"]>("hose", "chute", "from the base", "by hand"),
        fc.constantFrom<PressureDocument>("aci-us", "aci-si", "ciria", "din"),
        (mix, { concrete_C, rate_m3_h, vibrated_mm }, held, placed, pressure) => {
          const elements = pour.elements.map((element) => ({ ...element, held }));
          const consistency = "F3" as const;
          const changed: Pour = {
            ...pour,
            mix: { ...pour.mix, consistency, ...mix },
            weather: { ...pour.weather, concrete_C },
            rate_m3_h,
            vibrated_mm,
            placed,
            elements,
          };
          sound({ ...base, pressure, pours: [changed] });
        },
      ),
      { numRuns: 60 },
    );
  });
});

test("what is taken as usual and carries is said", () => {
  const bare = readForms(
    formDocument([columnOf({}, { sheathing: { ply: "3/4" } })], { mix: { strength: "4000 psi" }, weather: undefined }),
  );
  const { findings } = pourSheet(bare, 0);
  expect(findings.find(({ code }) => code === "pressure.assumed")?.detail).toEqual({ keys: ["mix.weight"] });
  expect(findings.some(({ code, detail }) => code === "form.guess" && detail.part === "sheathing")).toBe(true);
});

test("a held rate rests on whether anything slows the set, and full head does not", () => {
  const held = columnOf({ held: { pass: "5 in", every: "5 min", who: "me" } });
  const keys = (mix: object) =>
    pourSheet(
      readForms(formDocument([held], { mix: { strength: "4000 psi", cement: "I", weight: "150 lb/ft3", slump: "5 in", ...mix } })),
      0,
    ).findings.find(({ code }) => code === "pressure.assumed")?.detail.keys;
  expect(keys({})).toEqual(["mix.retarder"]);
  expect(keys({ retarder: false })).toBeUndefined();
});

test("a deck whose soffit is formed wants a form, one on old work does not", () => {
  const codes = (faces: readonly object[]) => {
    const deck = { id: "deck", shape: { kind: "deck slab", long: "12 ft", wide: "9 ft", thick: "6 in" }, faces };
    return pourSheet(readForms(formDocument([deck])), 0).findings.map(({ code }) => code);
  };
  expect(codes([{ face: "edges", against: "old work" }])).toContain("form.none");
  expect(codes([{ face: "soffit", against: "old work" }])).not.toContain("form.none");
});

test("what carries wants a step in which its forms come out, or nothing keeps them in", () => {
  const codes = (element: Record<string, unknown>, pour: Record<string, unknown> = {}) =>
    pourSheet(readForms(formDocument([element], pour, { steps: [{ id: "fill", hands: 2 }, { id: "out" }] })), 0).findings.map(
      ({ code }) => code,
    );
  expect(codes(deckOf())).toContain("pour.stays-unsaid");
  expect(codes(deckOf(), { removals: [{ sort: "shores", step: "out", span: "9 ft" }] })).not.toContain("pour.stays-unsaid");
  expect(codes(columnOf())).not.toContain("pour.stays-unsaid");
});
