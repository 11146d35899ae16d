import { expect, test } from "vitest";
import { files, lines, refused, told } from "../../test/tools/told";

test("one-more tells what a day off, a helper's day and a visit would buy", async () => {
  const { out, code } = await told("one-more", "plain.json");
  expect(code).toBe(0);
  expect(lines(out)[0]).toMatch(/^As it stands the finish is \w{3} \d+ \w{3}, \d+:\d+\.$/);
  expect(out).toContain("\nA day off for Ruth: ");
  expect(out).toContain("\nA day of a helper: ");
  expect((await told("one-more", "no-dates.json")).code).toBe(1);
});

test("aim tells what would be gained, writes the build that is planned so, and refuses what is no aim", async () => {
  const { out, code, written } = await told("aim", "example:garden-wall", "--for", "site-days", "--out", "few.json");
  expect(code).toBe(0);
  expect(lines(out)[0]).toBe("Seven site days instead of eight; the finish stays Sat 29 May, 14:15.");
  expect(lines(out).at(-1)).toBe("Written to few.json.");
  files["few.json"] = written.get("few.json") ?? "";
  expect((await told("plan", "few.json")).out).toContain("Finish: Sat 29 May, 14:15.");
  expect((await told("aim", "few.json")).code).toBe(1);
  expect(await refused("aim", "plain.json")).toBe("Say what to aim at: --for site-days, visits, pours or weekends.");
  expect(await refused("aim", "plain.json", "--for", "speed")).toContain("“speed” is nothing to aim at");
  expect(await refused("aim", "plain.json", "--for", "pours", "--months", "13")).toMatch(/^[^\n]+\.$/);
});
