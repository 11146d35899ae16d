import type { Part } from "../../build";
import type { Offer } from "../kit";
import { type Making, once } from "../making";

/** What one can do on concrete with a floor on top: build on it, walk on it, cast something in while it is a form. */
export function topOffers(
  part: Part,
  kinds: readonly ("bears" | "walks" | "cast")[],
  { at_mm, size_mm, starters }: Pick<Offer, "at_mm" | "size_mm" | "starters">,
): readonly Offer[] {
  const pourStep = `${part.id}-place`;
  return kinds.map((kind) => {
    const open =
      kind === "cast" ? { place: `${part.id}-steel`, piece: `${part.id}-cage` } : { place: `${part.id}-top`, piece: `${part.id}-concrete` };
    return { kind, part: part.id, name: part.name, pourStep, at_mm, size_mm, starters, ...open };
  });
}

/** The holes at the foot of what something stands on, to be got at while they are open. */
export const holesOf = (on: readonly Offer[]): readonly { readonly place: string }[] =>
  once(on.flatMap(({ hole }) => hole ?? [])).map((place) => ({ place }));

/** Ground over what something stands on, to be stood on once it is filled. */
export const firmOf = (on: readonly Offer[]): readonly { readonly place: string }[] =>
  once(on.flatMap(({ firm }) => firm ?? [])).map((place) => ({ place }));

/** What stands on something hands on the ground over that. */
export const firmUnder = (on: Offer | undefined): Pick<Offer, "firm"> => (on?.firm === undefined ? {} : { firm: on.firm });

/** The ground around something that stands, and its head, reached from a ladder. `around` as the place is called before its name. */
export function addHead(making: Making, called: { readonly around: string }, high_mm: number, level: number, ground: string): void {
  const { name } = making.given;
  making.add("places", "around", {
    name: `${called.around} ${name}`,
    level: level - Math.floor(high_mm / 200),
    layerOf: making.id("steel"),
    ways: [{ id: "free", name: "clear of scaffold and braces", passes: ["person"], through: ground }],
  });
  making.add("places", "head", {
    name: `head of ${name}`,
    level: level + Math.ceil(high_mm / 200),
    layerOf: making.id("steel"),
    ways: [{ id: "ladder", name: "from a ladder", passes: ["person", "arm", "hose", "sight"], through: ground }],
  });
}
