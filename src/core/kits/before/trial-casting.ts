import { countAsk } from "../asks";
import type { Given, Kit, Made } from "../kit";
import { type Lists, namer, ordered } from "../together";

function members(given: Given): Lists {
  const { id, called } = namer(given);
  const { answers } = given;
  const store = given.common("store");
  const what = answers.text("what");
  const rounds = answers.number("rounds");
  const pours = [...new Set(answers.joins("decides").map(({ pourStep }) => pourStep))].filter((step) => step !== "");
  return {
    places: [
      {
        id: id("box"),
        name: called("the trial box"),
        layerOf: store,
        ways: [{ id: "bench", name: "on the bench", passes: ["person", "hose"], through: store }],
      },
    ],
    steps: [
      {
        id: id("cast"),
        name: called("build the box and cast it"),
        place: id("box"),
        work: given.hours("trial", 1, 1),
        reaches: [{ place: id("box") }],
        needs: [id("bags")],
        materials: ["box of the very sheets, oil and sealant that are to be used", `${answers.number("bags")} bags for each round`],
        cautions: ["Wet concrete burns, its dust is silica: gloves, glasses, mask, clean water at hand."],
        notes: `One thing changed a round, written on the box. It decides: ${what}.`,
        trial: { rounds, gap: { is: answers.written("gap"), from: "own guess" }, decides: [id("look")], what },
      },
      {
        id: id("look"),
        name: called("strip it, look at it dry, decide"),
        sort: "check",
        place: id("box"),
        work: given.hours("check", rounds),
        reaches: [{ place: id("box") }],
        notes: "Photograph it wet and dry beside the paper that says what was done.",
        trial: { rounds: 1, decides: pours, what },
      },
    ],
    waits: [
      {
        id: id("dry"),
        from: id("cast"),
        to: id("look"),
        least: { is: answers.written("dry"), from: "own guess" },
        why: "Stripped when it holds its edges, judged when it is dry.",
      },
    ],
    deliveries: [ordered(given, "bags", "bags, oil, sealant for the trial", 2)],
  };
}

/** A small box before the big form: a mix, an oil, a sealant or a detail is decided by it. */
export const trialCasting: Kit = {
  id: "trial-casting",
  name: "Trial casting",
  what: "A box on the bench, cast in rounds, stripped and looked at when it is dry; the pours that rest on what it decides wait for it.",
  group: "before",
  rates: ["trial", "check"],
  asks: [
    { key: "what", label: "What it decides", kind: "text", usual: "oil, sealant and corners of the faces that are seen" },
    { key: "decides", label: "Pours that wait for it", kind: "joins", offers: ["cast"], least: 0, most: 6 },
    countAsk("rounds", "Rounds", 2, 1, 6),
    { key: "gap", label: "From round to round", kind: "amount", usual: "6 d" },
    { key: "dry", label: "From casting to looking", kind: "amount", usual: "5 d" },
    countAsk("bags", "Bags a round", 2, 1, 20),
  ],
  make: (given): Made => ({ lists: members(given), unknown: [] }),
  offers: () => [],
};
