import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { cellar, phone, undoButton, withBrowser, words } from "./app";

const app = withBrowser();
const view = (page: Page): Locator => page.getByRole("region", { name: "Site", exact: true });

async function calendar(name: string, options = {}): Promise<Page> {
  const page = await app.example(cellar, options);
  await page.keyboard.press("6");
  await view(page).getByRole("button", { name: "Calendars" }).click();
  await view(page).locator(".row", { hasText: name }).click();
  return page;
}

const hours = (page: Page, day: string): Locator => page.getByLabel(`${day}, hours`);
const cell = (page: Page, at: string): Locator => page.getByRole("gridcell", { name: at, exact: true });

async function middle(cell: Locator): Promise<{ readonly x: number; readonly y: number }> {
  await cell.scrollIntoViewIfNeeded();
  const box = await cell.boundingBox();
  if (!box) throw new Error("The cell is not shown.");
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

test("hours are drawn and rubbed out with a mouse, over several days at once, each stroke one change", async () => {
  const page = await calendar("Site weekends");
  const [from, to] = [await middle(cell(page, "Monday 18:00")), await middle(cell(page, "Wednesday 20:00"))];
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 5 });
  expect(await undoButton(page).isDisabled()).toBe(true);
  await page.mouse.up();
  for (const day of ["Monday", "Tuesday", "Wednesday"]) expect(await hours(page, day).inputValue()).toBe("18:00-20:30");
  expect(await undoButton(page).getAttribute("title")).toBe("draw the hours of Site weekends");
  const [a, b] = [await middle(cell(page, "Tuesday 19:00")), await middle(cell(page, "Tuesday 19:30"))];
  await page.mouse.move(a.x, a.y);
  await page.mouse.down();
  await page.mouse.move(b.x, b.y, { steps: 3 });
  await page.mouse.up();
  expect(await hours(page, "Tuesday").inputValue()).toBe("18:00-19:00, 20:00-20:30");
  await undoButton(page).click();
  expect(await hours(page, "Tuesday").inputValue()).toBe("18:00-20:30");
  await undoButton(page).click();
  expect(await hours(page, "Monday").inputValue()).toBe("");
});

test("with keys: arrows go from half hour to half hour, held Shift draws, Space draws one, Escape leaves a stroke", async () => {
  const page = await calendar("Site weekends");
  await cell(page, "Monday 8:00").focus();
  await page.keyboard.press("ArrowRight");
  await page.keyboard.down("Shift");
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("ArrowDown");
  expect(await hours(page, "Tuesday").inputValue()).toBe("8:30-10:00");
  await page.keyboard.press("ArrowUp");
  expect(await hours(page, "Tuesday").inputValue()).toBe("");
  await page.keyboard.up("Shift");
  expect(await hours(page, "Monday").inputValue()).toBe("8:30-10:00");
  await page.keyboard.press("End");
  await page.keyboard.press("Space");
  expect(await hours(page, "Monday").inputValue()).toBe("8:30-10:00, 20:30-21:00");
  await page.keyboard.press("Space");
  await page.keyboard.down("Shift");
  await page.keyboard.press("ArrowLeft");
  await page.keyboard.press("Escape");
  await page.keyboard.up("Shift");
  expect(await hours(page, "Monday").inputValue()).toBe("8:30-10:00");
  expect(await cell(page, "Monday 9:30").getAttribute("aria-selected")).toBe("true");
  expect(await cell(page, "Monday 10:00").getAttribute("aria-selected")).toBe("false");
});

test("by touch a stroke along a day draws", async () => {
  const page = await calendar("Site weekends", { viewport: phone, hasTouch: true });
  const [from, to] = [await middle(cell(page, "Thursday 9:00")), await middle(cell(page, "Thursday 11:30"))];
  const session = await page.context().newCDPSession(page);
  const touch = (type: "touchStart" | "touchMove" | "touchEnd", points: { readonly x: number; readonly y: number }[]): Promise<unknown> =>
    session.send("Input.dispatchTouchEvent", { type, touchPoints: points });
  await touch("touchStart", [from]);
  for (let i = 1; i <= 6; i += 1) await touch("touchMove", [{ x: from.x + ((to.x - from.x) * i) / 6, y: from.y }]);
  await touch("touchEnd", []);
  await expect.poll(() => hours(page, "Thursday").inputValue()).toBe("9:00-12:00");
});

test("written hours: short forms are taken, nonsense stays with its sentence, and a calendar needs one hour", async () => {
  const page = await calendar("Wednesday evenings in the garage");
  const monday = hours(page, "Monday");
  await monday.fill("7-12, 12.30 to 17");
  await monday.blur();
  expect(await monday.inputValue()).toBe("7:00-12:00, 12:30-17:00");
  await monday.fill("17:00-7:30");
  await view(page)
    .getByText(/“17:00-7:30” is not a stretch of a day; write its begin and its end, the earlier first/)
    .waitFor();
  expect(await monday.inputValue()).toBe("17:00-7:30");
  expect(await monday.getAttribute("aria-invalid")).toBe("true");
  await monday.fill("");
  await hours(page, "Wednesday").fill("");
  await view(page)
    .getByText(/this calendar has not one working minute/)
    .waitFor();
  await hours(page, "Wednesday").fill("18:30-23:30");
  await cell(page, "Wednesday 23:00").waitFor();
});

