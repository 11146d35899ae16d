import { describe, expect, test } from "vitest";
import { realisticDocument } from "../../../../test/bench/realistic";
import { buildOf } from "../../../../test/fixtures/make";
import type { ElapsedMinute } from "../../base";
import { type Build, readDocument } from "../../build";
import { clocksOf } from "../../clock";
import { plan } from "../plan-of";
import { verifyPlan } from "../verify/verify-plan";
import { PlanSearch } from "./plan-search";

const realistic = (steps: number, start: number, change: (document: ReturnType<typeof realisticDocument>) => void = () => {}): Build => {
  const document = realisticDocument(steps, start);
  change(document);
  return readDocument(document).build!;
};

const searched = (build: Build, rung: number, units = 1): PlanSearch => {
  const search = new PlanSearch(build);
  while (!search.done && search.rung < rung) search.step(units);
  return search;
};

/** Two jobs of a whole Saturday for both people, each to be done by the first Sunday: one goes first. */
const twoDays = (deadline: string) =>
  buildOf({
    steps: [
      { id: "dig", work: "8 h", hands: 2, deadline },
      { id: "form", work: "8 h", hands: 2, deadline },
    ],
  });

describe("an earlier finish", () => {
  const build = realistic(60, 1);
  const search = searched(build, 10_000);

  test("is found, agrees with the second look, and is what the build gives that says how its steps are served", () => {
    const { finish, finishWas, bound } = search.sought();
    const served = search.served()!;
    expect(finish).toBeLessThan(finishWas!);
    expect(bound!.at).toBeLessThanOrEqual(finish!);
    const made = plan({ ...build, served });
    expect(JSON.stringify(made)).toBe(JSON.stringify(search.plan()));
    expect([made.finish, made.rung]).toEqual([finish, served.rung]);
    expect(verifyPlan(build, made)).toEqual([]);
  });

  test("is the same wherever the search pauses", () => {
    const other = searched(build, 10_000, 777);
    expect(other.served()).toEqual(search.served());
    expect({ ...other.sought(), tried: 0 }).toEqual({ ...search.sought(), tried: 0 });
  });

  test("moves at the end of a rung only", () => {
    const slow = new PlanSearch(build);
    let seen = 0;
    while (slow.rung === 0 && !slow.done) {
      expect(slow.served()).toBeNull();
      expect(slow.sought().finish).toBe(slow.sought().finishWas);
      slow.step(1);
      seen++;
    }
    expect(seen).toBeGreaterThan(10);
    expect(slow.served()?.rung).toBe(1000);
  });

  test("once taken is not found again, and nothing earlier is said to be possible than the bound", () => {
    const again = searched({ ...build, served: search.served() }, 1000);
    expect(again.sought().finishWas).toBe(search.sought().finish);
    expect(again.sought().finish!).toBeLessThanOrEqual(search.sought().finish!);
  });
});

test("an earlier finish of a build of which something is done leaves those who did it the hours they took", () => {
  const both = (id: string, work: string, more: object = {}) => ({ id, work, hands: 2, ...more });
  const done = { start: "2027-03-13T07:30", finish: "2027-03-14T16:30" };
  const build = buildOf({
    steps: [
      both("dig", "8 h", { done }),
      both("a", "3 h", { unbroken: true }),
      both("b", "2 h", { hands: 1, unbroken: true }),
      both("c", "6 h"),
      both("d", "7 h"),
      both("e", "6 h"),
    ],
  });
  const search = searched(build, 1000);
  const served = search.served();
  expect(served).not.toBeNull();
  expect(plan({ ...build, served }).finish).toBe(search.sought().finish);
});

describe("the order in which steps are served", () => {
  const build = realistic(60, 1);
  const served = searched(build, 1000).served()!;

  test("passes over steps that are gone and finds a place for new ones", () => {
    const thinner = { ...served, steps: served.steps.filter((_, i) => i % 3 !== 0) };
    const made = plan({ ...build, served: { ...thinner, steps: ["gone", ...thinner.steps] } });
    expect([made.status, made.rung]).toEqual(["planned", 1000]);
    expect(verifyPlan(build, made)).toEqual([]);
  });

  test("that gives no dates any more leaves the quick plan", () => {
    const late = {
      steps: [
        { id: "dig", work: "8 h", hands: 2 },
        { id: "form", work: "8 h", hands: 2, deadline: "2027-03-06" },
      ],
    };
    const made = plan({ ...buildOf(late), served: { engine: "", rung: 1000, steps: ["dig", "form"] } });
    expect([made.status, made.rung]).toEqual(["planned", 0]);
  });
});

