import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { cellar, undoButton, wall, withBrowser, words } from "./app";

const app = withBrowser();
const view = (page: Page): Locator => page.locator(".next");

/** The cellar's sheet of the next day, on a day of ours. */
async function next(today: string): Promise<Page> {
  const page = await app.exampleOn(today, cellar, "Next");
  await view(page).getByRole("heading", { level: 2 }).waitFor();
  return page;
}
const job = (page: Page, name: string): Locator =>
  view(page).getByRole("list", { name: "Steps in order" }).locator("> li").filter({ hasText: name });
const heading = (page: Page): Promise<string> => words(view(page).getByRole("heading", { level: 2 }));
const boxes = (page: Page): Locator => view(page).getByRole("checkbox");

test("before the first day: its steps in order with who and what they need, a tick that stays and is taken off again", async () => {
  const page = await next("2027-01-10T12:00:00Z");
  expect(await heading(page)).toBe("Sat 13 Feb, next on site");
  expect(await boxes(page).count()).toBe(3);
  const first = job(page, "Clear brush");
  expect(await words(first)).toMatch(/Clear brush[\s\S]*Ruth and Owen[\s\S]*Needs/);
  await job(page, "Clear brush").getByRole("checkbox").check();
  await first.getByLabel("finished").waitFor();
  await view(page)
    .getByText(/^2 to do, 1 ticked/)
    .waitFor();
  await undoButton(page).click();
  await view(page)
    .getByText(/^3 to do/)
    .waitFor();
  expect(await boxes(page).first().isChecked()).toBe(false);
});

test("a finish before the start is refused beside the field, and nothing changes", async () => {
  const page = await next("2027-01-10T12:00:00Z");
  await job(page, "Clear brush").getByRole("checkbox").check();
  const first = job(page, "Clear brush");
  await first.getByLabel("finished").fill("2027-02-12T08:00");
  await first.getByLabel("finished").blur();
  await first.getByText(/put the finish after the start/).waitFor();
});

test("what was planned for before today and is not ticked is named; the rest is then planned from today", async () => {
  const page = await next("2027-02-17T12:00:00Z");
  const late = view(page).getByRole("note");
  expect(await words(late)).toMatch(/^\d+ steps were planned for before today and are not ticked/);
  await late.getByRole("button", { name: "plan what is left from today" }).click();
  await late.waitFor({ state: "detached" });
  expect(await page.evaluate(() => document.activeElement?.id)).toBe("main");
  const [, day = ""] = /^\w+ (\d+) Feb, next on site$/.exec(await heading(page)) ?? [];
  expect(Number(day)).toBeGreaterThanOrEqual(17);
});

test("what was to be ordered or booked before today is ticked where it is told, and taken back there", async () => {
  const page = await next("2027-04-14T12:00:00Z");
  const late = view(page).getByRole("note");
  const footing = late.getByRole("checkbox", { name: /^Ordered by now, Wed 17 Mar at the latest: the concrete for the footing/ });
  await footing.check();
  await page.getByText("Concrete for the footing is ordered.").waitFor({ state: "attached" });
  await page.getByRole("button", { name: "Site", exact: true }).click();
  await page.getByRole("button", { name: "Next", exact: true }).click();
  await late.waitFor();
  expect(await footing.count()).toBe(0);
  await undoButton(page).click();
  await footing.waitFor();
  expect(await footing.isChecked()).toBe(false);
  await footing.check();
  await footing.uncheck();
  expect(await footing.isChecked()).toBe(false);
});

test("part of a step is done: what is left of it is written down, planned, and gone with the tick", async () => {
  const page = await next("2027-02-13T12:00:00Z");
  const first = job(page, "Clear brush");
  await first.getByRole("button", { name: "part of it is done" }).click();
  const left = first.getByLabel(/^Work left, of \d+ h/);
  await left.fill("2 d");
  await first.getByText(/hours/).waitFor();
  await left.fill("1 h 30 min");
  await first.getByText(/1 h 30 min left$/).waitFor();
  await first.getByRole("checkbox").check();
  await first.getByLabel("finished").waitFor();
  await first.getByRole("checkbox").uncheck();
  await first.getByRole("button", { name: "part of it is done" }).waitFor();
});

test("work begun before the build's first day: what that counts for, and one press to begin by then", async () => {
  const page = await next("2027-01-10T12:00:00Z");
  await job(page, "Clear brush").getByRole("checkbox").check();
  const first = job(page, "Clear brush");
  await first.getByLabel("begun").fill("2027-01-30T08:00");
  await first.getByLabel("begun").blur();
  await first.getByText(/lies before the build begins on/).waitFor();
  await first.getByRole("button", { name: /^Let the build begin on Sat 30 Jan, and go on with what is left on/ }).click();
  await view(page)
    .getByText(/lies before the build begins on/)
    .waitFor({ state: "detached" });
  await page.getByRole("button", { name: "Site", exact: true }).click();
  await page.getByRole("region", { name: "Site", exact: true }).getByRole("button", { name: "The build" }).click();
  expect(await page.getByLabel("First day").inputValue()).toBe("2027-01-30");
});

test("what others do on a day without the crew has its sheet and its tick; so has every step beside its reasons", async () => {
  const page = await next("2027-01-10T12:00:00Z");
  for (let turn = 0; turn < 4 && !(await heading(page)).startsWith("Fri 19 Feb"); turn++)
    await view(page).getByRole("button", { name: "day after" }).click();
  expect(await heading(page)).toBe("Fri 19 Feb");
  await job(page, "Locators paint the marks").getByRole("checkbox").check();
  await view(page).getByText("All is ticked.").waitFor();
  await view(page).getByRole("button", { name: "Locators paint the marks" }).click();
  const sheet = page.getByRole("complementary");
  const done = sheet.getByRole("checkbox", { name: "done" });
  expect(await done.isChecked()).toBe(true);
  await sheet.getByLabel("finished").waitFor();
  await done.uncheck();
  await view(page)
    .getByText(/^1 to do/)
    .waitFor();
});

test("days are leafed through by key, and what is left behind is said", async () => {
  const page = await next("2027-02-20T12:00:00Z");
  const before = await heading(page);
  await page.locator("body").press("ArrowRight");
  expect(await heading(page)).not.toBe(before);
  await view(page)
    .getByRole("heading", { name: /^Left until/ })
    .waitFor();
  await page.locator("body").press("ArrowLeft");
  expect(await heading(page)).toBe(before);
});

test("the day page prints by itself: the day with its year, steps, what to bring and who decides, in ink on white, without what is pressed", async () => {
  const page = await app.example(wall, { colorScheme: "dark" });
  await page.getByRole("button", { name: "Next", exact: true }).click();
  const sheet = page.getByRole("region", { name: "Next" });
  await page.evaluate(() => {
    window.print = () => document.body.setAttribute("data-printed", "");
  });
  await sheet.getByRole("button", { name: "print", exact: true }).click();
  expect(await page.locator("[data-printed]").count()).toBe(1);
  await page.emulateMedia({ media: "print" });
  const paper = await words(page.locator("body"));
  expect(paper).toMatch(/Garden wall with a planter\s+Sat 10 Apr\s+2027\s+\d to do/);
  expect(paper).toContain("Buy, bring, order");
  expect(paper).toContain("Local code, the inspector and licensed people decide.");
  expect(paper).not.toMatch(/undo|day after|work it out|I see/);
  expect(await page.locator("body").evaluate((body) => getComputedStyle(body).backgroundColor)).toBe("rgb(255, 255, 255)");
});
