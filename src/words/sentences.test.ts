import { describe, expect, test } from "vitest";
import { access, why } from "../core/access";
import { type Build, readDocument } from "../core/build";
import { compare, plan } from "../core/plan";
import { examples } from "../examples";
import {
  chainSentences,
  closingSentences,
  comparisonSentences,
  findingSentence,
  holderSentence,
  linkSentence,
  statementSentence,
  voice,
  wayOutSentence,
  whySentences,
} from "./index";
import { faultsOf } from "./lint.testing";
import { type Raw, wall } from "./wall.testing";

function read(document: unknown): Build {
  const { build, findings } = readDocument(document);
  if (build === null) throw new Error(findings.map((one) => findingSentence(one, null)).join("\n"));
  return build;
}

const index = (build: Build, id: string) => build.at.step.get(id) as number;

describe("what is said of one small wall", () => {
  const build = read(wall());
  const made = plan(build);

  test("its plan is the one the sentences speak of", () => {
    expect(made.status).toBe("planned");
    expect(made.steps.map(({ start }) => voice(build).moment(start))).toEqual([
      "Sat 13 Mar, 8:00",
      "Sat 13 Mar, 14:00",
      "Sun 14 Mar, 10:00",
      "Sat 20 Mar, 8:00",
    ]);
  });

  test("why the bars come first", () => {
    const order = access(build);
    const said = whySentences(
      why(build, order, index(build, "tie"), index(build, "form")),
      index(build, "tie"),
      index(build, "form"),
      build,
    );
    expect(said).toEqual([
      "“Tie the bars” must come before “Set the north form”.",
      "“Tie the bars” comes before “Set the north form”: it gets to the wall steel from the north, and that way is closed with the north form in place.",
    ]);
    expect(whySentences({ verdict: "none" }, 0, 1, build)).toEqual(["Nothing puts “Tie the bars” before “Set the north form”."]);
  });

  test("what holds each step", () => {
    expect(made.steps.map((_, step) => holderSentence(step, made, build))).toEqual([
      "“Tie the bars” begins Sat 13 Mar, 8:00: it waits for the bars, promised for Wed 10 Mar; Sat 13 Mar is the next day anyone is here for it.",
      "“Set the north form” begins Sat 13 Mar, 14:00: it waits for “Tie the bars” to be done.",
      "“Pour the wall” begins Sun 14 Mar, 10:00: it waits for “Set the north form” to be done.",
      "“Strip the form” begins Sat 20 Mar, 8:00: it comes 24 h after “Pour the wall”; Sat 20 Mar is the next day anyone is here for it.",
    ]);
  });

  test("the chain says where only the calendar made it wait", () => {
    expect(chainSentences(made, build).slice(1, 2)).toEqual([
      "“Tie the bars”, Sat 13 Mar, 8:00: it waits for the bars, promised for Wed 10 Mar; Sat 13 Mar is the next day anyone is here for it.",
    ]);
  });

  test("the closings with their last chances", () => {
    const [first] = closingSentences(made, build);
    expect(first).toEqual({
      closing:
        "Sat 13 Mar, 14:00: “Set the north form” closes the way from the north to the wall steel with the north form, until Sat 20 Mar, 10:00.",
      groups: [{ head: "Done", steps: ["“Tie the bars”"] }],
    });
  });

  test("three days late before the next site day costs nothing, and why", () => {
    const later = read(wall({ over: { deliveries: [{ id: "steel", name: "Bars", calendar: "yard", promised: "2027-03-12" }] } }));
    const now = plan(later);
    expect(comparisonSentences(compare(made, now, later), later, now)).toEqual([
      "The bars coming two days late costs nothing: Wed 10 Mar and Fri 12 Mar both fall before work with it begins on Sat 13 Mar.",
      "The finish stays Sat 20 Mar, 10:00, and no step moves.",
    ]);
  });

  test("a slip past the weekend is told in site days, through what, and what moves", () => {
    const later = read(wall({ over: { deliveries: [{ id: "steel", name: "Bars", calendar: "yard", promised: "2027-03-15" }] } }));
    const now = plan(later);
    const said = comparisonSentences(compare(made, now, later), later, now);
    expect(said[0]).toBe("The finish goes from Sat 20 Mar, 10:00 to Sat 27 Mar, 10:00: two site days lost.");
    expect(said[1]).toMatch(
      /^It goes through the bars, “Tie the bars”, .*“Tie the bars” begins Sat 20 Mar, 8:00: it waits for the bars, promised for Mon 15 Mar; Sat 20 Mar is the next day anyone is here for it\.$/,
    );
    expect(said[2]).toMatch(/^Four steps move: “.*, two site days later/);
    expect(said.at(-1)).toBe("Nothing stays where it was.");
  });

  test("an arm that does not reach is told with what does", () => {
    const order = access(read(wall({ over: { steps: wall().steps, waits: [{ id: "wrong", from: "form", to: "tie" }] } })));
    expect(order.possible).toBe(false);
    const [blocked] = order.findings;
    const said = (blocked?.because ?? []).map((one) => statementSentence(one, build));
    expect(findingSentence(blocked!, build)).toBe("“Tie the bars” cannot be done as written: there is no way left to the wall steel.");
    expect(said).toContain("An arm with a tool, 58 in deep, gets to the wall steel only from the north; from the top one reaches 26 in.");
    expect(said).toContain("“Tie the bars” must reach the wall steel with an arm and a tool, 58 in deep.");
  });

  test("units switch in place", () => {
    const statement = { rule: "reach", step: "tie", place: "bars", need: "arm", id: "1", detail: { depth_mm: 1473.2 } };
    expect(statementSentence(statement, build, "metric")).toBe(
      "“Tie the bars” must reach the wall steel with an arm and a tool, 1.473 m deep.",
    );
    expect(statementSentence(statement, build, "us")).toBe("“Tie the bars” must reach the wall steel with an arm and a tool, 58 in deep.");
  });
});

