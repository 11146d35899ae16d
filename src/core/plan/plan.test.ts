import { describe, expect, it } from "vitest";
import { buildOf, type PartialDocument } from "../../../test/fixtures/make";
import { type Build, readDocument } from "../build";
import { clocksOf } from "../clock";
import { keep, type Plan, plan, planMay, verifyPlan } from ".";

const at = (build: Build, t: number): string => clocksOf(build).time.momentOf(t);

function dates(document: PartialDocument): {
  build: Build;
  made: Plan;
  of: (id: string) => string;
  step: (id: string) => Plan["steps"][number];
} {
  const build = buildOf(document);
  const made = plan(build);
  expect(verifyPlan(build, made)).toEqual([]);
  const step = (id: string) => made.steps[build.at.step.get(id)!]!;
  return { build, made, step, of: (id) => `${at(build, step(id).start)} ${at(build, step(id).finish)}` };
}

const row = (id: string, rest: Record<string, unknown> = {}) => ({ id, name: id, work: "4 h", hands: 2, ...rest });

describe("dates on weekends", () => {
  it("goes on after lunch, and the next weekend, and ends with the work, not the next morning", () => {
    const { of, made, build } = dates({ steps: [row("dig", { work: "12 h" }), row("form", { work: "8 h", after: ["dig"] })] });
    expect(of("dig")).toBe("2027-03-06T07:30 2027-03-07T11:00");
    expect(of("form")).toBe("2027-03-07T11:00 2027-03-13T10:30");
    expect(at(build, made.finish)).toBe("2027-03-13T10:30");
    expect(made.handMinutes).toBe((12 + 8) * 60 * 2);
    expect(made.days.map((d) => [d.date, d.site, d.peopleWanted, d.peopleThere])).toEqual([
      ["2027-03-06", true, 2, 2],
      ["2027-03-07", true, 2, 2],
      ["2027-03-13", true, 2, 2],
    ]);
  });

  it("keeps an unbroken step inside one window", () => {
    const { of } = dates({ steps: [row("dig", { work: "2 h" }), row("pour", { unbroken: true, work: "4 h", after: ["dig"] })] });
    expect(of("pour")).toBe("2027-03-06T12:30 2027-03-06T16:30");
  });

  it("shares people: two one-hand steps side by side, a third after them", () => {
    const { of, step } = dates({ steps: ["a", "b", "c"].map((id) => row(id, { hands: 1, work: "3 h" })) });
    expect([of("a"), of("b")]).toEqual(Array(2).fill("2027-03-06T07:30 2027-03-06T10:30"));
    expect(of("c")).toBe("2027-03-06T10:30 2027-03-06T14:00");
    expect(step("c").holder).toMatchObject({ kind: "people" });
    expect(new Set([...step("a").people, ...step("b").people])).toEqual(new Set(["me", "helper"]));
  });

  it("lets an inspector come on a weekday without anybody of the crew, and tells the gap by the wait", () => {
    const { of, made, build } = dates({
      steps: [
        row("tie"),
        row("see", { hands: 0, calendar: "inspector", work: "1 h", sort: "inspection", after: ["tie"] }),
        row("close", { after: ["see"] }),
      ],
    });
    expect(of("see")).toBe("2027-03-08T08:00 2027-03-08T09:00");
    expect(of("close")).toBe("2027-03-13T07:30 2027-03-13T11:30");
    expect(made.chain.map((link) => [build.steps[link.job]!.id, link.holder.kind, at(build, link.ready)])).toEqual([
      ["tie", "start-of-build", "2027-03-06T00:00"],
      ["see", "wait", "2027-03-06T11:30"],
      ["close", "wait", "2027-03-08T09:00"],
    ]);
    expect(made.days.find((d) => d.date === "2027-03-08")?.site).toBe(false);
  });

  it("puts off what may not wait too long, and says what it waits for", () => {
    const { of, step, build } = dates({
      steps: [
        row("oil", { hands: 1, work: "1 h" }),
        row("set", { work: "8 h" }),
        row("pour", { work: "4 h", notBefore: "2027-03-27", after: ["oil", "set"] }),
      ],
      waits: [{ id: "keeps", from: "oil", to: "pour", most: "7 d" }],
    });
    expect(of("pour")).toBe("2027-03-27T07:30 2027-03-27T11:30");
    expect(of("oil")).toBe("2027-03-20T07:30 2027-03-20T08:30");
    expect(step("oil").holder).toEqual({ kind: "on-purpose", job: build.at.step.get("pour") });
    expect(step("oil").onChain).toBe(false);
  });

  it("sends a step back when a most-wait is broken by people", () => {
    const { of } = dates({
      people: [{ id: "me", name: "Me" }],
      steps: [
        row("oil", { hands: 1, work: "1 h" }),
        row("long", { hands: 1, work: "30 h" }),
        row("pour", { hands: 1, work: "4 h", after: ["oil", "long"] }),
      ],
      waits: [{ id: "keeps", from: "oil", to: "pour", most: "2 d" }],
    });
    const [, finish] = of("oil").split(" ");
    expect(finish! > "2027-03-13").toBe(true);
  });
});

