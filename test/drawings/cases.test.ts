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
  expect(names.length).toBeGreaterThanOrEqual(13);
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

const drawnCase = (name: string) => {
  const build = read(readFileSync(`${folder}/${name}.json`, "utf8")).build!;
  const planned = plan(build);
  const dates = (id: string) => planned.steps[build.at.step.get(id)!]!;
  return { build, planned, dates };
};

test("the same six sheets: the second pair is formed when the first has given them back, and they are all that hold it", () => {
  const { build, planned, dates } = drawnCase("same-six-sheets");
  const [first, second] = [
    dates("set-a").start < dates("set-b").start ? "a" : "b",
    dates("set-a").start < dates("set-b").start ? "b" : "a",
  ];
  expect(dates(`set-${second}`).start).toBeGreaterThanOrEqual(dates(`strip-${first}`).finish);
  expect(Math.min(...planned.stands.stock[0]!.left)).toBe(0);
  expect(sheet({ build, plan: planned, scale: "weekends" }).lanes.map(({ name }) => name)).toEqual([
    "Steel of the first pair",
    "Steel of the second pair",
  ]);
});

test("nobody is under the deck while it is filled", () => {
  const { dates } = drawnCase("nobody-under-the-deck");
  for (const other of ["brace", "sweep"])
    expect(dates(other).finish <= dates("fill").start || dates("fill").finish <= dates(other).start).toBe(true);
});

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
