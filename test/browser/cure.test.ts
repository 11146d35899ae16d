import { join } from "node:path";
import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { cellar, phone, undoButton, withBrowser, words } from "./app";

const app = withBrowser();

const view = (page: Page): Locator => page.locator(".cure");
/** What is said of one thing that waits for the pour shown. */
const row = (page: Page, name: string): Locator =>
  page.getByRole("region", { name: "What comes off, and when" }).getByRole("listitem").filter({ hasText: name }).first();
const write = (page: Page, section: string): Locator =>
  page.getByRole("region", { name: section }).getByRole("button", { name: "write it down" });

/** One of the cellar's pours. */
async function cure(pour: string, options = {}): Promise<Page> {
  const page = await app.example(cellar, options);
  await page.getByRole("button", { name: "Cure", exact: true }).click();
  await page.getByRole("button", { name: pour, exact: true }).click();
  await view(page)
    .getByRole("heading", { level: 2, name: new RegExp(`^${pour}, placed`) })
    .waitFor();
  return page;
}

test.each([
  { today: "2027-01-10T12:00:00Z", pour: "Footing and column pads", why: "the next to be placed" },
  { today: "2027-07-15T12:00:00Z", pour: "Barrel vault", why: "placed, with something still held" },
])("on $today the pour shown is $pour: $why", async ({ today, pour }) => {
  const page = await app.exampleOn(today, cellar, "Cure");
  await view(page)
    .getByRole("heading", { level: 2, name: new RegExp(`^${pour}, placed`) })
    .waitFor();
  expect(await page.getByRole("button", { name: pour, exact: true }).getAttribute("aria-pressed")).toBe("true");
});

test("drawing, list and the order of all pours tell the same dates and holds", async () => {
  const page = await cure("Barrel vault");
  const listed = await words(row(page, "Strike the wedges"));
  expect(listed).toMatch(/^Sat 7 Aug/);
  expect(listed).toContain("a hold until shown");
  const drawn = view(page).locator("svg").first();
  await drawn.getByText("Strike the wedges, Sat 7 Aug").waitFor();
  await drawn.getByText("a hold until shown").waitFor();
  const all = page.getByRole("region", { name: /^All pours/ }).getByRole("listitem");
  expect(await words(all.filter({ hasText: "Strike the wedges" }))).toMatch(/Sat 7 Aug[\s\S]*Barrel vault[\s\S]*a hold until shown/);
});

test("a test of the strength takes the hold away and moves the day, once it is known when it was placed; undone step by step", async () => {
  const page = await cure("Barrel vault");
  const before = await words(row(page, "Strike the wedges"));
  await page.getByLabel("Tested on").fill("2027-07-21");
  await page.getByLabel("Carried").fill("3200 psi");
  await page.getByLabel("By", { exact: true }).fill("lab");
  await write(page, "Shown by tests").click();
  // Nothing says yet when it was placed.
  await view(page)
    .getByText(/this result is not counted while nothing says when the concrete was placed/)
    .waitFor();
  expect(await words(row(page, "Strike the wedges"))).toBe(before);
  await page.getByLabel("Placed on").fill("2027-07-10");
  await expect.poll(() => words(row(page, "Strike the wedges"))).toContain("75 % (3000 psi) shown by a test");
  const after = await words(row(page, "Strike the wedges"));
  expect(after).toContain("shown");
  expect(after).not.toContain("hold");
  expect(after).not.toMatch(/^Sat 7 Aug/);
  await undoButton(page).click();
  await expect.poll(() => words(row(page, "Strike the wedges"))).toBe(before);
  await undoButton(page).click();
  await view(page).getByText("Nothing yet: all dates here are expected, not shown.").waitFor();
});

test("a test that cannot be read stays in its fields and changes nothing", async () => {
  const page = await cure("Barrel vault");
  await write(page, "Shown by tests").click();
  await view(page).getByText("Say on which day it was tested. Say what it carried, like 2400 psi.").waitFor();
  await page.getByLabel("Tested on").fill("2027-07-21");
  await page.getByLabel("Carried").fill("a lot");
  await write(page, "Shown by tests").click();
  await page.getByRole("region", { name: "Shown by tests" }).getByRole("alert").waitFor();
  expect(await page.getByLabel("Carried").inputValue()).toBe("a lot");
  expect(await undoButton(page).isDisabled()).toBe(true);
});

test("days measured cold move what is expected, and back when they are undone", async () => {
  const page = await cure("Walls to the springing");
  const before = await words(row(page, "Fill beside the walls"));
  expect(before).toContain("from Tue 11 May: 75 % (3000 psi) expected");
  for (const [count, day] of ["2027-05-02", "2027-05-03", "2027-05-04"].entries()) {
    await page.getByLabel("Day", { exact: true }).fill(day);
    await page.getByLabel("Low", { exact: true }).fill("25 °F");
    await page.getByLabel("High", { exact: true }).fill("33 °F");
    await write(page, "Temperatures of single days").click();
    const written = page.getByRole("region", { name: "Temperatures of single days" }).getByRole("listitem");
    await expect.poll(() => written.count()).toBe(count + 1);
  }
  await expect.poll(() => words(row(page, "Fill beside the walls"))).not.toContain("from Tue 11 May");
  for (let count = 0; count < 3; count += 1) await undoButton(page).click();
  await expect.poll(() => words(row(page, "Fill beside the walls"))).toBe(before);
});