describe("what is said to be proved", () => {
  test("in whatever order, where the work of the people fills every hour", () => {
    const { proved, bound, tried } = searched(twoDays("2027-03-14"), 1000).sought();
    expect(proved).toBe("any-order");
    expect(bound).toMatchObject({ by: "hands", people: ["me", "helper"], work_min: 2 * 16 * 60, before: -1 });
    expect(tried).toBe(0);
  });

  test("by the chain of waits, and by the date that holds it", () => {
    const waits = searched(
      buildOf({
        steps: [
          { id: "dig", work: "8 h" },
          { id: "form", work: "8 h", after: ["dig"] },
        ],
      }),
      1000,
    ).sought();
    expect(waits).toMatchObject({ proved: "any-order", bound: { by: "waits", first: 0, last: 1 } });
    const dated = searched(buildOf({ steps: [{ id: "dig", work: "8 h", notBefore: "2027-04-03" }] }), 1000).sought();
    expect(dated).toMatchObject({ proved: "any-order", bound: { by: "date", job: 0, of: "not-before" } });
  });
});

describe("a delivery that no step waits for", () => {
  const steps = [
    { id: "a", work: "3 h", hands: 2, unbroken: true },
    { id: "b", work: "3 h", hands: 1, unbroken: true },
    { id: "c", work: "2 h", hands: 2, unbroken: true },
    { id: "d", work: "2 h", hands: 1, unbroken: true },
  ];
  const sand = { id: "sand", calendar: "inspector", promised: "2027-03-10" };
  const sought = (more: object) => searched(buildOf({ steps, ...more }), 1000).sought();

  test("and comes on days after all work is done makes no finish, and no bound", () => {
    const { tried: _, ...without } = sought({});
    const { finish, bound, proved } = sought({ deliveries: [sand] });
    expect([finish, bound?.at, proved]).toEqual([without.finish, without.bound?.at, without.proved]);
    expect(bound!.at).toBeLessThanOrEqual(finish!);
  });
});

describe("a choice of order", () => {
  /** A panel closes the joint for two weeks; the sealant comes while it stands. Seal first and panel late, or panel at once and seal once it is off. */
  const panel = (sealing: object = {}): Build =>
    buildOf({
      places: [{ id: "joint", ways: [{ id: "front", passes: ["person"] }] }],
      pieces: [{ id: "panel", closes: ["joint.front"] }],
      steps: [
        { id: "seal", work: "2 h", reaches: [{ place: "joint" }], needs: ["sealant"], ...sealing },
        { id: "set", work: "2 h", puts: ["panel"] },
        { id: "pour", work: "4 h", after: ["set"] },
        { id: "strip", work: "2 h", takes: ["panel"] },
      ],
      waits: [{ id: "cure", from: "pour", to: "strip", least: "13 d" }],
      deliveries: [{ id: "sealant", promised: "2027-03-12" }],
    });
  const finishOf = (build: Build, finish: number | null): string => clocksOf(build).time.momentOf((finish ?? 0) as ElapsedMinute);

  test("is turned where that finishes earlier, and the others are ruled out: also what no order allows", () => {
    const build = panel();
    expect(finishOf(build, plan(build).finish)).toBe("2027-03-27T09:30");
    const search = searched(build, 1000);
    const { finish, proved, bound } = search.sought();
    // With the panel up nobody gets at the joint, though waits and people alone would let the seal go in on the 13th.
    expect(finishOf(build, finish)).toBe("2027-03-20T11:30");
    expect([proved, bound?.by]).toEqual(["any-order", "tries"]);
    expect(search.plan().steps[0]!.start).toBeGreaterThanOrEqual(search.plan().steps[3]!.finish);
  });

  test("stays where it is the earliest", () => {
    const build = panel({ deadline: "2027-03-19" });
    const { finish, finishWas, proved } = searched(build, 1000).sought();
    expect([finish, proved]).toEqual([finishWas, "any-order"]);
  });
});

describe("where the quick passes find no plan", () => {
  test("there is none: every order and date is ruled out, with the people among the reasons and ways out that work", () => {
    const build = twoDays("2027-03-06");
    expect(plan(build).status).toBe("not-found");
    const search = searched(build, 1000);
    const { ruledOut, finish } = search.sought();
    expect(finish).toBeNull();
    expect(ruledOut).toMatchObject({ code: "plan.ruled-out", detail: { minimal: true } });
    const rules = ruledOut!.because!.map(({ rule }) => rule).sort();
    expect(rules).toEqual(["window.due", "window.due", "window.length", "window.length", "window.people"]);
    expect(ruledOut!.waysOut!.map(({ kind, detail }) => [kind, detail.step, detail.to])).toEqual([
      ["move-date", "dig", "2027-03-07"],
      ["move-date", "form", "2027-03-07"],
    ]);
    expect(search.plan().status).toBe("no-dates");
  });

  test("there may be one all the same", () => {
    const build = realistic(60, 1, ({ steps }) => {
      (steps as { deadline?: string }[]).at(-1)!.deadline = "2027-05-09";
    });
    expect(plan(build).status).toBe("not-found");
    const search = searched(build, 1000);
    expect(search.sought()).toMatchObject({ finishWas: null, ruledOut: null });
    expect(search.plan().status).toBe("planned");
    expect(verifyPlan(build, search.plan())).toEqual([]);
  });
});
