import { describe, expect, test } from "vitest";
import type { Finding } from "../../core/base";
import { type Build, readDocument } from "../../core/build";
import { type ChainLink, compare, type Plan, plan } from "../../core/plan";
import { examples } from "../../examples";
import {
  chainRuns,
  chainSentences,
  comparisonSentences,
  effectSentence,
  findingSentence,
  gathered,
  holderSentence,
  holdPointSentences,
  pieceCloses,
  runSentence,
  slackSentence,
  statementSentence,
} from "../index";
import { faultsOf } from "../lint.testing";
import { type Raw, wall } from "../wall.testing";

const read = (document: unknown): Build => {
  const { build, findings } = readDocument(document);
  if (build === null) throw new Error(findings.map((one) => findingSentence(one, null)).join("\n"));
  return build;
};
const at = (build: Build, id: string): number => build.at.step.get(id) as number;
const extra = (id: string, more: Raw = {}): Raw => ({ id, name: `Job ${id}`, work: "7 h", ...more });

describe("who is busy", () => {
  const crew = (names: readonly string[], steps: Raw[]) => {
    const build = read(
      wall({
        over: {
          people: names.map((name, i) => ({ id: `p${i}`, name, calendar: "weekends" })),
          places: [],
          pieces: [],
          deliveries: [],
          steps,
        },
      }),
    );
    const made = plan(build);
    expect(made.status).toBe("planned");
    return { build, made, said: build.steps.map((_, i) => holderSentence(i, made, build)) };
  };

  test("a name may be one, many, or the builder", () => {
    const two = [extra("a"), extra("b", { unbroken: true })];
    expect(crew(["You"], two).said[1]).toBe(
      "“Job b” begins Sun 7 Mar, 8:00: “Job a” takes you until Sat 6 Mar, 15:00; Sun 7 Mar is the next day with people and time enough for it.",
    );
    expect(crew(["The neighbours"], two).said[1]).toContain("“Job a” takes The neighbours until Sat 6 Mar, 15:00");
  });

  test("all of the crew on one step are told as that, until when", () => {
    const all = crew(["You", "Sam", "June"], [extra("a", { hands: 3, work: "8 h" }), extra("b", { hands: 3 })]);
    expect(all.said[1]).toContain("all three are on “Job a” until Sat 6 Mar, 16:00");
  });

  test("a run that waits for the same person folds into one", () => {
    const { build, made } = crew(["Ruth"], [extra("a"), extra("b"), extra("c"), extra("d")]);
    const runs = chainRuns(made);
    expect(runs.flat()).toEqual(made.chain);
    const long = runs.find((run) => run.length > 1) as readonly ChainLink[];
    expect(runSentence(long, build)).toBe("Three steps one after the other, since all of them take the same people.");
    expect(chainRuns(made, 9).every((run) => run.length === 1)).toBe(true);
  });
});

describe("goods", () => {
  test("are promised, or could be there and are to be ordered; they do not begin", () => {
    const build = read(wall());
    expect(chainSentences(plan(build), build)[0]).toBe("The bars: promised for Wed 10 Mar.");
    const open = read(
      wall({ over: { deliveries: [{ id: "steel", name: "Bars", calendar: "yard", lead: { is: "3 days of yard" }, ordered: false }] } }),
    );
    const [first] = chainSentences(plan(open), open);
    expect(first).toMatch(/^The bars: it could be there (from|on) \w+ \d+ Mar; order by \w+ \d+ Mar\.$/);
  });

  test("no chain of an example speaks of 0:00 or lets goods begin", async () => {
    for (const one of examples) {
      const build = read(await one.load());
      const made = plan(build);
      if (made.status !== "planned") continue;
      const said = [...chainSentences(made, build), ...holdPointSentences(made, build)];
      expect(said.filter((line) => / 0:00\b/.test(line) || faultsOf(line, build).length > 0)).toEqual([]);
    }
  });
});

describe("slack", () => {
  const build = read(wall({ steps: [extra("sweep"), extra("show", { work: "1 h", after: ["tie"], fixed: "2027-03-13T14:00" })] }));
  const made = plan(build);
  const said = (id: string, over: Partial<Plan["steps"][number]> = {}) => {
    const steps = made.steps.map((dates, i) => (i === at(build, id) ? { ...dates, ...over } : dates));
    return slackSentence(at(build, id), { ...made, steps }, build);
  };
  const latestFinish = made.steps[at(build, "form")]!.finish;

  test("of a step on the chalk line is told if there is some", () => {
    expect(said("form", { onChain: true, slack: 60, latestFinish })).toMatch(
      /^It is on the chalk line, yet may slide to \w+ \d+ Mar, \d+:\d\d before a site day goes\.$/,
    );
    expect(said("form", { onChain: true, slack: 0 })).toBe("None: it sets the finish.");
  });

  test("of a step that ends with the build, and sets nothing, says that", () => {
    expect(said("sweep", { onChain: false, slack: 0, finish: made.finish })).toBe("None: the build ends with it.");
  });

  test("where there is none, what must be kept is named", () => {
    expect(said("show", { onChain: false, slack: 0 })).toBe("None: it is fixed for Sat 13 Mar, 14:00.");
    expect(said("tie", { onChain: false, slack: 0 })).toMatch(/^None: “(Set the north form|Job show)” waits for it, and that /);
    expect(said("sweep", { onChain: false, slack: 120 })).toMatch(/with nothing that matters moved: 2 h of its working time\.$/);
  });
});

