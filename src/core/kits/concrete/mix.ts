import { usualRate_m3_h } from "../../build";
import { type BarSize, netVolume_m3, type PouredFace, type PouredShape, peopleFor } from "../../concrete";
import { choiceAsk, countAsk, wordAsk, yesAsk } from "../asks";
import type { Answers, Ask } from "../kit";
import type { Making } from "../making";

/** The asks that every pour shares. */
export const pourAsks: readonly Ask[] = [
  choiceAsk(
    "strength",
    "Strength of the concrete at 28 days",
    { "21": "3000 psi (21 MPa)", "28": "4000 psi (28 MPa)", "35": "5000 psi (35 MPa)" },
    { usual: "28", help: "By your drawing; the local code may ask for more where it freezes." },
  ),
  choiceAsk("placed", "How the concrete gets there", {
    chute: "from the truck's chute or by barrow",
    hose: "by a pump and hose",
    bags: "mixed here from bags",
  }),
  countAsk("people", "People on the pour", 2, 2, 12, { help: "Of those who work on the build." }),
  choiceAsk(
    "helped",
    "If the pour takes more people than that",
    { helpers: "helpers are asked to come for it", none: "those do it alone" },
    { unasked: "none" },
  ),
  yesAsk("inspected", "An inspector looks before it is poured", true),
  wordAsk("bars", "Whose drawing the bars are", {
    help: "Empty: a usual guess stands in the file, and the bars stay on the list of what is not known.",
  }),
];

const strengths: Readonly<Record<string, { readonly us: string; readonly metric: string }>> = {
  "21": { us: "3000 psi", metric: "21 MPa" },
  "28": { us: "4000 psi", metric: "28 MPa" },
  "35": { us: "5000 psi", metric: "35 MPa" },
};

/** Concrete of one bag, from memory of product sheets: 80 lb gives 0.60 ft3, 25 kg gives 12 L. */
const bag = {
  us: { name: "Concrete mix, 80 lb", yields: "0.6 ft3", m3: 0.6 * 0.3048 ** 3 },
  metric: { name: "Concrete mix, 25 kg", yields: "12 L", m3: 0.012 },
};

/** Whose word a figure of the bars is. */
const barsFrom = (answers: Answers): string => answers.text("bars").trim() || "own guess";

export interface Bars {
  readonly name: string;
  /** Of ASTM A615: 4 is half an inch. */
  readonly size: number;
  readonly number: number;
  readonly long_mm: number;
  readonly spacing_mm?: number;
  readonly cover_mm: number;
  readonly exposure: "against ground" | "weather or ground" | "inside slab or wall" | "inside beam or column";
  readonly sort?: "bar" | "tie" | "mat";
  readonly supported_mm?: number;
}

/** Mass of a bar, kg/m: its nominal diameter of so many eighths of an inch, steel of 7850 kg/m3. */
const barMass_kg_m = (size: number): number => (Math.PI / 4) * (size * 3.175e-3) ** 2 * 7850;

export const massOfBars_kg = (bars: readonly Bars[], number = 1): number =>
  number * bars.reduce((sum, one) => sum + (barMass_kg_m(one.size) * one.number * one.long_mm) / 1000, 0);

export interface Element {
  readonly id: string;
  readonly name: string;
  readonly number: number;
  readonly shape: PouredShape;
  readonly faces?: readonly object[];
  readonly rebates?: readonly object[];
  readonly form?: object | undefined;
  readonly bars: readonly Bars[];
  readonly pieces: readonly string[];
}

/** A shape with its lengths as the document writes them. */
function writtenShape(making: Making, shape: PouredShape): object {
  const batter = (run_over_rise: number) => `${Number((run_over_rise * 1000).toFixed(1))}:1000`;
  return Object.fromEntries(
    Object.entries(shape).flatMap(([key, value]): [string, unknown][] => {
      if (key.endsWith("_mm")) return [[key.slice(0, -3), making.mm(value as number)]];
      if (key === "batter") {
        const { a, b } = value as { readonly a: number; readonly b: number };
        return a === 0 && b === 0 ? [] : [["batter", { a: batter(a), b: batter(b) }]];
      }
      return key === "round" && value === false ? [] : [[key, value]];
    }),
  );
}

/** Next metric bar of ISO 6935-2 and EN 10080 to a number of ASTM A615: a guess for a guess, until whoever designs it says. */
const metricSize: Readonly<Record<number, string>> = { 3: "10 mm", 4: "12 mm", 5: "16 mm", 6: "20 mm" };

const sizeOf = (making: Making, { size }: Bars): BarSize => making.either<BarSize>(size, metricSize[size] ?? size);

const writtenBars = (making: Making, bars: Bars): object => ({
  name: bars.name,
  size: sizeOf(making, bars),
  number: bars.number,
  long: making.laid(bars.long_mm, "down"),
  ...(bars.spacing_mm === undefined ? {} : { spacing: making.laid(bars.spacing_mm, "down") }),
  yield: making.either("60 ksi", "500 MPa"),
  cover: making.mm(making.either(bars.cover_mm, Math.round(bars.cover_mm / 10) * 10)),
  exposure: bars.exposure,
  ...(bars.sort === undefined ? {} : { sort: bars.sort }),
  ...(bars.supported_mm === undefined ? {} : { supported: making.laid(bars.supported_mm, "down") }),
  from: barsFrom(making.given.answers),
});

