import type { Browser, BrowserContextOptions, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, expect, inject } from "vitest";
import { launch } from "../tools/browser.mjs";

export const phone = { width: 390, height: 844 };
export const desk = { width: 1440, height: 900 };

/** One browser for a file of tests, and pages on which nothing may go wrong unseen. */
export async function openBrowser() {
  const browser: Browser = await launch();
  const faults: string[] = [];

  const watch = (page: Page): Page => {
    page.on("console", (message) => {
      if (message.type() === "error" || message.type() === "warning") faults.push(message.text());
    });
    page.on("pageerror", (error) => faults.push(error.message));
    page.setDefaultTimeout(10_000);
    return page;
  };

  /** A fresh profile: nothing kept. */
  async function context(options: BrowserContextOptions = {}) {
    const made = await browser.newContext({ viewport: desk, locale: "en-GB", ...options });
    // Without the picker of the system the page uses a plain file field, which a test can fill.
    await made.addInitScript(() => {
      Reflect.deleteProperty(window, "showOpenFilePicker");
      Reflect.deleteProperty(window, "showSaveFilePicker");
    });
    return made;
  }

  /** `today`: an instant at which the page's clock stands still. */
  async function start(options: BrowserContextOptions = {}, today?: string): Promise<Page> {
    const made = await context(options);
    if (today !== undefined) await made.clock.setFixedTime(today);
    const page = watch(await made.newPage());
    await page.goto(inject("app"));
    await page.getByRole("heading", { level: 1 }).waitFor();
    return page;
  }

  /** The start page, then one of the examples, shown in Order. */
  async function example(title: string, options: BrowserContextOptions = {}, today?: string): Promise<Page> {
    const page = await start(options, today);
    await page.getByRole("button", { name: title }).click();
    await page.getByText(/^(Finishe[sd] |This cannot be built)/).waitFor();
    return page;
  }

  return {
    browser,
    context,
    start,
    watch,
    example,
    /** One of the examples in one of its views, on a day of ours. */
    async exampleOn(today: string, title: string, view: string): Promise<Page> {
      const page = await example(title, {}, today);
      await page.getByRole("button", { name: view, exact: true }).click();
      return page;
    },
    /** No error or warning was written to the console. */
    expectNoFaults: () => expect(faults.join("\n")).toBe(""),
    close: () => browser.close(),
  };
}

/** The browser of a file of tests: opened before the first, closed after the last, and none of them may have written to the console. */
export function withBrowser(): Awaited<ReturnType<typeof openBrowser>> {
  const app = {} as Awaited<ReturnType<typeof openBrowser>>;
  beforeAll(async () => {
    Object.assign(app, await openBrowser());
  });
  afterAll(async () => {
    app.expectNoFaults();
    await app.close();
  });
  return app;
}

/** Opens the form of a step in the list. */
export async function written(page: Page, step: string): Promise<Locator> {
  await page.getByRole("button", { name: "Steps", exact: true }).click();
  await page.locator(".row", { hasText: step }).click();
  await page.getByRole("button", { name: "As written" }).click();
  return page.getByRole("complementary");
}

export const undoButton = (page: Page): Locator => page.locator("header").getByRole("button", { name: "undo" });

export const wall = "Garden wall with a planter";
export const cellar = "Bank cellar with porch and potting shed";
export const tank = "Tank house as first sketched";

/** Waits until the page has said that everything is on disk. */
export async function saved(page: Page): Promise<void> {
  await page.locator('[data-saved="saved"]').waitFor({ state: "attached" });
}

/** What a reader sees of it: unlike textContent, without what is hidden and with its line breaks. */
export const words = (element: Locator): Promise<string> =>
  // biome-ignore lint/performance/useDomNodeTextContent: what is hidden must not count
  element.evaluate((node) => (node as HTMLElement).innerText.replaceAll("\u00a0", " "));

/** "Finishes Sat 22 May 2027." */
export const headline = (page: Page): Promise<string> => words(page.locator(".headline .main"));
