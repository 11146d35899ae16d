import { choiceAsk, lengthAsk, yesAsk } from "../asks";
import type { Answers, Ask, Given, Kit, Made } from "../kit";
import type { Making } from "../making";
import { firmOf, holesOf } from "./top";
import { isOneSided, wallAsks } from "./wall-asks";
import { type Behind, makeWall, type WallMade, wallOffers } from "./wall-make";
import { wallRates } from "./wall-rates";

const isOpenBehind = (answers: Answers): boolean => !isOneSided(answers);

const asks: readonly Ask[] = [
  ...wallAsks(true),
  lengthAsk("room", "Room to work behind it", "2 ft", "600 mm", 450, 3000, { when: isOpenBehind }),
  choiceAsk("above", "What is above it", { level: "level ground", slope: "a slope going up", load: "a drive, a building or the like" }),
  choiceAsk("below", "The ground before it", { level: "level", slope: "a slope going down" }),
  choiceAsk("proof", "Damp-proofing behind it", { coat: "two coats and a board", sheet: "a sheet and a board" }, { when: isOpenBehind }),
  yesAsk("drained", "A drain at its foot", true, { when: isOpenBehind }),
];

/** Cast against earth nobody gets behind it: what keeps water off goes on the cut face before the bars. */
function addAgainst(making: Making, m2: number): Behind {
  const { given } = making;
  const { name } = given;
  const ground = given.common("ground");
  const cut = making.add("places", "cut", {
    name: `cut face behind ${name}`,
    level: 0,
    layerOf: making.id("steel"),
    ways: [{ id: "bare", name: "before the bars", passes: ["person", "arm", "sight"], through: ground }],
  });
  making.add("pieces", "mat", { name: `drainage mat on the cut face of ${name}`, sort: "cover" });
  making.add("steps", "mat", {
    name: `Drainage mat on the cut face of ${name}`,
    place: cut,
    work: given.hours("membrane", m2),
    reaches: [{ place: cut }],
    puts: [making.id("mat")],
    cautions: ["Nobody under a cut face that is not sloped back or held. Ask someone who knows the ground."],
  });
  return { behind: ground, cageCloses: [`${cut}.bare`] };
}

/** The space behind and the drain in it, before the wall's own members speak of them. */
function addBehind({ making, sizes }: WallMade): Behind {
  const { given } = making;
  const { name } = given;
  if (sizes.oneSided) return addAgainst(making, (sizes.long_mm * sizes.high_mm) / 1e6);
  const behind = making.add("places", "behind", {
    name: `space behind ${name}`,
    room: 2,
    level: -1,
    ways: [
      {
        id: "space",
        name: "along the space",
        passes: ["person", "unit"],
        opening: { wide: given.answers.written("room"), high: making.either("10 ft", "3 m") },
        through: given.common("ground"),
      },
    ],
  });
  if (given.answers.yes("drained")) {
    making.add("places", "drain", {
      name: `drain behind ${name}`,
      level: -2,
      layerOf: behind,
      ways: [{ id: "bare", name: "before it is filled over", passes: ["person", "arm", "sight"], through: behind }],
    });
  }
  addCovers(making, sizes.long_mm, sizes.high_mm);
  return { behind, removals: [{ sort: "backfill", step: making.id("fill") }], firstCloses: [`${making.id("back")}.bare`] };
}

