import { describe, expect, test } from "vitest";
import { caseOf, linksOf, orderOf, rowsOf, sayAll } from "../../../test/fixtures/say";
import { place, smallCase, step } from "../../../test/fixtures/small";
import { access, lastChances, may, why } from "./index";

const column = () =>
  smallCase({
    places: [place("cage", { id: "north", passes: ["person"] }, { id: "top", passes: ["hose", "sight"] })],
    pieces: [{ id: "face", closes: ["cage.north"] }, { id: "concrete", fills: ["cage"] }, { id: "brace" }],
    steps: [
      step("pour", { sort: "pour", puts: ["concrete"], reaches: [{ place: "cage", need: "hose" }], leansOn: [{ piece: "face" }] }),
      step("close", { puts: ["face"] }),
      step("strip", { takes: ["face"] }),
      step("tie", { sort: "embed", reaches: [{ place: "cage" }] }),
      step("look", { sort: "inspection", reaches: [{ place: "cage", need: "sight" }], after: ["tie"] }),
      step("sweep"),
      step("order", { sort: "office", reaches: [{ place: "cage", need: "sight" }] }),
    ],
  });

describe("why", () => {
  const { build, at } = column();
  const result = access(build);
  const ask = (a: string, b: string) => why(build, result, at(a), at(b));

  test("the shortest chain of what must be, link by link", () => {
    const answer = ask("tie", "strip");
    expect(answer.verdict).toBe("must");
    expect(linksOf(answer)).toEqual(["fills(tie pour concrete cage person)", "leans(pour strip face)"]);
    expect(answer.verdict !== "none" && answer.links.map(({ from, to }) => [from, to])).toEqual([
      [at("tie"), at("pour")],
      [at("pour"), at("strip")],
    ]);
  });

  test("through what must be, though a shorter way leads through what was chosen", () => {
    const either = ["2 h", "1 h"].map((least) => ({ name: least, waits: [{ from: "a", to: "b", least }] }));
    const steps = [step("a"), step("x", { after: ["a"] }), step("b", { after: ["x"] })];
    const { build: rough } = smallCase({ steps, choices: [{ id: "c", either }] });
    const answer = why(rough, access(rough), 0, 2);
    expect([answer.verdict, linksOf(answer)]).toEqual(["must", ["wait(a x a>x)", "wait(x b x>b)"]]);
  });

  test("what was only chosen is called so", () => {
    const answer = ask("look", "close");
    expect([answer.verdict, linksOf(answer)]).toEqual(["chosen", ["closes(look close face cage.north sight)"]]);
  });

  test("none between steps that have nothing to do with each other, against the order, and from a step to itself", () => {
    expect(ask("sweep", "pour")).toEqual({ verdict: "none" });
    expect(ask("pour", "tie")).toEqual({ verdict: "none" });
    expect(ask("tie", "tie")).toEqual({ verdict: "none" });
  });

  test("a chain of chosen links is a must when the reverse is impossible", () => {
    const cold = smallCase({
      steps: [step("a"), step("x"), step("y"), step("b")],
      choices: [
        {
          id: "c",
          either: [
            {
              name: "by x",
              waits: [
                { from: "a", to: "x" },
                { from: "x", to: "b" },
              ],
            },
            {
              name: "by y",
              waits: [
                { from: "a", to: "y" },
                { from: "y", to: "b" },
              ],
            },
          ],
        },
      ],
    });
    const found = access(cold.build);
    expect(found.arcs.forced).toEqual(Uint8Array.of(0, 0));
    expect(why(cold.build, found, 0, 3).verdict).toBe("must");
    expect(why(cold.build, found, 0, 1).verdict).toBe("chosen");
  });

  test("none where there is no order", () => {
    const { build: bad } = smallCase({
      places: [place("pit", { id: "slit", passes: ["sight"] })],
      steps: [step("a", { reaches: [{ place: "pit" }] }), step("b", { after: ["a"] })],
    });
    expect(why(bad, access(bad), 0, 1)).toEqual({ verdict: "none" });
  });
});

