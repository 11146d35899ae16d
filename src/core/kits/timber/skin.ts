import { choiceAsk, countAsk, yesAsk } from "../asks";
import type { Answers, Ask, Given } from "../kit";
import { type Lists, namer, ordered } from "../together";

export const skinAsks: readonly Ask[] = [
  countAsk("windows", "Windows", 2, 0, 20),
  countAsk("doors", "Doors", 1, 0, 6),
  choiceAsk(
    "joinery",
    "Windows and doors",
    { ordered: "to be ordered", "in hand": "in hand" },
    { when: (answers) => answers.number("windows") + answers.number("doors") > 0 },
  ),
  countAsk("lead", "Weeks from order to site", 8, 1, 40, {
    when: (answers) => answers.choice("joinery") === "ordered" && answers.number("windows") + answers.number("doors") > 0,
  }),
  yesAsk("boarded", "Openings boarded up until they come", true, {
    help: "Then the rough wiring need not wait for them.",
    when: (answers) =>
      answers.yes("wiring") && answers.choice("joinery") === "ordered" && answers.number("windows") + answers.number("doors") > 0,
  }),
  choiceAsk("siding", "Siding", { boards: "boards", panels: "panels" }),
  yesAsk("paint", "Painted", true),
];

/** Whether openings are boarded up for the time until windows and doors come. */
export const isBoarded = (answers: Answers): boolean =>
  answers.number("windows") + answers.number("doors") > 0 &&
  answers.yes("wiring") &&
  answers.choice("joinery") === "ordered" &&
  answers.yes("boarded");

/** Ways that wrap and roof make: into the dry room, and to the wires while the openings are boarded up. */
export function dryWays(given: Given): readonly string[] {
  const { id } = namer(given);
  return [`${id("room")}.door`, ...(isBoarded(given.answers) ? [`${id("wires")}.boarded`] : [])];
}

export const skinRates = ["wrap", "cover", "window", "siding", "paint", "photograph"] as const;

/** Wrap, windows and doors, siding, paint: from the nailing outwards. */
export function skin(given: Given): Lists {
  const { id, called } = namer(given);
  const { answers, units } = given;
  const area_m2 = (2 * (answers.length_mm("long") + answers.length_mm("wide")) * answers.length_mm("high")) / 1e6;
  const holes = answers.number("windows") + answers.number("doors");
  const toOrder = holes > 0 && answers.choice("joinery") === "ordered";
  const store = given.common("store");
  const boarded = isBoarded(answers);
  const painted = answers.yes("paint");
  const joinery = holes > 0 ? [{ piece: id("joinery") }] : [];
  const lowest = units === "us" ? "50 °F" : "10 °C";
  return {
    pieces: [
      { id: id("wrap"), name: called("wrap"), sort: "cover", fills: [id("nailing")], makes: dryWays(given) },
      ...(holes > 0 ? [{ id: id("joinery"), name: called("windows and doors"), sort: "other", makes: [`${id("room")}.door`] }] : []),
      ...(boarded
        ? [
            {
              id: id("boards-up"),
              name: called("boarded openings"),
              sort: "cover",
              makes: [`${id("wires")}.boarded`],
              off: [{ place: id("outside") }],
            },
          ]
        : []),
      ...(painted
        ? [
            { id: id("primed"), name: called("primed siding"), sort: "other" },
            { id: id("first-coat"), name: called("first coat"), sort: "cover" },
          ]
        : []),
      { id: id("siding"), name: called("siding"), sort: "cover", fills: [id("flashings")] },
    ],
    steps: [
      {
        id: id("hang-wrap"),
        name: called("hang and tape the wrap"),
        place: id("outside"),
        work: given.hours("wrap", area_m2, 2),
        hands: 2,
        reaches: [{ place: id("outside") }],
        puts: [id("wrap")],
        leansOn: [{ piece: id("sheathing") }],
        needs: [id("siding-goods")],
        weather: { wind: units === "us" ? "15 mph" : "25 km/h" },
      },
      ...(boarded
        ? [
            {
              id: id("board-up"),
              name: called("board up the openings"),
              place: id("outside"),
              work: given.hours("cover", holes),
              reaches: [{ place: id("outside") }],
              puts: [id("boards-up")],
              leansOn: [{ piece: id("wrap") }],
              notes: "Screwed from outside, one of them as a door with a lock.",
            },
          ]
        : []),
      ...(holes > 0
        ? [
            {
              id: id("set-joinery"),
              name: called("set and flash windows and doors"),
              place: id("flashings"),
              work: given.hours("window", holes, 2),
              hands: 2,
              reaches: [{ place: id("flashings") }, { place: id("floor") }],
              puts: [id("joinery")],
              takes: boarded ? [id("boards-up")] : [],
              leansOn: [{ piece: id("wrap") }],
              needs: toOrder ? [id("joinery-comes")] : [],
              weather: { dry: true },
              notes: "Sill flashing first, then sides, then head, each over the one below.",
            },
          ]
        : []),
      {
        id: id("photo-flashings"),
        name: called("photograph the flashings"),
        sort: "photograph",
        place: id("flashings"),
        work: given.hours("photograph", 1),
        reaches: [{ place: id("flashings"), need: "sight" }],
        leansOn: [{ piece: id("wrap") }, ...joinery],
      },
      ...(painted
        ? [
            {
              id: id("prime-siding"),
              name: called("prime the siding on all faces"),
              place: store,
              work: given.hours("paint", area_m2 * 2),
              reaches: [{ place: store }],
              puts: [id("primed")],
              needs: [id("siding-goods")],
            },
          ]
        : []),
      {
        id: id("nail-siding"),
        name: called("trim and siding"),
        place: id("outside"),
        work: given.hours("siding", area_m2, 2),
        hands: 2,
        reaches: [{ place: id("outside") }],
        puts: [id("siding")],
        leansOn: [
          { piece: id("wrap") },
          ...joinery,
          ...(painted ? [{ piece: id("primed"), once: { is: "24 h", from: "own guess" } }] : []),
        ],
        needs: [id("siding-goods")],
        notes: `${answers.choice("siding") === "boards" ? "Boards" : "Panels"} end 6 in (150 mm) above the ground and clear of the roof below.`,
      },
      ...(painted
        ? [1, 2].map((coat) => ({
            id: id(`paint-${coat}`),
            name: called(coat === 1 ? "paint, first coat" : "paint, second coat"),
            place: id("outside"),
            work: given.hours("paint", area_m2, 2),
            hands: 2,
            reaches: [{ place: id("outside") }],
            ...(coat === 1 ? { puts: [id("first-coat")] } : {}),
            leansOn: coat === 1 ? [{ piece: id("siding") }] : [{ piece: id("first-coat"), once: { is: "16 h", from: "own guess" } }],
            weather: { lowest, highest: units === "us" ? "90 °F" : "32 °C", dry: true },
            notes: "No colder in the night after; out of the full sun. The tin's sheet rules.",
          }))
        : []),
    ],
    waits: [
      {
        id: id("wrap-bare"),
        from: id("hang-wrap"),
        to: id("nail-siding"),
        most: { is: "120 d", from: "own guess" },
        why: "The wrap may stand in the sun for so long only: its sheet says how long.",
      },
    ],
    deliveries: [
      ordered(given, "siding-goods", "wrap, flashings, siding, trim, paint", 15),
      ...(toOrder
        ? [
            {
              ...ordered(given, "joinery-comes", "windows and doors", 1),
              lead: { is: `${answers.number("lead")} wk`, from: "own guess" },
            },
          ]
        : []),
    ],
  };
}
