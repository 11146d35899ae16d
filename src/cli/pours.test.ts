import { describe, expect, test } from "vitest";
import { run } from "./run";

async function told(...words: string[]) {
  let [out, err] = ["", ""];
  const none = () => {
    throw new Error("no file is wanted");
  };
  const code = await run(words, {
    readText: none,
    writeText: none,
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  });
  return { code, out, err };
}

describe("the sheet of a pour", () => {
  test("tells full head first, what gives first, what would make it hold, the day and the caution", async () => {
    const { code, out } = await told("pour", "example:bank-cellar", "porch");
    expect(code).toBe(1);
    const at = (text: string) => out.indexOf(text);
    expect(at("Not ready to pour: what is marked !! stands in the way.")).toBeGreaterThan(-1);
    expect(out).toMatch(/^ {2}!! Pour .*it would not hold/m);
    expect(at("full head, 150 lb/ft³ times")).toBeGreaterThan(-1);
    expect(at("It would not hold. The bands give first")).toBeGreaterThan(at("full head, 150 lb/ft³ times"));
    expect(at("each computed again")).toBeGreaterThan(at("It would not hold. The bands give first"));
    expect(at("Only as a written act")).toBeGreaterThan(at("One more band"));
    expect(out).toContain("Form failures kill and are sudden.");
    expect(out).not.toMatch(/NaN|Infinity|undefined|null/);
  });

  test("of one that is ready ends with 0", async () => {
    const { code, out } = await told("pour", "example:bank-cellar", "vault");
    expect(code).toBe(0);
    expect(out).toContain("Nothing found here stands in the way of pouring. Look at what is marked ! first. That is no release");
    expect(out).toContain("yd³");
  });

  test("in metric where the build is", async () => {
    const { out } = await told("pour", "example:garden-wall");
    expect(out).toMatch(/kPa/);
    expect(out).not.toMatch(/lb\/ft²|yd³| psi/);
  });

  test("of a pour that is not there names those that are", async () => {
    const { code, err } = await told("pour", "example:bank-cellar", "roof");
    expect(code).toBe(2);
    expect(err).toContain("There is no pour “roof”; there are ");
    expect(err).toContain("“Barrel vault”");
  });
});

test("check says of a build whose order works that a pour of it is not ready", async () => {
  const { code, out } = await told("check", "example:bank-cellar");
  expect(code).toBe(0);
  expect(out).toContain("Not ready to pour: “Porch columns, slab and shed floor”, one fault; the command pour tells which.");
  expect(out).not.toContain("Not ready to pour: “Barrel vault”");
  expect(out).toContain("It can be built: ");
});

describe("what comes off", () => {
  test("stands in the order of its dates, with its ground, and holds are said", async () => {
    const { code, out } = await told("strip", "example:bank-cellar");
    expect(code).toBe(0);
    const named = ["“Strip footing forms”", "“Strip the inner form and rakers”", "“Strike the wedges”", "“Lower shores, deck out”"];
    const places = named.map((name) => out.indexOf(name));
    expect(places.every((place) => place > -1)).toBe(true);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
    expect(out).toMatch(/“Strike the wedges” \(Barrel vault, a hold until shown\)\n.*28 days at 50 °F or warmer/);
    expect(out).toContain("Keep it wet or sealed for 7 days");
    expect(out).toMatch(/place it at 55 °F or warmer and hold it there for 3 days/);
    expect(out).not.toMatch(/NaN|Infinity|undefined|null/);
  });

  test("needs dates, and says what stands in the way where there are none", async () => {
    const { code, out } = await told("strip", "example:tank-house");
    expect(code).toBe(1);
    expect(out).toContain("nothing can be said of when forms come off");
  });
});

describe("what is to buy", () => {
  test("most pressing first, with what comes back taken off, and nothing to order after it is wanted", async () => {
    const { code, out } = await told("buy", "example:bank-cellar");
    expect(code).toBe(0);
    expect(out).toMatch(/ \d+ {2}1 by 6 board, 10 ft \(of 53 wanted, 19 come back\): order by /);
    expect(out).toContain("concrete for Barrel vault: order by Wed 7 Jul, on site Sat 10 Jul");
    expect(out).not.toMatch(/NaN|Infinity|undefined|null/);
  });

  test("without a plan nothing has a date, and it says so", async () => {
    const { out } = await told("buy", "example:tank-house");
    expect(out).toContain("There is no plan, so nothing has a date");
    expect(out).not.toContain("order by");
  });
});
