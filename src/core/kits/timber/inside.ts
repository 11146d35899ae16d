import { choiceAsk, countAsk, yesAsk } from "../asks";
import { inspected } from "../inspected";
import type { Ask, Given } from "../kit";
import { saidAsk } from "../said";
import { type Lists, namer, ordered, together } from "../together";
import { isBoarded } from "./skin";

export const insideAsks: readonly Ask[] = [
  yesAsk("wiring", "Wired", true, { help: "By a licensed electrician." }),
  countAsk("points", "Outlets, switches and lamps", 8, 1, 60, { when: (answers) => answers.yes("wiring") }),
  saidAsk("says-circuits", "Circuits and loads", (answers) => answers.yes("wiring")),
  choiceAsk("insulation", "Insulation", { none: "none", batts: "batts between the studs", boards: "boards between the studs" }),
  yesAsk("lining", "Lined inside", false),
];

export const insideRates = ["wiring", "insulate", "lining", "photograph", "inspection"] as const;

/** Rough-in, its inspection before anything hides it, insulation, lining, and what the electrician comes back for. */
export function inside(given: Given): Lists {
  const { id, called } = namer(given);
  const { answers } = given;
  const area_m2 = (2 * (answers.length_mm("long") + answers.length_mm("wide")) * answers.length_mm("high")) / 1e6;
  const wired = answers.yes("wiring");
  const insulated = answers.choice("insulation") !== "none";
  const lined = answers.yes("lining");
  const hides = insulated ? id("insulation") : lined ? id("lining") : null;
  const wires: Lists = wired ? wiring(given, hides) : {};
  const filling: Lists = {
    places:
      insulated || lined
        ? [
            {
              id: id("cavity"),
              name: called("between the studs"),
              layerOf: id("floor"),
              ways: [{ id: "inside", name: "from inside", passes: ["person"], through: id("room") }],
            },
          ]
        : [],
    pieces: [
      ...(insulated ? [{ id: id("insulation"), name: called("insulation"), sort: "cover", fills: wired ? [id("wires")] : [] }] : []),
      ...(lined
        ? [
            {
              id: id("lining"),
              name: called("lining"),
              sort: "cover",
              fills: [id("cavity"), ...(wired && !insulated ? [id("wires")] : [])],
            },
          ]
        : []),
    ],
    steps: [
      ...(insulated
        ? [
            {
              id: id("insulate"),
              name: called(answers.choice("insulation") === "batts" ? "insulate between the studs" : "fit insulation boards"),
              place: id("cavity"),
              work: given.hours("insulate", area_m2 * 1.4, 2),
              hands: 2,
              reaches: [{ place: id("cavity") }],
              puts: [id("insulation")],
              needs: [id("inside-goods")],
              cautions: ["Mask, gloves, long sleeves. Where the vapor retarder goes, and whether, is the local code's."],
            },
          ]
        : []),
      ...(lined
        ? [
            {
              id: id("line-walls"),
              name: called("line the walls"),
              place: id("room"),
              work: given.hours("lining", area_m2 * 1.4, 2),
              hands: 2,
              reaches: [{ place: id("room") }],
              puts: [id("lining")],
              leansOn: insulated ? [{ piece: id("insulation") }] : [],
              needs: [id("inside-goods")],
            },
          ]
        : []),
    ],
    deliveries: insulated || lined ? [ordered(given, "inside-goods", "insulation and lining", 5)] : [],
  };
  return together(wires, filling);
}

function wiring(given: Given, hides: string | null): Lists {
  const { id, called } = namer(given);
  const trade = given.common("electrician");
  const points = given.answers.number("points");
  const by = { hands: 0, calendar: trade };
  const deferral = "By a licensed electrician: circuits, boxes and grounding are theirs, the supply off and locked.";
  const booking = (step: string, name: string) => ({
    id: id(`book-${step}`),
    name: called(name),
    step: id(step),
    calendar: trade,
    lead: { is: `10 days of ${trade}`, from: "own guess" },
    booked: false,
  });
  const seen = inspected(given, {
    id: "inspect-wires",
    name: "rough wiring inspection",
    places: [id("wires")],
    pieces: [id("rough-in")],
    notice_days: given.answers.number("visit"),
  });
  return together(
    {
      places: [
        {
          id: id("wires"),
          name: called("wires in the open walls"),
          layerOf: id("floor"),
          ways: [
            ...(isBoarded(given.answers)
              ? [{ id: "boarded", name: "by the boarded opening", passes: ["person"], through: id("floor") }]
              : []),
            { id: "inside", name: "from inside", passes: ["person"], through: id("room") },
          ],
        },
      ],
      pieces: [
        { id: id("rough-in"), name: called("boxes and wires"), sort: "other" },
        ...(hides === null ? [{ id: id("plates"), name: called("cover plates"), sort: "cover", fills: [id("wires")] }] : []),
      ],
      steps: [
        {
          id: id("wire"),
          name: called("rough in boxes and wires"),
          place: id("wires"),
          work: given.hours("wiring", points),
          ...by,
          reaches: [{ place: id("wires") }],
          puts: [id("rough-in")],
          cautions: [deferral],
        },
        {
          id: id("photo-wires"),
          name: called("photograph every wall with a tape"),
          sort: "photograph",
          place: id("wires"),
          work: given.hours("photograph", 1),
          reaches: [{ place: id("wires"), need: "sight" }],
          leansOn: [{ piece: id("rough-in") }],
        },
        {
          id: id("fit-out"),
          name: called("switches, outlets, lamps, test"),
          place: id("room"),
          work: given.hours("wiring", points * 0.5),
          ...by,
          reaches: [{ place: id("room") }],
          puts: hides === null ? [id("plates")] : [],
          leansOn: [{ piece: id("rough-in") }, ...(hides === null ? [] : [{ piece: given.answers.yes("lining") ? id("lining") : hides }])],
          cautions: [deferral],
        },
      ],
      bookings: [booking("wire", "electrician, rough wiring"), booking("fit-out", "electrician, second visit")],
    },
    seen,
  );
}
