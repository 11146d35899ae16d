import { describe, expect, test } from "vitest";
import { cellar, desk, phone, undoButton, withBrowser, words } from "./app";
import { expectClean } from "./clean";

const app = withBrowser();

const names = [
  "The build",
  "Calendars",
  "People",
  "Equipment and stock",
  "Deliveries",
  "Bookings",
  "Temperatures",
  "Cautions",
  "What rests on a guess",
];

describe.each([
  { where: "desk", viewport: desk, least: 13 },
  { where: "phone", viewport: phone, least: 16 },
])("on a $where", ({ viewport, least }) => {
  test.each(["light", "dark"] as const)("Site is clean, %s", async (colorScheme) => {
    const page = await app.example(cellar, { viewport, colorScheme });
    await page.keyboard.press("6");
    const view = page.getByRole("region", { name: "Site", exact: true });
    // Colours are the same in every field: in the dark a few sections stand for all.
    const looked = colorScheme === "light" ? names : ["Calendars", "Equipment and stock", "Cautions"];
    for (const name of looked) {
      const section = view.getByRole("button", { name }).first();
      await section.click();
      const row = view.locator(".members .row").first();
      if (viewport === phone && (await row.isVisible())) await row.click();
      // Every kind of thing that opens: a day, a source, what is asked before something goes.
      const day = view.locator("[data-date]").nth(9);
      if (await day.isVisible()) await day.click();
      const source = view.getByRole("button", { name: /^from: |^where from\?/ }).first();
      if (await source.isVisible()) await source.click();
      const out = view.getByRole("button", { name: /^take (“|out [A-Z])/ }).first();
      if (await out.isVisible()) await out.click();
      await expectClean(page, least, name);
      if (viewport === phone) await section.click();
    }
  });
});

test("without a mouse: from the key to a changed delivery and back", async () => {
  const page = await app.example(cellar);
  await page.keyboard.press("6");
  const view = page.getByRole("region", { name: "Site", exact: true });
  await view.waitFor();
  const focused = (): Promise<string> =>
    page.evaluate(() => {
      const element = document.activeElement as HTMLInputElement | null;
      return element?.getAttribute("aria-label") ?? element?.labels?.[0]?.textContent ?? element?.textContent?.trim() ?? "";
    });
  const tabTo = async (name: RegExp): Promise<void> => {
    for (let presses = 0; presses < 120; presses += 1) {
      await page.keyboard.press("Tab");
      if (name.test(await focused())) return;
    }
    throw new Error(`no way by Tab to ${name}`);
  };
  await tabTo(/^Deliveries$/);
  await page.keyboard.press("Enter");
  await tabTo(/^Drain stone, 7 tons/);
  await page.keyboard.press("Enter");
  await tabTo(/^From order to arrival$/);
  const row = view.locator(".row", { hasText: "Drain stone, 7 tons" });
  await page.keyboard.press("Control+A");
  await page.keyboard.type("10 days");
  await expect.poll(() => words(row)).toContain("order by Tue 11 May");
  await tabTo(/^from: supplier/);
  await page.keyboard.press("Enter");
  expect(await focused()).toBe("Where it comes from: From order to arrival");
  await page.keyboard.type("own");
  await tabTo(/^Notes$/);
  await page.keyboard.type("Ring first.");
  expect(await undoButton(page).getAttribute("title")).toBe("change Drain stone, 7 tons");
  await tabTo(/^take “Drain stone, 7 tons” out$/);
  await page.keyboard.press("Enter");
  expect(await focused()).toBe("keep it");
  await page.keyboard.press("Enter");
  expect(await focused()).toBe("take “Drain stone, 7 tons” out");
  for (let i = 0; i < 3; i += 1) await page.keyboard.press("Control+z");
  await expect.poll(() => words(row)).toContain("order by Wed 19 May");
});
