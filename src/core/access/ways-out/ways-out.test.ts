import { describe, expect, test } from "vitest";
import { type Case, caseOf, orderOf } from "../../../../test/fixtures/say";
import { place, smallCase, step } from "../../../../test/fixtures/small";
import type { DocumentEdit, Finding } from "../../base";
import { access, may, waysOut, withWaysOut } from "../index";

const blockOf = ({ build }: Case): Finding => access(build).findings[0] as Finding;
const found = (one: Case, finding = blockOf(one)) => waysOut(one.build, finding, one.apply);
const kinds = (one: Case, finding = blockOf(one)) => found(one, finding).map(({ kind }) => kind);
const edited = (one: Case, edits: readonly DocumentEdit[]) => {
  const build = one.apply(edits);
  if (build === null) throw new Error("no build");
  return { build, result: access(build), order: orderOf(build, access(build)).join(" ") };
};
const asked = (one: Case, a: string, b: string): Finding => {
  const answer = may(one.build, one.at(a), one.at(b));
  if (answer.verdict !== "no") throw new Error(answer.verdict);
  return answer.finding;
};

const cage = place(
  "cage",
  { id: "north", passes: ["person"] },
  { id: "top", passes: ["unit", "hose"], opening: { wide: "1 m", high: "1 m" } },
);
const column = (tie: object = {}, more: object = {}) =>
  smallCase({
    places: [cage],
    pieces: [
      { id: "steel", size: { long: "3 m", wide: "300 mm", thick: "300 mm" }, weight: "40 kg" },
      { id: "face", closes: ["cage.north"] },
      { id: "concrete", fills: ["cage"] },
    ],
    steps: [
      step("set", { puts: ["face"] }),
      step("tie", { work: "4 h", hands: 2, puts: ["steel"], reaches: [{ place: "cage" }], after: ["set"], ...tie }),
      step("pour", { sort: "pour", puts: ["concrete"], leansOn: [{ piece: "face" }, { piece: "steel" }] }),
    ],
    ...more,
  });

describe("bench", () => {
  test("work that makes a piece of known size moves to a step of its own; the old one brings the piece in as one", () => {
    const one = column();
    const [bench] = found(one);
    expect(bench).toEqual({
      kind: "bench",
      detail: { step: "tie", place: "cage", piece: "steel" },
      edits: [
        {
          path: ["steps", "id=tie-bench"],
          value: {
            id: "tie-bench",
            name: "tie, on the bench",
            sort: "work",
            hands: [{ role: "hands", number: 2 }],
            work: { is: "240 min", from: "own guess" },
          },
        },
        { path: ["steps", "id=tie", "reaches", "0"], value: { place: "cage", need: "unit", piece: "steel" } },
        { path: ["steps", "id=tie", "work"], value: { is: "1 h", from: "own guess" } },
        { path: ["steps", "id=tie", "after", "id=tie-bench"], value: "tie-bench" },
      ],
    });
    expect(edited(one, bench?.edits ?? []).order).toBe("set tie-bench tie pour");
  });

  test("other work is done before the piece goes in that closes it off", () => {
    const one = smallCase({
      places: [place("face", { id: "front", passes: ["person"] })],
      pieces: [{ id: "panel", closes: ["face.front"] }, { id: "prop" }],
      steps: [step("set", { puts: ["panel", "prop"] }), step("oil", { reaches: [{ place: "face" }], leansOn: [{ piece: "prop" }] })],
    });
    expect(found(one)[0]).toMatchObject({ kind: "leave-face-off" });
    const plain = smallCase({
      places: [place("face", { id: "front", passes: ["sight"] })],
      pieces: [{ id: "panel", closes: ["face.front"] }],
      steps: [step("set", { puts: ["panel"] }), step("oil", { reaches: [{ place: "face", need: "sight" }, { place: "face" }] })],
    });
    expect(kinds(plain)).toEqual([]);
    const shut = smallCase({
      places: [place("face", { id: "front", passes: ["person"] })],
      pieces: [
        { id: "panel", fromStart: true, closes: ["face.front"] },
        { id: "cover", closes: ["face.front"] },
      ],
      steps: [step("set", { puts: ["cover"] }), step("oil", { reaches: [{ place: "face" }] })],
    });
    expect(kinds(shut)).toEqual([]);
  });

  test("not for an inspection", () => {
    expect(kinds(column({ sort: "inspection" }))).not.toContain("bench");
  });
});

