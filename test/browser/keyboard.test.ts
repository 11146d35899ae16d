import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { headline, wall, withBrowser } from "./app";

const app = withBrowser();

const focused = (page: Page): Promise<string> =>
  page.evaluate(() => document.activeElement?.getAttribute("aria-label") ?? document.activeElement?.textContent?.trim() ?? "");

/** Presses Tab until what has the focus is called so. */
async function tabTo(page: Page, name: string | RegExp, key = "Tab"): Promise<void> {
  for (let presses = 0; presses < 200; presses += 1) {
    await page.keyboard.press(key);
    const now = await focused(page);
    if (typeof name === "string" ? now === name : name.test(now)) return;
  }
  throw new Error(`no way by ${key} to ${name}`);
}

test("from the start page to a changed step and back, without a mouse", async () => {
  const page = await app.start();
  await tabTo(page, wall);
  await page.keyboard.press("Enter");
  await page.locator(".closing").first().waitFor();
  const before = await headline(page);
  await tabTo(page, "Steps");
  await page.keyboard.press("Enter");
  await tabTo(page, /Stand and brace the back face/);
  await page.keyboard.press("Enter");
  await tabTo(page, "As written");
  await page.keyboard.press("Space");
  await tabTo(page, "");
  while ((await page.evaluate(() => (document.activeElement as HTMLInputElement | null)?.labels?.[0]?.textContent)) !== "Work")
    await page.keyboard.press("Tab");
  await page.keyboard.press("Control+A");
  await page.keyboard.type("30 h");
  await expect.poll(() => headline(page)).not.toBe(before);
  await page.keyboard.press("Escape");
  await page.getByRole("heading", { name: "What sets the finish" }).waitFor();
  await page.keyboard.press("Control+z");
  await expect.poll(() => headline(page)).toBe(before);
  await page.keyboard.press("Control+Shift+z");
  await expect.poll(() => headline(page)).not.toBe(before);
});

test("1 and 2 change the view only while no field has the focus, and can be switched off", async () => {
  const page = await app.example(wall);
  await page.keyboard.press("2");
  await page.getByRole("region", { name: "Dates", exact: true }).waitFor();
  await page.keyboard.press("1");
  await page.getByRole("button", { name: "Steps", exact: true }).click();
  await page.getByLabel("A new step").click();
  await page.keyboard.type("2 sleeves?");
  expect(await page.getByLabel("A new step").inputValue()).toBe("2 sleeves?");
  await page.getByLabel("A new step").blur();
  await page.keyboard.press("?");
  const dialog = page.getByRole("dialog", { name: "Keys" });
  await dialog.getByRole("checkbox").uncheck();
  await page.keyboard.press("Escape");
  await dialog.waitFor({ state: "hidden" });
  await page.keyboard.press("2");
  expect(await page.getByRole("button", { name: "Order", exact: true }).getAttribute("aria-current")).toBe("page");
});

test("on a phone the sheet takes the focus, and closing it gives it back", async () => {
  const page = await app.example(wall, { viewport: { width: 390, height: 844 } });
  const step = page.getByRole("button", { name: "Footing steel on spacers" });
  await step.focus();
  await page.keyboard.press("Enter");
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("sheet-title");
  expect(await focused(page)).toBe("Footing steel on spacers");
  await page.getByRole("complementary").getByRole("button", { name: "close" }).click();
  await expect.poll(() => page.evaluate(() => document.activeElement?.className)).toContain("word");
});

test("what is taken out from the sheet leaves the keyboard in the view", async () => {
  const page = await app.example(wall);
  await page.getByRole("button", { name: "Footing steel on spacers" }).click();
  const sheet = page.getByRole("complementary");
  await sheet.getByRole("button", { name: "As written" }).click();
  await sheet.getByRole("button", { name: /^take “Footing steel on spacers” out/ }).click();
  await sheet.getByRole("button", { name: "take it out all the same" }).click();
  await page.getByText(/^Footing steel on spacers is taken out/).waitFor();
  expect(await page.evaluate(() => document.activeElement?.id)).toBe("main");
});

test("the sheet's keys work while Dates is shown, whatever has the focus, but not while a field has it", async () => {
  const page = await app.example(wall);
  await page.keyboard.press("2");
  const whole = page.getByRole("button", { name: "whole build" });
  await whole.waitFor();
  await page.getByRole("button", { name: "keys" }).focus();
  await page.keyboard.press("w");
  await expect.poll(() => whole.getAttribute("aria-pressed")).toBe("true");
  await page.getByRole("slider").focus();
  await page.keyboard.press("w");
  expect(await whole.getAttribute("aria-pressed")).toBe("true");
  await page.keyboard.press("1");
  await page.getByRole("slider").blur();
  await page.keyboard.press("1");
  await page.locator(".closing").first().waitFor();
});
