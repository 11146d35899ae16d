import { describe, expect, test } from "vitest";
import { cellar } from "../../../test/fixtures/word-samples";
import { daySheet, plan, workDays } from "../../core/plan";
import { dayWords, leftSentence } from "..";
import { faultsOf } from "../lint.testing";

const made = plan(cellar);

describe("the words of a day's sheet", () => {
  test("every sentence of every day of the cellar is fit to read, in both units", () => {
    let said = 0;
    for (const { date } of workDays(made)) {
      for (const display of ["us", "metric"] as const) {
        const { light, rain, bring, left } = dayWords(cellar, made, daySheet(cellar, made, date)!, display);
        for (const sentence of [light, ...rain, ...bring, ...left].filter((one) => one !== "")) {
          said++;
          expect(faultsOf(sentence, cellar)).toEqual([]);
        }
      }
    }
    expect(said).toBeGreaterThan(100);
  });

  test("what was to be ordered before the day is not told as if there still were time", () => {
    const days = workDays(made).map(({ date }) => daySheet(cellar, made, date)!);
    const said = days.map((sheet) => ({
      sheet,
      asks: dayWords(cellar, made, sheet)
        .asks.map(({ says }) => says)
        .join(" "),
    }));
    const late = said.filter(({ asks }) => /(Ordered|Booked) by now, \w+ \d+ \w+( \d+)? at the latest: /.test(asks));
    expect(late.length).toBeGreaterThan(0);
    for (const { sheet, asks } of said) {
      const due = [...sheet.order.map((d) => made.deliveries[d]!.orderBy!), ...sheet.book.map((b) => made.bookings[b]!.bookBy!)];
      const past = due.filter((by) => by < sheet.day.from - 1440).length;
      expect(asks.match(/ by now, /g)?.length ?? 0).toBeGreaterThanOrEqual(past);
      if (due.every((by) => by >= sheet.day.from)) expect(asks).not.toContain("by now");
    }
  });

  test("what is left behind says what to do about it", () => {
    const [hole] = cellar.pieces.flatMap((piece, p) => (piece.sort === "hole" ? [p] : []));
    expect(leftSentence({ kind: "hole", pieces: [hole!] }, cellar, made)).toMatch(/^.+ stays open: cover or fence/);
    const shores = cellar.pieces.findIndex(({ name }) => name === "Shores and joists");
    expect(leftSentence({ kind: "shores", pieces: [shores] }, cellar, made)).toMatch(/^The shores and joists stay under load:/);
    const visit = made.visits.findIndex(({ who }) => who === "Ines, next door");
    expect(leftSentence({ kind: "visit", visit }, cellar, made)).toMatch(/: Ines, next door comes by to /);
    const pour = cellar.steps.findIndex((step) => step.pour !== null);
    const until = made.finish;
    expect(leftSentence({ kind: "wet", step: pour, until, visits: 2 }, cellar, made)).toMatch(
      / is to be kept wet or covered until \w+ \d+ \w+: somebody sees to it while nobody works here\.$/,
    );
    expect(leftSentence({ kind: "wet", step: pour, until, visits: 0 }, cellar, made)).toMatch(/ until \w+ \d+ \w+\.$/);
    expect(leftSentence({ kind: "frost", step: pour, low_C: -4 }, cellar, made, "metric")).toContain("-4 °C");
    expect(leftSentence({ kind: "frost", step: pour, low_C: -4 }, cellar, made, "us")).toContain("25 °F");
  });
});