describe("the other single changes", () => {
  test("each kind that works once, practical ones first", () => {
    expect(kinds(column())).toEqual(["bench", "leave-face-off", "later", "drop-wait"]);
  });

  test("leave a face off: a new step puts it up after the work", () => {
    const one = column();
    const way = found(one)[1];
    expect(way?.detail).toEqual({ piece: "face", step: "set", other: "tie" });
    expect(way?.edits).toEqual([
      { path: ["steps", "id=set", "puts", "id=face"] },
      {
        path: ["steps", "id=face-later"],
        value: {
          id: "face-later",
          name: "Put up the face",
          hands: [{ role: "hands", number: 1 }],
          work: { is: "1 h", from: "own guess" },
          puts: ["face"],
          after: ["set", "tie"],
        },
      },
    ]);
    expect(edited(one, way?.edits ?? []).order).toBe("set tie face-later pour");
  });

  test("later and drop-wait", () => {
    const one = column();
    const [, , later, drop] = found(one);
    expect(later?.edits).toEqual([
      { path: ["steps", "id=tie", "after", "id=set"] },
      { path: ["steps", "id=set", "after", "id=tie"], value: "tie" },
    ]);
    expect(edited(one, later?.edits ?? []).order).toBe("tie set pour");
    expect(drop?.detail).toEqual({ wait: "set>tie", step: "set", other: "tie" });
  });

  test("a clean-out is shut again before the place is filled", () => {
    const one = column({ reaches: [{ place: "cage", need: "arm", depth: "500 mm" }] });
    const way = found(one).find(({ kind }) => kind === "clean-out");
    expect(way?.detail).toEqual({ place: "cage", step: "tie" });
    expect(way?.edits[0]).toEqual({
      path: ["places", "id=cage", "ways", "id=clean-out"],
      value: { id: "clean-out", name: "by the clean-out", passes: ["arm"], depth: "500 mm" },
    });
    expect(edited(one, way?.edits ?? []).order).toBe("set tie cage-clean-out-shut pour");
  });

  test("a clean-out never opens what is filled", () => {
    const one = smallCase({
      places: [place("cage", { id: "top", passes: ["arm"] })],
      pieces: [{ id: "concrete", fills: ["cage"] }],
      steps: [
        step("pour", { puts: ["concrete"] }),
        step("clean", { reaches: [{ place: "cage", need: "arm", depth: "1 mm" }], after: ["pour"] }),
      ],
    });
    expect(kinds(one)).toEqual(["later", "drop-wait"].slice(1 - Number(kinds(one).includes("later"))));
    expect(kinds(one)).not.toContain("clean-out");
  });

  test("down in between: taken down for the work, the same put up again, and taken down at last by whom it was", () => {
    const one = smallCase({
      places: [place("cage")],
      pieces: [{ id: "panel", closes: ["cage.door"], size: { long: "1 m", wide: "1 m", thick: "18 mm" }, weight: "9 kg" }],
      steps: [
        step("set", { puts: ["panel"] }),
        step("wash", { reaches: [{ place: "cage" }], after: ["set"] }),
        step("strip", { takes: ["panel"], after: ["wash"] }),
      ],
    });
    const way = found(one).find(({ kind }) => kind === "down-between");
    expect(way?.detail).toEqual({ piece: "panel", step: "wash" });
    const { build, order } = edited(one, way?.edits ?? []);
    expect(order).toBe("set panel-off wash panel-on-again strip");
    expect(build.pieces.find(({ id }) => id === "panel-again")).toMatchObject({ closes: [{ place: "cage", way: "door" }], mass_kg: 9 });
  });

  test("split: what one step does at once becomes two steps", () => {
    const both = smallCase({ pieces: [{ id: "p" }, { id: "q" }], steps: [step("both", { work: "3 h", puts: ["p", "q"], takes: ["p"] })] });
    expect(kinds(both)).toEqual(["split"]);
    const { build, order } = edited(both, found(both)[0]?.edits ?? []);
    expect(order.split(" ").sort()).toEqual(["both", "both-part"]);
    expect(build.steps.map((s) => s.work.likely_min)).toEqual([90, 90]);
  });

  test("split: one of two places a step must get to", () => {
    const one = smallCase({
      places: [place("cage"), place("yard")],
      pieces: [
        { id: "panel", closes: ["cage.door"] },
        { id: "gate", closes: ["yard.door"] },
      ],
      steps: [
        step("set", { puts: ["panel"] }),
        step("look", { sort: "check", reaches: [{ place: "yard" }, { place: "cage" }], leansOn: [{ piece: "panel" }] }),
      ],
    });
    const way = found(one).find(({ kind }) => kind === "split");
    expect(way?.detail).toEqual({ step: "look", other: "" });
    expect(edited(one, way?.edits ?? []).result.possible).toBe(true);
  });

  test("a second inspection takes over the hold point", () => {
    const one = smallCase({
      places: [place("cage")],
      pieces: [{ id: "concrete", fills: ["cage"] }],
      steps: [
        step("look", { sort: "inspection", reaches: [{ place: "cage", need: "sight" }], holdPoint: { places: ["cage"] } }),
        step("mend", { reaches: [{ place: "cage" }], after: ["look"] }),
        step("pour", { puts: ["concrete"] }),
      ],
    });
    const way = found(one).find(({ kind }) => kind === "second-inspection");
    expect(way?.detail).toEqual({ step: "look", place: "cage", other: "mend" });
    expect(edited(one, way?.edits ?? []).order).toBe("look mend look-second pour");
  });

  test("dropping a wait, a choice, and what a trial decides", () => {
    const ring = smallCase({
      steps: [step("a"), step("b"), step("try", { trial: { decides: ["a"], what: "mix" }, after: ["b"] })],
      waits: [{ id: "w", from: "a", to: "b", least: "1 h", why: "" }],
      choices: [],
    });
    for (const { edits } of found(ring)) expect(edited(ring, edits).result.possible).toBe(true);
    expect(kinds(ring)).toEqual(["drop-wait"]);
    const choice = smallCase({
      steps: [step("a"), step("b", { after: ["a"] })],
      choices: [{ id: "c", either: [{ name: "x", waits: [{ from: "b", to: "a" }] }] }],
    });
    const all = found(choice);
    expect(all.map(({ detail }) => detail)).toEqual([{ wait: "a>b", step: "a", other: "b" }]);
  });
});

