import { describe, expect, test } from "vitest";
import { lines, refused, told } from "../../test/tools/told";

describe("check", () => {
  test("a build that can be built ends with its finish, and 0", async () => {
    const { code, out } = await told("check", "plain.json");
    expect([code, lines(out).at(-1)]).toEqual([0, "It can be built: 4 steps, done by Sat 20 Mar, 10:00."]);
  });

  test("one that cannot tells each fault with its reasons, and 1", async () => {
    const { code, out } = await told("check", "blocked.json");
    expect(code).toBe(1);
    expect(lines(out)[0]).toBe("“Tie the bars” cannot be done as written: there is no way left to the wall steel.");
    expect(out).toContain("\n  These cannot all hold; without any one of them the rest can:\n");
    expect(out).toContain("\n  - With the north form in place, the way from the north to the wall steel is closed.\n");
    expect(lines(out).at(-1)).toBe("It cannot be built as written: one fault.");
  });

  test("a file that is no build tells its faults, and 1", async () => {
    const { code, out } = await told("check", "broken.json");
    expect(code).toBe(1);
    expect(lines(out)[0]).toBe("Line 1, column 21: there is “}” where a name in double quotes should be.");
  });
});

describe("plan", () => {
  test("is a table by day with what to order, the finish and the chain", async () => {
    const { code, out } = await told("plan", "wall.json");
    expect(code).toBe(0);
    expect(out).toContain("\nWed 10 Mar\n               delivery: the bars\n");
    expect(out).toMatch(/\nSat 13 Mar, 1 of 1 person wanted\n {2}8:00-14:00 {3}“Tie the bars”, Ruth\n/);
    expect(out).toMatch(/\n {2}14:\d\d +closes the way from the north to the wall steel\n/);
    expect(out).toMatch(/\nFinish: Sat 20 Mar, \d+:\d\d\. .* of work in all\.\n/);
    const chain = out.slice(out.indexOf("What sets the finish"));
    expect(chain).toContain(
      "\n  “Tie the bars”, Sat 13 Mar, 8:00: it waits for the bars, promised for Wed 10 Mar; Sat 13 Mar is the next day anyone is here for it.\n",
    );
  });

  test("as JSON has the same finish, every step and moments that read back", async () => {
    const made = JSON.parse((await told("plan", "plain.json", "--json")).out);
    expect(made).toMatchObject({ status: "planned", finish: "2027-03-20T10:00", build: "wall", zone: "America/New_York" });
    expect(made.steps.map(({ id, start }: Record<string, string>) => [id, start])).toEqual([
      ["tie", "2027-03-13T08:00"],
      ["form", "2027-03-13T14:00"],
      ["pour", "2027-03-14T10:00"],
      ["strip", "2027-03-20T08:00"],
    ]);
    expect(made.deliveries[0]).toMatchObject({ id: "steel", arrives: "2027-03-10T07:00" });
  });

  test("tells hold points, what can hurt someone, and what the dates rest on", async () => {
    const { out } = await told("plan", "example:bank-cellar");
    expect(out).toMatch(/\nHold points:\n {2}Nothing goes on at the [^\n]* before “[^\n]*”, \w+ \d+ \w+\.\n/);
    const cautions = out.slice(out.indexOf("\nKeep in mind:\n"));
    expect(cautions).toMatch(/^\nKeep in mind:\n {2}The strength is expected, not shown: /);
    expect(cautions).toContain("\n  Local code, the inspector and licensed people decide.\n");
    expect(cautions).toContain("\nWhat the dates rest on:\n  Strength is expected after the usual temperatures of the site");
    const closings = (await told("closings", "example:bank-cellar")).out;
    expect(closings).toContain("\nHold points:\n");
    expect(closings).toContain("\nKeep in mind:\n");
    const made = JSON.parse((await told("plan", "example:bank-cellar", "--json")).out);
    expect(made.holdPoints.length).toBeGreaterThan(3);
    expect(made.cautions.at(-1).says).toContain("licensed people decide");
  });

  test("says why there is none, and 1", async () => {
    const { code, out } = await told("plan", "blocked.json");
    expect([code, lines(out).at(-1)]).toEqual([1, "There is no plan."]);
    expect(JSON.parse((await told("plan", "blocked.json", "--json")).out)).toMatchObject({ status: "no-order" });
  });

  test("tells the visits of a wait on their days, and of a delivery no hour that nobody promised", async () => {
    const { out } = await told("plan", "wet.json");
    expect(out).toContain("\nMon 8 Mar\n  9:00-9:30    visit: keep it wet, Ruth\n");
    expect(out).toMatch(/\nWed 10 Mar\n {15}delivery: the bars\n/);
  });

  test("of a build without steps says so, searched or not", async () => {
    for (const asked of [[], ["--search", "1e3"]]) {
      const { code, out } = await told("plan", "empty.json", ...asked);
      expect([code, lines(out)]).toEqual([0, ["Wall", "", "There is nothing to do yet: the build has no steps."]]);
    }
    const { search } = JSON.parse((await told("plan", "empty.json", "--search", "1e3", "--json")).out);
    expect(search.says).toEqual([]);
  });

  test("looks for an earlier finish as far as asked, and says what it can be at the earliest and why", async () => {
    const { out } = await told("plan", "plain.json", "--search", "1e3");
    expect(out).toContain(
      "\nNo plan with these answers finishes earlier.\nCannot finish before Sat 20 Mar, 10:00: Wed 10 Mar is the day promised for the bars",
    );
    const found = await told("plan", "bays.json", "--search", "1000");
    expect(found.out).toMatch(/\nFinish: Sat 8 May, 13:00\..*\nAn earlier finish is there: Sat 8 May, 13:00, two site days sooner\.\n/);
    const { search, finish } = JSON.parse((await told("plan", "bays.json", "--search", "1e3", "--json")).out);
    expect([finish, search.rung, search.gained_siteDays, search.served.steps.length]).toEqual(["2027-05-08T13:00", 1000, 2, 60]);
    expect(search.notBefore <= finish).toBe(true);
  });

  test("says that there is none in whatever order, with whom it would take and what would help", async () => {
    const { code, out } = await told("plan", "crowded.json", "--search", "1e3");
    expect([code, lines(out).at(-1)]).toEqual([1, "There is no plan."]);
    expect(out).toContain("\n  - There is nobody but Ruth, and only at the hours written down.\n");
    expect(out).toMatch(/ {2}> [^\n]*“Dig north”[^\n]*Sun 7 Mar/);
  });
});

