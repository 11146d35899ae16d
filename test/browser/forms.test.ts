import { expect, test } from "vitest";
import { headline, phone, saved, tank, undoButton, wall, withBrowser, words, written } from "./app";

const app = withBrowser();

test("a new build says at each field what is wrong, keeps what was typed, and begins once all is right", async () => {
  const page = await app.start();
  await page.getByLabel("Hands at weekends").fill("two");
  await page.getByLabel("Latitude, degrees north").fill("north");
  await page.getByRole("button", { name: "begin" }).click();
  for (const sentence of [
    "Write what it is called, like Garden wall.",
    "“two” is not a number of hands; write a whole number from 1 to 50, like 2.",
    "Latitude: write a number from −90 to 90, like 51.5.",
  ])
    await page.getByText(sentence).waitFor();
  expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).labels?.[0]?.textContent)).toBe("What is it called?");
  await page.getByLabel("What is it called?").fill("Shed");
  await page.getByLabel("Hands at weekends").fill("3");
  await page.getByLabel("Latitude, degrees north").fill("51,5");
  await page.getByRole("button", { name: "begin" }).click();
  await page.getByText("Nothing to do yet.").waitFor();
});

test("hands that are no number are told so in the field's own words", async () => {
  const page = await app.example(wall);
  const sheet = await written(page, "Tie the wall steel");
  await page.getByLabel("Hands", { exact: true }).fill("many");
  await sheet.getByText("“many” is not a number of hands; write 2, or 1 hose, 4 hands.").waitFor();
});

test("a piece taken down by a step changes nothing until the step is chosen, and its own step is not offered", async () => {
  const page = await app.example(wall);
  const before = await headline(page);
  const sheet = await written(page, "Stand and brace the back face");
  await page.getByLabel("or a new piece: What does it put up?").fill("Rail");
  await page.keyboard.press("Enter");
  await sheet.getByRole("button", { name: "Rail", exact: true }).click();
  await page.getByRole("heading", { name: "Rail" }).waitFor();
  await page.getByLabel("how it comes off").selectOption({ label: "A step takes it down" });
  expect(await headline(page)).toBe(before);
  const step = page.getByLabel("Which step takes it down?");
  expect(await step.locator("option").allInnerTexts()).not.toContain("Stand and brace the back face");
  await step.selectOption({ label: "Gravel, fleece and soil" });
  await saved(page);
  expect(await page.getByLabel("how it comes off").inputValue()).toBe("taken");
  expect(await headline(page)).toMatch(/^Finish/);
});

test("a wait is added, given an amount by a pour's name, and taken out", async () => {
  const page = await app.example(wall);
  const before = await headline(page);
  const sheet = await written(page, "Gravel, fleece and soil");
  await page.getByLabel("One more wait before it").selectOption({ label: "Dig the footing trench" });
  const wait = sheet.getByRole("group", { name: "Wait after Dig the footing trench" });
  await wait.getByLabel("At least", { exact: true }).fill("90 d");
  await expect.poll(() => headline(page)).not.toBe(before);
  await wait.getByLabel("At least", { exact: true }).fill("70 % of the roof");
  await wait.getByText("No pour and no calendar is called “the roof”; choose one from the list.").waitFor();
  await wait.getByLabel("At least", { exact: true }).fill("70 % of Mix and place the wall");
  await page.getByLabel("Name", { exact: true }).click();
  await expect.poll(() => wait.getByLabel("At least", { exact: true }).inputValue()).toBe("70 %");
  expect(await words(wait.getByLabel("At least: of what").locator("option:checked"))).toBe("of Mix and place the wall");
  await wait.getByRole("button", { name: "take out this wait" }).click();
  await wait.waitFor({ state: "detached" });
  await expect.poll(() => headline(page)).toBe(before);
});

test("undo by key: a date goes back at once, typed text first in its own field, and elsewhere the last change", async () => {
  const page = await app.example(wall);
  await written(page, "Gravel, fleece and soil");
  const date = page.getByLabel("Not before", { exact: true });
  await date.fill("2027-09-04");
  await expect.poll(() => headline(page)).toMatch(/Sep|Oct/);
  await date.focus();
  await page.keyboard.press("Control+z");
  await expect.poll(() => date.inputValue()).toBe("");
  const notes = page.getByLabel("Notes", { exact: true });
  await notes.click();
  await page.keyboard.type("mind");
  await page.keyboard.press("Control+z");
  await expect.poll(() => notes.inputValue()).not.toBe("mind");
  await notes.fill("left");
  await date.focus();
  await notes.focus();
  await page.keyboard.press("Control+z");
  await expect.poll(() => notes.inputValue()).not.toBe("left");
});

test("a plan that is kept is what later changes are compared with, after a reload too; undo takes it away again", async () => {
  const page = await app.example(wall);
  await page.getByRole("button", { name: "keep this plan" }).click();
  await written(page, "Stand and brace the back face");
  await page.getByLabel("Work", { exact: true }).fill("14 h");
  const moved = page.getByRole("region", { name: "what moved" });
  await expect.poll(() => words(moved)).toMatch(/site days? later than the plan kept on /);
  await saved(page);
  await page.reload();
  await page.getByRole("button", { name: wall }).click();
  const dialog = page.getByRole("dialog", { name: "The build" });
  // Its plan is made anew after the reload.
  await expect.poll(() => words(dialog)).toMatch(/site days? later than the plan kept on /);
  await page.keyboard.press("Escape");
  await undoButton(page).click();
  await undoButton(page).click();
  await page.getByRole("button", { name: wall }).click();
  await dialog.waitFor();
  expect(await words(dialog)).not.toMatch(/the plan kept/);
});

test("what moved is capped in height and scrolls inside, and on a tablet the strip is one row", async () => {
  const page = await app.example(wall, { viewport: { width: 768, height: 600 } });
  expect((await page.locator("header").boundingBox())?.height).toBeLessThan(60);
  await page.getByRole("button", { name: "Steps", exact: true }).click();
  await page.locator(".row", { hasText: "Dig the footing trench" }).click();
  await page.getByRole("button", { name: "As written" }).click();
  await page.getByLabel("Work", { exact: true }).fill("40 h");
  const moved = page.getByRole("complementary").getByRole("region", { name: "what moved" });
  await moved.getByRole("button", { name: /more$/ }).click();
  expect((await moved.boundingBox())?.height).toBeLessThan(0.45 * 600);
  const small = await app.example(wall, { viewport: phone });
  expect((await small.locator("header").boundingBox())?.height).toBeLessThan(120);
});

test("a delivery promised for before the build begins is told at its field; in Dates the sheet's own field is the only one", async () => {
  const page = await app.example(wall);
  await page.keyboard.press("2");
  const flag = page.getByRole("button", { name: /, delivery, / }).first();
  await flag.focus();
  await page.keyboard.press("Enter");
  const sheet = page.getByRole("complementary");
  expect(await page.locator('input[type="date"]').count()).toBe(1);
  await page.keyboard.press("1");
  await sheet.getByLabel("Promised for").fill("2027-01-09");
  await sheet.getByText(/lies before the build begins on /).waitFor();
  await sheet.getByLabel("Promised for").focus();
  await page.keyboard.press("Control+z");
  await expect.poll(() => sheet.getByText(/lies before the build begins on /).count()).toBe(0);
});

test("Dates with nothing to show leads to what is wrong in Order", async () => {
  const page = await app.example(tank);
  await page.keyboard.press("2");
  await page.getByRole("button", { name: "see in Order what is wrong" }).click();
  await page.locator(".blocked").waitFor();
});