describe("things and places", () => {
  const form = (n: string) => ({ id: `form-${n}`, name: `Form ${n}`, sort: "form", uses: [{ of: "sheets", number: 6 }] });

  it("uses the same six sheets for two pairs of columns, one after the other", () => {
    const pair = (n: string) => [
      row(`set-${n}`, { puts: [`form-${n}`], hands: 1 }),
      row(`pour-${n}`, { after: [`set-${n}`], work: "2 h", hands: 1 }),
      row(`strip-${n}`, { takes: [`form-${n}`], work: "2 h", after: [`pour-${n}`], hands: 1 }),
    ];
    const { made, step, build } = dates({
      stock: [{ id: "sheets", name: "Sheets", unit: "sheet", inHand: 6 }],
      pieces: [form("a"), form("b")],
      steps: [...pair("a"), ...pair("b")],
    });
    expect(step("set-b").start).toBeGreaterThanOrEqual(step("strip-a").finish);
    expect(step("set-b").holder).toEqual({ kind: "stock", job: build.at.step.get("strip-a"), of: "sheets" });
    expect(Math.min(...made.stands.stock[0]!.left)).toBe(0);
  });

  it("says so when the sheets can never be enough", () => {
    const build = buildOf({
      stock: [{ id: "sheets", name: "Sheets", unit: "sheet", inHand: 4 }],
      pieces: [form("a")],
      steps: [row("set", { puts: ["form-a"] })],
    });
    const made = plan(build);
    expect(made.status).toBe("not-found");
    expect(made.findings.map((f) => f.code)).toEqual(["plan.stock-short", "plan.not-found"]);
    expect(made.findings[0]!.detail).toEqual({ of: "sheets", wanted: 6, have: 4 });
  });

  it("keeps everybody out from under a deck while it is filled", () => {
    const { step } = dates({
      places: [
        { id: "deck", name: "Deck", below: ["under"], ways: [{ id: "ladder", name: "ladder", passes: ["person"] }] },
        { id: "under", name: "Under the deck", ways: [{ id: "side", name: "side", passes: ["person"] }] },
      ],
      steps: [
        row("brace", { hands: 1, work: "6 h", reaches: [{ place: "under" }] }),
        row("fill", { hands: 1, work: "4 h", unbroken: true, reaches: [{ place: "deck" }], alone: ["deck"] }),
        row("sweep", { hands: 1, work: "6 h", reaches: [{ place: "under" }] }),
      ],
    });
    for (const other of ["brace", "sweep"]) {
      const apart = step(other).finish <= step("fill").start || step("fill").finish <= step(other).start;
      expect(apart).toBe(true);
    }
  });

  it("asks for a role by the people who have it, and for hands of those who are left", () => {
    const { step } = dates({
      people: [
        { id: "ann", name: "Ann", roles: ["hose"] },
        { id: "ben", name: "Ben" },
      ],
      steps: [
        row("pour", {
          hands: [
            { role: "hose", number: 1 },
            { role: "hands", number: 1 },
          ],
          work: "2 h",
        }),
        row("hose", { hands: [{ role: "hose", number: 1 }], work: "2 h" }),
      ],
    });
    expect(step("pour").people).toEqual(["ann", "ben"]);
    expect(step("hose").start).toBeGreaterThanOrEqual(step("pour").finish);
  });

  it("says who is missing when a step asks for more than there are", () => {
    const made = plan(buildOf({ steps: [row("lift", { hands: 3 })] }));
    expect(made.status).toBe("no-dates");
    expect(made.findings[0]).toMatchObject({ code: "plan.too-few-people", severity: "stop", detail: { step: "lift", wanted: 3, have: 2 } });
  });
});

