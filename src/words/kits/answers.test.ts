import { expect, test } from "vitest";
import type { DetailValue } from "../../core/base";
import { parseSigned } from "../../core/base";
import { checkAnswers, kits } from "../../core/kits";
import { findingSentence } from "..";

const said = (code: string, detail: Readonly<Record<string, DetailValue>>, display: "us" | "metric" = "us"): string =>
  findingSentence({ code, severity: "stop", where: { list: "parts", key: "thick" }, detail }, null, display);

test("what is typed is told back with what would be right", () => {
  expect(said("kit.quantity", { asked: "Thick", value: "a foot", kind: "length", like: "12 in" })).toBe(
    "“a foot” is no length; write it with its unit, like 12 in.",
  );
  expect(said("kit.quantity", { asked: "Thick", value: " ", kind: "length", like: "300 mm" })).toBe("Write it with its unit, like 300 mm.");
  expect(said("kit.quantity", { asked: "How many", value: "two", kind: "number", like: "2" })).toBe(
    "“two” is no number; write one like 2.",
  );
  expect(said("kit.whole", { asked: "How many", value: "2.4" })).toBe("“2.4” is no whole number; write one like 2.");
  expect(said("kit.rate", { rate: "dig", value: "soon" })).toBe("“soon” is no time; write it with its unit, like 1 h 30 min.");
});

test("a range is told in the units shown, and both its ends can be typed as told", () => {
  const detail = { asked: "Thick", value: "9 ft", least: 150, most: 900, unit: "mm" };
  expect(said("kit.range", detail)).toBe("“9 ft” is outside what this kit can make; write a figure from 6 in to 35 in.");
  expect(said("kit.range", detail, "metric")).toContain("from 150 mm to 900 mm");
  expect(said("kit.range", { ...detail, least: 1, most: 12, unit: "" })).toContain("from 1 to 12.");
});

test.each(["us", "metric"] as const)("every length of every kit has a range whose ends are taken as they are told, %s", (units) => {
  const document = { site: { units } };
  let lengths = 0;
  for (const kit of kits) {
    for (const ask of kit.asks) {
      if (ask.kind !== "length") continue;
      const [fault] = checkAnswers(document, kit.id, { [ask.key]: "900 miles" }).filter(({ where }) => where.key === ask.key);
      const far = checkAnswers(document, kit.id, { [ask.key]: units === "us" ? "90000 ft" : "90000 m" }).find(
        ({ where }) => where.key === ask.key,
      );
      if (!fault || !far) continue;
      lengths += 1;
      const [, least = "", most = ""] = / from (.+) to (.+)\.$/.exec(findingSentence(far, null, units)) ?? [];
      for (const end of [least, most]) {
        expect(parseSigned("length", end), `${kit.id} ${ask.key}: ${end}`).not.toBeNull();
        expect(
          checkAnswers(document, kit.id, { [ask.key]: end }).filter(({ where }) => where.key === ask.key),
          `${kit.id} ${ask.key}: ${end}`,
        ).toEqual([]);
      }
    }
  }
  expect(lengths).toBeGreaterThan(10);
});

test("too few and too many to join are told with what is wanted", () => {
  expect(said("kit.joins-few", { asked: "On", there: 0, least: 1, offers: [] })).toBe(
    "Without one of these it stands on nothing; pick one at least.",
  );
  expect(said("kit.joins-few", { asked: "On", there: 1, least: 2, offers: [] })).toBe("1 is too few; pick 2 at least.");
  expect(said("kit.joins-many", { asked: "On", there: 5, most: 4 })).toBe("5 are picked, and at most 4 can be joined; take some out.");
});
