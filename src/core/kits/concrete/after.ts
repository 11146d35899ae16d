import { choiceAsk } from "../asks";
import type { Ask } from "../kit";
import type { Making } from "../making";

/** A look over what carries the form, on the last day there before the pour: what it is, as a sentence begins with it, where one stands, and the piece. */
export function addLook(making: Making, look: { what: string; called: string; place: string; holder: string }): void {
  const { given } = making;
  const own = (word: string) => making.id(word);
  making.add("steps", "check", {
    name: `Look over ${look.what} of ${given.name}`,
    sort: "check",
    place: look.place,
    work: given.hours("check", 1),
    reaches: [{ place: look.place }],
    puts: [own("checked")],
    leansOn: [{ piece: own(look.holder) }, { piece: own("cage") }],
  });
  making.add("waits", "check-fresh", {
    name: `${look.called} of ${given.name} looked over just before`,
    from: own("check"),
    to: own("place"),
    least: { is: "0 min", from: "own guess" },
    most: { is: "8 d", from: "own guess" },
    why: "Wedges are looked at on the last day there before the pour.",
  });
}

/** Whether covers lie on it for the whole cure. Parts put in before this was asked had covers that closed nothing. */
export const coverAsk: Ask = choiceAsk(
  "covers",
  "Its covers, while it cures wet",
  { stay: "stay on until it has cured: nobody works on it before", lifted: "are lifted where somebody works, and laid back" },
  { unasked: "lifted" },
);

interface WetCure {
  /** Way onto it that the covers close. */
  readonly way: string;
  /** Where one stands to take them off. */
  readonly from: string;
}

/** Kept wet for seven days from the pour, then uncovered. Gives the pieces that the pour puts up beside the concrete. */
export function addWetCure(making: Making, { way, from }: WetCure): readonly string[] {
  const { given } = making;
  const own = (word: string) => making.id(word);
  const stay = given.answers.choice("covers") === "stay";
  if (stay) making.add("pieces", "covers", { name: `wet covers of ${given.name}`, sort: "cover", closes: [way], off: [{ place: from }] });
  const place = stay ? from : own("top");
  making.add("steps", "uncover", {
    name: `Take the covers off ${given.name}`,
    place,
    work: given.hours("cover", 1),
    reaches: [{ place }],
    takes: stay ? [own("covers")] : [],
  });
  making.add("waits", "cure", {
    name: `Wet cure of ${given.name}`,
    from: own("place"),
    to: own("uncover"),
    least: { is: "7 d", from: "own guess" },
    visits: { every: "1 d", lasts: "20 min", who: "somebody near", for: "wet it and tuck the plastic in" },
    why: "Seven days wet.",
  });
  return stay ? [own("covers")] : [];
}
