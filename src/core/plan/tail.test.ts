import fc from "fast-check";
import { expect, test } from "vitest";
import { buildOf } from "../../../test/fixtures/make";
import { bandedDocument } from "../../../test/schedule/random-document";
import { readDocument } from "../build";
import { siteTime } from "../clock";
import { buildClocks } from "../pour";
import { lastStart, type Solution, verify } from "../schedule";
import { plan } from ".";
import { orderWithDates } from "./order";
import { quickFinish } from "./quick-finish";
import { verifyPlan } from "./verify/verify-plan";

const weekends = [{ id: "weekends", name: "Weekends", week: { sat: ["8:00-16:00"], sun: ["8:00-16:00"] } }];
/** A trench that bars delivered weeks later go into, dug by one of two people who have time. */
const trench = (over: object = {}, piece: object = { sort: "hole" }) =>
  buildOf({
    calendars: weekends,
    usual: "weekends",
    people: [
      { id: "ruth", name: "Ruth", calendar: "weekends" },
      { id: "sam", name: "Sam", calendar: "weekends" },
    ],
    stock: [{ id: "sheets", name: "Sheets", inHand: 4 }],
    places: [{ id: "cut", name: "Cut", ways: [{ id: "top", name: "from the top", passes: ["person"] }] }],
    pieces: [{ id: "trench", name: "Trench", ...piece }],
    deliveries: [{ id: "bars", name: "Bars", calendar: "weekends", promised: "2027-04-03" }],
    steps: [
      { id: "dig", name: "Dig", work: "4 h", puts: ["trench"], ...over },
      { id: "tie", name: "Tie", work: "4 h", leansOn: [{ piece: "trench" }], needs: ["bars"] },
      { id: "fill", name: "Fill", work: "2 h", after: ["tie"], takes: ["trench"] },
    ],
  });
const starts = (build: ReturnType<typeof trench>) => {
  const made = plan(build);
  const time = siteTime(build.site.zone, build.start);
  expect(verifyPlan(build, made)).toEqual([]);
  return made.steps.map((s) => time.momentOf(s.start));
};

test("a trench is not dug weeks before it is needed, and keeps a site day to spare", () => {
  const build = trench();
  expect(starts(build)).toEqual(["2027-03-27T12:00", "2027-04-03T08:00", "2027-04-03T12:00"]);
  const [dig, tie] = plan(build).steps;
  expect(dig!.holder).toEqual({ kind: "on-purpose", job: 1 });
  expect(dig!.onChain).toBe(false);
  expect(dig!.slack).toBe(8 * 60);
  expect(tie!.onChain).toBe(true);
});

test("so is what is taken out of stock until it comes down, and what closes a place; other work is done as early as it can be", () => {
  const early = "2027-03-06T08:00";
  expect(starts(trench({}, { uses: [{ of: "sheets", number: 4 }] }))[0]).toBe("2027-03-27T12:00");
  expect(starts(trench({}, { uses: [{ of: "sheets", number: 4, loss: 4 }] }))[0]).toBe(early);
  expect(starts(trench({}, { closes: ["cut.top"] }))[0]).toBe("2027-03-27T12:00");
  expect(starts(trench({}, { sort: "other" }))[0]).toBe(early);
});

test("what comes before it goes along: no trench lies open for forms that are not set yet", () => {
  const build = buildOf({
    calendars: weekends,
    usual: "weekends",
    people: [{ id: "ruth", name: "Ruth", calendar: "weekends" }],
    stock: [{ id: "sheets", name: "Sheets", inHand: 4 }],
    pieces: [
      { id: "trench", name: "Trench", sort: "hole" },
      { id: "form", name: "Form", uses: [{ of: "sheets", number: 4 }] },
    ],
    deliveries: [{ id: "bars", name: "Bars", calendar: "weekends", promised: "2027-04-03" }],
    steps: [
      { id: "dig", name: "Dig", work: "4 h", puts: ["trench"] },
      { id: "set", name: "Set", work: "4 h", puts: ["form"], leansOn: [{ piece: "trench" }] },
      { id: "tie", name: "Tie", work: "4 h", leansOn: [{ piece: "form" }], needs: ["bars"] },
      { id: "strip", name: "Strip", work: "2 h", after: ["tie"], takes: ["form"] },
    ],
  });
  // Each by itself has a site day to spare.
  expect(starts(build)).toEqual(["2027-03-27T08:00", "2027-03-27T12:00", "2027-04-03T08:00", "2027-04-03T12:00"]);
  expect(plan(build).steps.map((s) => s.holder.kind)).toEqual(["on-purpose", "on-purpose", "delivery", "wait"]);
});

