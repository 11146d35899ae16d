import { describe, expect, test } from "vitest";
import { readDocument } from "../../src/core/build";
import { apply, clip, clipText, duplicate, group, paste, putUpBy, readClip, removeMany, split, ungroup } from "../../src/core/edit";
import bankCellar from "../../src/examples/bank-cellar.json";
import gardenWall from "../../src/examples/garden-wall.json";
import { emptyBuild } from "../fixtures/kits/start";

/** What keeps a document from being read, in short; empty where it is read. */
function barred(document: unknown): string {
  const { build, findings } = readDocument(document);
  return build
    ? ""
    : findings
        .filter(({ severity }) => severity === "stop")
        .map(({ code, where }) => `${code} at ${where.list} ${where.id} ${where.key}`)
        .join("; ");
}

describe.each([
  ["bank cellar", bankCellar],
  ["garden wall", gardenWall],
] as const)("every step of the %s", (_, document) => {
  const ids = document.steps.map(({ id }) => id);
  const ref = (id: string) => [{ list: "steps" as const, id }];

  test("once more, alone and with the next three, still reads", () => {
    const faults = ids.flatMap((id, at) =>
      [ref(id), ids.slice(at, at + 4).flatMap(ref)].flatMap((selection) => {
        const said = barred(apply(document, duplicate(document, selection).edits).document);
        return said === "" ? [] : [`${id}: ${said}`];
      }),
    );
    expect(faults).toEqual([]);
  });

  test("goes into an empty build", () => {
    const empty = emptyBuild("us");
    const faults = ids.flatMap((id, at) => {
      const part = readClip(clipText(clip(document, ids.slice(at, at + 4).flatMap(ref))!))!;
      const said = barred(apply(empty, paste(empty, part).edits).document);
      return said === "" ? [] : [`${id}: ${said}`];
    });
    expect(faults).toEqual([]);
  });

  test("is split in two, or refused for one of the reasons", () => {
    const results = ids.map((id) => ({ id, made: split(document, id, "Second part") }));
    const faults = results.flatMap(({ id, made }) => {
      const said = "edits" in made ? barred(apply(document, made.edits).document) : "";
      return said === "" ? [] : [`${id}: ${said}`];
    });
    expect(faults).toEqual([]);
    const refused = results.filter(({ made }) => "refused" in made).length;
    expect(refused).toBeLessThan(results.length / 2);
  });

  test("comes several times, or is refused, or cannot be read for one reason only: something means just one of them", () => {
    const faults = ids.flatMap((id) => {
      const made = group(document, ref(id), 2, "Alike");
      const said = "edits" in made ? barred(apply(document, made.edits).document) : "";
      return said === "" || said.split("; ").every((one) => one.startsWith("build.which-copy")) ? [] : [`${id}: ${said}`];
    });
    expect(faults).toEqual([]);
  });

  test("is taken out with three others and what they put up", () => {
    const faults = ids.flatMap((id, at) => {
      const four = ids.slice(at, at + 4);
      const { edits } = removeMany(document, [
        ...four.map((one) => ["steps", one] as const),
        ...putUpBy(document, four).map((one) => ["pieces", one] as const),
      ]);
      const said = barred(apply(document, edits).document);
      return said === "" ? [] : [`${id}: ${said}`];
    });
    expect(faults).toEqual([]);
  });

  test("each group written out has as many steps as before", () => {
    const groups = (document as { groups?: readonly { readonly id: string }[] }).groups ?? [];
    for (const { id } of groups) {
      const out = apply(document, ungroup(document, id)).document;
      expect(barred(out), id).toBe("");
      expect(readDocument(out).build?.steps.length).toBe(readDocument(document).build?.steps.length);
    }
  });
});
