import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { cellar, openBrowser, saved } from "./app";

// Parts of the page and its engine come after the first view. What if one of them does not?

let app: Awaited<ReturnType<typeof openBrowser>>;
beforeAll(async () => {
  app = await openBrowser();
});
afterAll(() => app.close());

async function kept(): Promise<Page> {
  const page = await app.example(cellar, { serviceWorkers: "block" });
  await saved(page);
  return page;
}

async function addStep(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Steps", exact: true }).click();
  await page.getByLabel("A new step").fill("Sweep the floor");
  await page.keyboard.press("Enter");
  await page.locator(".row", { hasText: "Sweep the floor" }).waitFor();
}

test("a part that cannot be fetched says so where it would stand, and the rest works on", async () => {
  const page = await kept();
  await page.route(/\/assets\/(Dialogs|why)-/, (route) => route.abort());
  await page.reload();
  await page.getByText(/^Finishes /).waitFor();
  await page.keyboard.press("?");
  const sentence = "This part of the page could not be loaded. Load the page again; nothing is lost.";
  await expect.poll(() => page.getByText(sentence).count()).toBe(2);
  expect(await page.locator(".dialogs").getByText(sentence).isVisible()).toBe(true);
  await addStep(page);
});

test("without a worker the first view has its plan, from the page's own engine", async () => {
  const page = await kept();
  const finish = await page.getByText(/^Finishes /).textContent();
  let refused = 0;
  await page.route(/\/assets\/entry-/, (route) => {
    refused += 1;
    return route.abort();
  });
  await page.reload();
  await page.getByText(/^Finishes /).waitFor();
  expect(refused).toBeGreaterThan(0);
  expect(await page.getByText(/^Finishes /).textContent()).toBe(finish);
});

test("without the page's own engine the worker goes on making the plans", async () => {
  const page = await kept();
  let refused = 0;
  await page.route(/\/assets\/engine-/, (route) => {
    refused += 1;
    return route.abort();
  });
  await page.reload();
  await page.getByText(/^Finishes /).waitFor();
  await expect.poll(() => refused).toBeGreaterThan(0);
  await addStep(page);
  await expect.poll(() => page.locator(".headline[aria-busy=true]").count()).toBe(0);
  expect(await page.getByText(/^Finishes /).isVisible()).toBe(true);
});
