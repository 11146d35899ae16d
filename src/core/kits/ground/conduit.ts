import { formatLength } from "../../base";
import type { Given } from "../kit";
import { type Lists, namer, ordered } from "../together";

/** Sand bed and conduit, that the trench is deeper than the cover over the conduit. */
const under_mm = 152.4;

/** Bed, conduit with its string, and what is seen of it: all while the trench is open. */
export function laid(given: Given): Lists {
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
          `Earth cover over conduit or cable is the local code's; Table 300.5 of the NEC asks for 18 in (450 mm) over plastic conduit in most yards, here about ${formatLength(Math.max(0, given.answers.length_mm("deep") - under_mm), given.units)}. Power and telephone never share one.`,
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
export function closed(given: Given): Lists {
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
