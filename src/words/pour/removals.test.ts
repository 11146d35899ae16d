import { expect, test } from "vitest";
import { buildOf } from "../../../test/fixtures/make";
import { slabPour } from "../../../test/fixtures/pours";
import { plan } from "../../core/plan";
import { cureSheet } from "../../core/pour";
import { alsoSentence, removalSentence, removalState } from "../index";

const steps = [{ id: "a" }, { id: "b" }];

function told(removal: object, pour: object = {}): { readonly says: string; readonly state: string } {
  const build = buildOf({ steps, pours: [slabPour({ removals: [{ step: "b", ...removal }], ...pour })] });
  const made = plan(build);
  if (made.status !== "planned") throw new Error("no plan");
  const dates = { start: made.steps.map(({ start }) => start), finish: made.steps.map(({ finish }) => finish) };
  const [sheet] = cureSheet(build, 0, dates).removals;
  return { says: removalSentence(sheet!, build, build.pours[0]!.mix.strength_MPa), state: removalState(sheet!) };
}

test("days that nobody wrote are what is usual, whoever is named beside them", () => {
  const usual = told({ sort: "anchors", saidBy: "drawing" });
  expect(usual.says).toContain("3 days, as is usual");
  expect(usual.says).not.toContain("drawing");
  expect(usual.state).toBe("expected");
  expect(told({ sort: "anchors", days: "3 d", saidBy: "drawing" }).says).toContain("3 days, as the drawing says");
});

test("days that one guessed say so, days of the drawing stand for themselves", () => {
  expect(told({ sort: "sides", days: "4 d", saidBy: "own guess" }).state).toBe("a guess of your own");
  expect(told({ sort: "sides", days: "4 d", saidBy: "drawing" }).state).toBe("");
});

test("a guess of one's own takes no shore out: its 28 days stand, and it stays a hold", () => {
  const guessed = told({ sort: "shores", days: "3 d", saidBy: "own guess", span: "9 ft" });
  expect(guessed.state).toBe("a hold until shown");
  expect(guessed.says).toContain("28 days at ");
});

test("earth over a vault is told as a load that may lie on it, a slab as what may be loaded", () => {
  const vault = { elements: [{ id: "v", shape: { kind: "barrel", long: "10 ft", span: "8 ft", rise: "2 ft", thick: "6 in" } }] };
  const over = told({ sort: "backfill" }, vault);
  expect(over.says).toMatch(/^Earth or another load may lie on it from /);
  expect(over.state).toBe("a hold until shown");
  expect(told({ sort: "load" }).says).toMatch(/^It may be loaded from /);
  expect(told({ sort: "backfill" }).says).toMatch(/^Backfill may go against it from /);
});

test("what waits by what it says itself is told with its strength or time, of steps alike the first, and what is written with the pour is not told again", () => {
  const build = buildOf({
    pieces: [{ id: "slab", sort: "concrete" }, { id: "wall" }],
    steps: [
      { id: "a", puts: ["slab"] },
      { id: "b" },
      { id: "posts", leansOn: [{ piece: "slab", once: "50 % of a" }] },
      { id: "walls", puts: ["wall"], leansOn: [{ piece: "slab", once: "24 h" }] },
      { id: "roof", leansOn: [{ piece: "wall", once: "24 h" }] },
      { id: "uncover" },
    ],
    waits: [{ id: "wet", from: "a", to: "uncover", least: "7 d" }],
    groups: [{ id: "both", count: 2, members: ["posts"] }],
    pours: [slabPour({ removals: [{ sort: "sides", step: "b" }] })],
  });
  const made = plan(build);
  const dates = { start: made.steps.map(({ start }) => start), finish: made.steps.map(({ finish }) => finish) };
  const { also, removals } = cureSheet(build, 0, dates);
  expect(removals).toHaveLength(1);
  const says = new Map(also.map((one) => [build.steps[one.step]!.id as string, alsoSentence(one, build, "us")]));
  expect([...says.keys()].sort()).toEqual(["posts#1", "uncover", "walls"]);
  expect(says.get("posts#1")).toBe("It leans on this concrete, from 50 % of the strength of “a”.");
  expect(says.get("walls")).toBe("It leans on this concrete, from 24 h after it is placed.");
  expect(says.get("uncover")).toBe("Not before 7 days after it is placed.");
  expect(also.map(({ planned }) => planned)).toEqual(also.map(({ planned }) => planned).sort((x, y) => x - y));
});
