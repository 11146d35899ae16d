import { describe, expect, test } from "vitest";
import { place, small, step } from "../../../../test/fixtures/small";

const panel = { id: "panel", closes: ["cage.door"] };
const tie = step("tie", { reaches: [{ place: "cage" }] });

describe("closing", () => {
  test("before it is put up, when it never comes down", () => {
    const { rows, order } = small({ places: [place("cage")], pieces: [panel], steps: [step("set", { puts: ["panel"] }), tie] });
    expect(rows).toEqual(["tie < set: closes(tie set panel cage.door person) must"]);
    expect(order).toBe("tie set");
  });

  test("before or after: before is the default, and stays open", () => {
    const steps = [step("set", { puts: ["panel"] }), step("strip", { takes: ["panel"] }), tie];
    const { rows, result } = small({ places: [place("cage")], pieces: [panel], steps });
    expect(rows).toEqual(["tie < set: closes(tie set panel cage.door person) chosen", "set < strip: up-down(set strip panel) must"]);
    expect(result.choices.map(({ options, chosen }) => [options, chosen])).toEqual([[[{ arcs: [[2, 0]] }, { arcs: [[1, 2]] }], 0]]);
  });

  test("after, when a link rules out before", () => {
    const steps = [step("set", { puts: ["panel"] }), step("strip", { takes: ["panel"] }), { ...tie, after: ["set"] }];
    const { rows, result } = small({ places: [place("cage")], pieces: [panel], steps });
    expect(rows).toContain("strip < tie: closes(tie strip panel cage.door person) must");
    expect(result.choices).toEqual([]);
  });

  test("what stands from the start must come down first, or blocks for good", () => {
    const stands = { ...panel, fromStart: true };
    const steps = [tie, step("break-out", { takes: ["panel"] })];
    expect(small({ places: [place("cage")], pieces: [stands], steps }).order).toBe("break-out tie");
    const { blocks } = small({ places: [place("cage")], pieces: [stands], steps: [tie] });
    expect(blocks).toEqual([["ways(cage person)", "closes(panel cage.door)", "reach(tie cage person)"]]);
  });

  test("a step is let off what it puts up itself, not what it takes down", () => {
    const both = step("tie", { reaches: [{ place: "cage" }], puts: ["panel"] });
    expect(small({ places: [place("cage")], pieces: [panel], steps: [both] }).rows).toEqual([]);
    const takes = step("strip", { reaches: [{ place: "cage" }], takes: ["panel"] });
    const { blocks, codes } = small({ places: [place("cage")], pieces: [panel], steps: [step("set", { puts: ["panel"] }), takes] });
    expect(blocks).toEqual([["ways(cage person)", "closes(panel cage.door)", "up-down(set strip panel)", "reach(strip cage person)"]]);
    expect(codes).toEqual(["access.trapped"]);
  });

  test("a piece nobody puts up closes nothing", () => {
    expect(small({ places: [place("cage")], pieces: [panel], steps: [tie] }).rows).toEqual([]);
  });

  test("one that goes by itself opens again after its amount", () => {
    const steps = [step("spray", { puts: ["panel"] }), { ...tie, after: ["spray"] }];
    const { rows } = small({ places: [place("cage")], pieces: [{ ...panel, goesAfter: "2 h" }], steps });
    expect(rows[0]).toBe("spray + 2 h < tie: closes(tie spray panel cage.door person) must");
    expect(rows[1]).toBe("spray < tie: wait(spray tie spray>tie) must redundant");
  });
});

