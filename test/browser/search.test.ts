import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { realisticDocument } from "../bench/realistic";
import { desk, headline, phone, undoButton, withBrowser, words } from "./app";
import { expectClean } from "./clean";

const app = withBrowser();

/** A build of so many steps, opened from a file. */
async function opened(steps: number, start: number, viewport = desk): Promise<Page> {
  const page = await app.start({ viewport });
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), page.getByRole("button", { name: "open a build file" }).click()]);
  await chooser.setFiles({
    name: "bays.json",
    mimeType: "application/json",
    buffer: Buffer.from(JSON.stringify(realisticDocument(steps, start))),
  });
  await page.getByText(/^Finishes /).waitFor();
  return page;
}

const strip = (page: Page) => page.getByRole("region", { name: "an earlier finish" });

/** The build as it would be saved. */
async function fileOf(page: Page): Promise<string> {
  const [file] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Control+s")]);
  return readFileSync(await file.path(), "utf8");
}

test("an earlier finish is looked for and found, shown, taken over, and undone byte for byte", async () => {
  const page = await opened(60, 1);
  const before = await headline(page);
  const file = await fileOf(page);
  const use = strip(page).getByRole("button", { name: "use it" });
  await strip(page).getByRole("progressbar").waitFor();
  await use.waitFor({ timeout: 60_000 });
  expect(await words(strip(page))).toMatch(/An earlier finish is there: Sat 8 May, 13:00, two site days sooner\./);
  expect(await headline(page)).toBe(before);

  await strip(page).getByRole("button", { name: "show what moves" }).click();
  expect(await words(page.getByRole("region", { name: "what would move" }))).toContain("Sat 8 May, 13:00");
  await strip(page).getByRole("button", { name: "as it is now" }).click();
  expect(await headline(page)).toBe(before);

  await use.click();
  await expect.poll(() => headline(page)).toBe("Finishes Sat 8 May 2027.");
  expect(await words(strip(page))).toContain("This plan was found by looking for an earlier finish.");
  expect(await fileOf(page)).toContain('"served": {');

  await undoButton(page).click();
  await expect.poll(() => headline(page)).toBe(before);
  expect(await fileOf(page)).toBe(file);
});

test("the looking can be stopped, gone on with, and gives way to an edit", async () => {
  const page = await opened(300, 1);
  await strip(page).getByRole("button", { name: "stop looking" }).click();
  const stopped = await words(strip(page));
  expect(stopped).toContain("Stopped looking");
  await page.waitForTimeout(500);
  expect(await words(strip(page))).toBe(stopped);
  await strip(page).getByRole("button", { name: "look on" }).click();
  await strip(page)
    .getByText(/^Looking for an earlier finish: [\d,]+ tried\./)
    .waitFor();

  await page.getByRole("button", { name: "Steps", exact: true }).click();
  await page.locator(".row").first().click();
  await page.getByRole("button", { name: "As written" }).click();
  await page.getByRole("complementary").getByLabel("Work", { exact: true }).fill("12 h");
  await strip(page).getByText("While you rest, an earlier finish is looked for.").waitFor();
});

test("what was shown to be the earliest is said with its reason, on a phone as well", async () => {
  const page = await app.example("Garden wall with a planter", { viewport: phone });
  await strip(page).getByText("No plan with these answers finishes earlier.").waitFor();
  await strip(page).getByRole("button", { name: "why not earlier" }).click();
  expect(await words(strip(page))).toMatch(/Cannot finish before Sat 29 May, 14:15: /);
});

test.each([
  [desk, 13],
  [phone, 16],
] as const)("the strip is clean to see and to hear while it looks, with a plan found, shown and taken: %o", async (viewport, least) => {
  const page = await opened(60, 1, viewport);
  await strip(page).getByRole("button", { name: "stop looking" }).waitFor();
  await expectClean(page, least, "looking");
  await strip(page).getByRole("button", { name: "use it" }).waitFor({ timeout: 60_000 });
  await strip(page).getByRole("button", { name: "why not earlier" }).click();
  await expectClean(page, least, "found");
  await strip(page).getByRole("button", { name: "show what moves" }).click();
  await expectClean(page, least, "shown");
  await strip(page).getByRole("button", { name: "use it" }).click();
  await strip(page).getByRole("button", { name: "back to the quick plan" }).waitFor();
  await expectClean(page, least, "taken");
});