describe("deliveries and bookings", () => {
  it("brings what nobody has promised as late as it costs nothing, and says by when to order", () => {
    const { made, build } = dates({
      calendars: [{ id: "yard", name: "Yard", week: { mon: ["8:00-16:00"], thu: ["8:00-16:00"] } }],
      deliveries: [{ id: "bars", name: "Bars", calendar: "yard", lead: "3 d" }],
      steps: [row("dig", { work: "16 h" }), row("tie", { needs: ["bars"], after: ["dig"] })],
    });
    const [bars] = made.deliveries;
    expect(at(build, bars!.neededBy)).toBe("2027-03-13T07:30");
    expect(at(build, bars!.arrives)).toBe("2027-03-11T15:59");
    expect(at(build, bars!.orderBy!)).toBe("2027-03-08T15:59");
  });

  it("says to order and to book on days when somebody is there to be asked", () => {
    const { made, build } = dates({
      calendars: [{ id: "yard", name: "Yard", week: { mon: ["8:00-16:00"], thu: ["8:00-16:00"] } }],
      deliveries: [
        { id: "bars", name: "Bars", calendar: "yard", lead: "2 d" },
        { id: "board", name: "Board", calendar: "yard", lead: "4 d" },
      ],
      steps: [
        row("dig", { work: "16 h", needs: ["board"] }),
        row("tie", { needs: ["bars"], after: ["dig"] }),
        row("pump", { after: ["tie"] }),
      ],
      bookings: [{ id: "truck", name: "Truck", step: "pump", calendar: "inspector", date: "2027-03-20", lead: "6 d" }],
    });
    // Two days before Thursday's last minute is a Tuesday, six before Saturday the 20th a Sunday.
    expect(at(build, made.deliveries[0]!.orderBy!)).toBe("2027-03-08T15:59");
    expect(at(build, made.bookings[0]!.bookBy!)).toBe("2027-03-12T15:59");
    // Before Sunday the 7th the yard is open last on Thursday, before the first day.
    expect(at(build, made.deliveries[1]!.orderBy!)).toBe("2027-03-07T15:59");
  });

  it("holds a step to the date of its booking", () => {
    const { of, step } = dates({
      steps: [row("pump")],
      bookings: [{ id: "truck", name: "Truck", step: "pump", calendar: "inspector", date: "2027-03-20", lead: "3 d" }],
    });
    expect(of("pump")).toBe("2027-03-20T07:30 2027-03-20T11:30");
    expect(step("pump").holder.kind).toBe("booking");
  });
});

describe("dates that cannot hold", () => {
  const blocked: PartialDocument = {
    steps: [row("dig", { work: "16 h" }), row("pour", { deadline: "2027-03-12" })],
    waits: [{ id: "settle", from: "dig", to: "pour", least: "5 d" }],
  };

  it("names a minimal set and changes that work", () => {
    const made = plan(buildOf(blocked));
    expect(made.status).toBe("no-dates");
    const found = made.findings.find((f) => f.code === "plan.windows")!;
    expect(found.because!.map((s) => s.rule).sort()).toEqual(["window.due", "window.least", "window.length"]);
    expect(found.waysOut!.length).toBeGreaterThan(0);
    for (const way of found.waysOut!) {
      const document = structuredClone(blocked) as Record<string, Record<string, unknown>[]>;
      for (const { path, value } of way.edits) {
        const list = document[path[0]!]!;
        const index = list.findIndex((x) => `id=${x.id}` === path[1]);
        if (path.length === 2) list.splice(index, 1);
        else if (value === undefined) delete list[index]![path[2]!];
        else list[index]![path[2]!] = value;
      }
      expect(plan(buildOf(document)).status, JSON.stringify(way)).toBe("planned");
    }
  });

  it("tells a step that fits into no window of its calendar", () => {
    const made = plan(buildOf({ steps: [row("pour", { unbroken: true, work: "6 h" })] }));
    expect(made.status).toBe("no-dates");
    expect(made.findings[0]).toMatchObject({ code: "plan.calendar-never", detail: { step: "pour", minutes: 360, unbroken: true } });
  });

  it("keeps figures finite whatever is asked", () => {
    const made = plan(buildOf({ steps: [row("age", { work: "2000 h" }), row("zero", { work: "0 h" })] }));
    expect(["planned", "no-dates"]).toContain(made.status);
    expect(JSON.stringify(made)).not.toMatch(/NaN|Infinity|null,"slack"/);
  });
});

describe("asking and keeping", () => {
  it("answers whether a step may come before another, with the finish that follows", () => {
    const build = buildOf({ steps: [row("a"), row("b"), row("c", { after: ["a"] })] });
    expect(planMay(build, 1, 0)).toMatchObject({ verdict: "yes" });
    expect(planMay(build, 2, 0).verdict).toBe("no");
  });

  it("keeps local moments that the document can hold", () => {
    const build = buildOf({ steps: [row("a"), row("b", { after: ["a"] })] });
    const kept = keep(build, plan(build));
    expect(kept.steps).toEqual({ a: ["2027-03-06T07:30", "2027-03-06T11:30"], b: ["2027-03-06T11:30", "2027-03-06T16:00"] });
    expect(kept.finish).toBe("2027-03-06T16:00");
  });

  it("is the same, byte for byte, for the same document read again", () => {
    const document = { steps: [row("a"), row("b", { after: ["a"] })] };
    expect(JSON.stringify(plan(buildOf(document)))).toBe(JSON.stringify(plan(buildOf(structuredClone(document)))));
    expect(readDocument({}).build).toBeNull();
  });
});
