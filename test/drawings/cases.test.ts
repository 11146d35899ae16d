import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { Statement } from "../../src/core/base";
import { type Build, read } from "../../src/core/build";
import { type Plan, plan } from "../../src/core/plan";
import { type Drawing, ringDrawing, sheet, svgText } from "../../src/draw";
import { statementSentence } from "../../src/words";
import { troubles } from "./checks";
import { keepForLooking } from "./gallery";

const folder = "test/fixtures/cases";
const names = readdirSync(folder)
  .filter((file) => file.endsWith(".json"))
  .map((file) => file.slice(0, -".json".length));

async function drawn(name: string, drawing: Drawing): Promise<void> {
  const svg = svgText(drawing);
  keepForLooking(`case-${name}`, svg);
  expect(troubles(drawing)).toEqual([]);
  await expect(svg).toMatchFileSnapshot(`./case-${name}.svg`);
}

test("there are cases to draw", () => {
  expect(names.length).toBeGreaterThanOrEqual(11);
});

test.each(names)(
  "%s: its dates are drawn, every step on the sheet; where there are none, what blocks it as a closed loop",
  async (name) => {
    const build = read(readFileSync(`${folder}/${name}.json`, "utf8")).build!;
    const planned = plan(build);
    if (planned.steps.length > 0) {
      const made = sheet({ build, plan: planned, scale: "weekends", dayWidth: 90 });
      expect(made.blocks.size).toBe(build.steps.length);
      await drawn(name, made);
      return;
    }
    await drawn(name, ringOf(build, planned));
  },
);

function ringOf(build: Build, planned: Plan): Drawing {
  const blocked = planned.findings.find(({ because }) => because && because.length > 1)!;
  const ring = ringDrawing(blocked, { title: `${build.name}: blocked`, say: (statement) => statementSentence(statement, build) });
  expect(ring.parts[0]!.marks.filter(({ role }) => role === "loop-line").length).toBe(blocked.because!.length);
  return ring;
}

test("each block of the build that cannot be built is drawn as a closed loop of its reasons", async () => {
  const build = read(readFileSync("src/examples/impossible.json", "utf8")).build!;
  const planned = plan(build);
  expect(planned.status).toBe("no-order");
  const say = (statement: Statement) => statementSentence(statement, build);
  const blocks = planned.findings.filter(({ because }) => because && because.length > 1);
  expect(blocks.length).toBeGreaterThan(0);
  for (const [index, block] of blocks.entries())
    await drawn(`blocked-${index + 1}`, ringDrawing(block, { title: `${build.name}: blocked`, say }));
});
