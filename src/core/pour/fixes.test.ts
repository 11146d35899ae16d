import { describe, expect, test } from "vitest";
import { columnOf, deckOf, formDocument, readForms, wallOf } from "../../../test/fixtures/form-documents";
import type { Build, Pour } from "../build";
import { apply } from "../edit";
import type { ElementSheet, Fix } from "./result";
import { pourSheet, pourSheets } from "./sheet";

const metric = { site: { zone: "Europe/Berlin", latitude: 48, longitude: 11, units: "metric" }, pressure: "aci-si" };
const fir = (size: string, more: object = {}) => ({ size, grade: "DF-L No 2", wet: true, reused: false, ...more });
const strap = { carries: "2000 lb", from: "product sheet" };
const bolt = (carries: string) => ({ name: "bolt", carries, from: "product sheet" });
const earth = [{ face: "b", against: "earth" }];
const strongbacks = { stuff: fir("4x6"), spacing: "48 in", top: { carries: "9000 lb" }, foot: { carries: "9000 lb" } };

/** Forms that are over somewhere, each in its own way. */
const cases: readonly (readonly [name: string, element: Readonly<Record<string, unknown>>])[] = [
  ["few bands", columnOf({}, { bands: { stuff: fir("2x4"), at: ["10 in", "60 in"], bolt: strap } })],
  ["bands of a wide column", columnOf({ shape: { kind: "column", long: "30 in", wide: "20 in", high: "9 ft" } })],
  ["weak bolts", columnOf({}, { bands: { stuff: fir("2x4", { pieces: 2 }), at: ["4 in", "30 in", "60 in"], bolt: bolt("300 lb") } })],
  [
    "no battens",
    columnOf(
      {},
      { battens: undefined, bands: { stuff: fir("2x4", { pieces: 2 }), at: ["4 in", "26 in", "60 in"], bolt: bolt("3000 lb") } },
    ),
  ],
  [
    "salvaged bands",
    columnOf(
      {},
      {
        bands: {
          stuff: { size: "2x4", salvaged: true, measured: { wide: "1 1/4 in", deep: "3 in" } },
          at: ["10 in", "50 in"],
          bolt: strap,
        },
      },
    ),
  ],
  ["a thin sheet", wallOf({}, { sheathing: { ply: "1/2", class: "II" } })],
  ["few wales", wallOf({}, { wales: { stuff: fir("2x4", { pieces: 2 }), at: ["12 in", "60 in"] } })],
  ["weak ties", wallOf({ high: "8 ft" }, { ties: { by: { name: "tie", carries: "1500 lb", from: "code" }, spacing: "32 in" } })],
  ["a battered wall", wallOf({ batter: "1:8" })],
  ["a battered wall held too little", wallOf({ batter: "1:8" }, { holdDown: { by: { carries: "500 lb" }, spacing: "6 ft" } })],
  [
    "one side and nothing behind it",
    wallOf(
      { high: "3 ft" },
      { wales: { stuff: fir("2x4", { pieces: 2 }), at: ["8 in", "28 in"] }, ties: undefined, brace: undefined, strongbacks },
      { faces: earth },
    ),
  ],
  ["strongbacks far apart", wallOf({ high: "8 ft" }, { ties: undefined, strongbacks })],
  [
    "joists far apart",
    deckOf(
      { joists: { stuff: fir("2x4"), spacing: "32 in" } },
      { shape: { kind: "deck slab", long: "20 ft", wide: "16 ft", thick: "14 in" } },
    ),
  ],
  ["slender shores", deckOf({ shores: { stuff: fir("2x4"), spacing: "30 in", high: "8 ft" } })],
  ["small mudsills", deckOf({ mudsills: { long: "12 in", wide: "5 1/2 in", soil: "700 psf", level: true, ground: "firm" } })],
  [
    "an edge",
    {
      id: "footing",
      shape: { kind: "footing", long: "20 ft", wide: "3 ft", thick: "18 in" },
      form: { kind: "edge", boards: "1x12", stakes: { spacing: "6 ft", by: { carries: "150 lb" } } },
    },
  ],
  [
    "a wall that a held rate helps",
    wallOf(
      { high: "10 ft" },
      { sheathing: { ply: "1", class: "I", reused: false }, ties: { by: { carries: "4000 lb" }, spacing: "24 in" } },
    ),
  ],
];