describe("may", () => {
  const { build, at } = column();

  test("yes", () => {
    expect(may(build, at("close"), at("look"))).toEqual({ verdict: "yes" });
    expect(may(build, at("sweep"), at("tie"))).toEqual({ verdict: "yes" });
  });

  test("no, with what forbids it", () => {
    const answer = may(build, at("close"), at("tie"));
    expect(answer.verdict === "no" && sayAll(answer.finding)).toEqual([
      "ways(cage person)",
      "closes(face cage.north)",
      "fills(concrete cage)",
      "leans(pour face)",
      "reach(tie cage person)",
      "asked(close tie)",
    ]);
    expect(answer.verdict === "no" && answer.finding).toMatchObject({ code: "access.refused", where: { list: "steps", id: "close" } });
  });

  test("how much was tried, where the work allowed was spent first; where only a set as small as can be was not found, that", () => {
    expect(may(build, at("close"), at("look"), 0)).toEqual({ verdict: "not-found", tried: 0 });
    const answer = may(build, at("tie"), at("tie"), 0);
    expect(answer.verdict === "no" && answer.finding.detail).toEqual({ steps: ["tie"], spent: ["set"] });
  });

  test("a step is not before itself", () => {
    const answer = may(build, at("tie"), at("tie"));
    expect(answer.verdict === "no" && answer.finding.detail).toEqual({ steps: ["tie"] });
    expect(answer.verdict === "no" && sayAll(answer.finding)).toEqual(["asked(tie tie)"]);
  });

  test("in a build that cannot be built, no for the build's own reason", () => {
    const { build: bad } = smallCase({
      places: [place("pit", { id: "slit", passes: ["sight"] })],
      steps: [step("a", { reaches: [{ place: "pit" }] }), step("b")],
    });
    const answer = may(bad, 0, 1);
    expect(answer.verdict === "no" && [answer.finding.code, sayAll(answer.finding)]).toEqual([
      "access.blocked",
      ["ways(pit person)", "reach(a pit person)"],
    ]);
  });
});

describe("last chances", () => {
  const { build, at } = column();
  const result = access(build);

  test("for each closing in the order of going up: who gets in before, as what, and whether it must be before", () => {
    expect(orderOf(build, result)).toEqual(["tie", "look", "sweep", "order", "close", "pour", "strip"]);
    expect(lastChances(build, result)).toEqual([
      {
        piece: 0,
        step: at("close"),
        forGood: false,
        before: [
          { step: at("tie"), what: "embed", forced: true },
          { step: at("look"), what: "inspection", forced: false },
          { step: at("order"), what: "work", forced: false },
        ],
      },
      {
        piece: 1,
        step: at("pour"),
        forGood: true,
        before: [
          { step: at("tie"), what: "embed", forced: true },
          { step: at("look"), what: "inspection", forced: true },
          { step: at("order"), what: "work", forced: true },
        ],
      },
    ]);
  });

  test("also for who only passes through what is closed", () => {
    const passing = smallCase({
      places: [place("yard"), place("pit", { id: "side", passes: ["person"], through: "yard" })],
      pieces: [{ id: "gate", closes: ["yard.door"] }, { id: "net", goesAfter: "1 d", closes: ["pit.side"] }, { id: "post" }],
      steps: [
        step("shut", { puts: ["gate", "post"] }),
        step("dig", { reaches: [{ place: "pit" }] }),
        step("cover", { puts: ["net"], after: ["dig"] }),
      ],
    });
    const closings = lastChances(passing.build, access(passing.build));
    expect(closings.map((c) => [c.piece, c.forGood, c.before.map((b) => b.step)])).toEqual([
      [0, true, [passing.at("dig")]],
      [1, false, [passing.at("dig")]],
    ]);
  });

  test("none where there is no order", () => {
    const { build: bad } = smallCase({
      pieces: [{ id: "p", heldBy: [["q"]], closes: [] }, { id: "q" }],
      steps: [step("up", { puts: ["p"] })],
    });
    expect(lastChances(bad, access(bad))).toEqual([]);
  });
});

