import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { desk, headline, phone, undoButton, wall, withBrowser, written } from "./app";
import { expectClean } from "./clean";

const app = withBrowser();
const rows = (page: Page) => page.locator("[data-row]");
const bar = (page: Page) => page.getByRole("region", { name: "steps chosen" });
const notice = (page: Page, words: RegExp | string) => page.locator(".bar").filter({ hasText: words });

async function steps(viewport = desk): Promise<Page> {
  const page = await app.example(wall, { viewport, hasTouch: viewport === phone });
  await page.getByRole("button", { name: "Steps", exact: true }).click();
  await rows(page).first().waitFor();
  return page;
}

test("Ctrl, Shift and the arrow keys choose several; Escape chooses none", async () => {
  const page = await steps();
  await rows(page).nth(1).click();
  await rows(page)
    .nth(3)
    .click({ modifiers: ["Control"] });
  await bar(page).getByText("two steps chosen").waitFor();
  await rows(page)
    .nth(5)
    .click({ modifiers: ["Shift"] });
  await bar(page).getByText("three steps chosen").waitFor();
  await page.keyboard.press("Escape");
  await bar(page).waitFor({ state: "detached" });
  await rows(page).nth(2).focus();
  await page.keyboard.press("Shift+ArrowDown");
  await page.keyboard.press("Shift+ArrowDown");
  await bar(page).getByText("three steps chosen").waitFor();
  await page.keyboard.press("Control+a");
  await bar(page).getByText("16 steps chosen").or(bar(page).getByText("15 steps chosen")).waitFor();
});

test("on a phone by boxes: taken out with what goes along named first, and back in one undo", async () => {
  const page = await steps(phone);
  const before = await rows(page).count();
  await page.getByRole("button", { name: "choose several" }).tap();
  await page.getByLabel("choose Tie the wall steel").check();
  await rows(page).filter({ hasText: "Footing steel on spacers" }).tap();
  await bar(page).getByText("two steps chosen").waitFor();
  await bar(page).getByRole("button", { name: "take out ..." }).tap();
  await bar(page).getByRole("button", { name: "take them out" }).tap();
  await expect.poll(() => rows(page).count()).toBe(before - 2);
  expect(await page.evaluate(() => document.activeElement?.id)).toBe("main");
  await undoButton(page).tap();
  await expect.poll(() => rows(page).count()).toBe(before);
});

test("duplicated, split, and refused with a reason", async () => {
  const page = await steps();
  const before = await rows(page).count();
  await rows(page)
    .filter({ hasText: "Tie the wall steel" })
    .click({ modifiers: ["Control"] });
  await page.keyboard.press("Control+d");
  await notice(page, /put in\./).waitFor();
  await rows(page).filter({ hasText: "Tie the wall steel 2" }).waitFor();
  await bar(page).getByRole("button", { name: "split in two" }).click();
  await rows(page).filter({ hasText: "Tie the wall steel 2, second part" }).waitFor();
  expect(await rows(page).count()).toBe(before + 2);
  await undoButton(page).click();
  await undoButton(page).click();
  await expect.poll(() => rows(page).count()).toBe(before);
  await page.keyboard.press("Escape");
  await rows(page)
    .filter({ hasText: "Mix and place the footing" })
    .click({ modifiers: ["Control"] });
  await bar(page).getByRole("button", { name: "split in two" }).click();
  await bar(page).getByRole("alert").getByText("is a pour, placed in one go").waitFor();
});

test("several alike, then apart again", async () => {
  const page = await steps();
  const before = await rows(page).count();
  await rows(page)
    .filter({ hasText: "Three weep pipes" })
    .click({ modifiers: ["Control"] });
  await bar(page).getByRole("button", { name: "several alike ..." }).click();
  await bar(page).getByLabel("How many of them alike").fill("many");
  await bar(page).getByRole("button", { name: "make them alike" }).click();
  await bar(page).getByRole("alert").getByText("a whole number from 2 to 200").waitFor();
  expect(await bar(page).getByLabel("How many of them alike").inputValue()).toBe("many");
  await bar(page).getByLabel("How many of them alike").fill("3");
  await bar(page).getByRole("button", { name: "make them alike" }).click();
  await rows(page).filter({ hasText: "Three weep pipes (3)" }).waitFor();
  await rows(page)
    .filter({ hasText: "Three weep pipes (1)" })
    .click({ modifiers: ["Control"] });
  await bar(page).getByRole("button", { name: "take the group apart" }).click();
  await rows(page).filter({ hasText: "Three weep pipes 3" }).waitFor();
  expect(await rows(page).count()).toBe(before + 2);
});