const sheetOf = (document: unknown): { readonly build: Build; readonly sheet: ElementSheet } => {
  const build = readForms(document);
  return { build, sheet: pourSheet(build, 0).elements[0] as ElementSheet };
};

const most = (sheet: ElementSheet): number => Math.max(...(sheet.form?.members ?? []).map(({ of100 }) => of100), 0);
const offered = new Set<Fix["kind"]>();

describe.each([
  ["US units", {}],
  ["metric", metric],
])("changes offered in %s", (_, whole) => {
  test.each(cases)("%s: each, made in the document and read again, gives the figure it promised", (_name, element) => {
    const document = formDocument([element], {}, whole);
    const { sheet } = sheetOf(document);
    expect(sheet.fixes.length).toBeGreaterThan(0);
    for (const fix of sheet.fixes) {
      offered.add(fix.kind);
      const { sheet: after } = sheetOf(apply(document, fix.edits).document);
      expect(most(after), `${fix.kind} ${JSON.stringify(fix.edits)}`).toBeCloseTo(fix.of100, 6);
      expect(after.form?.members[after.form.first]?.part, fix.kind).toBe(fix.thenFirst);
      const parts = after.form!.members.filter(({ part }) => part === fix.part);
      if (fix.kind !== "held rate" && fix.kind !== "closer members")
        expect(Math.max(...parts.map(({ of100 }) => of100), 0)).toBeLessThanOrEqual(100 + 1e-9);
    }
  });
});

test("every kind of change but none that is not in the list comes up in these forms", () => {
  expect([...offered].sort()).toEqual(
    [
      "band more",
      "bands as proposed",
      "bigger bolts",
      "bigger mudsills",
      "brace shores",
      "braces",
      "closer members",
      "closer shores",
      "closer ties",
      "closer wales",
      "heavier bands",
      "held rate",
      "hold down",
      "stronger ties",
      "thicker sheathing",
    ].sort(),
  );
});

test("slower placing stands last, and only as a written act with a name", () => {
  const { sheet } = sheetOf(formDocument([wallOf()]));
  const kinds = sheet.fixes.map(({ kind }) => kind);
  expect(kinds.indexOf("held rate")).toBe(kinds.length - 1);
  expect(sheet.fixes.at(-1)!.edits[0]!.value).toMatchObject({ pass: "12 in", who: "me" });
});

test("a form that holds is offered nothing", () => {
  expect(sheetOf(formDocument([columnOf()])).sheet.fixes).toEqual([]);
});

test("bands proposed from the base up hold, the lowest within 4 in of the foot, and stand closer where the pressure is greater", () => {
  for (const [high, display] of [
    ["8 ft", {}],
    ["2.5 m", metric],
  ] as const) {
    const element = columnOf(
      { shape: { kind: "column", long: "24 in", wide: "24 in", high } },
      { bands: { stuff: fir("2x4", { pieces: 2 }), at: ["12 in"], bolt: bolt("3000 lb") } },
    );
    const { sheet } = sheetOf(formDocument([element], {}, display));
    const at = sheet.form!.proposed_mm!;
    expect(at[0]).toBeLessThanOrEqual(101.6);
    const gaps = at.slice(1, -1).map((height, i) => height - at[i]!);
    gaps.forEach((gap, i) => {
      if (i > 0) expect(gap).toBeGreaterThanOrEqual(gaps[i - 1]! - 1);
    });
    const fix = sheet.fixes.find(({ kind }) => kind === "bands as proposed")!;
    const { sheet: after } = sheetOf(apply(formDocument([element], {}, display), fix.edits).document);
    expect(
      after.form!.members.filter(({ part }) => ["bands", "corner bolts", "battens"].includes(part)).every(({ of100 }) => of100 <= 100),
    ).toBe(true);
  }
});

describe("sheets are kept", () => {
  const document = formDocument([columnOf()]);

  test("the same object while the pour and what governs it are the same", () => {
    const build = readForms(document);
    const first = pourSheets(build);
    expect(pourSheets({ ...build, name: "other" })[0]).toBe(first[0]);
    expect(pourSheets({ ...build, pressure: "aci-si" })[0]).not.toBe(first[0]);
    expect(pourSheets({ ...build, site: { ...build.site, units: "metric" } })[0]).not.toBe(first[0]);
    const changed = { ...build, pours: [{ ...(build.pours[0] as Pour), rate_m3_h: 10 }] };
    expect(pourSheets(changed)[0]).not.toBe(first[0]);
  });
});
