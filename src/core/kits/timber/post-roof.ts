import { formatLength } from "../../base";
import { countAsk, lengthAsk, yesAsk } from "../asks";
import { inspected } from "../inspected";
import type { Given, Kit, Made } from "../kit";
import { type Lists, levelAt, namer, ordered, together } from "../together";
import { type Base, baseAsks, baseOf, baseRates, bolted, loadCautions, sizeAsks, standsOn, timberUnknown } from "./base";
import { roofAsks, roofed, roofRates, roofSolid } from "./roof";

function frame(given: Given, base: Base): Lists {
  const { id, called } = namer(given);
  const { answers, units } = given;
  const [long_mm, high_mm] = [answers.length_mm("long"), answers.length_mm("high")];
  const posts = postsOf(given);
  const feet = [{ place: id("feet") }, ...base.places.slice(1).map((place) => ({ place })), ...base.holes];
  const bolts = base.stands ? [{ piece: id("bolts") }] : [];
  return {
    places: [
      // Post feet and bolts are under the posts once these stand.
      {
        id: id("feet"),
        name: called("feet of the posts"),
        level: levelAt(base.at_mm.z),
        layerOf: base.place,
        ways: [{ id: "open", name: "from where one stands", passes: ["person"], through: base.place }],
      },
      {
        id: id("joints"),
        name: called("joints of posts and beams"),
        level: levelAt(base.at_mm.z + high_mm),
        ways: [{ id: "below", name: "from trestles below", passes: ["arm", "sight"], through: base.place }],
      },
    ],
    pieces: [
      { id: id("post-bases"), name: called("post bases"), sort: "other" },
      { id: id("posts"), name: called("posts"), sort: "other", fills: [id("feet")], heldBy: [[id("braces")], [id("beams")]] },
      { id: id("braces"), name: called("temporary braces"), sort: "brace", off: [{ place: base.place }] },
      { id: id("beams"), name: called("beams and knee braces"), sort: "other", heldBy: [[id("posts")]] },
    ],
    steps: [
      {
        id: id("set-post-bases"),
        name: called("string line, post bases on their bolts"),
        place: id("feet"),
        work: given.hours("sill", posts * 0.5, 2),
        hands: 2,
        reaches: feet,
        puts: [id("post-bases")],
        leansOn: [...base.lean, ...bolts],
        needs: [id("posts-beams")],
        notes: "Wood ends stay an inch (25 mm) clear of concrete and standing water.",
      },
      {
        id: id("stand-posts"),
        name: called("stand, plumb and brace the posts"),
        place: id("feet"),
        work: given.hours("post", posts, 2),
        hands: 2,
        notAlone: true,
        reaches: feet,
        puts: [id("posts"), id("braces")],
        leansOn: [{ piece: id("post-bases") }],
        needs: [id("posts-beams")],
        weather: { wind: units === "us" ? "20 mph" : "30 km/h" },
        cautions: ["No post is let go before it is braced both ways.", ...loadCautions(base)],
        notes: `${posts} posts of ${answers.text("post-size")}, ${formatLength(high_mm, units)} to the underside of the beam.`,
      },
      {
        id: id("set-beams"),
        name: called("beams and knee braces"),
        place: id("joints"),
        work: given.hours("beam", (long_mm * 2) / 1000, 2),
        hands: 2,
        notAlone: true,
        reaches: [{ place: base.place }, { place: id("joints"), need: "arm" }],
        puts: [id("beams")],
        leansOn: [{ piece: id("posts") }, { piece: id("braces") }],
        needs: [id("posts-beams")],
        cautions: ["Lifted from two trestles by two people, each end tied before it is let go; nobody under it."],
      },
      {
        id: id("take-braces"),
        name: called("take the temporary braces out"),
        place: base.place,
        work: given.hours("braces-down", (long_mm * 2) / 1000),
        reaches: [{ place: base.place }],
        takes: [id("braces")],
        leansOn: [{ piece: id("roof-boards") }],
        notes: "Knee braces, beams and boards keep it square from now on.",
      },
    ],
    deliveries: [ordered(given, "posts-beams", "posts, beams, post bases, bolts", 10)],
  };
}

