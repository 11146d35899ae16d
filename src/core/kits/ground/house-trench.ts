import { formatLength } from "../../base";
import { countAsk, yesAsk } from "../asks";
import { inspected } from "../inspected";
import type { Given, Kit, Made } from "../kit";
import { utilityMarks } from "../marks";
import { saidAsk, unsaid } from "../said";
import { type Lists, namer, ordered, together } from "../together";
import {
  dug,
  filled,
  isDugWithin,
  siteAsks,
  soilUnknown,
  type TrenchSizes,
  trenchAsks,
  trenchOffer,
  trenchRates,
  trenchSizes,
  trenchSolid,
} from "./digging";

/** Where the digging of this trench goes on: its own ground where marks are asked for again, else that of the whole build. */
function ownGround(given: Given, sizes: TrenchSizes): { readonly dig: string; readonly lists: Lists } {
  const { id, called } = namer(given);
  if (!given.answers.yes("marks")) return { dig: given.common("dig"), lists: {} };
  const ground = given.common("ground");
  const place = {
    id: id("line"),
    name: called("the line on the ground"),
    ways: [{ id: "marked", name: "where the marks are", passes: ["person", "machine"], through: ground }],
  };
  const { answers } = given;
  const marks = utilityMarks(given, {
    makes: `${id("line")}.marked`,
    on: ground,
    notice_days: answers.number("notice"),
    valid_days: answers.number("valid"),
    renewed: !isDugWithin(given, sizes, answers.number("valid")),
  });
  return { dig: id("line"), lists: together({ places: [place] }, marks) };
}

/** Bed, conduit with its string, and what is seen of it: all while the trench is open. */
function laid(given: Given): Lists {
  const { id, called } = namer(given);
  const long_m = given.answers.length_mm("long") / 1000;
  const size = given.answers.choice("conduit");
  const cast = given.answers.joins("cast")[0];
  const sleeve = cast ? [{ piece: id("sleeve") }] : [];
  return {
    places: [
      {
        id: id("run"),
        name: called("conduit as laid"),
        layerOf: id("trench"),
        ways: [{ id: "bare", name: "from the trench", passes: ["person"], through: id("trench") }],
      },
      {
        id: id("bore"),
        name: called("bore of the conduit"),
        layerOf: id("trench"),
        ways: [{ id: "ends", name: "from its two ends", passes: ["hand"], depth: given.units === "us" ? "12 in" : "300 mm" }],
      },
    ],
    pieces: [
      { id: id("bed"), name: called("sand bed"), sort: "earth" },
      { id: id("conduit"), name: called("conduit"), sort: "other", makes: [`${id("bore")}.ends`] },
      { id: id("string"), name: called("pull string"), sort: "other" },
      ...(cast ? [{ id: id("sleeve"), name: called("sleeve in the concrete"), sort: "other" }] : []),
    ],
    steps: [
      ...(cast
        ? [
            {
              id: id("set-sleeve"),
              name: called(`set the sleeve into ${cast.name}`),
              sort: "embed",
              place: cast.place,
              work: given.hours("embed", 1),
              reaches: [{ place: cast.place, need: "arm" }],
              puts: [id("sleeve")],
              materials: ["sleeve one size over the conduit, ends taped"],
              notes: "No bar is cut for it; where one is in the way, the engineer says.",
            },
          ]
        : []),
      {
        id: id("lay-bed"),
        name: called("rake out stones, sand bed"),
        place: id("trench"),
        work: given.hours("fill", long_m * (given.answers.length_mm("wide") / 1000) * 0.1, 2),
        hands: 2,
        reaches: [{ place: id("trench") }],
        puts: [id("bed")],
        leansOn: [{ piece: id("hole") }],
      },
      {
        id: id("lay-conduit"),
        name: called("lay and glue the conduit"),
        place: id("run"),
        work: given.hours("conduit", long_m, 2),
        hands: 2,
        reaches: [{ place: id("run") }],
        puts: [id("conduit")],
        leansOn: [{ piece: id("bed") }, ...sleeve],
        needs: [id("goods")],
        materials: [`${size} conduit, sweeps, glue, ${formatLength(given.answers.length_mm("long") * 1.1, given.units)} of it`],
        cautions: [
          "Earth cover over conduit or cable is the local code's; Table 300.5 of the NEC asks for 18 in (450 mm) over plastic conduit in most yards. Power and telephone never share one.",
        ],
        notes: "Long sweeps, no more than four quarter bends between pulls; both ends capped.",
      },
      {
        id: id("pull-string"),
        name: called("draw a rag through and leave a string"),
        place: id("run"),
        work: given.hours("string", 1),
        reaches: [{ place: id("bore"), need: "hand" }, { place: id("run") }],
        puts: [id("string")],
        leansOn: [{ piece: id("conduit") }],
        notes: "What sticks now is dug out in a minute. After the backfill it stays.",
      },
      {
        id: id("photo-conduit"),
        name: called("photograph the conduit with a tape"),
        sort: "photograph",
        place: id("run"),
        work: given.hours("photograph", 1),
        reaches: [{ place: id("run"), need: "sight" }],
        leansOn: [{ piece: id("string") }],
      },
    ],
    deliveries: [ordered(given, "goods", "conduit, sweeps, tape, string", 3)],
  };
}

