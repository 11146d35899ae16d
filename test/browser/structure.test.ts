import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { cellar, desk, phone, tank, wall, withBrowser, words } from "./app";
import { expectClean, tooLow } from "./clean";

const app = withBrowser();

async function opened(title: string, viewport = desk): Promise<Page> {
  const page = await app.example(title, { viewport });
  await page.getByRole("button", { name: "Dates", exact: true }).click();
  await page.getByRole("region", { name: "Structure" }).waitFor();
  const folded = page.getByRole("button", { name: "structure", exact: true, expanded: false });
  if (viewport === phone) await folded.click();
  return page;
}
const slider = (page: Page) => page.getByRole("slider", { name: "Day that is drawn" });
const says = (page: Page) => words(page.locator(".structure .says"));
const part = (page: Page, name: string | RegExp) => page.getByRole("region", { name: "Structure" }).getByRole("button", { name });

test("arrow keys go from one change to the next and say it; Home and End to either end of the build", async () => {
  const page = await opened(wall);
  await slider(page).focus();
  await page.keyboard.press("Home");
  expect(await says(page)).toBe("Sat 10 Apr 2027. Dug: Footing trench.");
  await page.keyboard.press("ArrowRight");
  expect(await says(page)).toBe("Sat 17 Apr 2027. Poured: Footing.");
  await page.keyboard.press("ArrowRight");
  expect(await says(page)).toBe("Sun 18 Apr 2027. Curing: Footing.");
  await page.keyboard.press("ArrowLeft");
  expect(await slider(page).getAttribute("aria-valuetext")).toBe("Sat 17 Apr 2027. Poured: Footing.");
  await page.keyboard.press("End");
  expect(await says(page)).toBe("Sat 29 May 2027. Stands: Planter.");
  await page.getByRole("button", { name: "to the change before" }).click();
  expect(await says(page)).toBe("Mon 24 May 2027. Carrying: Wall.");
});

test("a day between two changes says that nothing changes, and the drawing is that of the day", async () => {
  const page = await opened(wall);
  const day = Number(await slider(page).getAttribute("min")) + 9;
  await slider(page).fill(String(day));
  expect(await says(page)).toBe("As it stands on Mon 19 Apr 2027.");
  expect(await page.locator('.structure [data-body="footing"]').getAttribute("aria-label")).toBe("Footing, curing");
  expect(await page.locator('.structure [data-body="wall"]').getAttribute("aria-label")).toBe("Wall, not yet");
});

test("a click on a part selects its place and pales the steps that are not its own; again lets go", async () => {
  const page = await opened(cellar);
  await slider(page).fill("200");
  const roof = (await page.locator('.structure [data-body="roof"]').boundingBox())!;
  await page.mouse.click(roof.x + roof.width / 2, roof.y + roof.height / 3);
  await page.getByRole("complementary").getByRole("heading", { name: "Shed roof" }).waitFor();
  expect(await words(page.locator(".structure .chosen"))).toMatch(/^Shed roof: /);
  expect(await page.locator('.structure [data-body="roof"]').getAttribute("aria-pressed")).toBe("true");
  expect(await page.locator(".frame .faded").count()).toBeGreaterThan(20);
  await page.mouse.click(roof.x + roof.width / 2, roof.y + roof.height / 3);
  await expect.poll(() => page.locator(".frame .faded").count()).toBe(0);
});

test("by keys: one stop, arrows from part to part, Enter chooses", async () => {
  const page = await opened(wall);
  expect(await page.locator('.structure [data-body][tabindex="0"]').count()).toBe(1);
  await page.locator('.structure [data-body][tabindex="0"]').focus();
  const name = () => page.evaluate(() => document.activeElement?.getAttribute("aria-label"));
  const first = await name();
  await page.keyboard.press("ArrowRight");
  expect(await name()).not.toBe(first);
  await page.locator('.structure [data-body="wall"]').focus();
  await page.keyboard.press("Enter");
  await page.getByRole("complementary").getByRole("heading", { name: "Wall steel" }).waitFor();
});

test("a step chosen on the sheet lights its part", async () => {
  const page = await opened(wall);
  await page.locator('[data-step="tie-footing"]').first().click();
  await expect.poll(() => page.locator('.structure [data-body="footing"]').getAttribute("aria-pressed")).toBe("true");
  expect(await page.locator('.structure [data-body="wall"]').getAttribute("aria-pressed")).toBe("false");
});

