import type { Part } from "../../core/build";
import { formOf, type KeyedOffer, type Kit, kits, type OfferKind, offersOf } from "../../core/kits";
import { listed } from "../../words";

/** A kit that joins what is there. */
export interface Suggestion {
  readonly kit: Kit;
  /** Keys of the offers it would join, by question. */
  readonly joins: Readonly<Record<string, readonly string[]>>;
  /** "on Column A and Column B" */
  readonly where: string;
}

const joint: Readonly<Record<OfferKind, string>> = {
  bears: "on",
  top: "on",
  face: "against",
  walks: "on",
  cast: "cast into",
  trench: "in",
  dry: "for",
  scaffold: "from",
};

/** What carries something is what a structure grows on; all else goes beside or into it. */
const carries: readonly OfferKind[] = ["bears", "top", "walks"];

/** Names of the parts that offer, each once. */
const namesOf = (offers: readonly KeyedOffer[], parts: readonly Part[]): readonly string[] => [
  ...new Set(offers.map((offer) => parts.find(({ id }) => id === offer.part)?.name ?? offer.name)),
];

/**
 * What usually goes on with what is there: kits that join something nothing is joined to yet. First what stands on it, and of that what the build has none of yet.
 * @param of a part: only what joins that one
 */
export function suggestions(document: unknown, parts: readonly Part[], of?: string): readonly Suggestion[] {
  const joined = new Set(
    parts.flatMap(({ answers }) => Object.values(answers).flatMap((answer) => (typeof answer === "object" ? answer : []))),
  );
  const used = new Set(parts.map(({ kit }) => kit));
  const found = kits.flatMap((kit): (Suggestion & { readonly rank: number })[] => {
    // Of several questions for what it joins, the first that something free answers.
    for (const { ask, choices } of formOf(document, kit.id, {})) {
      if (ask.kind !== "joins") continue;
      const free = choices.filter((offer) => !joined.has(offer.key) && (ask.usually?.(offer) ?? true)).slice(-ask.most);
      const [first] = free;
      if (!first || free.length < ask.least || (of !== undefined && !free.some(({ part }) => part === of))) continue;
      const where = `${joint[first.kind]} ${listed(namesOf(free, parts))}`;
      const rank = (carries.includes(first.kind) ? 0 : 2) + (used.has(kit.id) ? 1 : 0);
      return [{ kit, joins: { [ask.key]: free.map(({ key }) => key) }, where, rank }];
    }
    return [];
  });
  return found.sort((a, b) => a.rank - b.rank);
}

/** Kits that offer what a question wants, for where the build has none of it yet: told from one part of each with its usual answers. */
export function kitsOffering(wanted: readonly OfferKind[]): readonly Kit[] {
  const parts = kits.map((kit) => ({ id: kit.id, name: kit.name, kit: kit.id, answers: {}, made: {} }));
  const offering = new Set(offersOf({ parts }).flatMap(({ kind, part }) => (wanted.includes(kind) ? part : [])));
  return kits.filter(({ id }) => offering.has(id));
}