describe("checking", () => {
  test("other blocks may stay", () => {
    const two = column({}, {});
    const document = two.document as { places: object[]; steps: object[] };
    const more = caseOf({
      ...document,
      places: [...document.places, place("pit", { id: "slit", passes: ["sight"] })],
      steps: [...document.steps, step("dig", { reaches: [{ place: "pit" }] })],
    });
    const findings = withWaysOut(more.build, access(more.build).findings, more.apply);
    expect(findings.map((f) => [f.where.id, f.waysOut?.map(({ kind }) => kind)]).sort()).toEqual([
      ["dig", ["clean-out"]],
      ["tie", ["bench", "leave-face-off", "later", "drop-wait"]],
    ]);
  });

  test("what was asked must then be possible", () => {
    const one = column({ after: [] });
    const finding = asked(one, "set", "tie");
    const ways = found(one, finding);
    expect(ways.map(({ kind }) => kind)).toEqual(["bench", "leave-face-off"]);
    for (const { edits } of ways) {
      const { build } = edited(one, edits);
      expect(may(build, build.at.step.get("set") ?? -1, build.at.step.get("tie") ?? -1)).toEqual({ verdict: "yes" });
    }
  });

  test("in a group every copy is changed, and what is new belongs to the group", () => {
    const one = column({}, { groups: [{ id: "columns", name: "Columns", count: 2, members: ["cage", "steel", "face", "set", "tie"] }] });
    const findings = access(one.build).findings;
    expect(findings).toHaveLength(2);
    const ways = waysOut(one.build, findings[0] as Finding, one.apply);
    const bench = ways.find(({ kind }) => kind === "bench");
    expect(bench?.edits[1]).toEqual({ path: ["groups", "id=columns", "members", "id=tie-bench"], value: "tie-bench" });
    expect(edited(one, bench?.edits ?? []).result.possible).toBe(true);
  });

  test("a pair only where no single change works, the second against what the first leaves", () => {
    const twice = smallCase({
      steps: [step("a"), step("b")],
      waits: [
        { id: "v", from: "a", to: "b", least: "1 h", why: "" },
        { id: "w", from: "a", to: "b", least: "2 h", why: "" },
      ],
    });
    expect(found(twice, asked(twice, "b", "a"))).toEqual([
      {
        kind: "drop-wait",
        detail: { wait: "v", step: "a", other: "b", with: "drop-wait" },
        edits: [{ path: ["waits", "id=v"] }, { path: ["waits", "id=w"] }],
      },
    ]);
  });

  test("edits that cannot be read are no way out, and a finding without reasons has none", () => {
    const one = column();
    expect(waysOut(one.build, blockOf(one), () => null)).toEqual([]);
    const note: Finding = { code: "access.holds-itself", severity: "look", where: {}, detail: {} };
    expect(withWaysOut(one.build, [note], one.apply)).toEqual([note]);
    const block = blockOf(one);
    const { because: _, ...bare } = block;
    const others: Finding[] = [{ ...block, severity: "look" }, { ...block, code: "plan.late" }, bare];
    expect(withWaysOut(one.build, others, one.apply)).toEqual(others);
  });
});
