import type { KeyedOffer } from "../kit";
import { type Making, once } from "../making";
import type { DeckDesign } from "./deck-form";
import { type Bars, massOfBars_kg } from "./mix";
import { type addStuff, coatLasts } from "./stuff";

export interface Sizes {
  readonly long_mm: number;
  readonly wide_mm: number;
  readonly thick_mm: number;
  readonly span_mm: number;
  /** Middle of the soffit. */
  readonly at_mm: { readonly x: number; readonly y: number; readonly z: number };
}

export interface Deck {
  readonly making: Making;
  readonly sizes: Sizes;
  readonly on: readonly KeyedOffer[];
  readonly design: DeckDesign;
  /** A scaffold with guards stands around it from before the sheathing until after everything on it. */
  readonly guarded: boolean;
  readonly stuff: ReturnType<typeof addStuff>;
  readonly barsCome: string;
}

/** Both ways at 12 in: a guess, until whoever designs it says. */
export function barsOf({ long_mm, wide_mm }: Sizes): readonly Bars[] {
  const way = (name: string, size: number, long: number, across: number): Bars => ({
    name,
    size,
    number: Math.max(2, Math.ceil((across - 80) / 304.8) + 1),
    long_mm: Math.max(300, long - 80),
    spacing_mm: 304.8,
    cover_mm: 38.1,
    exposure: "weather or ground",
    supported_mm: 350,
  });
  return [way("along, bottom", 5, long_mm, wide_mm), way("across", 4, wide_mm, long_mm)];
}

export function addPlaces({ making, sizes, guarded }: Deck): void {
  const { given } = making;
  const { answers, name } = given;
  const ground = given.common("ground");
  const level = Math.round(sizes.at_mm.z / 100);
  making.add("places", "below", {
    name: `room under ${name}`,
    level: Math.max(0, Math.round(level / 2)),
    ways: [
      {
        id: "side",
        name: "from the side",
        passes: ["person", "unit"],
        opening: { wide: answers.written("wayWide"), high: answers.written("wayHigh") },
        longest: answers.written("longest"),
        through: ground,
      },
    ],
  });
  making.add("places", "face", {
    name: `face of the deck of ${name}`,
    level: level + 1,
    layerOf: making.id("steel"),
    ways: [{ id: "bare", name: "standing on the bare sheathing", passes: ["person"], through: ground }],
  });
  making.add("places", "steel", {
    name: `steel of ${name}`,
    below: [making.id("below")],
    level: level + 1,
    ways: [{ id: "deck", name: "on the deck", passes: ["person", "arm", "hose", "sight", "unit"], through: ground }],
  });
  making.add("places", "rim", {
    name: `edges of ${name}`,
    level: level + 1,
    layerOf: making.id("steel"),
    ways: [{ id: "outside", name: guarded ? "from the scaffold" : "from the ground", passes: ["person", "arm"], through: ground }],
  });
  making.add("places", "top", {
    name: `top of ${name}`,
    level: level + 2 + Math.ceil(sizes.thick_mm / 100),
    ways: [{ id: "over", name: "over its edge", passes: ["person", "unit"], through: ground }],
  });
}