describe("why and may", () => {
  test("steps are found by name, by part of a name and by id, in either order", async () => {
    const forth = await told("why", "plain.json", "tie the bars", "north form");
    expect([forth.code, lines(forth.out)[0]]).toEqual([0, "“Tie the bars” must come before “Set the north form”."]);
    expect((await told("why", "plain.json", "form", "tie")).out).toBe(forth.out);
  });

  test("why says when nothing orders two steps, and 1", async () => {
    const { code, out } = await told("why", "wall.json", "sweep up", "tie");
    expect([code, lines(out)[0]]).toEqual([1, "Nothing puts “Sweep up” before “Tie the bars”."]);
    expect((await told("why", "wall.json", "tie", "tie")).code).toBe(1);
    expect((await told("why", "blocked.json", "tie", "form")).code).toBe(1);
  });

  test("may: no with what forbids it, yes with the finish", async () => {
    const no = await told("may", "plain.json", "form", "tie");
    expect([no.code, lines(no.out)[0]]).toEqual([1, "No: “Set the north form” cannot come before “Tie the bars”."]);
    expect(no.out).toContain("\n  - With the north form in place, the way from the north to the wall steel is closed.\n");
    expect(no.out).toMatch(
      /\n {2}Ways out, each tried on the whole build:\n {2}> [A-Z].*\. (The finish stays|[A-Z][a-z]+ site days? (lost|gained)[^\n]*)\.\n/,
    );
    const yes = await told("may", "plain.json", "tie", "form");
    expect([yes.code, yes.out]).toEqual([
      0,
      "Yes: “Tie the bars” can come before “Set the north form”. The finish stays Sat 20 Mar, 10:00.\n",
    ]);
    expect((await told("may", "plain.json", "tie", "tie")).code).toBe(1);
  });

  test("a step that is not there, or could be several, is asked back", async () => {
    expect(await refused("why", "plain.json", "tye the bars", "pour")).toBe(
      "There is no step “tye the bars” in this build; is “Tie the bars” meant?",
    );
    expect(await refused("may", "plain.json", "form ", "the")).toContain(
      "can be “Set the north form” or “Strip the form”; write the name in full.",
    );
    expect(await refused("may", "wall.json", "trial", "pour")).toBe(
      "“trial” can be “Cast a block (1)” or “Cast a block (2)”; write the name in full.",
    );
    expect(await refused("may", "plain.json", "zz", "pour")).toBe("There is no step “zz” in this build.");
    expect((await told("why", "wall.json", "trial#2", "pour")).code).toBe(0);
  });
});