describe("what is said of the examples", async () => {
  const built = await Promise.all(
    examples.map(async (one) => {
      const build = read(await one.load());
      return { id: one.id, build, made: plan(build) };
    }),
  );

  test.each(built)("every sentence about $id is fit to read", ({ build, made }) => {
    const { arcs, statements } = made.access;
    const said = [
      ...made.findings.flatMap((one) => [
        findingSentence(one, build),
        ...(one.because ?? []).map((reason) => statementSentence(reason, build)),
        ...(one.waysOut ?? []).map((way) => wayOutSentence(way, build)),
      ]),
      ...Array.from({ length: arcs.count }, (_, row) =>
        linkSentence({ from: arcs.from[row]!, to: arcs.to[row]!, reason: statements[arcs.reason[row]!]! }, build),
      ),
      ...(made.status !== "planned"
        ? []
        : [
            ...chainSentences(made, build),
            ...closingSentences(made, build).map(({ closing }) => closing),
            ...made.steps.map((_, step) => holderSentence(step, made, build)),
          ]),
    ];
    expect(said.length).toBeGreaterThan(20);
    expect(said.flatMap((one) => faultsOf(one, build).map((fault) => `${fault}: ${one}`))).toEqual([]);
  });

  test("those that can be built are", () => {
    expect(built.map(({ id, made }) => [id, made.status])).toEqual([
      ["garden-wall", "planned"],
      ["bank-cellar", "planned"],
      ["tank-house", "no-order"],
    ]);
  });
});

describe("what is said of a file that cannot be read", () => {
  const said = (document: unknown) => readDocument(document).findings.map((one) => findingSentence(one, null));

  test("where it is, what is wrong, and what would be right", () => {
    const reach = (one: Raw) => {
      const broken = wall();
      (broken.steps as Raw[])[0]!.reaches = [one];
      return said(broken);
    };
    expect(reach({ place: "bars", need: "arm", depth: "58 inn" })).toEqual([
      "Step “tie”, reaches, entry 1, depth: “58 inn” is not a length; write it with its unit, like 58 in, 4 ft 10 in or 1.2 m.",
    ]);
    expect(reach({ place: "barz", need: "arm" })).toEqual(["Step “tie”, reaches: there is no place “barz”; is “bars” meant?"]);
    expect(said({ ...wall(), start: "2027-02-30" })).toEqual([
      "Start: “2027-02-30” is not a date of the calendar; write it like 2027-06-26.",
    ]);
    expect(said({ ...wall(), batterboard: 9 }).at(0)).toBe(
      "This build was written by a newer program (format 9; this one knows 1), so it is open for reading only and nothing in it is changed.",
    );
  });

  test("every one of a hundred faults is fit to read", () => {
    const faults: unknown[] = [
      null,
      [],
      3,
      {},
      { batterboard: "x" },
      { batterboard: 99 },
      { ...wall(), site: 3 },
      { ...wall(), start: "2027-02-30" },
      { ...wall(), usual: "no" },
      { ...wall(), calendars: [] },
    ];
    const lists = ["calendars", "people", "places", "pieces", "steps", "deliveries"] as const;
    const bad = [null, 3, "x", [], {}, { id: "A b" }, { id: "ok", name: 3 }];
    for (const list of lists)
      for (const member of bad) faults.push({ ...wall(), [list]: [...((wall()[list] ?? []) as unknown[]), member] });
    const step = (over: Raw): Raw => wall({ steps: [{ id: "extra", name: "Extra", ...over }] });
    for (const over of [
      { work: "3" },
      { work: "-2 h" },
      { work: "9999999 h" },
      { work: "2 d" },
      { work: { low: "3 h", likely: "2 h", high: "1 h" } },
      { after: ["nobody"] },
      { after: ["extra"] },
      { puts: ["wall"] },
      { takes: ["north-form"] },
      { puts: ["ghost"] },
      { hands: 40 },
      { hands: [{ role: "hose", number: 1 }] },
      { notBefore: "soon" },
      { deadline: "2027-13-01" },
      { fixed: "2027-06-26T25:00" },
      { sort: "party" },
      { leansOn: [{ piece: "wall", once: "500 psi of tie" }] },
      { leansOn: [{ piece: "wall", once: "900 % of pour" }] },
      { reaches: [{ any: [] }] },
      { colour: "red" },
      { hand: 3 },
      { equipment: [{ of: "crane", number: 1 }] },
      { needs: ["stone"] },
      { notBefore: "2020-01-01" },
    ])
      faults.push(step(over));
    const all = faults.flatMap(said);
    expect(all.length).toBeGreaterThan(60);
    expect(all.flatMap((one) => faultsOf(one, null).map((fault) => `${fault}: ${one}`))).toEqual([]);
  });
});
