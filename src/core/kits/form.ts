import type { Finding } from "../base";
import { nearest } from "../base";
import type { Answer } from "../build";
import { kitOf, kits } from "./all";
import { asPutIn, choicesOf, isReadable, readAnswers, usualAnswer } from "./answers";
import { answerFinding, faultsOfAnswers } from "./check-answers";
import type { Ask, KeyedOffer, RawAnswers } from "./kit";
import { contextOf } from "./offers";

/** One question as a form shows it now. */
export interface FormField {
  readonly ask: Ask;
  /** As answered where that can be read, else what is usual. */
  readonly value: Answer;
  readonly isUsual: boolean;
  /** What a `joins` ask may join, oldest first; empty for others. */
  readonly choices: readonly KeyedOffer[];
}

/** The questions of a kit that these answers leave open, with their answers. `partId` of a part that is answered again. */
export function formOf(document: unknown, kitId: string, raw: RawAnswers, partId?: string): readonly FormField[] {
  const kit = kitOf(kitId);
  if (kit === undefined) return [];
  const answers = partId === undefined ? raw : asPutIn(kit, raw);
  const context = contextOf(document, partId);
  const read = readAnswers(kit, answers, context);
  return kit.asks
    .filter((ask) => ask.when === undefined || ask.when(read))
    .map((ask) => {
      const given = Object.hasOwn(answers, ask.key) ? answers[ask.key] : undefined;
      const isUsual = given === undefined || !isReadable(ask, given, context);
      return { ask, value: isUsual ? usualAnswer(ask, context) : given, isUsual, choices: choicesOf(ask, context) };
    });
}

/** What is wrong with answers, as findings whose `where.key` is the ask; empty where they can be put in as they are. */
export function checkAnswers(document: unknown, kitId: string, answers: RawAnswers, partId?: string): readonly Finding[] {
  const kit = kitOf(kitId);
  if (kit !== undefined) return faultsOfAnswers(kit, partId === undefined ? answers : asPutIn(kit, answers), contextOf(document, partId));
  const ids = kits.map(({ id }) => id);
  return [answerFinding("kit.unknown", "kit", { kit: kitId.slice(0, 60), nearest: nearest(kitId, ids) ?? "" })];
}