test("what no plan can keep is said with who is there and a way out that works", async () => {
  const page = await app.start();
  const wallText = JSON.parse(readFileSync("src/examples/garden-wall.json", "utf8"));
  const jobs = ["Clear the bed", "Stack the stone"].map((name, i) => ({
    id: `extra-${i}`,
    name,
    work: "7 h",
    hands: 2,
    deadline: "2027-04-10",
  }));
  const crowded = { ...wallText, steps: [...wallText.steps, ...jobs] };
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), page.getByRole("button", { name: "open a build file" }).click()]);
  await chooser.setFiles({ name: "crowded.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(crowded)) });
  await strip(page)
    .getByText(/^No plan can keep all of this: /)
    .waitFor({ timeout: 30_000 });
  expect(await strip(page).locator("li").filter({ hasText: "There is nobody but Nell and Sam" }).count()).toBe(1);
  await strip(page)
    .getByRole("button", { name: /^do this: Move the latest date of “Stack the stone” to / })
    .click();
  await page.getByText(/^Finishes /).waitFor();
});

const found = (page: Page) => page.getByRole("region", { name: "an earlier finish" });

test("an earlier finish is told in the other views too, looked for there, shown and taken over", async () => {
  const page = await opened(60, 1);
  await page.keyboard.press("2");
  await page.getByRole("region", { name: "Dates", exact: true }).waitFor();
  await found(page).getByRole("button", { name: "use it" }).waitFor({ timeout: 60_000 });
  expect(await words(found(page))).toMatch(/An earlier finish is there: Sat 8 May, 13:00, two site days sooner\./);
  await found(page).getByRole("button", { name: "show what moves" }).click();
  expect(await words(page.getByRole("region", { name: "what would move" }))).toContain("Sat 8 May, 13:00");
  await expectClean(page, 13, "told beside the sheet");
  await found(page).getByRole("button", { name: "use it" }).click();
  await found(page).waitFor({ state: "detached" });
  await expect.poll(() => words(page.locator(".next"))).toContain("Finish Sat 8 May");
});

test("a build that aims at something else is offered a better plan by that, and an earlier finish only for what it gives up", async () => {
  const page = await app.example("Garden wall with a planter");
  await page.getByRole("button", { name: "Next", exact: true }).click();
  const aims = page.getByRole("region", { name: "What else the plan could be good at" });
  await aims.getByLabel("Aim at").selectOption("site-days");
  await aims.getByLabel("The finish may be later by").selectOption("4");
  await aims.getByRole("button", { name: "look for such a plan" }).click();
  await aims.getByRole("button", { name: "plan it so" }).click();
  await aims.getByRole("button", { name: "back to the earliest finish" }).waitFor();
  await page.getByRole("button", { name: "Order", exact: true }).click();
  await strip(page).getByText("This build aims at fewest site days.").waitFor();
  expect(await words(strip(page))).toContain("An earlier finish would give that up: it is looked for only when you ask.");
  await strip(page).getByRole("button", { name: "look for a better plan by that" }).click();
  await strip(page)
    .getByText(/site days as it stands\.|site days instead of/)
    .waitFor({ timeout: 60_000 });
  await expectClean(page, 13, "aimed");
  await strip(page).getByRole("button", { name: "look for an earlier finish" }).click();
  const use = strip(page).getByRole("button", { name: "use it" });
  await use.waitFor({ timeout: 60_000 });
  expect(await words(strip(page))).toContain("Taking it gives up what this build aims at: fewest site days.");
  await use.click();
  await strip(page).getByText("This build aims at").waitFor({ state: "detached" });
  expect(await fileOf(page)).not.toContain('"aim"');
});