export interface PourPlan {
  readonly name: string;
  readonly step: string;
  readonly elements: readonly Element[];
  /** Small stone where it has to get between bars. */
  readonly fine?: boolean;
  readonly vibrated_mm: number;
  readonly cure: object;
  readonly removals?: readonly object[];
}

/** As deep as one layer is vibrated: so many feet, or three tenths of a metre each. */
export const layer_mm = (making: Making, number: number): number => number * making.either(304.8, 300);

const volumeOf = (elements: readonly Element[]): number =>
  elements.reduce((sum, { shape, number }) => sum + netVolume_m3(shape, []) * number, 0);

/** People whom a pour takes beside those of the build, by the rule that its day is judged by. */
function helpersOf(making: Making, elements: readonly Element[]): number {
  const { answers, units } = making.given;
  if (answers.choice("helped") === "none") return 0;
  const placed = placedOf(answers);
  const poured = elements.map(({ number, shape, faces = [] }) => ({ number, shape, faces: faces as readonly PouredFace[], rebates: [] }));
  const wanted = peopleFor({ placed, rate_m3_h: usualRate_m3_h(units, placed), elements: poured });
  return Math.max(0, wanted - answers.number("people"));
}

/** How the document says that concrete gets there. */
const placedOf = (answers: Answers): "chute" | "hose" | "by hand" => {
  const placed = answers.choice("placed");
  return placed === "bags" ? "by hand" : (placed as "chute" | "hose");
};

/** The pour of a part, what brings its concrete (a truck, or bags), and the pump. Gives ids of the deliveries that its step needs. */
export function addPour(making: Making, plan: PourPlan): readonly string[] {
  const { given } = making;
  const placed = given.answers.choice("placed");
  const m3 = volumeOf(plan.elements);
  const bags = making.either(bag.us, bag.metric);
  const helpers = helpersOf(making, plan.elements);
  const sacks =
    placed === "bags" ? making.add("stock", "bags", { name: bags.name, unit: "bag", inHand: 0, yields: bags.yields }) : undefined;
  const count = Math.ceil((m3 * 1.15) / bags.m3);
  const delivery =
    sacks === undefined
      ? making.add("deliveries", "concrete-comes", {
          name: `Concrete for ${given.name}`,
          calendar: given.common("plant"),
          lead: { is: `3 days of ${given.common("plant")}`, from: "own guess" },
          ordered: false,
        })
      : making.add("deliveries", "concrete-comes", {
          name: `${count} bags of mix for ${given.name}`,
          calendar: given.common("lumber-yard"),
          lead: { is: `2 days of ${given.common("lumber-yard")}`, from: "own guess" },
          ordered: false,
          brings: [{ of: sacks, number: count }],
        });
  making.add("pours", "pour", {
    name: plan.name,
    step: plan.step,
    mix: {
      strength:
        making.either("us", "metric") === "us"
          ? strengths[given.answers.choice("strength")]?.us
          : strengths[given.answers.choice("strength")]?.metric,
      cement: "I",
      retarder: false,
      weight: making.either("150 lb/ft3", "2400 kg/m3"),
      slump: making.either("5 in", "125 mm"),
      ...(sacks === undefined ? {} : { cementContent: making.either("560 lb/yd3", "330 kg/m3") }),
      aggregate: plan.fine ? making.either("3/8 in", "10 mm") : making.either("3/4 in", "20 mm"),
      from: "own guess",
    },
    weather: { concrete: making.either("70 °F", "20 °C") },
    placed: placedOf(given.answers),
    vibrated: making.mm(plan.vibrated_mm),
    elements: plan.elements.map((element) => ({
      id: element.id,
      name: element.name,
      ...(element.number > 1 ? { number: element.number } : {}),
      shape: writtenShape(making, element.shape),
      ...(element.faces ? { faces: element.faces } : {}),
      ...(element.rebates ? { rebates: element.rebates } : {}),
      ...(element.form ? { form: element.form } : {}),
      bars: element.bars.map((one) => writtenBars(making, one)),
      pieces: element.pieces,
    })),
    cure: plan.cure,
    removals: plan.removals,
    sacks,
    helpers: helpers > 0 ? helpers : undefined,
    from: "own guess",
  });
  if (helpers > 0) {
    making.add("bookings", "helpers", {
      name: `${helpers === 1 ? "A helper" : `${helpers} helpers`} for the pour of ${given.name}`,
      step: plan.step,
      lead: { is: "7 d", from: "own guess" },
      booked: false,
    });
  }
  if (placed === "hose") {
    making.add("bookings", "pump", {
      name: `Pump for ${given.name}`,
      step: plan.step,
      calendar: given.common("pump"),
      lead: { is: `10 days of ${given.common("pump")}`, from: "own guess" },
      booked: false,
    });
  }
  return [delivery];
}

/** What is the same of every step that pours. */
export const pourStep = (making: Making) => ({
  sort: "pour",
  hands: making.given.answers.number("people"),
  calendar: making.given.common("pour-days"),
  unbroken: true,
  weather: { lowest: making.either("40 °F", "5 °C"), highest: making.either("90 °F", "32 °C") },
});

export const burns = "Wet concrete burns: boots, gloves, glasses, clean water at hand.";
