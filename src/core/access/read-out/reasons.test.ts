import { describe, expect, test } from "vitest";
import { place, small, step } from "../../../../test/fixtures/small";

const pour = (id: string, more: object = {}) => step(id, { sort: "pour", pour: { strength: "28 MPa" }, ...more });

/** What the reason of each row of a choice says besides its steps. */
function told(partial: Parameters<typeof small>[0]) {
  const { rows, result } = small(partial);
  return rows.flatMap((row, r) => {
    const reason = result.statements[result.arcs.reason[r] as number];
    return reason?.rule === "choice" ? [[row.replace(/:.*/, ""), reason.step, reason.other, reason.detail]] : [];
  });
}

/** Rows with the details of their reasons, as they are told and no more. */
const details = (partial: Parameters<typeof small>[0]) => {
  const { rows, result } = small(partial);
  return rows.map((row, r) => [row, result.statements[result.arcs.reason[r] as number]?.detail]);
};

describe("a reason tells the pour that is waited for", () => {
  const steps = [pour("wall"), step("lay"), step("strip"), pour("roof")];

  test("of a wait, where it is another step than the wait's own and where it is that step itself", () => {
    const waits = [
      { id: "w", from: "lay", to: "strip", least: "40 % of wall", most: "90 % of roof", why: "" },
      { id: "v", from: "wall", to: "lay", least: "10 % of wall", why: "" },
      { id: "u", from: "wall", to: "lay", least: "1 h", why: "" },
      { id: "t", from: "lay", to: "strip", most: "95 % of wall", why: "" },
    ];
    const told = { plain: false, least: "40 % of wall", most: "90 % of roof" };
    expect(details({ steps, waits })).toStrictEqual([
      ["lay < strip: wait(lay strip w) must", told],
      ["wall + 40 % of wall < strip: wait(lay strip w) must", { ...told, pour: "wall" }],
      ["roof within 90 % of roof < strip: wait(lay strip w) must time", { ...told, pour: "roof" }],
      ["wall + 10 % of wall < lay: wait(wall lay v) must", { plain: false, least: "10 % of wall", pour: "wall" }],
      ["wall + 1 h < lay: wait(wall lay u) must", { plain: false, least: "1 h" }],
      ["wall within 95 % of wall < strip: wait(lay strip t) must time", { plain: false, most: "95 % of wall", pour: "wall" }],
    ]);
  });

  test("of what a piece closes only what must pass, unless a pour is waited for", () => {
    const partial = (goesAfter: string) => ({
      places: [place("pit")],
      pieces: [{ id: "net", closes: ["pit.door"], goesAfter }],
      steps: [
        pour("wall"),
        step("cover", { puts: ["net"] }),
        step("dig", { reaches: [{ place: "pit", need: "arm", depth: "1 m" }], after: ["cover"] }),
      ],
    });
    const of = (goesAfter: string) => details(partial(goesAfter)).filter(([row]) => String(row).includes("closes("));
    expect(of("2 h")).toStrictEqual([["cover + 2 h < dig: closes(dig cover net pit.door arm) must", { depth_mm: 1000 }]]);
    expect(of("30 % of wall")).toStrictEqual([
      ["cover < dig: closes(dig cover net pit.door arm) must", { depth_mm: 1000 }],
      ["wall + 30 % of wall < dig: closes(dig wall net pit.door arm) must", { depth_mm: 1000, pour: "wall" }],
    ]);
  });
});

describe("the reason of a row that a choice asks for", () => {
  test("tells the alternative and the amounts of the very wait, also where several lead to one step", () => {
    const either = [
      {
        name: "slow",
        waits: [
          { from: "a", to: "c", least: "1 h" },
          { from: "b", to: "c", least: "2 h", most: "5 h" },
          { from: "b", to: "d" },
        ],
      },
      { name: "never", waits: [{ from: "c", to: "a" }] },
    ];
    expect(told({ steps: [step("a"), step("b"), step("c"), step("d")], choices: [{ id: "how", either }] })).toEqual([
      ["a + 1 h < c", "a", "c", { either: ["slow", "never"], by: "slow", least: "1 h" }],
      ["b + 2 h within 5 h < c", "b", "c", { either: ["slow", "never"], by: "slow", least: "2 h", most: "5 h" }],
      ["b < d", "b", "d", { either: ["slow", "never"], by: "slow" }],
    ]);
  });

  test("where it counts from another pour, tells the wait that speaks of that pour, and the pour", () => {
    const either = [
      {
        name: "hard",
        waits: [
          { from: "set", to: "strip", least: "3 h" },
          { from: "lay", to: "strip", least: "40 % of wall" },
          { from: "lay", to: "strip", most: "90 % of roof" },
        ],
      },
    ];
    const steps = [pour("wall"), step("set"), step("lay"), step("strip"), pour("roof")];
    expect(told({ steps, choices: [{ id: "when", either }] })).toEqual([
      ["set + 3 h < strip", "set", "strip", { either: ["hard"], by: "hard", least: "3 h" }],
      ["lay < strip", "lay", "strip", { either: ["hard"], by: "hard", least: "40 % of wall" }],
      ["wall + 40 % of wall < strip", "wall", "strip", { either: ["hard"], by: "hard", least: "40 % of wall", pour: "wall" }],
      ["roof within 90 % of roof < strip", "roof", "strip", { either: ["hard"], by: "hard", most: "90 % of roof", pour: "roof" }],
    ]);
  });

  test("of the second of two choices tells its own alternative", () => {
    const other = (name: string, from: string, to: string) => ({ name, waits: [{ from, to }] });
    const choices = [
      { id: "one", either: [other("ab", "a", "b"), other("ba", "b", "a")] },
      { id: "two", either: [other("ba", "b", "a"), other("ac", "a", "c")] },
    ];
    expect(
      told({ steps: [step("a"), step("b"), step("c")], choices }).map(([row, , , detail]) => [row, (detail as { by: string }).by]),
    ).toEqual([
      ["a < b", "ab"],
      ["a < c", "ac"],
    ]);
  });
});
