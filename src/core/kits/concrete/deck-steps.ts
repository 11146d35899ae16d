import { once } from "../making";
import { addLook, addWetCure } from "./after";
import { barsOf, type Deck } from "./deck-members";
import { massOfBars_kg } from "./mix";
import { coatLasts } from "./stuff";
import { firmOf } from "./top";

const overhead = "Shores and a deck over people: have them checked by someone qualified, whatever the figures here say.";

/** Gives the pieces that the pour puts up beside the concrete. */
export function addSteps(deck: Deck): readonly string[] {
  const { making, sizes, guarded, stuff, barsCome } = deck;
  const { given } = making;
  const { answers, name } = given;
  const own = (word: string) => making.id(word);
  const [below, steel, ground] = [own("below"), own("steel"), given.common("ground")];
  const area_m2 = (sizes.long_mm * sizes.wide_mm) / 1e6;
  const round_m = (2 * (sizes.long_mm + sizes.wide_mm)) / 1000;
  const step = (word: string, fields: object) => making.add("steps", word, fields as Readonly<Record<string, unknown>>);
  const bring = (piece: string) => [{ place: below }, { place: below, need: "unit", piece: own(piece) }];
  const carried = once(deck.on.map(({ piece }) => piece)).map((piece) => ({ piece, once: { is: "24 h", from: "own guess" } }));
  step("shore", {
    name: `Sills and shores of ${name}`,
    place: below,
    work: given.hours("shore", area_m2, 2),
    hands: 2,
    reaches: [...bring("shores"), ...deck.on.flatMap(({ clear }) => (clear === undefined ? [] : [{ place: clear }])), ...firmOf(deck.on)],
    puts: [own("shores")],
    leansOn: [...stuff.leansOn, ...carried],
    needs: stuff.needs,
    cautions: [overhead],
    notes:
      "Sills level on firm ground that no rain softens; wedges in pairs, nailed; braced both ways before anything lies on them. Shores longer than what gets in there come as adjustable ones.",
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
    reaches: [...bring("sheathing"), ...deck.on.map(({ place }) => ({ place, need: "arm" }))],
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
      reaches: [{ place: ground }, ...firmOf(deck.on)],
      puts: [own("scaffold")],
      leansOn: carried,
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
  return addLaterSteps(deck, area_m2, round_m);
}

/** Looked over just before, kept wet, edges off, deck out. */
function addLaterSteps({ making, sizes, guarded }: Deck, area_m2: number, round_m: number): readonly string[] {
  const { given } = making;
  const { name } = given;
  const own = (word: string) => making.id(word);
  const [below, ground] = [own("below"), given.common("ground")];
  const step = (word: string, fields: object) => making.add("steps", word, fields as Readonly<Record<string, unknown>>);
  addLook(making, { what: "shores and wedges", called: "Shores", place: below, holder: "shores" });
  step("strip-edges", {
    name: `Strip edge forms of ${name}`,
    place: own("rim"),
    work: given.hours("strip-boards", round_m),
    reaches: [{ place: own("rim") }],
    takes: [own("edges")],
  });
  const covers = addWetCure(making, { way: `${own("top")}.over`, from: own("rim") });
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
  if (!guarded) return covers;
  step("scaffold-down", {
    name: `Scaffold around ${name} down`,
    place: ground,
    work: given.hours("scaffold-down", round_m * Math.max(1, sizes.at_mm.z / 1000), 2),
    hands: 2,
    reaches: [{ place: ground }],
    takes: [own("scaffold")],
    cautions: ["From then on the edges need a guard of their own."],
  });
  return covers;
}
