import { formatLength } from "../../base";
import { choiceAsk, countAsk, yesAsk } from "../asks";
import type { Given, Kit, Made } from "../kit";
import { saidAsk, unsaid } from "../said";
import { type Lists, namer } from "../together";

interface Sort {
  readonly name: string;
  readonly unit: string;
  /** Of one, both faces, for the hours of cleaning it. */
  readonly face_m2: number;
  readonly size: (units: "us" | "metric") => string;
}

const sheet_mm = 19;
const sorts: Readonly<Record<string, Sort>> = {
  sheets: {
    name: "Form plywood",
    unit: "sheet",
    face_m2: 2.97,
    size: (units) => (units === "us" ? "3/4 in, 4 by 8 ft" : `${formatLength(sheet_mm, units)}, 1.22 by 2.44 m`),
  },
  studs: { name: "2x4", unit: "piece", face_m2: 0.9, size: () => "" },
  boards: { name: "Boards", unit: "piece", face_m2: 0.9, size: () => "" },
  shores: { name: "Adjustable shores", unit: "shore", face_m2: 0.3, size: () => "" },
};

function members(given: Given): Lists {
  const { id, called } = namer(given);
  const { answers, units } = given;
  const sort = sorts[answers.choice("sort")] as Sort;
  const number = answers.number("number");
  const size = sort.size(units);
  const store = given.common("store");
  const name = size === "" ? sort.name : `${sort.name} ${size}`;
  const stock = { id: id("stock"), name, unit: sort.unit, inHand: number };
  if (!answers.yes("salvaged")) return { stock: [stock] };
  return {
    stock: [stock],
    pieces: [{ id: id("sorted"), name: called("cleaned and sorted"), sort: "other" }],
    steps: [
      {
        id: id("sort"),
        name: called("draw nails, scrape, look over, sort"),
        place: store,
        work: given.hours("clean", number * sort.face_m2),
        reaches: [{ place: store }],
        puts: [id("sorted")],
        tools: ["nail puller", "scraper", "metal detector", "chalk"],
        cautions: [
          "Salvaged lumber has no grade: whatever carries is counted as the weakest there is, or graded by somebody who may. Split, rotten, notched or twice-drilled pieces carry nothing.",
          "Old paint can be lead: no dry sanding, no burning.",
        ],
        notes: "Good faces for what is seen, marked on the back; then backs, then firewood. Count what is left and change the number here.",
      },
    ],
  };
}

/** What lies in the barn already. */
export const stockInHand: Kit = {
  id: "stock-in-hand",
  name: "Stock in hand",
  what: "Sheets, studs, boards or shores that are there already, salvaged or new, with the hours it takes to make salvaged ones fit to use.",
  group: "before",
  rates: ["clean"],
  asks: [
    choiceAsk("sort", "What it is", { sheets: "Form plywood", studs: "2x4", boards: "Boards", shores: "Adjustable shores" }),
    countAsk("number", "How many", 6, 1, 500),
    yesAsk("salvaged", "Salvaged", true),
    saidAsk("says-grade", "Its grade", (answers) => answers.yes("salvaged")),
  ],
  make: (given): Made => ({
    lists: members(given),
    unknown: given.answers.yes("salvaged") ? unsaid(given, "says-grade", "salvaged-grade") : [],
  }),
  offers: () => [],
};
