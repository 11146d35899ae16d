import { once } from "../making";
import { addLook, addWetCure } from "./after";
import { type Arch, barsOf } from "./arch-members";
import { massOfBars_kg } from "./mix";
import { coatLasts } from "./stuff";
import { firmOf } from "./top";

const practice = "own guess";
const checked = "Centering over people: have it checked by someone qualified, whatever the figures here say.";

/** From the ribs on the bench to the centering out again. Gives the pieces that the pour puts up beside the concrete. */
export function addSteps(arch: Arch): readonly string[] {
  const { making, sizes, on, unit, stuff, barsCome } = arch;
  const { given } = making;
  const { name } = given;
  const own = (word: string) => making.id(word);
  const [inside, store, ground] = [own("inside"), given.common("store"), given.common("ground")];
  const m2 = (sizes.long_mm * sizes.span_mm) / 1e6;
  const ribs = Math.max(2, Math.ceil(sizes.long_mm / 500) + 1);
  const step = (word: string, fields: object) => making.add("steps", word, { hands: 2, ...(fields as Readonly<Record<string, unknown>>) });
  const bring = (piece: string) => [{ place: inside }, { place: inside, need: "unit", piece: own(piece) }];
  const carried = once(on.map(({ piece }) => piece)).map((piece) => ({ piece, once: { is: "3 d", from: practice } }));
  step("cut", {
    name: `Cut ribs of ${name}`,
    place: store,
    work: given.hours("rib", ribs, 2),
    reaches: [{ place: store }],
    puts: [own("cut")],
    leansOn: stuff.leansOn,
    needs: stuff.needs,
    notes: `${ribs} ribs, each in ${unit.parts} parts bolted together, so that every part gets out by the narrowest way.`,
  });
  step("posts", {
    name: `Posts, beams and wedges of ${name}`,
    place: inside,
    work: given.hours("shore", m2, 2),
    reaches: [...bring("posts"), ...on.flatMap(({ clear }) => (clear === undefined ? [] : [{ place: clear }])), ...firmOf(on)],
    puts: [own("posts"), own("wedges")],
    leansOn: carried,
    needs: stuff.needs,
    cautions: [checked],
    notes: `Wedges in pairs, greased, a nail through each; they must let it drop by ${given.answers.written("drop")}.`,
  });
  step("ribs", {
    name: `Raise and brace ribs of ${name}`,
    place: inside,
    work: given.hours("rib", ribs * 0.6, 2),
    reaches: bring("ribs"),
    puts: [own("ribs")],
    leansOn: [{ piece: own("wedges") }, { piece: own("cut") }],
    cautions: ["Each rib is braced before the strap comes off it."],
  });
  step("lag", {
    name: `Lagging of ${name}`,
    place: inside,
    work: given.hours("lagging", m2, 2),
    reaches: [...bring("lagging"), ...on.map(({ place }) => ({ place, need: "arm" }))],
    puts: [own("lagging")],
    leansOn: [{ piece: own("ribs") }],
    notes: "From both springings up, one nail a rib; what screws it down comes out from below.",
  });
  step("coat", {
    name: `Coat the lagging of ${name}`,
    place: own("face"),
    hands: 1,
    work: given.hours("coat", m2 * 1.2),
    reaches: [{ place: own("face") }],
    leansOn: [{ piece: own("lagging") }],
    notes: "Thin and wiped; boards to kneel on.",
  });
  making.add("waits", "coat-lasts", {
    name: `Coat of ${name} is good for`,
    from: own("coat"),
    to: own("place"),
    most: coatLasts,
    why: "A release agent is good for some weeks.",
  });
  step("ends", {
    name: `End boards of ${name}`,
    place: own("ends"),
    work: given.hours("boards", (2 * sizes.span_mm) / 1000, 2),
    reaches: [{ place: own("ends") }],
    puts: [own("ends")],
    leansOn: [{ piece: own("lagging") }],
  });
  step("planks", {
    name: `Scaffold and planks over ${name}`,
    place: ground,
    work: given.hours("shore", m2 * 0.5, 2),
    reaches: [{ place: ground }],
    puts: [own("planks")],
    leansOn: [{ piece: own("lagging") }],
    cautions: ["Guards where it drops more than 6 ft (1.8 m). Ask your local rules."],
  });
  step("tie", {
    name: `Tie bars of ${name}`,
    place: own("steel"),
    work: given.hours("tie-bars", massOfBars_kg(barsOf(sizes)) / 100, 2),
    reaches: [{ place: own("face") }, { place: own("steel") }],
    puts: [own("cage")],
    leansOn: [{ piece: own("lagging") }, { piece: own("ends") }],
    needs: [barsCome],
  });
  return addLater(arch, m2);
}

/** Looked over, kept wet, ends off, struck and carried out. */
function addLater({ making, sizes }: Arch, m2: number): readonly string[] {
  const { given } = making;
  const { name } = given;
  const own = (word: string) => making.id(word);
  const inside = own("inside");
  addLook(making, { what: "wedges and posts", called: "Centering", place: inside, holder: "wedges" });
  making.add("steps", "strip-ends", {
    name: `Strip end boards of ${name}`,
    place: own("ends"),
    work: given.hours("strip-boards", (2 * sizes.span_mm) / 1000),
    reaches: [{ place: own("ends") }],
    takes: [own("ends")],
  });
  const covers = addWetCure(making, { way: `${own("top")}.over`, from: own("ends") });
  making.add("steps", "planks-away", {
    name: `Planks over ${name} away`,
    place: given.common("ground"),
    work: given.hours("shore", m2 * 0.3, 2),
    hands: 2,
    reaches: [{ place: given.common("ground") }],
    takes: [own("planks")],
  });
  making.add("steps", "strike", {
    name: `Strike and carry out the centering of ${name}`,
    place: inside,
    work: given.hours("strip-deck", m2, 2),
    hands: 2,
    notAlone: true,
    reaches: [{ place: inside }],
    takes: [own("lagging"), own("ribs"), own("wedges"), own("posts")],
    cautions: [
      "Not before the strength is shown, or the days of the table are over: ask whoever designed it. Wedges from the crown outwards, a little at a time, both sides alike.",
    ],
  });
  if (!given.answers.yes("covered")) return covers;
  making.add("steps", "cover-over", {
    name: `Earth over ${name}`,
    place: own("top"),
    work: given.hours("fill", m2 * 0.5, 2),
    hands: 2,
    reaches: [{ place: own("top") }],
    puts: [own("earth")],
    leansOn: [{ piece: own("concrete"), once: { is: `75 % of ${own("place")}`, from: practice } }],
    cautions: ["Both sides alike, by hand, no machine on it until whoever designed it says so."],
  });
  return covers;
}