/** Sand, tape, and the cable after all that. */
function closed(given: Given): Lists {
  const { id, called } = namer(given);
  const { answers } = given;
  const long_m = answers.length_mm("long") / 1000;
  const dry = answers.joins("room")[0];
  const trade = given.common("electrician");
  return {
    pieces: [
      { id: id("sand"), name: called("sand over the conduit"), sort: "earth", fills: [id("run")] },
      { id: id("tape"), name: called("warning tape"), sort: "cover" },
      { id: id("cable"), name: called("cable"), sort: "other" },
    ],
    steps: [
      {
        id: id("sand-over"),
        name: called("sand over the conduit"),
        place: id("trench"),
        work: given.hours("fill", long_m * (answers.length_mm("wide") / 1000) * 0.15, 2),
        hands: 2,
        reaches: [{ place: id("trench") }],
        puts: [id("sand")],
        leansOn: [{ piece: id("string") }],
      },
      {
        id: id("lay-tape"),
        name: called("first layer and warning tape"),
        place: id("trench"),
        work: given.hours("tape", long_m),
        reaches: [{ place: id("trench") }],
        puts: [id("tape")],
        leansOn: [{ piece: id("sand") }],
        notes: `Tape ${formatLength(given.units === "us" ? 304.8 : 300, given.units)} below the surface, printed side up.`,
      },
      {
        id: id("pull-cable"),
        name: called("pull the cable and connect it"),
        place: id("bore"),
        work: given.hours("cable", long_m),
        hands: 0,
        calendar: trade,
        reaches: [{ place: id("bore"), need: "hand" }, ...(dry ? [{ place: dry.place }] : [])],
        puts: [id("cable")],
        leansOn: [{ piece: id("string") }, { piece: id("backfill") }],
        cautions: ["By a licensed electrician: cable, breaker and grounding are theirs, with the supply off and locked."],
      },
    ],
    bookings: [
      {
        id: id("electrician"),
        name: called("electrician for the cable"),
        step: id("pull-cable"),
        calendar: trade,
        lead: { is: `10 days of ${trade}`, from: "own guess" },
        booked: false,
      },
    ],
  };
}

/** From the house to the work: conduit before backfill, the cable after. */
export const houseTrench: Kit = {
  id: "house-trench",
  name: "Trench to the house with conduit and cable",
  what: "A trench dug inside its marks, conduit with a pull string, seen while it is open, sand, warning tape, backfill, and the cable pulled after.",
  group: "ground",
  rates: [...trenchRates, "conduit", "string", "tape", "cable", "embed", "photograph", "office", "locate", "inspection"],
  asks: [
    ...trenchAsks({ us: "26 in", metric: "650 mm" }, { us: "12 in", metric: "300 mm" }),
    ...siteAsks({ us: "30 ft", metric: "9 m" }, { us: "0 ft", metric: "0 m" }),
    {
      key: "conduit",
      label: "Conduit",
      help: "The electrician says which; a size more costs little.",
      kind: "choice",
      usual: "1 1/4 in (32 mm)",
      options: ["1 in (25 mm)", "1 1/4 in (32 mm)", "1 1/2 in (40 mm)", "2 in (50 mm)"].map((value) => ({ value, name: value })),
    },
    saidAsk("says-cable", "Which cable, breaker and conduit"),
    {
      key: "cast",
      label: "Sleeve cast into",
      help: "A form that is still to be poured, where the conduit comes through.",
      kind: "joins",
      offers: ["cast"],
      least: 0,
      most: 1,
    },
    { key: "room", label: "Ends in", kind: "joins", offers: ["dry"], least: 0, most: 1 },
    yesAsk("inspected", "Inspector sees the open trench", true),
    countAsk("visit", "Inspector's days from request to visit", 1, 1, 20, { when: (answers) => answers.yes("inspected") }),
    yesAsk("marks", "Ask for marks again for this trench", true, { help: "Marks asked for at the start have often expired by then." }),
    countAsk("notice", "Office days from request to marks", 3, 1, 20, { when: (answers) => answers.yes("marks") }),
    countAsk("valid", "Days the marks stay valid", 28, 10, 120, { when: (answers) => answers.yes("marks") }),
  ],

  make(given): Made {
    const { id } = namer(given);
    const sizes = trenchSizes(given);
    const own = ownGround(given, sizes);
    const seen = given.answers.yes("inspected")
      ? inspected(given, {
          id: "inspect-trench",
          name: "open trench inspection",
          places: [id("run")],
          pieces: [id("conduit"), id("string")],
          notice_days: given.answers.number("visit"),
        })
      : {};
    const lists = together(
      own.lists,
      dug(given, sizes, own.dig),
      laid(given),
      seen,
      closed(given),
      filled(given, sizes, 0.7, [id("tape")]),
      trenchSolid(given, sizes),
    );
    return { lists, unknown: [...unsaid(given, "says-cable", "conductors"), ...soilUnknown(given, sizes)] };
  },

  offers: (part, answers) => [trenchOffer(part, answers)],
};
