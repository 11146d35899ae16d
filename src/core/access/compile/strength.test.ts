import { describe, expect, test } from "vitest";
import { place, small, step } from "../../../../test/fixtures/small";

const pour = step("pour", { sort: "pour", pour: { strength: "28 MPa" } });
const strike = step("strike", { takes: ["shores"] });
const set = step("set", { puts: ["shores"] });

describe("the strength of a pour counts from that pour, whatever it is said of", () => {
  const deck = (over: object = {}) => ({ id: "deck", heldBy: [["shores"]], holdsItself: "75 % of pour", ...over });

  test("a deck laid long before the pour: the shores stay until that pour has the strength", () => {
    const steps = [set, step("lay", { puts: ["deck"] }), { ...pour, notBefore: "2027-05-01", after: ["lay"] }, strike];
    const { rows, order, result } = small({ pieces: [{ id: "shores" }, deck()], steps });
    expect(order).toBe("set lay pour strike");
    expect(rows).toContain("pour + 75 % of pour < strike: held(strike pour deck) must");
    expect(rows.some((row) => row.startsWith("lay < strike: held(strike lay deck) must"))).toBe(true);
    const row = rows.indexOf("pour + 75 % of pour < strike: held(strike pour deck) must");
    expect(result.statements[result.arcs.reason[row] as number]?.detail?.pour).toBe("pour");
  });

  test("fill beside the walls, held by cross props until the vault stands", () => {
    const pieces = [{ id: "props" }, { id: "fill", heldBy: [["props"]], holdsItself: "75 % of pour" }, { id: "vault" }];
    const steps = [
      step("set-props", { puts: ["props"] }),
      step("fill", { puts: ["fill"] }),
      step("take-props", { takes: ["props"], after: ["fill"] }),
      { ...pour, puts: ["vault"] },
    ];
    const { rows, order } = small({ pieces, steps });
    expect(order).toBe("set-props fill pour take-props");
    expect(rows).toContain("pour + 75 % of pour < take-props: held(take-props pour fill) must");
  });

  test("no sooner than the pour, so props that must go before it hold the fill no longer", () => {
    const pieces = [{ id: "shores" }, deck()];
    const steps = [set, step("lay", { puts: ["deck"] }), { ...strike, after: ["lay"] }, { ...pour, after: ["strike"] }];
    const { blocks, codes } = small({ pieces, steps });
    expect(codes).toEqual(["access.held"]);
    expect(blocks).toEqual([["held(deck)", "wait(strike pour strike>pour)"]]);
  });

  test("of its own concrete it is one row, as ever", () => {
    const steps = [set, { ...pour, puts: ["deck"] }, strike];
    const { rows } = small({ pieces: [{ id: "shores" }, deck()], steps });
    expect(rows.filter((row) => row.includes("pour + "))).toEqual(["pour + 75 % of pour < strike: held(strike pour deck) must"]);
    expect(rows.filter((row) => row.includes(" + "))).toHaveLength(1);
  });

  test("what stood before the build began waits for the pour of this build too", () => {
    const pieces = [{ id: "shores", fromStart: true }, deck({ fromStart: true })];
    expect(small({ pieces, steps: [strike, pour] }).rows).toEqual(["pour + 75 % of pour < strike: held(strike pour deck) must"]);
  });

  test("leaning on it once it has the strength", () => {
    const load = step("load", { leansOn: [{ piece: "ledge", once: "75 % of pour" }] });
    const { rows } = small({ pieces: [{ id: "ledge" }], steps: [load, step("set", { puts: ["ledge"] }), pour] });
    expect(rows).toEqual(["set < load: leans(load set ledge) must", "pour + 75 % of pour < load: leans(load pour ledge) must"]);
  });

  test("a cover that may go once the slab under it has its strength", () => {
    const cover = { id: "cover", closes: ["top.door"], goesAfter: "50 % of pour" };
    const steps = [step("walk", { reaches: [{ place: "top" }], after: ["cover"] }), step("cover", { puts: ["cover"] }), pour];
    expect(small({ places: [place("top")], pieces: [cover], steps }).rows).toEqual([
      "cover < walk: closes(walk cover cover top.door person) must",
      "pour + 50 % of pour < walk: closes(walk pour cover top.door person) must",
      "cover < walk: wait(cover walk cover>walk) must redundant",
    ]);
    const bridge = { id: "cover", makes: ["top.door"], goesAfter: "50 % of pour" };
    expect(small({ places: [place("top")], pieces: [bridge], steps }).rows).toContain(
      "pour within 50 % of pour < walk: makes(walk pour cover top.door person) must time",
    );
  });
});

describe("waits", () => {
  const wait = (over: object) => ({
    steps: [step("set"), step("strip"), pour],
    waits: [{ id: "w", from: "set", to: "strip", why: "", ...over }],
  });

  test("a least and a most of another pour are rows of that pour; the written link stays a bare precedence", () => {
    expect(small(wait({ least: "40 % of pour" })).rows).toEqual([
      "set < strip: wait(set strip w) must",
      "pour + 40 % of pour < strip: wait(set strip w) must",
    ]);
    expect(small(wait({ least: "2 h", most: "60 % of pour" })).rows).toEqual([
      "set + 2 h < strip: wait(set strip w) must",
      "pour within 60 % of pour < strip: wait(set strip w) must time",
    ]);
    expect(small(wait({ most: "60 % of pour" })).rows).toEqual(["pour within 60 % of pour < strip: wait(set strip w) must time"]);
    expect(small(wait({ least: "40 % of pour", most: "60 % of pour" })).rows).toEqual([
      "set < strip: wait(set strip w) must",
      "pour + 40 % of pour < strip: wait(set strip w) must",
      "pour within 60 % of pour < strip: wait(set strip w) must time",
    ]);
  });

  test("from the start of the pour itself it still counts from its finish; to an end it binds time only", () => {
    const own = { from: "pour", fromEnd: "start", least: "40 % of pour" };
    expect(small(wait(own)).rows).toEqual([
      "pour + 0 min < strip: wait(pour strip w) must time",
      "pour + 40 % of pour < strip: wait(pour strip w) must",
    ]);
    expect(small(wait({ toEnd: "finish", least: "40 % of pour" })).rows).toEqual([
      "set + 0 min < strip: wait(set strip w) must time",
      "pour + 40 % of pour < strip: wait(set strip w) must time",
    ]);
    const usual = { from: "pour", least: "40 % of pour", most: "60 % of pour" };
    expect(small(wait(usual)).rows).toEqual(["pour + 40 % of pour within 60 % of pour < strip: wait(pour strip w) must"]);
  });

  test("in a choice, the reason tells the alternative, its amounts and the pour", () => {
    const { steps } = wait({});
    const either = [
      { name: "early", waits: [{ from: "strip", to: "set" }] },
      { name: "hard", waits: [{ from: "set", to: "strip", least: "40 % of pour" }] },
    ];
    const { rows, result } = small({ steps: [...steps.slice(1), { ...steps[0], after: ["pour"] }], choices: [{ id: "c", either }] });
    expect(rows).toContain("strip < set: choice(strip set c) chosen");
    const hard = small({ steps: [{ ...steps[0] }, { ...steps[1], after: ["set"] }, pour], choices: [{ id: "c", either }] });
    const row = hard.rows.indexOf("pour + 40 % of pour < strip: choice(pour strip c) must");
    expect(hard.result.statements[hard.result.arcs.reason[row] as number]?.detail).toMatchObject({
      by: "hard",
      least: "40 % of pour",
      pour: "pour",
    });
    expect(result.possible).toBe(true);
  });
});