/** Ways that a guard or scaffold makes beside what makes them anyway. */
export function addPieces({ making, sizes, on, design, guarded }: Deck): void {
  const { given } = making;
  const { answers, name } = given;
  const own = (word: string) => making.id(word);
  const [below, ground] = [own("below"), given.common("ground")];
  const inUnder = (piece: string) => [{ place: below }, { place: below, need: "unit", piece }];
  const longest_mm = answers.length_mm("longest");
  const sheet_mm = Math.min(1220, Math.max(answers.length_mm("wayWide"), answers.length_mm("wayHigh")) - 50);
  const size = (long_mm: number, wide_mm: number, thick_mm: number) => ({
    long: making.mm(Math.min(long_mm, longest_mm)),
    wide: making.mm(wide_mm),
    thick: making.mm(thick_mm),
  });
  making.add("pieces", "shores", {
    name: `shores of ${name}`,
    sort: "shore",
    off: inUnder(own("shores")),
    size: size(design.shore_mm, 89, 89),
  });
  making.add("pieces", "joists", {
    name: `stringers and joists of ${name}`,
    sort: "form",
    heldBy: [[own("shores")]],
    off: inUnder(own("joists")),
    size: size(Math.max(sizes.long_mm, sizes.wide_mm), 140, 38),
  });
  making.add("pieces", "sheathing", {
    name: `sheathing of ${name}`,
    sort: "form",
    heldBy: [[own("joists")]],
    makes: [`${own("steel")}.deck`, `${own("face")}.bare`],
    // Once the sheathing is around a head, nobody gets at it from the side.
    closes: on.map(({ place }) => place),
    off: inUnder(own("sheathing")),
    size: size(2440, sheet_mm, 19),
  });
  if (guarded) {
    making.add("pieces", "scaffold", {
      name: `scaffold with guards around ${name}`,
      sort: "scaffold",
      makes: [`${own("steel")}.deck`, `${own("face")}.bare`, `${own("rim")}.outside`, `${own("top")}.over`],
      off: [{ place: ground }],
    });
  }
  making.add("pieces", "edges", {
    name: `edge forms of ${name}`,
    sort: "form",
    heldBy: [[own("sheathing")]],
    off: [{ place: own("rim") }],
  });
  making.add("pieces", "cage", { name: `bars of ${name}`, sort: "other", closes: [`${own("face")}.bare`] });
  making.add("pieces", "checked", { name: `shores of ${name}, looked over`, sort: "other" });
  making.add("pieces", "concrete", {
    name: `concrete of ${name}`,
    sort: "concrete",
    fills: [own("steel"), ...on.map(({ place }) => place)],
    makes: [`${own("top")}.over`],
    heldBy: [[own("sheathing"), ...once(on.map(({ piece }) => piece))]],
    holdsItself: { is: `75 % of ${own("place")}`, from: "own guess" },
  });
  making.add("pieces", "green", {
    name: `${name} too green to walk on`,
    sort: "other",
    goesAfter: { is: `500 psi of ${own("place")}`, from: "own guess" },
    closes: [`${own("top")}.over`],
  });
}

const overhead = "Shores and a deck over people: have them checked by someone qualified, whatever the figures here say.";

export function addSteps(deck: Deck): void {
  const { making, sizes, guarded, stuff, barsCome } = deck;
  const { given } = making;
  const { answers, name } = given;
  const own = (word: string) => making.id(word);
  const [below, steel, ground] = [own("below"), own("steel"), given.common("ground")];
  const area_m2 = (sizes.long_mm * sizes.wide_mm) / 1e6;
  const round_m = (2 * (sizes.long_mm + sizes.wide_mm)) / 1000;
  const step = (word: string, fields: object) => making.add("steps", word, fields as Readonly<Record<string, unknown>>);
  const bring = (piece: string) => [{ place: below }, { place: below, need: "unit", piece: own(piece) }];
  step("shore", {
    name: `Sills and shores of ${name}`,
    place: below,
    work: given.hours("shore", area_m2, 2),
    hands: 2,
    reaches: bring("shores"),
    puts: [own("shores")],
    leansOn: stuff.leansOn,
    needs: stuff.needs,
    cautions: [overhead],
    notes: "Sills level on firm ground that no rain softens; wedges in pairs, nailed; braced both ways before anything lies on them.",
  });
  step("joist", {
    name: `Stringers and joists of ${name}`,
    place: below,
    work: given.hours("deck", area_m2 * 0.6, 2),
    hands: 2,
    reaches: bring("joists"),
    puts: [own("joists")],
    leansOn: [{ piece: own("shores") }],
  });
  step("sheathe", {
    name: `Sheathing of ${name}`,
    place: below,
    work: given.hours("deck", area_m2 * 0.4, 2),
    hands: 2,
    reaches: bring("sheathing"),
    puts: [own("sheathing")],
    leansOn: [{ piece: own("joists") }],
    cautions: ["Laid from ladders below, from the far side back; nobody on loose sheets."],
  });
  if (guarded) {
    step("scaffold-up", {
      name: `Scaffold and guards around ${name}`,
      place: ground,
      work: given.hours("scaffold", round_m * Math.max(1, sizes.at_mm.z / 1000), 2),
      hands: 2,
      reaches: [{ place: ground }],
      puts: [own("scaffold")],
      cautions: ["Guards at 42 in (1.1 m) with a mid rail and toe boards. Ask your local rules."],
    });
  }
  step("coat", {
    name: `Coat the deck of ${name}`,
    place: own("face"),
    work: given.hours("coat", area_m2),
    reaches: [{ place: own("face") }],
    leansOn: [{ piece: own("sheathing") }],
    notes: "Thin and wiped; boards to kneel on.",
  });
  making.add("waits", "coat-lasts", {
    name: `Coat of ${name} is good for`,
    from: own("coat"),
    to: own("place"),
    most: coatLasts,
    why: "A release agent is good for some weeks.",
  });
  step("edge", {
    name: `Edge forms of ${name}`,
    place: steel,
    work: given.hours("boards", round_m, 2),
    hands: 2,
    reaches: [{ place: steel }],
    puts: [own("edges")],
    leansOn: [{ piece: own("sheathing") }],
    notes: "A drip strip along the outer edge.",
  });
  step("seal", {
    name: `Seal joints of the deck of ${name}`,
    place: own("face"),
    work: given.hours("seal", round_m + 2 * deck.on.length),
    reaches: [{ place: own("face"), need: "arm" }],
    leansOn: [{ piece: own("edges") }],
    notes: "Around every head, along the edges, between sheets that show.",
  });
  step("tie", {
    name: `Tie bars of ${name}`,
    place: steel,
    work: given.hours("tie-bars", massOfBars_kg(barsOf(sizes)) / 100, 2),
    hands: 2,
    reaches: [{ place: steel }],
    puts: [own("cage")],
    leansOn: [{ piece: own("edges") }],
    needs: [barsCome],
  });
  const embeds = answers.number("sleeves");
  if (embeds > 0) {
    step("sleeves", {
      name: `Sleeves and boxes in ${name}`,
      sort: "embed",
      place: steel,
      work: given.hours("embed", embeds),
      reaches: [{ place: steel, need: "arm" }],
      leansOn: [{ piece: own("cage") }],
    });
  }
  const bolts = answers.number("bolts");
  if (bolts > 0) {
    step("bolts", {
      name: `Anchor bolts in ${name}`,
      sort: "embed",
      place: steel,
      work: given.hours("embed", bolts),
      reaches: [{ place: steel, need: "arm" }],
      leansOn: [{ piece: own("cage") }],
      notes: "On a template across the edge forms, square to what stands there.",
    });
  }
  addLaterSteps(deck, area_m2, round_m);
}

