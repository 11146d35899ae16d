import { formatLength } from "../../base";
import { countAsk, yesAsk } from "../asks";
import type { Given, Kit, Made } from "../kit";
import { handDigCaution, utilityMarks } from "../marks";
import { type Lists, namer, together } from "../together";

/** How far outside the work the boards stand, so that nobody digs them away. */
const clear_mm = { us: 1219.2, metric: 1200 } as const;

function boards(given: Given): Lists {
  const { id, called } = namer(given);
  const ground = given.common("ground");
  const corners = given.answers.number("corners");
  return {
    pieces: [
      {
        id: id("boards"),
        name: called("batter boards and strings"),
        sort: "other",
        makes: [`${given.common("dig")}.marked`, `${given.common("lines")}.strings`],
        off: [{ place: ground }],
      },
      // Nobody digs to lines that were not checked.
      { id: id("checked"), name: called("checked lines"), sort: "other", makes: [`${given.common("dig")}.marked`] },
    ],
    steps: [
      {
        id: id("set-boards"),
        name: called("set batter boards and strings"),
        place: ground,
        work: given.hours("batter-board", corners, 2),
        hands: 2,
        reaches: [{ place: ground }],
        puts: [id("boards")],
        tools: ["water level or laser", "two long tapes", "string, nails"],
        leansOn: given.answers.yes("marks") ? [{ piece: id("record") }] : [],
        cautions: [`Stakes go in where the marks are seen, not before. ${handDigCaution(given.units)}`],
        materials: [`stakes and boards for ${corners} corners`],
        notes: `Boards ${formatLength(clear_mm[given.units], given.units)} outside the work, tops level; mark the datum where nothing will move it.`,
      },
      {
        id: id("check-lines"),
        name: called("check diagonals and heights"),
        sort: "check",
        place: ground,
        work: given.hours("check", 1, 2),
        hands: 2,
        reaches: [{ place: ground }, { place: given.common("lines"), need: "sight" }],
        puts: [id("checked")],
        leansOn: [{ piece: id("boards") }],
        notes: "3-4-5 at each corner, both diagonals alike. Measured by two people, written down.",
      },
      {
        id: id("take-boards"),
        name: called("take the batter boards down"),
        place: ground,
        work: given.hours("batter-board-down", corners),
        reaches: [{ place: ground }],
        takes: [id("boards")],
        notes: "Only when everything that is set to the strings stands.",
      },
    ],
  };
}

/** Lines over the work and the utilities under it: both before the first shovel. */
export const layout: Kit = {
  id: "layout",
  name: "Layout and utility marks",
  what: "Batter boards and strings, and the utility marks that must be there, and still valid, whenever anybody digs.",
  group: "before",
  rates: ["batter-board", "batter-board-down", "check", "office", "locate", "photograph"],
  asks: [
    yesAsk("boards", "Batter boards", true),
    countAsk("corners", "Corners with boards", 4, 1, 12, { when: (answers) => answers.yes("boards") }),
    yesAsk("marks", "Ask for utility marks", true, { help: "Free of charge in most places, and the law before digging." }),
    countAsk("notice", "Office days from request to marks", 3, 1, 20, {
      help: "Two full working days' notice: the marks come on the third.",
      when: (answers) => answers.yes("marks"),
    }),
    countAsk("valid", "Days the marks stay valid", 28, 10, 120, {
      help: "Local law says how long. All digging ends before.",
      when: (answers) => answers.yes("marks"),
    }),
    yesAsk("renewed", "Asked for again before they expire", false, {
      help: "As long as anybody digs. Otherwise all digging ends before.",
      when: (answers) => answers.yes("marks"),
    }),
  ],

  make(given): Made {
    const { answers, part } = given;
    const marked = answers.yes("marks");
    const lists = together(
      answers.yes("boards") ? boards(given) : {},
      marked
        ? utilityMarks(given, {
            makes: `${given.common("dig")}.marked`,
            on: given.common("ground"),
            notice_days: answers.number("notice"),
            valid_days: answers.number("valid"),
            renewed: answers.yes("renewed"),
          })
        : {},
    );
    return { lists, unknown: marked ? [] : [{ code: "utility-marks", part }] };
  },

  offers: () => [],
};
