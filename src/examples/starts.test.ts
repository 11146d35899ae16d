import { describe, expect, test } from "vitest";
import { type Build, readDocument } from "../core/build";
import { siteTime } from "../core/clock";
import { type Plan, plan, stepTimes, verifyPlan } from "../core/plan";
import { type CureSheet, cureSheet } from "../core/pour";
import { careSentences, findingSentence, removalSentence } from "../words";
import { examples } from "./index";

type Written = Readonly<Record<string, unknown>>;

const first = "2027-02-13";
const day_ms = 86_400_000;

/** The days off and the helpers' Saturdays go along by whole weeks; what was promised, booked or fixed for that year is open. */
function begun(value: unknown, start: string): unknown {
  const weeks = Math.floor((Date.parse(start) - Date.parse(first)) / day_ms / 7);
  const moved = (date: string) => new Date(Date.parse(date) + weeks * 7 * day_ms).toISOString().slice(0, 10);
  if (typeof value === "string") return /^\d{4}-\d{2}-\d{2}$/.test(value) ? moved(value) : value;
  if (Array.isArray(value)) return value.map((one) => begun(one, start));
  if (typeof value !== "object" || value === null) return value;
  const open = ["fixed", "promised", "deadline", "notBefore", "date", "kept"];
  return Object.fromEntries(
    Object.entries(value)
      .filter(([key]) => !open.includes(key))
      .map(([key, inner]) => [/^\d{4}-/.test(key) ? moved(key) : key, begun(inner, start)]),
  );
}

interface Begun {
  readonly build: Build;
  readonly made: Plan;
  readonly cures: ReadonlyMap<string, CureSheet>;
}

/** The bank cellar begun on another day; helpers come every Saturday, since those written down end with the year. */
async function cellar(start: string): Promise<Begun> {
  const document = (await examples.find(({ id }) => id === "bank-cellar")!.load()) as Written;
  const later: Written = { ...(begun(document, start) as Written), start };
  const calendars = (later.calendars as readonly Written[]).map((one) =>
    one.id === "helpers" ? { ...one, week: { sat: ["7:00-15:30"] } } : one,
  );
  const build = readDocument({ ...later, calendars }).build as Build;
  const made = plan(build);
  const dates = stepTimes(made)!;
  return { build, made, cures: new Map(build.pours.map((pour, p) => [pour.id, cureSheet(build, p, dates)])) };
}

const starts = ["2027-03-01", "2027-06-01", "2027-10-01"] as const;
const begunOn = new Map<string, Begun>();
for (const start of starts) begunOn.set(start, await cellar(start));

/** Days from the pour until a removal is allowed, and what is said of it. */
function allowed(start: string, pour: string, sort: string): { readonly days: number; readonly date: string; readonly says: string } {
  const { build, cures } = begunOn.get(start)!;
  const sheet = cures.get(pour)!;
  const removal = sheet.removals.find((one) => one.removal.sort === sort)!;
  const at = removal.grounds[removal.governs]!.at;
  const strength = build.pours.find(({ id }) => id === pour)!.mix.strength_MPa;
  return {
    days: (at - sheet.placed) / 1440,
    date: siteTime(build.site.zone, build.start).local(at).date,
    says: removalSentence(removal, build, strength),
  };
}

describe("the cellar begun in March, in June and in October", () => {
  test.each(starts)("%s has a plan that passes the second look", (start) => {
    const { build, made } = begunOn.get(start)!;
    expect(made.status).toBe("planned");
    expect(verifyPlan(build, made)).toEqual([]);
  });

  test.each([
    ["footing", "sides"],
    ["vault", "soffit"],
    ["walls", "backfill"],
  ])("%s, %s: three dates, each said in one sentence with its ground", (pour, sort) => {
    const three = starts.map((start) => allowed(start, pour, sort));
    expect(new Set(three.map(({ date }) => date)).size).toBe(3);
    for (const { says } of three) {
      expect(says).toMatch(/ from \w{3} \d+ \w{3}( \d{4})?: /);
      expect(says.match(/[.?!]( |$)/g)).toHaveLength(1);
      expect(says).toMatch(/expected|50 °F or warmer|days/);
    }
  });

  test("colder months take longer", () => {
    const [march, june] = [allowed("2027-03-01", "footing", "sides").days, allowed("2027-06-01", "footing", "sides").days];
    expect(march).toBeGreaterThan(june);
    const soffits = starts.map((start) => allowed(start, "vault", "soffit").days);
    // Poured in summer all 28 days count; poured in autumn some do not.
    expect(soffits[0]).toBeLessThan(29);
    expect(soffits[1]).toBeGreaterThan(30);
  });

  test.each(starts)("%s: cold protection is called for where the air may fall below 40 °F while it is young, and nowhere else", (start) => {
    const { build, cures } = begunOn.get(start)!;
    for (const sheet of cures.values()) {
      const young_d = sheet.cold.for_min === null ? 6 : sheet.cold.for_min / 1440;
      const lowest = Math.min(...sheet.days.filter(({ from }) => from < sheet.placed + young_d * 1440).map(({ low_C }) => low_C));
      if (lowest < 4) expect(sheet.cold.called, `${start} ${sheet.pour} ${lowest}`).toBe(true);
      if (lowest > 5) expect(sheet.cold.called, `${start} ${sheet.pour} ${lowest}`).toBe(false);
      const says = careSentences(sheet, build).map((one) => one.says);
      expect(says.some((one) => one.includes("ACI 306R"))).toBe(sheet.cold.called);
    }
  });

  test("it is called for somewhere, and not everywhere", () => {
    const called = starts.flatMap((start) => [...begunOn.get(start)!.cures.values()].map(({ cold }) => cold.called));
    expect(called).toContain(true);
    expect(called).toContain(false);
  });

  test.each(starts)("%s: the last floating ends before sunset, or it is said that it does not", (start) => {
    const { build, cures } = begunOn.get(start)!;
    let floated = 0;
    for (const sheet of cures.values()) {
      if (sheet.floating === null) continue;
      floated += 1;
      const { to, sunset, inDaylight } = sheet.floating;
      expect(inDaylight).toBe(sunset !== null && to <= sunset);
      const says = careSentences(sheet, build).map((one) => one.says);
      expect(says.some((one) => one.includes(inDaylight ? "in daylight" : "have lights there"))).toBe(true);
    }
    expect(floated).toBeGreaterThan(0);
  });

  test("days that the drawing gives for what carries are not taken for warm ones in the cold", () => {
    const told = (start: string) => {
      const { build, cures } = begunOn.get(start)!;
      return cures
        .get("porch")!
        .findings.filter(({ code }) => code === "cure.days-cold")
        .map((one) => findingSentence(one, build));
    };
    expect(told("2027-03-01")).toEqual([]);
    expect(told("2027-06-01").join()).toContain("of the 14 days said for “Lower shores, deck out” none are at 50 °F or warmer");
  });
});