/** Looked over just before, kept wet, edges off, deck out. */
function addLaterSteps({ making, sizes, guarded }: Deck, area_m2: number, round_m: number): void {
  const { given } = making;
  const { name } = given;
  const own = (word: string) => making.id(word);
  const [below, ground] = [own("below"), given.common("ground")];
  const step = (word: string, fields: object) => making.add("steps", word, fields as Readonly<Record<string, unknown>>);
  step("check", {
    name: `Look over shores and wedges of ${name}`,
    sort: "check",
    place: below,
    work: given.hours("check", 1),
    reaches: [{ place: below }],
    puts: [own("checked")],
    leansOn: [{ piece: own("shores") }, { piece: own("cage") }],
  });
  making.add("waits", "check-fresh", {
    name: `Shores of ${name} looked over just before`,
    from: own("check"),
    to: own("place"),
    least: { is: "0 min", from: "own guess" },
    most: { is: "8 d", from: "own guess" },
    why: "Wedges are looked at on the last day there before the pour.",
  });
  step("strip-edges", {
    name: `Strip edge forms of ${name}`,
    place: own("rim"),
    work: given.hours("strip-boards", round_m),
    reaches: [{ place: own("rim") }],
    takes: [own("edges")],
  });
  step("uncover", {
    name: `Take the covers off ${name}`,
    place: own("top"),
    work: given.hours("cover", 1),
    reaches: [{ place: own("top") }],
  });
  making.add("waits", "cure", {
    name: `Wet cure of ${name}`,
    from: own("place"),
    to: own("uncover"),
    least: { is: "7 d", from: "own guess" },
    visits: { every: "1 d", lasts: "20 min", who: "somebody near", for: "wet it and tuck the plastic in" },
    why: "Seven days wet.",
  });
  step("strip", {
    name: `Lower and carry out the deck of ${name}`,
    place: below,
    work: given.hours("strip-deck", area_m2, 2),
    hands: 2,
    reaches: [{ place: below }],
    takes: [own("sheathing"), own("joists"), own("shores")],
    cautions: [
      "Not before the strength is shown, or the days of the table are over: ask whoever designed it. Wedges first, from the middle out, a little at a time.",
    ],
  });
  if (!guarded) return;
  step("scaffold-down", {
    name: `Scaffold around ${name} down`,
    place: ground,
    work: given.hours("scaffold-down", round_m * Math.max(1, sizes.at_mm.z / 1000), 2),
    hands: 2,
    reaches: [{ place: ground }],
    takes: [own("scaffold")],
    cautions: ["From then on the edges need a guard of their own."],
  });
}