/** Coat, board, pipe, stone, fill, and the steps that put them there once the form is off. */
function addCovers(making: Making, long_mm: number, high_mm: number): void {
  const { given } = making;
  const { answers, name } = given;
  const own = (word: string) => making.id(word);
  const behind = own("behind");
  const [m, m2] = [long_mm / 1000, (long_mm * high_mm) / 1e6];
  const drained = answers.yes("drained");
  const sheet = answers.choice("proof") === "sheet";
  const goods = making.add("deliveries", "goods-come", {
    name: `Damp-proofing, board${drained ? ", pipe and stone" : ""} for ${name}`,
    calendar: given.common("lumber-yard"),
    lead: { is: `5 days of ${given.common("lumber-yard")}`, from: "own guess" },
    ordered: false,
  });
  const onWall = { piece: own("concrete"), once: { is: "7 d", from: "own guess" } };
  const back = own("back");
  const on = answers.joins("on");
  // Coats, drain and board go down to the footing: its hole is filled after them, and what lies behind the wall on top of that.
  const holes = holesOf(on);
  making.add("places", "back", {
    name: `back of ${name}`,
    level: 0,
    layerOf: behind,
    ways: [{ id: "bare", name: "before the board is on", passes: ["person", "arm", "sight"], through: behind }],
  });
  making.add("pieces", "coat-on", { name: `${sheet ? "sheet" : "coats"} on the back of ${name}`, sort: "cover" });
  making.add("pieces", "board", { name: `board over the damp-proofing of ${name}`, sort: "cover", closes: [`${back}.bare`] });
  if (drained) {
    making.add("pieces", "pipe", { name: `drain pipe of ${name}`, sort: "other" });
    making.add("pieces", "stone", { name: `stone over the drain of ${name}`, sort: "earth", closes: [`${own("drain")}.bare`] });
  }
  making.add("pieces", "earth", {
    name: `fill behind ${name}`,
    sort: "earth",
    fills: [behind, back, ...(drained ? [own("drain")] : [])],
    heldBy: [[own("concrete")]],
  });
  making.add("steps", "patch", {
    name: `Patch ties on the back of ${name}`,
    place: back,
    work: given.hours("coating", m2 / 2),
    reaches: [{ place: back }, ...holes],
    puts: [own("patched")],
    leansOn: [{ piece: own("concrete"), once: { is: "24 h", from: "own guess" } }],
  });
  making.add("pieces", "patched", { name: `back of ${name}, patched`, sort: "other" });
  making.add("steps", "proof", {
    name: sheet ? `Sheet on the back of ${name}` : `Two coats on the back of ${name}`,
    place: back,
    work: sheet ? given.hours("membrane", m2) : given.hours("coating", 2 * m2),
    reaches: [{ place: back }, ...holes],
    puts: [own("coat-on")],
    leansOn: [onWall, { piece: own("patched") }],
    needs: [goods],
    weather: { lowest: making.either("41 °F", "5 °C"), dry: true },
  });
  if (drained) {
    making.add("steps", "pipe", {
      name: `Drain pipe behind ${name}`,
      place: own("drain"),
      work: given.hours("drain", m, 2),
      hands: 2,
      reaches: [{ place: own("drain") }, ...holes],
      puts: [own("pipe")],
      leansOn: [{ piece: own("coat-on") }],
      needs: [goods],
      notes: "Holes down, fall of 1 in 100, to where water may run.",
    });
  }
  making.add("steps", "photo-back", {
    name: `Photograph damp-proofing and drain of ${name}`,
    sort: "photograph",
    place: back,
    work: given.hours("photograph", 1),
    reaches: [back, ...(drained ? [own("drain")] : [])].map((place) => ({ place, need: "sight" })),
    leansOn: ["coat-on", ...(drained ? ["pipe"] : [])].map((word) => ({ piece: own(word) })),
  });
  making.add("steps", "board", {
    name: `Board over the damp-proofing of ${name}`,
    place: back,
    work: given.hours("membrane", m2),
    reaches: [{ place: back }, ...holes],
    puts: [own("board")],
    leansOn: [{ piece: own("coat-on"), once: { is: "24 h", from: "own guess" } }],
    needs: [goods],
  });
  if (drained) {
    making.add("steps", "stone", {
      name: `Stone and fleece over the drain of ${name}`,
      place: own("drain"),
      work: given.hours("gravel", 0.1 * m, 2),
      hands: 2,
      reaches: [{ place: own("drain"), need: "arm" }, ...holes],
      puts: [own("stone")],
      leansOn: [{ piece: own("pipe") }],
      needs: [goods],
    });
  }
  making.add("steps", "fill", {
    name: `Fill behind ${name}`,
    place: behind,
    work: given.hours("fill", (m2 * answers.length_mm("room")) / 1000, 2),
    hands: 2,
    notAlone: true,
    reaches: [{ place: given.common("ground") }, ...firmOf(on)],
    puts: [own("earth")],
    leansOn: [{ piece: own("concrete") }, { piece: own("board") }, ...(drained ? [{ piece: own("stone") }] : [])],
    cautions: [
      "In layers of 8 in (200 mm); no machine nearer to the wall than it is high. What a green wall may take is for whoever designed it.",
    ],
  });
}

function make(given: Given): Made {
  const making = makeWall(given, true, addBehind);
  const { answers } = given;
  if (answers.choice("above") !== "level" || answers.choice("below") !== "level") making.unknown("slope");
  return making.made();
}

/** A wall with earth behind it: drain, damp-proofing, board, stone and fill in the order in which one still gets at them. */
export const retainingWall: Kit = {
  id: "retaining-wall",
  name: "Retaining wall",
  what: "A wall that holds earth: poured like a wall, then damp-proofed, drained and filled behind in layers.",
  group: "concrete",
  asks,
  rates: [...wallRates, "coating", "membrane", "drain", "gravel", "fill"],
  make,
  offers: (part, answers) => wallOffers(part, answers, true),
};
