import { countAsk, yesAsk } from "../asks";
import { inspected } from "../inspected";
import type { Given, Kit, Made } from "../kit";
import { utilityMarks } from "../marks";
import { saidAsk, unsaid } from "../said";
import { type Lists, namer, together } from "../together";
import { closed, laid } from "./conduit";
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
