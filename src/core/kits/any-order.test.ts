import fc from "fast-check";
import { expect, test } from "vitest";
import { lookAt } from "../../../test/fixtures/kits/kit-check";
import { emptyBuild } from "../../../test/fixtures/kits/start";
import { apply } from "../edit";
import { checkAnswers, type Kit, kitOf, kits, putIn } from ".";

type Document = { readonly parts?: readonly { readonly answers: Readonly<Record<string, unknown>> }[] };

const keysOf = (answer: unknown): readonly unknown[] => (Array.isArray(answer) ? answer : []);

/** Two slabs cannot lie on the same heads: whether all that a kit has to join carries something already. */
function isTaken(document: unknown, kit: Kit, answers: Readonly<Record<string, unknown>>): boolean {
  const joined = new Set(((document as Document).parts ?? []).flatMap((part) => Object.values(part.answers).flatMap(keysOf)));
  return kit.asks.some((ask) => ask.kind === "joins" && ask.least > 0 && keysOf(answers[ask.key]).some((key) => joined.has(key)));
}

/** Kits put in with usual answers, in whatever order a builder thinks of them; what finds nothing to stand on is left out. */
function builtOf(units: "us" | "metric", order: readonly string[]): unknown {
  return order.reduce<unknown>((document, id) => {
    if (checkAnswers(document, id, {}).length > 0) return document;
    const kit = kitOf(id) as Kit;
    const { edits, part } = putIn(document, id, kit.name, {});
    return isTaken(document, kit, part.answers) ? document : apply(document, edits).document;
  }, emptyBuild(units));
}

test("any kits, put in once each in any order with usual answers, are read, ordered, dated and stand up to the second look", () => {
  const met = new Set<string>();
  fc.assert(
    fc.property(
      fc.constantFrom("us" as const, "metric" as const),
      fc.shuffledSubarray(
        kits.map(({ id }) => id),
        { minLength: 2, maxLength: 9 },
      ),
      (units, order) => {
        const document = builtOf(units, order);
        const { build } = lookAt(document);
        for (const { kit } of build.parts) met.add(kit);
        // Not one link is typed: what goes before what follows from reach, closings, leaning and holding.
        const { steps } = document as { readonly steps: readonly { readonly after?: unknown }[] };
        expect(steps.filter(({ after }) => after !== undefined)).toEqual([]);
      },
    ),
    { numRuns: 40 },
  );
  // Every kit that needs nothing below it has been in some build.
  expect(met.size).toBeGreaterThan(kits.length / 2);
});