test("what waits is added, changed and taken out where it stands, and what is refused says why", async () => {
  const page = await cure("Barrel vault");
  const strike = await words(row(page, "Strike the wedges"));
  await page.getByRole("button", { name: "change what holds Strike the wedges" }).click();
  const days = page.getByLabel("Not before", { exact: true });
  await days.fill("soon");
  expect(await days.getAttribute("aria-invalid")).toBe("true");
  expect(await days.inputValue()).toBe("soon");
  expect(await words(view(page).locator(`[id="${((await days.getAttribute("aria-describedby")) ?? "").split(" ").at(-1)}"]`))).not.toBe("");
  await days.fill("21 d");
  await expect.poll(() => words(row(page, "Strike the wedges"))).toContain("21 days, as the drawing says");
  expect(await words(row(page, "Strike the wedges"))).not.toContain("hold until");
  await page.getByRole("button", { name: "done with Strike the wedges" }).click();
  await undoButton(page).click();
  await expect.poll(() => words(row(page, "Strike the wedges"))).toBe(strike);

  await page.getByLabel("The step that waits").selectOption({ label: "Final inspection" });
  await view(page).getByText("Say first what the step does.").waitFor();
  await page.getByLabel("Also waits: a step that").selectOption({ label: "loads it" });
  await page.getByLabel("The step that waits").selectOption({ label: "Final inspection" });
  await expect.poll(() => row(page, "Final inspection").count()).toBe(1);
  expect(await words(row(page, "Final inspection"))).toContain("Earth or another load may lie on it from");
  await page.getByRole("button", { name: "change what holds Final inspection" }).click();
  await page.getByRole("button", { name: "it does not wait for this concrete" }).click();
  await expect.poll(() => row(page, "Final inspection").count()).toBe(0);
});

test("how it is kept wet and warm is changed where it is told", async () => {
  const page = await cure("Footing and column pads");
  await view(page)
    .getByText(/nothing written down here does that/)
    .waitFor();
  await page.getByRole("button", { name: "change how it is kept wet and warm" }).click();
  await page.getByLabel("Held at", { exact: true }).fill("55 °F");
  await page.getByLabel("for", { exact: true }).fill("3 d");
  await view(page).getByText("Covered for 7 days; held at 55 °F or warmer for 3 days; in the weather.").waitFor();
  await view(page)
    .getByText(/the blankets written down here do that/)
    .waitFor();
});

test("by keyboard alone: to the view, to a pour, to what holds a step and back", async () => {
  const page = await app.example(cellar);
  const named = (): Promise<string> =>
    page.evaluate(() => {
      const on = document.activeElement as HTMLElement;
      return on.getAttribute("aria-label") ?? (on as HTMLInputElement).labels?.[0]?.textContent ?? on.textContent ?? "";
    });
  const tabTo = async (name: string): Promise<void> => {
    for (let count = 0; count < 80; count += 1) {
      if ((await named()).trim() === name) return;
      await page.keyboard.press("Tab");
    }
    throw new Error(`Tab does not lead to ${name}.`);
  };
  await page.keyboard.press("4");
  await view(page).getByRole("heading", { level: 2 }).first().waitFor();
  await tabTo("Barrel vault");
  await page.keyboard.press("Enter");
  await tabTo("change what holds Strike the wedges");
  await page.keyboard.press("Enter");
  await tabTo("Clear span");
  await page.keyboard.press("Control+A");
  await page.keyboard.type("21 ft");
  await expect.poll(() => words(row(page, "Strike the wedges"))).toContain("clear span of 21 ft");
});

test("on a phone what comes off stands before the fields, and what one touches is 44 px high", async () => {
  const page = await cure("Barrel vault", { viewport: phone });
  const top = async (of: Locator): Promise<number> => (await of.boundingBox())?.y ?? Number.NaN;
  expect(await top(row(page, "Strike the wedges"))).toBeLessThan(await top(page.getByLabel("Tested on")));
  await page.getByRole("button", { name: "change what holds Strike the wedges" }).click();
  await page.getByRole("button", { name: "change how it is kept wet and warm" }).click();
  const low = await page.evaluate(() =>
    [...document.querySelectorAll("button, select, summary, input:not([type=checkbox]), label:has(input)")]
      .filter((element) => element.checkVisibility() && element.getBoundingClientRect().height < 43.5)
      .map((element) => element.outerHTML),
  );
  expect(low).toEqual([]);
});

test("the drawing follows the width of the page, wider and narrower", async () => {
  const page = await cure("Barrel vault");
  const width = async (): Promise<number> => (await view(page).locator("svg").first().boundingBox())?.width ?? Number.NaN;
  const wide = await width();
  await page.setViewportSize({ width: 320, height: 844 });
  await expect.poll(width).toBeLessThanOrEqual(320);
  await page.setViewportSize({ width: 1440, height: 900 });
  await expect.poll(width).toBe(wide);
});

test("an empty view leads to Forms", async () => {
  const page = await app.start();
  await page.getByLabel("What is it called?").fill("Shed");
  await page.getByRole("button", { name: "begin" }).click();
  await page.getByText("Nothing to do yet.").waitFor();
  await page.keyboard.press("4");
  await page.getByText("When may forms come off?").waitFor();
  await page.getByRole("button", { name: "write down a pour in Forms" }).click();
  await page.getByText("What is poured, and does its form hold?").waitFor();
});

test("a step with no more than a strength is told, and leads to Forms", async () => {
  const page = await app.start();
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), page.getByRole("button", { name: /file/ }).first().click()]);
  await chooser.setFiles(join(import.meta.dirname, "../fixtures/cases/shores-deck-slab.json"));
  await page.getByText(/^Finishe[sd] /).waitFor();
  await page.keyboard.press("4");
  const bare = page.getByRole("region", { name: "Only a strength is written of" });
  expect(await words(bare)).toMatch(/psi is asked of it/);
  await bare.getByRole("button", { name: /^write down what .* pours$/ }).click();
  await page.getByText("What is poured, and does its form hold?").waitFor();
});