const postsOf = (given: Given): number => {
  const on = standsOn(given.answers);
  return on.length > 1 ? on.length : given.answers.number("posts");
};

/** Each on its own, or in two rows over the floor. */
function postsAt(given: Given, base: Base, across_mm: number): readonly Base["at_mm"][] {
  const { answers } = given;
  const on = standsOn(given.answers);
  if (on.length > 1) return on.map(({ at_mm }) => at_mm);
  const { x, y, z } = base.at_mm;
  const count = answers.number("posts");
  const rows = Math.ceil(count / 2);
  return Array.from({ length: count }, (_, i) => {
    const [along, side] = [Math.floor(i / 2), i % 2];
    const right = rows === 1 ? 0 : (along / (rows - 1) - 0.5) * (answers.length_mm("long") - across_mm);
    return { x: x + right, y: y + (side - 0.5) * (answers.length_mm("wide") - across_mm), z };
  });
}

function drawn(given: Given, base: Base): Lists {
  const { id, called } = namer(given);
  const { answers, units } = given;
  const length = (mm: number): string => formatLength(mm, units);
  const [long_mm, wide_mm, high_mm] = [answers.length_mm("long"), answers.length_mm("wide"), answers.length_mm("high")];
  const { x, y, z } = base.at_mm;
  const across = units === "us" ? 139.7 : 140;
  return {
    solids: [
      ...postsAt(given, base, across).map((at, i) => ({
        id: id(`post-${i + 1}`),
        name: called(`post ${i + 1}`),
        shape: "box",
        at: { x: length(at.x), y: length(at.y), z: length(at.z) },
        size: { long: length(across), wide: length(across), high: length(high_mm) },
        pieces: [id("posts")],
        places: [id("feet")],
      })),
      roofSolid(given, { x, y, z: z + high_mm }, long_mm, wide_mm),
    ],
  };
}

/** A roof alone, on posts. */
export const postRoof: Kit = {
  id: "post-roof",
  name: "Small roof on posts",
  what: "Posts bolted to a slab, columns or footings, beams with knee braces, and a roof over them.",
  group: "timber",
  rates: [...baseRates, ...roofRates, "sill", "post", "beam", "braces-down", "inspection"],
  asks: [
    ...baseAsks,
    lengthAsk("long", "How long between outer posts", "8 ft", "2.4 m", 900, 9000),
    lengthAsk("wide", "How wide between outer posts", "6 ft", "1.8 m", 900, 6000),
    lengthAsk("high", "Height under the beams", "7 ft", "2.1 m", 1500, 4500),
    countAsk("posts", "How many posts", 4, 2, 12, {
      help: "In two rows.",
      when: (answers) => answers.joins("base").length > 0 || answers.joins("each").length === 0,
    }),
    { key: "post-size", label: "Size of the posts", help: "What they must be is the drawing's.", kind: "text", usual: "6x6" },
    ...sizeAsks,
    ...roofAsks("posts"),
    yesAsk("inspected", "Inspector sees the frame before it is covered", true),
    countAsk("visit", "Inspector's days from request to visit", 1, 1, 20, { when: (answers) => answers.yes("inspected") }),
  ],

  make(given): Made {
    const { id } = namer(given);
    const { answers } = given;
    const base = baseOf(given);
    const [long_mm, wide_mm, high_mm] = [answers.length_mm("long"), answers.length_mm("wide"), answers.length_mm("high")];
    const roof = roofed(given, {
      long_mm,
      wide_mm,
      eaves_mm: base.at_mm.z + high_mm,
      high_mm,
      inside: base.place,
      outside: base.place,
      on: [id("beams")],
      scaffold: { after: [id("beams")], makes: [], high_mm },
      makes: [],
    });
    const seen = answers.yes("inspected")
      ? inspected(given, {
          id: "inspect-frame",
          name: "frame inspection",
          places: [id("decking"), id("joints")],
          pieces: [id("beams"), id("roof-boards")],
          notice_days: answers.number("visit"),
        })
      : {};
    const bolts = bolted(given, base, postsOf(given) * 2, id("feet"));
    const lists = together(bolts, frame(given, base), roof, seen, drawn(given, base));
    return { lists, unknown: timberUnknown(given, base) };
  },

  offers: () => [],
};