test("a day goes round: as the week says, off, hours of its own; its hours are written below, and undo takes it back in words", async () => {
  const page = await calendar("Site weekends");
  const saturday = page.locator("[data-date='2027-02-20']");
  const says = (): Promise<string | null> => saturday.getAttribute("aria-label");
  expect(await says()).toBe("Saturday 20 February 2027: 8:00-12:00, 12:30-17:00");
  await saturday.click();
  expect(await says()).toBe("Saturday 20 February 2027: off");
  expect(await undoButton(page).getAttribute("title")).toBe("Sat 20 Feb off, Site weekends");
  await saturday.click();
  expect(await says()).toBe("Saturday 20 February 2027: hours of its own, 8:00-12:00, 12:30-17:00");
  const day = page.getByRole("group", { name: "Sat 20 Feb" });
  await day.getByLabel("Hours on that day").fill("9-10");
  expect(await says()).toBe("Saturday 20 February 2027: hours of its own, 9:00-10:00");
  await day.getByLabel("Hours on that day").fill("9 till late");
  await view(page)
    .getByText(/“9 till late” is not a stretch of a day/)
    .waitFor();
  await day.getByRole("button", { name: "as the week says" }).click();
  expect(await says()).toBe("Saturday 20 February 2027: 8:00-12:00, 12:30-17:00");
  await page.locator("[data-date='2027-02-19']").click();
  expect(await page.locator("[data-date='2027-02-19']").getAttribute("aria-label")).toContain("hours of its own, 8:30-12:00");
  await undoButton(page).click();
  expect(await page.locator("[data-date='2027-02-19']").getAttribute("aria-label")).toBe("Friday 19 February 2027: no work");
});

test("days by keyboard: arrows cross the months, Page Up and Down turn them, Enter goes round", async () => {
  const page = await calendar("Site weekends");
  await page.locator("[data-date='2027-02-13']").focus();
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("Enter");
  expect(await page.locator("[data-date='2027-02-20']").getAttribute("aria-label")).toContain(": off");
  await page.keyboard.press("PageDown");
  await page.keyboard.press("PageDown");
  await page.keyboard.press("PageDown");
  expect(await page.evaluate(() => (document.activeElement as HTMLElement).dataset.date)).toBe("2027-05-20");
  await page.keyboard.press("End");
  await page.keyboard.press("Space");
  expect(await page.evaluate(() => document.activeElement?.getAttribute("aria-label"))).toBe("Sunday 23 May 2027: off");
  await page.keyboard.press("ArrowUp");
  await page.keyboard.press("ArrowUp");
  await page.keyboard.press("ArrowUp");
  await page.keyboard.press("ArrowUp");
  expect(await page.evaluate(() => (document.activeElement as HTMLElement).dataset.date)).toBe("2027-04-25");
});

test.each([
  { locale: "en-GB", first: "Mon" },
  { locale: "en-US", first: "Sun" },
])("weeks begin on $first where $locale is spoken", async ({ locale, first }) => {
  const page = await calendar("Site weekends", { locale });
  expect(await words(page.getByRole("rowheader").first())).toBe(first);
  expect(await words(page.getByRole("columnheader").first())).toBe(first);
});

test("holidays kept by a table are shown by name", async () => {
  const page = await calendar("Wednesday evenings in the garage");
  await page.getByLabel("Holidays kept").selectOption({ label: "United States, federal" });
  expect(await page.locator("[data-date='2027-02-15']").getAttribute("aria-label")).toMatch(/Presidents|Washington/);
  await page.getByLabel("Latest time to ask").fill("25:00");
  await view(page)
    .getByText(/“25:00” is not a time of day; write it like 15:00/)
    .waitFor();
  await page.getByLabel("Latest time to ask").fill("14:30");
  await page.getByRole("checkbox", { name: "only while it is light" }).check();
  await page.getByLabel("Least order").fill("3 yd³");
  expect(await page.getByLabel("Latest time to ask").getAttribute("aria-invalid")).toBe("false");
});

test("a calendar is made, renamed, copied, and taken out once others stand in for it", async () => {
  const page = await calendar("Site weekends");
  await page.getByLabel("A new calendar").fill("Long summer evenings");
  await page.getByLabel("A new calendar").press("Enter");
  await page.getByLabel("Name", { exact: true }).fill("Summer evenings");
  await view(page).locator(".row", { hasText: "Summer evenings" }).waitFor();
  await page.getByRole("button", { name: "copy it" }).click();
  expect(await page.getByLabel("Name", { exact: true }).inputValue()).toBe("Summer evenings, copy");
  await page.getByRole("button", { name: "take “Summer evenings, copy” out" }).click();
  expect(await view(page).locator(".row", { hasText: "Summer evenings, copy" }).count()).toBe(0);
  await view(page).locator(".row", { hasText: "Ruth and Owen" }).click();
  await page.getByRole("button", { name: "take “Ruth and Owen” out" }).click();
  const asked = page.getByRole("group", { name: "take out Ruth and Owen" });
  expect(await words(asked)).toMatch(/“Ruth and Owen” is used by Ruth, Owen/);
  await asked.getByRole("button", { name: "take it out" }).click();
  await view(page).getByText("Choose the calendar that they use from then on.").waitFor();
  await asked.getByLabel("From then on they use").selectOption({ label: "Summer evenings" });
  await asked.getByRole("button", { name: "take it out" }).click();
  expect(await view(page).locator(".row", { hasText: "Ruth and Owen" }).count()).toBe(0);
  await view(page).locator(".row", { hasText: "Summer evenings" }).click();
  await view(page)
    .getByText(/Used by Ruth, Owen/)
    .waitFor();
  expect(await undoButton(page).getAttribute("title")).toBe("take out Ruth and Owen");
  await undoButton(page).click();
  await view(page).locator(".row", { hasText: "Ruth and Owen" }).waitFor();
});