test("copied here, pasted into another build; what the build has not is told by name; any other text does no harm", async () => {
  const page = await steps();
  await rows(page)
    .filter({ hasText: "Tie the wall steel" })
    .click({ modifiers: ["Control"] });
  const text = await page.evaluate(() => {
    const event = new ClipboardEvent("copy", { clipboardData: new DataTransfer(), bubbles: true, cancelable: true });
    document.body.dispatchEvent(event);
    return event.clipboardData?.getData("text/plain") ?? "";
  });
  expect(text).toContain('"batterboard-part": 1');
  const paste = (said: string) =>
    page.evaluate((said) => {
      const data = new DataTransfer();
      data.setData("text/plain", said);
      document.body.dispatchEvent(new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }));
    }, said);
  await paste("<script>alert(1)</script>");
  await notice(page, "is no part of a build").waitFor();
  await page.getByRole("button", { name: "open", exact: true }).click();
  await page
    .getByRole("button", { name: /Bank cellar/ })
    .first()
    .click();
  await page.getByText(/^Finishes /).waitFor();
  await page.locator("body").click({ position: { x: 700, y: 120 } });
  await paste(text);
  await notice(page, /put in\./).waitFor();
  await notice(page, "Left out, as this build has no such thing").waitFor();
  await rows(page).filter({ hasText: "Tie the wall steel" }).first().waitFor();
  expect(await page.evaluate(() => document.querySelectorAll("script:not([src])").length)).toBe(0);
});

test("/ finds anything by its name and shows it in the view one is in", async () => {
  const page = await steps();
  await page.keyboard.press("/");
  const dialog = page.getByRole("dialog", { name: "Find" });
  await dialog.getByRole("combobox").fill("front face of the form");
  await dialog.getByRole("option", { name: /Front face of the form/ }).waitFor();
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: "Front face of the form" }).waitFor();
  await page.getByRole("heading", { name: "Places" }).waitFor();
  await page.keyboard.press("2");
  await page.getByRole("region", { name: "Dates", exact: true }).waitFor();
  await page.keyboard.press("/");
  await dialog.getByRole("combobox").fill("zzzz");
  await dialog.getByText("Nothing is called so.").waitFor();
  await dialog.getByRole("combobox").fill("tie the wall");
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: "Tie the wall steel" }).waitFor();
  await page.getByRole("region", { name: "Dates", exact: true }).waitFor();
});

test("a new step's name offers what such a step usually has, for one tap and never by itself", async () => {
  const page = await steps();
  await page.getByLabel("A new step").fill("Photograph the wall steel");
  await page.getByText("A step like this usually is a photograph and must see “Wall steel”.").waitFor();
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: "Photograph the wall steel", exact: true }).waitFor();
  await page.getByRole("button", { name: "As written" }).click();
  expect(await page.getByLabel("Kind", { exact: true }).inputValue()).toBe("work");
  await page.getByLabel("A new step").fill("Photograph the wall steel again");
  await page.getByRole("button", { name: "add it with that" }).click();
  await page.getByRole("heading", { name: "Photograph the wall steel again" }).waitFor();
  expect(await page.getByLabel("Kind", { exact: true }).inputValue()).toBe("photograph");
});

test("what only some steps say stands in folds: nonsense gets its sentence beside it and stays typed", async () => {
  const page = await app.example(wall);
  const form = await written(page, "Tie the wall steel");
  await form.getByRole("button", { name: "Weather" }).click();
  await form.getByLabel("Not below").fill("cold");
  await form.getByText("is not a temperature; write it with its scale").waitFor();
  expect(await form.getByLabel("Not below").inputValue()).toBe("cold");
  await form.getByLabel("Not below").fill("40 °F");
  await form.getByRole("button", { name: /^Weather from 40 °F/ }).waitFor();
  await form.getByRole("button", { name: "Fixed to a day" }).click();
  const before = await headline(page);
  await form.getByLabel("It starts exactly on", { exact: true }).fill("2027-08-07");
  await expect.poll(() => headline(page)).not.toBe(before);
  await form.getByLabel("It starts exactly on: time of day").fill("25:00");
  await form.getByText("is not a time of day").waitFor();
  expect(await form.getByLabel("It starts exactly on: time of day").inputValue()).toBe("25:00");
});

test.each([
  ["a desk", desk, 13],
  ["a phone", phone, 16],
] as const)("the bar of what is chosen, find and every fold are clean on %s", async (_, viewport, least) => {
  const page = await steps(viewport);
  await page.getByRole("button", { name: "choose several" }).click();
  await page.getByLabel("choose Tie the wall steel").check();
  for (const name of ["several alike ...", "to a place ...", "take out ..."]) {
    await bar(page).getByRole("button", { name }).click();
    await expectClean(page, least, name);
  }
  await page.keyboard.press("Escape");
  await page.getByLabel("A new step").fill("Pour the planter");
  await expectClean(page, least, "what is usual");
  await page.getByLabel("A new step").fill("");
  await page.getByLabel("A new step").blur();
  await page.keyboard.press("/");
  await page.getByRole("combobox").fill("e");
  await page.getByRole("option").first().waitFor();
  await expectClean(page, least, "find");
  await page.keyboard.press("Escape");
  for (const [mode, name] of [
    ["Steps", "Tie the wall steel"],
    ["Pieces", "Front face of the form"],
    ["Pieces", "Planter"],
  ] as const) {
    await page.getByRole("button", { name: mode, exact: true }).click();
    await rows(page).filter({ hasText: name }).first().click();
    await page.getByRole("button", { name: "As written" }).click();
    const folded = page.locator(".fold > button[aria-expanded=false]");
    while ((await folded.count()) > 0) await folded.first().click();
    await expectClean(page, least, name);
    await page.getByRole("button", { name: "close", exact: true }).first().click();
  }
});