describe("ways", () => {
  const two = place("cage", { id: "north", passes: ["person"] }, { id: "south", passes: ["person"] });
  const faces = [
    { id: "north-face", closes: ["cage.north"] },
    { id: "south-face", closes: ["cage.south"] },
  ];
  const set = (id: string, after: string[] = []) => step(`set-${id}`, { puts: [`${id}-face`], after });

  test("any usable one is enough; the first is the default", () => {
    const { rows, result } = small({ places: [two], pieces: faces, steps: [set("north"), set("south"), tie] });
    expect(rows).toEqual(["tie < set-north: closes(tie set-north north-face cage.north person) chosen"]);
    expect(result.choices).toHaveLength(1);
    expect(result.choices[0]).toMatchObject({ chosen: 0, options: [{ arcs: [[2, 0]] }, { arcs: [[2, 1]] }] });
  });

  test("the second is taken when the first is shut", () => {
    const { rows } = small({ places: [two], pieces: faces, steps: [set("north"), set("south"), { ...tie, after: ["set-north"] }] });
    expect(rows).toContain("tie < set-south: closes(tie set-south south-face cage.south person) must");
  });

  test("both shut is a block that names both", () => {
    const { blocks } = small({
      places: [two],
      pieces: faces,
      steps: [set("north"), set("south", ["set-north"]), { ...tie, after: ["set-south"] }],
    });
    expect(blocks).toEqual([
      [
        "ways(cage person)",
        "closes(north-face cage.north)",
        "closes(south-face cage.south)",
        "reach(tie cage person)",
        "wait(set-north set-south set-north>set-south)",
        "wait(set-south tie set-south>tie)",
      ],
    ]);
  });

  test("a place without a way for it is a block of two statements", () => {
    const { blocks, codes } = small({ places: [place("cage", { id: "slit", passes: ["sight"] })], steps: [tie] });
    expect(blocks).toEqual([["ways(cage person)", "reach(tie cage person)"]]);
    expect(codes).toEqual(["access.blocked"]);
  });

  test("one of several places is enough", () => {
    const places = [place("cage"), place("roof", { id: "hatch", passes: ["sight"] })];
    const steps = [step("tie", { reaches: [{ any: [{ place: "roof" }, { place: "cage" }] }] }), step("set", { puts: ["panel"] })];
    const { rows, result } = small({ places, pieces: [panel], steps });
    expect(rows).toEqual(["tie < set: closes(tie set panel cage.door person) must"]);
    expect(result.statements[0]).toEqual({
      rule: "closes",
      piece: "panel",
      place: "cage",
      way: "cage.door",
      step: "tie",
      other: "set",
      need: "person",
      detail: {},
    });
  });

  test("a reach of one of several names them all when none will do", () => {
    const places = [place("cage", { id: "a", passes: ["sight"] }), place("roof", { id: "b", passes: ["hose"] })];
    const { result } = small({
      places,
      steps: [step("tie", { reaches: [{ any: [{ place: "roof" }, { place: "cage", need: "arm", depth: "100 mm" }] }] })],
    });
    const because = result.findings[0]?.because ?? [];
    expect(because.map((s) => [s.rule, s.place, s.need])).toEqual([
      ["ways", "cage", "arm"],
      ["ways", "roof", "person"],
      ["reach", undefined, undefined],
    ]);
    expect(because[2]).toMatchObject({ id: "1", detail: { places: ["roof", "cage"], needs: ["person", "arm"] } });
  });
});

describe("making", () => {
  const deck = { id: "deck", makes: ["top.ladder"] };
  const top = place("top", { id: "ladder", passes: ["person"] });
  const walk = step("walk", { reaches: [{ place: "top" }] });

  test("after it is up and before it is down", () => {
    const steps = [walk, step("down", { takes: ["deck"] }), step("up", { puts: ["deck"] })];
    const { rows, order } = small({ places: [top], pieces: [deck], steps });
    expect(order).toBe("up walk down");
    expect(rows).toEqual([
      "up < walk: makes(walk up deck top.ladder person) must",
      "walk < down: makes(walk down deck top.ladder person) must",
      "up < down: up-down(up down deck) must redundant",
    ]);
  });

  test("a way whose maker nobody puts up is no way", () => {
    const { blocks } = small({ places: [top], pieces: [deck], steps: [walk] });
    expect(blocks).toEqual([["ways(top person)", "makes(deck top.ladder)", "reach(walk top person)"]]);
  });

  test("one that goes by itself is used until it goes, by the step's finish", () => {
    const { rows } = small({ places: [top], pieces: [{ ...deck, goesAfter: "3 d" }], steps: [walk, step("up", { puts: ["deck"] })] });
    expect(rows).toEqual([
      "up < walk: makes(walk up deck top.ladder person) must",
      "up within 3 d < walk: makes(walk up deck top.ladder person) must time",
    ]);
  });

  test("its own maker need not be there before", () => {
    const own = step("up", { puts: ["deck"], reaches: [{ place: "top" }] });
    expect(small({ places: [top], pieces: [deck], steps: [own] }).rows).toEqual([]);
  });
});