describe("the other commands", () => {
  test("closings stand in date order with their last chances", async () => {
    const { out } = await told("closings", "wall.json");
    expect(out).toMatch(
      /^Sat 13 Mar, 14:\d\d: “Set the north form” closes the way from the north to the wall steel with the north form, until .*\.\n/,
    );
    expect(out).toContain(
      "\n  Done:\n    [ ] “Tie the bars”\n  Photographed, with a tape in the picture:\n    [ ] “Photograph the bars”\n",
    );
    expect((await told("closings", "blocked.json")).code).toBe(1);
    const undated = await told("closings", "no-dates.json");
    expect(undated.code).toBe(1);
    expect(undated.out).toContain(
      "There are no dates; in an order that works:\n\n“Set the north form” closes the way from the north to the wall steel with the north form.\n",
    );
  });

  test("compare tells what a slip moves and what it does not", async () => {
    const same = await told("compare", "plain.json", "friday.json");
    expect([same.code, lines(same.out)[0]]).toEqual([
      0,
      "The bars coming two days late costs nothing: Wed 10 Mar and Fri 12 Mar both fall before work with it begins on Sat 13 Mar.",
    ]);
    expect(lines((await told("compare", "plain.json", "week.json")).out)[0]).toBe(
      "The finish goes from Sat 20 Mar, 10:00 to Sat 27 Mar, 10:00: two site days lost.",
    );
    expect((await told("compare", "blocked.json", "plain.json")).code).toBe(1);
  });

  test("draw gives an SVG, to a file or to the output", async () => {
    const { out } = await told("draw", "plain.json", "--whole", "--slack", "--dark");
    expect(out).toMatch(/^<svg [\s\S]*<\/svg>\s*$/);
    const { out: said, written } = await told("draw", "plain.json", "--out", "wall.svg");
    expect(written.get("wall.svg")).toContain("Tie the bars");
    expect(said).toMatch(/^Drawn to wall\.svg: \d+ by \d+ px\.\n$/);
    expect(await refused("draw", "plain.json", "--out", "/nowhere/wall.svg")).toContain("cannot be written");
    expect((await told("draw", "blocked.json")).code).toBe(1);
  });

  test("reasons lists the steps in an order that works", async () => {
    const { out, code } = await told("reasons", "plain.json");
    expect(code).toBe(0);
    expect(lines(out).filter((line) => /^ *\d+\. /.test(line))).toEqual([
      "  1. “Tie the bars”",
      "  2. “Set the north form”",
      "  3. “Pour the wall”",
      "  4. “Strip the form”",
    ]);
    expect(out).toContain("\n     “Set the north form” comes before “Pour the wall”: “Pour the wall” needs the north form in place.\n");
    expect((await told("reasons", "blocked.json")).code).toBe(1);
  });

  test("the builds that come with the program are opened by name", async () => {
    expect((await told("check", "example:garden-wall")).code).toBe(0);
    expect((await told("check", "example:tank-house")).code).toBe(1);
  });
});

describe("a command that cannot be followed", () => {
  test("is refused in one sentence", async () => {
    expect(await refused("check", "none.json")).toBe("“none.json” cannot be read: there is no such file.");
    expect(await refused("plan", "example:garden-wal")).toBe("There is no example “garden-wal”; is example:garden-wall meant?");
    expect(await refused("plan", "example:barn")).toContain("there are example:garden-wall, example:bank-cellar and example:tank-house");
    expect(await refused("plan", "broken.json")).toContain("“broken.json” cannot be read as a build: Line 1, column 21");
    expect(await refused()).toContain("Name a command");
    expect(await refused("bogus")).toBe("Unknown command bogus.");
    expect(await refused("plan")).toBe("Missing required argument FILE.");
    expect(await refused("plan", "plain.json", "--search", "50")).toBe("A search goes as far as 1e3, 1e4, 3e4 or 1e5 tries, not “50”.");
    expect(await refused("plan", "plain.json", "--jsn")).toBe("Unknown option --jsn.");
  });

  test("help is no fault", async () => {
    const { code, out } = await told("--help");
    expect(code).toBe(0);
    expect(out).toContain("closings");
  });
});
