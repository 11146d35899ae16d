import type { BrowserContext, Page } from "playwright-core";
import { expect, inject } from "vitest";
import { cellar, saved, wall, type withBrowser, written } from "./app";

type App = ReturnType<typeof withBrowser>;

export const list = (page: Page) => page.getByRole("region", { name: "Kept in this browser" });
export const row = (page: Page, name: string) =>
  list(page)
    .getByRole("listitem")
    .filter({ has: page.getByRole("button", { name, exact: true }) });
export const rows = (page: Page): Promise<readonly string[]> => list(page).locator("li .word").allInnerTexts();

/** The list of what is kept, by the key that opens it. */
export async function openList(page: Page): Promise<void> {
  await page.locator("header").click({ position: { x: 2, y: 2 } });
  await page.keyboard.press("Control+o");
  await list(page).waitFor();
}

/** Another tab of the same browser, whose clock stands at that time. */
export async function tabAt(app: App, context: BrowserContext, time?: string): Promise<Page> {
  const page = app.watch(await context.newPage());
  if (time) await page.clock.setFixedTime(new Date(time));
  await page.goto(inject("app"));
  return page;
}

/** A page with two kept builds, the wall changed and the cellar open, and their list shown. */
export async function twoKept(app: App): Promise<Page> {
  const page = await app.example(wall);
  await written(page, "Tie the wall steel");
  await page.getByLabel("Notes", { exact: true }).fill("changed");
  await saved(page);
  await openList(page);
  await page.getByRole("button", { name: cellar }).click();
  await page.getByText(/^Finishe[sd] /).waitFor();
  await openList(page);
  await expect.poll(() => rows(page)).toEqual([cellar, wall]);
  return page;
}