test("a date or a wait that asks for less comes first", () => {
  expect(starts(trench({ deadline: "2027-03-14" }))[0]).toBe("2027-03-13T12:00");
  expect(starts(trench({ fixed: "2027-03-07T08:00" }))[0]).toBe("2027-03-07T08:00");
});

test("where it would be less than a week, nothing is moved about", () => {
  expect(starts(trench({ notBefore: "2027-03-20" }))[0]).toBe("2027-03-27T12:00");
  expect(starts(trench({ notBefore: "2027-03-27" }))[0]).toBe("2027-03-27T08:00");
});

test("the finish, every date and every wait of random builds stay as they were", () => {
  let late = 0;
  fc.assert(
    fc.property(fc.nat(1_000_000), (n) => {
      const { build, findings } = readDocument(bandedDocument(n));
      if (build === null || findings.some((f) => f.severity === "stop")) return;
      const made = plan(build);
      if (made.status !== "planned") return;
      expect(made.finish).toBe(quickFinish(build));
      expect(verifyPlan(build, made)).toEqual([]);
      for (const step of made.steps) if (step.holder.kind === "on-purpose") late++;
      for (const link of made.chain) expect(made.steps[link.job]?.holder.kind).not.toBe("on-purpose");
    }),
    { numRuns: 150, seed: 9 },
  );
  expect(late).toBeGreaterThan(5);
});

test("with all else where it is, no delivery could come later and no inspection earlier", () => {
  let deliveries = 0;
  let inspections = 0;
  for (let n = 0; n < 120; n++) {
    const document = bandedDocument(n) as { steps: { hands: unknown; sort?: string }[] };
    for (const step of document.steps) if (step.hands === 0) step.sort = "inspection";
    const { build, findings } = readDocument(document);
    if (build === null || findings.some((f) => f.severity === "stop")) continue;
    const made = plan(build);
    if (made.status !== "planned") continue;
    const p = orderWithDates(build, buildClocks(build)).bound!.problem;
    const arrives = made.deliveries.map((d) => d.arrives);
    const s: Solution = {
      start: Int32Array.from([...made.steps.map(({ start }) => start), ...arrives]),
      finish: Int32Array.from([...made.steps.map(({ finish }) => finish), ...arrives]),
    };
    expect(verify(p, s)).toEqual([]);
    const could = (j: number, t: number): boolean => {
      const clock = p.clocks[p.clock[j]!]!;
      const moved = { start: s.start.with(j, t), finish: s.finish.with(j, clock.advance(t as never, p.amount[j]!)) };
      return verify(p, moved).length === 0;
    };
    made.deliveries.forEach((d, i) => {
      if (build.deliveries[i]!.promised !== null || d.firstStep < 0) return;
      deliveries++;
      const j = build.steps.length + i;
      const later = [...s.start].map((t): number => lastStart(p, j, t as never)).filter((t) => t > d.arrives && t <= made.finish);
      expect(later.filter((t) => could(j, t))).toEqual([]);
    });
    build.steps.forEach((step, j) => {
      // One that is late on purpose is so for what may not be too far from it.
      if (step.sort !== "inspection" || made.steps[j]!.holder.kind === "on-purpose") return;
      inspections++;
      const clock = p.clocks[p.clock[j]!]!;
      for (let t: number = clock.begin(0 as never); t < s.start[j]!; t = clock.begin((t + 30) as never)) expect(could(j, t)).toBe(false);
    });
  }
  expect(deliveries).toBeGreaterThan(40);
  expect(inspections).toBeGreaterThan(80);
});
