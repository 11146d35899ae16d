import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { desk, phone, undoButton, wall, withBrowser } from "./app";

const app = withBrowser();
const moved = (page: Page) => page.getByRole("region", { name: /what (would move|moved)/ });
const step = (page: Page, name: string) => page.getByRole("button", { name: new RegExp(`^${name}, `) }).and(page.locator("[data-step]"));

async function dates(options: { hasTouch?: boolean } = {}): Promise<Page> {
  const page = await app.example(wall, { viewport: desk, ...options });
  await page.keyboard.press("2");
  await page.locator("[data-step]").first().waitFor({ state: "attached" });
  await page.waitForTimeout(300);
  return page;
}

async function centre(page: Page, name: string): Promise<{ x: number; y: number }> {
  const box = (await step(page, name).locator(".focus").boundingBox())!;
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

test("dragged to a later day: what would follow is shown, then kept; undo says what and brings it back", async () => {
  const page = await dates();
  const name = "Footing steel on spacers";
  const before = await step(page, name).getAttribute("aria-label");
  const { x, y } = await centre(page, name);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 60, y, { steps: 4 });
  await page.mouse.move(x + 240, y, { steps: 4 });
  await moved(page).getByText("Would be").waitFor();
  expect(await page.locator(".mark-ghost").count()).toBeGreaterThan(0);
  await page.mouse.up();
  await moved(page).getByText("Moved", { exact: true }).waitFor();
  await expect.poll(() => step(page, name).getAttribute("aria-label")).not.toBe(before);
  expect(await undoButton(page).getAttribute("title")).toMatch(/^move Footing steel on spacers to \w{3} \d+ \w{3} or later$/);
  await undoButton(page).click();
  await expect.poll(() => step(page, name).getAttribute("aria-label")).toBe(before);
});

test("given up with Escape while it is dragged, and a click still opens why", async () => {
  const page = await dates();
  const name = "Footing steel on spacers";
  const before = await step(page, name).getAttribute("aria-label");
  const { x, y } = await centre(page, name);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 240, y, { steps: 5 });
  await moved(page).getByText("Would be").waitFor();
  await page.keyboard.press("Escape");
  await page.mouse.up();
  await moved(page).waitFor({ state: "detached" });
  expect(await step(page, name).getAttribute("aria-label")).toBe(before);
  await page.mouse.click(x, y);
  await page.getByRole("heading", { name }).waitFor();
});

test("by keys: space takes it in hand, arrows move it by days and lanes, Escape gives up, space lets go", async () => {
  const page = await dates();
  const name = "Three weep pipes";
  const before = await step(page, name).getAttribute("aria-label");
  await step(page, name).focus();
  await page.keyboard.press("Space");
  await page.keyboard.press("PageDown");
  await moved(page).getByText("Would be").waitFor();
  await page.keyboard.press("Escape");
  await moved(page).waitFor({ state: "detached" });
  expect(await step(page, name).getAttribute("aria-label")).toBe(before);
  await page.keyboard.press("Space");
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("Space");
  await expect.poll(() => undoButton(page).getAttribute("title")).toMatch(/^move Three weep pipes to /);
  await expect.poll(() => step(page, name).getAttribute("aria-label")).not.toBe(before);
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name }).waitFor();
});

test("fixed to the very day with F", async () => {
  const page = await dates();
  const name = "Footing steel on spacers";
  await step(page, name).focus();
  for (const key of ["Space", "PageDown", "f", "Space"]) await page.keyboard.press(key);
  await expect.poll(() => undoButton(page).getAttribute("title")).toMatch(/exactly$/);
});

test("by finger: it rests before it drags; a finger that moves at once scrolls", async () => {
  const page = await dates({ hasTouch: true });
  const name = "Footing steel on spacers";
  const { x, y } = await centre(page, name);
  const session = await page.context().newCDPSession(page);
  const touch = (type: "touchStart" | "touchMove" | "touchEnd", at?: number) =>
    session.send("Input.dispatchTouchEvent", { type, touchPoints: at === undefined ? [] : [{ x: at, y }] });
  await touch("touchStart", x);
  await page.waitForTimeout(500);
  for (const by of [40, 120, 200, 240]) await touch("touchMove", x + by);
  await moved(page).getByText("Would be").waitFor();
  await touch("touchEnd");
  await moved(page).getByText("Moved", { exact: true }).waitFor();
  expect(await undoButton(page).getAttribute("title")).toMatch(/^move Footing steel on spacers/);
});

test("on a phone a job that is held is carried to another day of the column", async () => {
  const page = await app.example(wall, { viewport: phone, hasTouch: true });
  await page.keyboard.press("2");
  const job = page.locator(".job").filter({ hasText: "Footing steel on spacers" });
  await job.evaluate((node) => node.scrollIntoView({ block: "start" }));
  const day = page.locator("[data-day]").filter({ has: job });
  const before = (await day.getAttribute("data-day"))!;
  const box = (await job.boundingBox())!;
  const session = await page.context().newCDPSession(page);
  const touch = (type: "touchStart" | "touchMove" | "touchEnd", y?: number) =>
    session.send("Input.dispatchTouchEvent", { type, touchPoints: y === undefined ? [] : [{ x: box.x + 60, y }] });
  await touch("touchStart", box.y + 10);
  await page.waitForTimeout(500);
  await touch("touchMove", box.y + 40);
  // Held near the lower edge the column rolls on until the next day is in sight.
  const dates = await page.locator("[data-day]").evaluateAll((days) => days.map((one) => (one as HTMLElement).dataset.day ?? ""));
  const next = page.locator(`[data-day="${dates.find((date) => date > before)}"]`);
  await touch("touchMove", 800);
  await expect.poll(async () => (await next.boundingBox())!.y).toBeLessThan(500);
  await touch("touchMove", (await next.boundingBox())!.y + 20);
  await moved(page).getByText("Would be").waitFor();
  await touch("touchEnd");
  await expect.poll(() => undoButton(page).getAttribute("title")).toMatch(/^move Footing steel on spacers to .* or later$/);
  await expect.poll(() => day.getAttribute("data-day")).not.toBe(before);
});