test("where the work allowed was spent before there is an order, that is said", () => {
  const answer = access(column().build, [], 0);
  expect([answer.possible, answer.findings]).toEqual([
    false,
    [{ code: "access.too-hard", severity: "stop", where: {}, detail: { work: 0 } }],
  ]);
  expect(access(column().build, [], 100_000)).toEqual(access(column().build));
});

describe("what dates have refuted", () => {
  const panel = smallCase({
    places: [place("cage")],
    pieces: [{ id: "panel", closes: ["cage.door"] }],
    steps: [step("set", { puts: ["panel"] }), step("strip", { takes: ["panel"] }), step("tie", { reaches: [{ place: "cage" }] })],
  });
  const { build, at } = panel;

  test("is not chosen again", () => {
    const first = access(build);
    expect(orderOf(build, first)).toEqual(["tie", "set", "strip"]);
    const second = access(build, [[[at("tie"), at("set")]]]);
    expect(orderOf(build, second)).toEqual(["set", "strip", "tie"]);
    expect(second.arcs.count).toBe(2);
    expect(second.arcs.forced).toEqual(Uint8Array.of(0, 1));
    expect(second.choices).toHaveLength(1);
    expect(second.choices[0]?.chosen).toBe(1);
  });

  test("with nothing left it is said, and what was refuted is named", () => {
    const last = access(build, [
      [[at("tie"), at("set")]],
      [
        [at("strip"), at("tie")],
        [at("set"), at("strip")],
      ],
    ]);
    expect(last.possible).toBe(false);
    expect(last.findings.map((f) => f.code)).toEqual(["access.refuted"]);
    const refused = last.findings[0]?.because?.filter((s) => s.rule === "refused");
    expect(refused).toEqual([
      { rule: "refused", id: "1", detail: { before: ["tie"], after: ["set"] } },
      { rule: "refused", id: "2", detail: { before: ["strip", "set"], after: ["tie", "strip"] } },
    ]);
  });

  test("an amount that settles a statement is refuted without the bare precedence", () => {
    const late = smallCase({
      places: [place("top", { id: "edge", passes: ["person"] }, { id: "bank", passes: ["person"] })],
      pieces: [{ id: "wet", closes: ["top.edge"], goesAfter: "2 h" }],
      steps: [step("look", { reaches: [{ place: "top" }], leansOn: [{ piece: "wet" }] }), step("spray", { puts: ["wet"] })],
    });
    const first = access(late.build);
    expect(rowsOf(late.build, first)[0]).toBe("spray + 2 h < look: closes(look spray wet top.edge person) chosen");
    const again = access(late.build, [[[1, 0, first.arcs.link?.[0] as number]]]);
    expect(rowsOf(late.build, again)).toEqual([
      "spray < look: leans(look spray wet) must",
      "spray within 2 h < look: leans(look spray wet) must time",
    ]);
    expect(access(late.build, [[[1, 0]]]).possible).toBe(false);
    const none = access(late.build, [[[1, 0, first.arcs.link?.[1] as number]]]);
    expect(none.possible).toBe(false);
  });

  test("so is a link that binds time only: the other alternative is taken", () => {
    const { build: joint, at: of } = caseOf("cold-joint");
    const first = access(joint);
    const row = [...Array(first.arcs.count).keys()].find((r) => first.arcs.orders[r] === 0) as number;
    const again = access(joint, [[[of("pour-wall"), of("pour-vault"), first.arcs.link?.[row] as number]]]);
    expect(rowsOf(joint, again).filter((r) => r.includes("choice"))).toEqual([
      "pour-wall + 24 h < roughen: choice(pour-wall roughen joint) chosen",
      "roughen < pour-vault: choice(roughen pour-vault joint) must redundant",
    ]);
    const both = [0, 1, 2].map((r): [number, number, number] => [
      again.arcs.from[r] as number,
      again.arcs.to[r] as number,
      again.arcs.link?.[r] as number,
    ]);
    const last = access(joint, [[[of("pour-wall"), of("pour-vault"), first.arcs.link?.[row] as number]], both]);
    expect(last.possible).toBe(false);
    expect(last.findings[0]?.because?.filter((s) => s.rule === "refused").map((s) => s.detail?.amounts)).toEqual([
      ["1 h"],
      ["", "24 h", ""],
    ]);
  });
});
