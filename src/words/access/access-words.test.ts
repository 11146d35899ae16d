import { describe, expect, test } from "vitest";
import { buildOf } from "../../../test/fixtures/make";
import { place, step } from "../../../test/fixtures/small";
import { access, type WhyLink } from "../../core/access";
import type { DetailValue, WayOutKind } from "../../core/base";
import { findingSentence, linkSentence, reasonSentence, statementSentence, wayOutSentence } from "..";

const called = (
  members: readonly ({ readonly id: string } & Readonly<Record<string, unknown>>)[],
  names: Readonly<Record<string, string>>,
) => members.map((member) => ({ name: names[member.id] ?? member.id, ...member }));

const look = step("look", { sort: "inspection", holdPoint: { places: ["cage"] } });
const tie = step("tie", { reaches: [{ any: [{ place: "cage" }, { place: "yard" }] }], after: ["cover", "ladder-down"] });
const build = buildOf({
  places: called(
    [
      place("cage", { id: "north", name: "from the north", passes: ["person"] }, { id: "top", name: "by the ladder", passes: ["person"] }),
      place("yard"),
    ],
    { cage: "Cage", yard: "Yard" },
  ),
  pieces: called(
    [
      { id: "lid", closes: ["cage.north"] },
      { id: "ladder", makes: ["cage.top"], fromStart: true },
      { id: "concrete", fills: ["cage"] },
    ],
    { lid: "Lid", ladder: "Ladder", concrete: "Concrete" },
  ),
  steps: called(
    [
      look,
      step("prepare", { reaches: [{ place: "cage" }] }),
      step("cover", { puts: ["lid"], after: ["look"] }),
      step("ladder-down", { takes: ["ladder"] }),
      tie,
      step("uncover", { takes: ["lid"] }),
      step("pour", { puts: ["concrete"], after: ["uncover", "tie"] }),
    ],
    {
      look: "Look at the bars",
      prepare: "Tie the bars",
      cover: "Put the lid on",
      "ladder-down": "Take the ladder away",
      tie: "Cut and clean",
      uncover: "Take the lid off",
      pour: "Pour",
    },
  ),
});

describe("a hold point", () => {
  const { arcs, statements } = access(build);
  const links = Array.from({ length: arcs.count }, (_, row) => ({
    from: arcs.from[row] as number,
    to: arcs.to[row] as number,
    reason: statements[arcs.reason[row] as number],
  })).filter(({ reason }) => reason?.rule === "hold-point") as unknown as WhyLink[];

  test("says of each precedence who works there, and who closes or opens the place", () => {
    expect(links.map((link) => linkSentence(link, build)).sort()).toEqual([
      "“Cut and clean” comes before “Take the lid off”: “Cut and clean” is work at the cage, which after “Look at the bars” goes on only while the place is closed; “Take the lid off” opens it.",
      "“Look at the bars” comes before “Pour”: nothing fills the cage before it is done.",
      "“Put the lid on” comes before “Cut and clean”: “Cut and clean” is work at the cage, which after “Look at the bars” goes on only while the place is closed; “Put the lid on” closes it.",
      "“Take the ladder away” comes before “Cut and clean”: “Cut and clean” is work at the cage, which after “Look at the bars” goes on only while the place is closed; “Take the ladder away” closes it.",
      "“Tie the bars” comes before “Look at the bars”: “Tie the bars” is work at the cage, which after “Look at the bars” goes on only while the place is closed.",
    ]);
  });

  test("says alone who must be done before the place is filled", () => {
    const fill = links.find(({ from }) => build.steps[from]?.id === "look");
    expect(reasonSentence(fill!, build)).toBe("Nothing fills the cage before “Look at the bars” is done.");
  });

  test("says as a fact that it must see the place, and when work goes on there", () => {
    expect(statementSentence({ rule: "hold-point", step: "look", place: "cage" }, build)).toBe(
      "“Look at the bars” stops the work at the cage and must see it: nothing fills it before, and work there is done before or goes on while the place is closed.",
    );
  });
});

describe("a date", () => {
  const said = (rule: "not-before" | "fixed" | "window.release", date: string) =>
    statementSentence({ rule, step: "look", detail: { date } } as never, build);

  test("so far away that no plan gets there says why it cannot be", () => {
    expect(said("window.release", "2067-03-06")).toBe("“Look at the bars” cannot begin before Sun 6 Mar 2067.");
    expect(said("window.release", "2090-01-01")).toBe(
      "“Look at the bars” cannot begin before Sun 1 Jan 2090; dates are worked out for forty years from the first day, no further.",
    );
    expect(said("fixed", "2090-01-01")).toMatch(/^“Look at the bars” is fixed for Sun 1 Jan 2090; dates are worked out/);
  });
});

describe("a way out", () => {
  const said = (kind: WayOutKind, detail: Readonly<Record<string, DetailValue>>) => wayOutSentence({ kind, detail, edits: [] }, build);

  test("says into how many parts a piece is made", () => {
    expect(said("split", { step: "cover", piece: "lid", place: "cage", way: "cage.north", parts: 4 })).toBe(
      "Make the lid in four equal parts that fit from the north.",
    );
  });

  test("says what a step asked for by name no longer does", () => {
    expect(said("leave-face-off", { piece: "lid", step: "cover", other: "tie", emptied: ["lid"] })).toBe(
      "Leave the lid off until “Cut and clean” is done; “Put the lid on” is then done without it.",
    );
    expect(said("leave-face-off", { piece: "lid", step: "cover", other: "tie" })).toBe("Leave the lid off until “Cut and clean” is done.");
  });

  test("asks for nothing to be shut again where nothing closes the place", () => {
    expect(said("clean-out", { place: "yard", step: "tie", open: true })).toBe(
      "Put up another way to the yard (a ladder, a scaffold), and have it there before “Cut and clean”.",
    );
    expect(said("clean-out", { place: "cage", step: "tie" })).toMatch(/shut it before that is filled\.$/);
  });
});

test("a block says where looking for it was cut short", () => {
  const block = (spent?: readonly string[]) =>
    findingSentence(
      { code: "access.ring", severity: "stop", where: {}, detail: { steps: ["tie", "pour"], ...(spent ? { spent } : {}) }, because: [] },
      build,
    );
  const head = "“Cut and clean” and “Pour” wait for each other in a ring, so none can begin.";
  expect(block()).toBe(head);
  expect(block(["set"])).toBe(`${head} Finding the fewest reasons took too long: some of those given may play no part.`);
  expect(block(["set", "rest"])).toMatch(/may play no part\. The search ended here: there may be more that cannot be built\.$/);
});
