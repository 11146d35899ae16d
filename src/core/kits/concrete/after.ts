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

/** Kept wet for seven days from the pour, then uncovered. */
export function addWetCure(making: Making): void {
  const { given } = making;
  const own = (word: string) => making.id(word);
  making.add("steps", "uncover", {
    name: `Take the covers off ${given.name}`,
    place: own("top"),
    work: given.hours("cover", 1),
    reaches: [{ place: own("top") }],
  });
  making.add("waits", "cure", {
    name: `Wet cure of ${given.name}`,
    from: own("place"),
    to: own("uncover"),
    least: { is: "7 d", from: "own guess" },
    visits: { every: "1 d", lasts: "20 min", who: "somebody near", for: "wet it and tuck the plastic in" },
    why: "Seven days wet.",
  });
}
