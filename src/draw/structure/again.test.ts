import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { read, readDocument } from "../../core/build";
import { plan } from "../../core/plan";
import { structureDrawing } from "./drawing";

interface Written {
  readonly steps: { id: string; work?: string }[];
  readonly solids: { id: string; name: string; at: { x: string } }[];
}

/** The garden wall as it is drawn on its last day, its document read anew with a change. */
function drawn(change: (document: Written) => void, minute: number | null = null) {
  const document = structuredClone(read(readFileSync("src/examples/garden-wall.json", "utf8")).document) as Written;
  change(document);
  const { build, findings } = readDocument(document);
  expect(findings).toEqual([]);
  return structureDrawing(build!, plan(build!), minute, { width: 480 });
}

test("a change that shows on no body leaves the same drawing; one that does draws it anew", () => {
  const before = drawn(() => {});
  const longer = drawn(({ steps }) => {
    steps[0]!.work = "9 h";
  });
  expect(longer).toBe(before);
  expect(drawn(() => {}, 0)).not.toBe(before);
  const named = drawn(({ solids }) => {
    solids[0]!.name = "another name";
  });
  expect(named.bodies[0]!.name).toBe("another name");
  const moved = drawn(({ solids }) => {
    solids[0]!.at = { ...solids[0]!.at, x: "30 ft" };
  });
  expect(moved.bodies[0]!.d).not.toBe(before.bodies[0]!.d);
  expect(drawn(() => {})).toEqual(before);
});