test("it is turned by button, by key and by dragging, and comes round in four", async () => {
  const page = await opened(cellar);
  const outline = () => page.locator('.structure [data-body="porch"]').getAttribute("d");
  const front = await outline();
  await part(page, "turn to the right").click();
  const right = await outline();
  expect(right).not.toBe(front);
  await page.keyboard.press("Shift+T");
  expect(await outline()).toBe(front);
  for (let quarter = 0; quarter < 4; quarter += 1) await page.keyboard.press("t");
  expect(await outline()).toBe(front);
  const box = (await page.locator(".structure .drawing").boundingBox())!;
  await page.mouse.move(box.x + 150, box.y + 100);
  await page.mouse.down();
  await page.mouse.move(box.x + 40, box.y + 100, { steps: 4 });
  await page.mouse.up();
  expect(await outline()).toBe(right);
  // A drag chooses nothing.
  expect(await page.locator('.structure [data-body][aria-pressed="true"]').count()).toBe(0);
});

test("it folds away, leaves its room to the side sheet, and is remembered", async () => {
  const page = await opened(wall);
  const why = () => page.locator("aside").evaluate((aside) => aside.clientHeight);
  const before = await why();
  await part(page, "structure").click();
  expect(await slider(page).count()).toBe(0);
  expect(await why()).toBeGreaterThan(before + 200);
  await page.reload();
  await page.getByRole("region", { name: "Structure" }).waitFor();
  expect(await slider(page).count()).toBe(0);
  await part(page, "structure").click();
  await slider(page).waitFor();
});

test("on a phone the next days stand first: the structure is one line until it is opened, and that is remembered", async () => {
  const page = await app.example(cellar, { viewport: phone });
  await page.getByRole("button", { name: "Dates", exact: true }).click();
  await page.getByRole("button", { name: "I see" }).click();
  const firstDays = () => page.locator(".weekend h2").first();
  await firstDays().waitFor();
  expect(await slider(page).count()).toBe(0);
  expect((await firstDays().boundingBox())!.y).toBeLessThan(phone.height / 3);
  await part(page, "structure").click();
  await slider(page).waitFor();
  await page.reload();
  await slider(page).waitFor();
});

test("the day that was chosen stands as a line on the sheet", async () => {
  const page = await opened(wall);
  expect(await page.locator("[data-day-line]").count()).toBe(0);
  await slider(page).focus();
  await page.keyboard.press("Home");
  const line = (await page.locator("[data-day-line]").boundingBox())!;
  await page.keyboard.press("ArrowRight");
  expect((await page.locator("[data-day-line]").boundingBox())!.x).toBeGreaterThan(line.x);
});

test("a table for readers says the same", async () => {
  const page = await opened(wall);
  await slider(page).focus();
  await page.keyboard.press("Home");
  await page.keyboard.press("ArrowRight");
  const table = await words(page.locator(".structure table"));
  expect(table).toContain("Footing\tpoured");
  expect(table).toMatch(/Wall\tnot yet\t\t\tbars in Sat 24 Apr/);
});

test("after a change the days of the new plan are drawn, and undo brings back those before", async () => {
  const page = await opened(wall);
  const last = () => slider(page).getAttribute("max");
  const before = await last();
  const flag = page
    .getByRole("group", { name: "Deliveries, bookings and inspections" })
    .getByRole("button", { name: /, delivery, / })
    .first();
  await flag.focus();
  await page.keyboard.press("Space");
  for (let week = 0; week < 4; week += 1) await page.keyboard.press("PageDown");
  await page.keyboard.press("Space");
  await expect.poll(async () => Number(await last())).toBeGreaterThan(Number(before));
  await page.locator("header").getByRole("button", { name: "undo" }).click();
  await expect.poll(last).toBe(before);
});

test("a build without dates is drawn as it will stand, without a slider", async () => {
  const page = await opened(tank);
  expect(await slider(page).count()).toBe(0);
  expect(await says(page)).toBe("No dates yet: drawn as it will stand.");
  expect(await page.locator('.structure [data-body="pier"]').getAttribute("aria-label")).toBe("Pier");
});

test.each([
  { where: "desk", viewport: desk, least: 13 },
  { where: "phone", viewport: phone, least: 16 },
])("it is clean on a $where, with the key open", async ({ viewport, least }) => {
  const page = await opened(cellar, viewport);
  const key = part(page, "hatches");
  if ((await key.getAttribute("aria-expanded")) === "false") await key.click();
  await slider(page).fill("200");
  await expectClean(page, least, "structure");
  if (least === 16) expect((await tooLow(page)).filter((name) => name === "INPUT" || name === "structure")).toEqual([]);
});