describe("filling", () => {
  test("shuts every way, and ways that come later too", () => {
    const concrete = { id: "concrete", fills: ["cage"] };
    const ladder = { id: "ladder", makes: ["cage.hole"] };
    const cage = place("cage", { id: "hole", passes: ["person"] });
    const steps = [step("pour", { puts: ["concrete"] }), step("open", { puts: ["ladder"], after: ["pour"] }), tie];
    const { blocks } = small({ places: [cage], pieces: [concrete, ladder], steps });
    expect(blocks).toEqual([
      ["ways(cage person)", "fills(concrete cage)", "makes(ladder cage.hole)", "reach(tie cage person)", "wait(pour open pour>open)"],
    ]);
  });

  test("only breaking it out opens the place", () => {
    const concrete = { id: "concrete", fills: ["cage"] };
    const steps = [step("pour", { puts: ["concrete"] }), { ...tie, after: ["pour"] }, step("break-out", { takes: ["concrete"] })];
    expect(small({ places: [place("cage")], pieces: [concrete], steps }).order).toBe("pour break-out tie");
  });
});

describe("through", () => {
  const outer = place("yard", { id: "gate", passes: ["person"] });
  const inner = place("cage", { id: "side", passes: ["arm"], through: "yard" });
  const reaching = step("tie", { reaches: [{ place: "cage", need: "arm", depth: "300 mm" }] });

  test("the outer place is reached with a person where the way says nothing else", () => {
    const shut = { id: "shut", closes: ["yard.gate"] };
    const { rows } = small({ places: [outer, inner], pieces: [shut], steps: [step("close", { puts: ["shut"] }), reaching] });
    expect(rows).toEqual(["tie < close: closes(tie close shut yard.gate person) must"]);
  });

  test("or with the need that it states", () => {
    const narrow = place("yard", { id: "slit", passes: ["arm"] });
    const stated = place("cage", { id: "side", passes: ["arm"], through: { place: "yard", need: "arm", depth: "500 mm" } });
    expect(small({ places: [narrow, stated], steps: [reaching] }).codes).toEqual([]);
    const { blocks } = small({ places: [narrow, inner], steps: [reaching] });
    expect(blocks).toEqual(
      [["ways(cage arm)", "through(cage.side)", "ways(yard person)", "reach(tie cage arm)"]].map((b) => b.sort(byDocument)),
    );
  });

  const turn = ["ways(yard person)", "ways(cage arm)", "through(cage.side)", "reach(tie cage arm)"];
  const byDocument = (a: string, b: string) => turn.indexOf(a) - turn.indexOf(b);
});

describe("equal reaches of one step are told once", () => {
  test("for each need a statement of its own", () => {
    const cage = place("cage", { id: "door", passes: ["person"] });
    const steps = [
      step("tie", { reaches: [{ place: "cage" }, { place: "cage" }, { place: "cage", need: "sight" }] }),
      step("set", { puts: ["panel"] }),
    ];
    expect(small({ places: [cage], pieces: [panel], steps }).rows).toEqual([
      "tie < set: closes(tie set panel cage.door person) must",
      "tie < set: closes(tie set panel cage.door sight) must redundant",
    ]);
  });
});
