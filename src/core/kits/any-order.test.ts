import fc from "fast-check";
import { expect, test } from "vitest";
import { lookAt } from "../../../test/fixtures/kits/kit-check";
import { emptyBuild } from "../../../test/fixtures/kits/start";
import { apply } from "../edit";
import { checkAnswers, kits, putIn } from ".";

/** Kits put in with usual answers, in whatever order a builder thinks of them; what finds nothing to stand on is left out. */
function builtOf(units: "us" | "metric", order: readonly string[]): unknown {
  return order.reduce<unknown>((document, id) => {
    if (checkAnswers(document, id, {}).length > 0) return document;
    const name = kits.find((kit) => kit.id === id)!.name;
    return apply(document, putIn(document, id, name, {}).edits).document;
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