describe("a comparison", () => {
  const build = read(wall());
  const made = plan(build);
  const shifted = (by: readonly number[]) => {
    const moved = by.map((minutes, i) => ({
      step: build.steps[i]!.id,
      startBefore: made.steps[i]!.start,
      startAfter: (made.steps[i]!.start + minutes) as Plan["finish"],
      siteDays: 0,
      holder: made.steps[i]!.holder,
    }));
    const finding: Finding = {
      code: "compare.inside-slack",
      severity: "note",
      where: {},
      detail: { moved: by.length, finishAt: made.finish },
    };
    const same = { ...compare(made, made, build), finishBefore: made.finish, finishAfter: made.finish, moved, findings: [finding] };
    return comparisonSentences(same, build, made);
  };

  test("speaks of slack only where steps come later", () => {
    expect(shifted([-60, -60])[0]).toBe("Two steps come earlier; the finish stays Sat 20 Mar, 10:00.");
    expect(shifted([60])[0]).toBe("One step comes later and the finish stays Sat 20 Mar, 10:00: there was slack enough.");
    expect(shifted([60, -60, -60])[0]).toBe("Three steps move, one later and two earlier; the finish stays Sat 20 Mar, 10:00.");
  });

  test("says of a move that no site day lies in whether it stays on its day", () => {
    expect(shifted([60]).join(" ")).toContain(", within its site day");
    expect(shifted([3 * 1440]).join(" ")).toContain(", with no site day between");
  });

  test("after undo is back", () => {
    expect(comparisonSentences(compare(made, made, build), build, made, "us", true)).toEqual(["Back as it was."]);
  });
});

test("a date without a time is said as a date", () => {
  const build = read(wall());
  const due = (date: string) => statementSentence({ rule: "window.due", step: "tie", id: "1", detail: { date } }, build);
  expect(due("2027-03-29T00:00")).toBe("“Tie the bars” is to be done by the end of Sun 28 Mar.");
  expect(due("2027-03-28")).toBe("“Tie the bars” is to be done by the end of Sun 28 Mar.");
  expect(due("2027-03-28T15:30")).toBe("“Tie the bars” is to be done by Sun 28 Mar, 15:30.");
  expect(due("2027-03-06T00:00")).toBe("“Tie the bars” is to be done before the build's first day.");
});

test("a way out tells what it does to the finish", () => {
  const build = read(wall());
  const said = (detail: WayDetail) => effectSentence({ kind: "clean-out", detail, edits: [] }, build);
  type WayDetail = Readonly<Record<string, string | number>>;
  const day = 1440;
  expect(said({})).toBe("");
  expect(said({ leads: "no-order" })).toContain("what else is wrong stays");
  expect(said({ leads: "planned", finishAt: 14 * day + 540 })).toBe("Gives dates: finishes Sat 20 Mar, 10:00.");
  expect(said({ leads: "planned", finishAt: 600, finishWas: 600, siteDays: 0 })).toBe("The finish stays.");
  expect(said({ leads: "planned", finishAt: 14 * day + 540, finishWas: 600, siteDays: 4 })).toBe(
    "Four site days lost: finishes Sat 20 Mar, 10:00.",
  );
});

test("one cause is told once, of all the steps that have it", () => {
  const build = read(wall({ steps: [extra("a", { hands: 3 }), extra("b", { hands: 3 })] }));
  const all = [...readDocument(wall({ steps: [extra("a", { hands: 3 }), extra("b", { hands: 3 })] })).findings, ...plan(build).findings];
  expect(all.filter(({ code }) => code === "plan.too-few-people")).toHaveLength(2);
  const people = gathered(all).filter(({ code }) => code === "plan.too-few-people" || code === "build.nobody-can");
  expect(people.map((one) => findingSentence(one, build))).toEqual([
    "“Job a” and “Job b” each ask for three people, and the build names one; name more, or ask for fewer there.",
  ]);
});

test("what a piece closes runs in the sentence", () => {
  const build = read(wall());
  expect(pieceCloses(0, build)).toBe("closes the way from the north to the wall steel");
  expect(pieceCloses(1, build)).toBe("fills the wall steel");
});

test("a way that nobody has named yet is the way in, and a place told by where it lies stands in quotes", () => {
  const build = read(
    wall({
      over: {
        places: [
          { id: "wall", name: "inside the wall form", ways: [{ id: "in", name: "way in", passes: ["person"] }] },
          { id: "back", name: "Behind the wall", ways: [{ id: "in", name: "way in", passes: ["person"] }] },
          { id: "trench", name: "Outside of the trench", ways: [] },
        ],
        pieces: [
          { id: "panel", name: "Front form", closes: ["wall.in"], fills: ["trench"] },
          { id: "fill", name: "Fill", fills: ["back"] },
        ],
        deliveries: [],
        steps: [extra("a")],
      },
    }),
  );
  expect(pieceCloses(0, build)).toBe("closes the way in to “inside the wall form”; fills the outside of the trench");
  expect(pieceCloses(1, build)).toBe("fills “Behind the wall”");
});

test("a ring of one waits for itself", () => {
  const build = read(wall());
  const ring = (steps: string[]) => findingSentence({ code: "access.ring", severity: "stop", where: {}, detail: { steps } }, build);
  expect(ring(["tie"])).toBe("“Tie the bars” would have to wait for itself, so it can never begin.");
  expect(ring(["tie", "form"])).toBe("“Tie the bars” and “Set the north form” wait for each other in a ring, so none can begin.");
});
