import { countAsk, yesAsk } from "../asks";
import { inspected } from "../inspected";
import type { Given, Kit, Made } from "../kit";
import { saidAsk, unsaid } from "../said";
import { type Lists, namer, together } from "../together";

/** Drawings to the office, the office's time, and the paper on the site: nobody digs before. */
function permit(given: Given): Lists {
  const { id, called } = namer(given);
  const office = given.common("inspector");
  const ground = given.common("ground");
  return {
    pieces: [{ id: id("permit"), name: called("permit"), sort: "other", makes: [`${given.common("dig")}.marked`] }],
    steps: [
      {
        id: id("hand-in"),
        name: called("hand in drawings and forms"),
        sort: "office",
        place: given.common("store"),
        work: given.hours("office", 6),
        notes:
          "Drawings of whoever designs it, the plot with distances, the fee. Ask at once which inspections they want, and how they are asked for.",
      },
      {
        id: id("issue"),
        name: called("the office issues the permit"),
        sort: "office",
        place: ground,
        work: given.hours("inspection", 1),
        hands: 0,
        calendar: office,
        puts: [id("permit")],
        notes: "Posted where it is seen from the street.",
      },
    ],
    waits: [
      {
        id: id("office-time"),
        from: id("hand-in"),
        to: id("issue"),
        least: { is: `${given.answers.number("days")} days of ${office}`, from: "own guess" },
        why: "What the office takes, in its own working days.",
      },
    ],
  };
}

const visitRange = { least: 1, most: 20, unit: "days", whole: true } as const;

const isFinal = ({ answers }: Given): boolean => answers.several("visits").includes("final");

/** A visit before digging, one that sees several forms at once, and the last one. */
function visits(given: Given): Lists {
  const { id } = namer(given);
  const { answers } = given;
  const asked = answers.several("visits");
  const notice_days = answers.number("visit");
  const stands = answers.yes("permit") ? [id("permit")] : [];
  const out: Lists[] = [];
  if (asked.includes("lines")) {
    const { steps = [], bookings = [] } = inspected(given, {
      id: "inspect-lines",
      name: "lines and distances seen",
      places: [given.common("lines")],
      pieces: stands,
      notice_days,
    });
    const seen = { id: id("lines-seen"), name: namer(given).called("lines seen"), sort: "other", makes: [`${given.common("dig")}.marked`] };
    out.push({ pieces: [seen], bookings, steps: steps.map(({ holdPoint: _, ...step }) => ({ ...step, puts: [seen.id] })) });
  }
  const open = [...new Set(answers.joins("together").map(({ place }) => place))];
  if (asked.includes("together") && open.length > 0) {
    out.push(
      inspected(given, { id: "inspect-together", name: "one visit for all that is open", places: open, pieces: stands, notice_days }),
    );
  }
  const ends = answers.joins("final");
  if (isFinal(given) && ends.length > 0) {
    const { steps = [], bookings = [] } = inspected(given, {
      id: "inspect-final",
      name: "final inspection",
      places: [...new Set(ends.map(({ place }) => place))],
      pieces: [...stands, ...new Set(ends.map(({ piece }) => piece).filter((piece) => piece !== ""))],
      notice_days,
    });
    // The last visit stops nothing: there is nothing after it.
    out.push({ bookings, steps: steps.map(({ holdPoint: _, ...step }) => step) });
  }
  return together(...out);
}

/** Permit and the visits that no element brings itself. */
export const permits: Kit = {
  id: "permits",
  name: "Permit and inspected closings",
  what: "The permit and the office's time before any digging, the inspector's weekdays and notice, and visits that stop the work: lines, several forms at once, the last one.",
  group: "before",
  rates: ["office", "inspection"],
  asks: [
    yesAsk("permit", "A permit is needed", true, { help: "Ask your building office; nearly always where people stand on or under it." }),
    countAsk("days", "Office's working days for it", 15, 1, 250, { when: (answers) => answers.yes("permit") }),
    saidAsk("says-none", "Why none is needed", (answers) => !answers.yes("permit")),
    saidAsk("says-visits", "Which inspections the office wants"),
    {
      key: "visit",
      label: "Inspector's days from request to visit",
      help: "1: on the next working day.",
      kind: "number",
      usual: 1,
      range: visitRange,
    },
    {
      key: "visits",
      label: "Visits",
      help: "Footings, forms and trenches bring their own visit; these are the others.",
      kind: "several",
      usual: ["final"],
      options: [
        { value: "lines", name: "lines, before any digging" },
        { value: "together", name: "one visit for several forms" },
        { value: "final", name: "the last one" },
      ],
    },
    {
      key: "together",
      label: "Seen in one visit",
      help: "All of it open at once: leave a face off until then.",
      kind: "joins",
      offers: ["cast", "trench"],
      least: 0,
      most: 6,
      when: (answers) => answers.several("visits").includes("together"),
    },
    {
      key: "final",
      label: "The final visit sees",
      kind: "joins",
      offers: ["dry", "walks", "top"],
      least: 0,
      most: 6,
      when: (answers) => answers.several("visits").includes("final"),
    },
  ],

  make(given): Made {
    const needed = given.answers.yes("permit");
    const lists = together(needed ? permit(given) : {}, visits(given));
    return {
      lists,
      unknown: [
        ...unsaid(given, "says-visits", "which-inspections"),
        ...(needed ? [] : unsaid(given, "says-none", "permit")),
        ...(isFinal(given) && given.answers.joins("final").length === 0 ? [{ code: "final-visit", part: given.part }] : []),
      ],
    };
  },

  offers: () => [],
};
