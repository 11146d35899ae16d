import { countAsk, lengthAsk } from "../asks";
import type { Given, Kit, Made } from "../kit";
import { type Lists, namer } from "../together";

function members(given: Given): Lists {
  const { id, called } = namer(given);
  const { answers, units } = given;
  const ground = given.common("ground");
  const round_m = answers.length_mm("round") / 1000;
  const open = answers.joins("open");
  const caps = answers.number("caps");
  const who = answers.text("who");
  const days = answers.number("every");
  const looked =
    days === 0
      ? {}
      : {
          visits: {
            every: `${days} d`,
            lasts: "15 min",
            ...(who === "" ? {} : { who }),
            for: "look round the fence, the covers, the caps and the plastic",
          },
        };
  return {
    stock: [{ id: id("caps"), name: called("caps for bar ends"), unit: "cap", inHand: caps }],
    pieces: [
      {
        id: id("fence"),
        name: called("fence with a gate"),
        sort: "cover",
        makes: [`${given.common("dig")}.marked`, ...new Set(open.map(({ place }) => place))],
        off: [{ place: ground }],
      },
      ...(caps > 0
        ? [
            {
              id: id("caps-out"),
              name: called("caps on the site"),
              sort: "cover",
              off: [{ place: ground }],
              uses: [{ of: id("caps"), number: caps }],
            },
          ]
        : []),
    ],
    steps: [
      {
        id: id("set"),
        name: called("set the fence, hang the gate"),
        place: ground,
        work: given.hours("fence", round_m, 2),
        hands: 2,
        reaches: [{ place: ground }],
        puts: [id("fence"), ...(caps > 0 ? [id("caps-out")] : [])],
        cautions: [
          `Children come on weekdays. Every evening: gate locked, ladders lying and chained, holes covered with what bears a person and cannot slide, ${units === "us" ? "No. 3 bars and up" : "every bar end"} capped.`,
        ],
        notes: open.length > 0 ? `Inside it: ${open.map(({ name }) => name).join(", ")}.` : "Round everything one can fall into.",
      },
      {
        id: id("take"),
        name: called("take the fence and the caps away"),
        place: ground,
        work: given.hours("fence", round_m * 0.6, 2),
        hands: 2,
        reaches: [{ place: ground }],
        takes: [id("fence"), ...(caps > 0 ? [id("caps-out")] : [])],
      },
    ],
    waits: [
      { id: id("weekdays"), from: id("set"), to: id("take"), ...looked, why: "It stands as long as there is anything to fall into." },
    ],
  };
}

/** For the days on which nobody is there. */
export const siteFence: Kit = {
  id: "site-fence",
  name: "Fence, covers and caps",
  what: "A fence with a gate before anybody digs, caps for bar ends, and somebody who looks round on the days when nobody is there.",
  group: "around",
  rates: ["fence"],
  asks: [
    lengthAsk("round", "How long round the site", "120 ft", "36 m", 3000, 400_000),
    {
      key: "open",
      label: "Open inside it",
      help: "Nobody works there while the fence does not stand.",
      kind: "joins",
      offers: ["cast", "trench"],
      least: 0,
      most: 12,
    },
    countAsk("caps", "Caps for bar ends", 40, 0, 2000),
    countAsk("every", "Days from look to look", 3, 0, 30, { help: "0: nobody looks." }),
    { key: "who", label: "Who looks round", kind: "text", usual: "", when: (answers) => answers.number("every") > 0 },
  ],
  make(given): Made {
    const nobody = given.answers.number("every") > 0 && given.answers.text("who").trim() === "";
    return { lists: members(given), unknown: nobody ? [{ code: "who-looks", part: given.part }] : [] };
  },
  offers: () => [],
};
