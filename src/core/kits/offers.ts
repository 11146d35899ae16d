import type { Part } from "../build";
import { kitOf } from "./all";
import { type AnswerContext, asPutIn, readAnswers } from "./answers";
import { partsOf, unitsOf } from "./document";
import type { KeyedOffer } from "./kit";

/** "part/kind" for the first of a kind that a part offers, then "part/kind/2" and on. */
function keyed(part: Part, context: AnswerContext): readonly KeyedOffer[] {
  const kit = kitOf(part.kit);
  if (kit === undefined) return [];
  const count = new Map<string, number>();
  return kit.offers(part, readAnswers(kit, asPutIn(kit, part.answers), context)).map((offer) => {
    const number = (count.get(offer.kind) ?? 0) + 1;
    count.set(offer.kind, number);
    return { ...offer, key: number === 1 ? `${part.id}/${offer.kind}` : `${part.id}/${offer.kind}/${number}` };
  });
}

const joinedBy = (part: Part): readonly string[] => {
  const asks = kitOf(part.kit)?.asks.filter(({ kind }) => kind === "joins") ?? [];
  return asks.flatMap(({ key }) => {
    const answer = part.answers[key];
    return Array.isArray(answer) ? (answer as readonly string[]) : [];
  });
};

/** What a part is read against: the offers of the parts before it. `upTo` left out: of all, as for a part that is to come. */
export function contextOf(document: unknown, upTo?: string): AnswerContext {
  const units = unitsOf(document);
  const offers: KeyedOffer[] = [];
  const joined = new Set<string>();
  for (const part of partsOf(document)) {
    if (part.id === upTo) break;
    offers.push(...keyed(part, { units, offers, joined }));
    for (const key of joinedBy(part)) joined.add(key);
  }
  return { units, offers, joined };
}

/** Whatever parts of the build let others do with them, oldest first. */
export const offersOf = (document: unknown): readonly KeyedOffer[] => contextOf(document).offers;

/** Keys of offers that a part joins. */
export const joinsOf = joinedBy;
