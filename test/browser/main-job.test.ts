import { expect, test } from "vitest";
import { cellar, headline, phone, saved, wall, withBrowser, words, written } from "./app";

const app = withBrowser();

test("the example opens as the closings in date order, each with what must come before it", async () => {
  const page = await app.example(wall);
  const months = await page.locator(".month").allInnerTexts();
  expect(months).toEqual(["April 2027", "May 2027"]);
  const footing = page.locator(".closing").first();
  expect(await words(footing.locator(".day"))).toBe("Sat 17 Apr");
  const text = await words(footing);
  for (const words of ["Footing", "for good", "Footing steel on spacers", "photographed", "Photograph steel and depth"])
    expect(text).toContain(words);
});

test("a step says why it is where it is, in sentences without ids or codes", async () => {
  const page = await app.example(wall);
  await page.getByRole("button", { name: "Seal joints at the foot" }).first().click();
  const sheet = page.getByRole("complementary");
  await sheet.getByRole("heading", { name: "Seal joints at the foot" }).waitFor();
  const text = await words(sheet);
  for (const head of ["Last chance for it", "Why not earlier", "Why after these", "Why before these", "Slack", "Try"])
    expect(text).toContain(head);
  expect(text).toMatch(/Front face of the form closes/i);
  expect(text).not.toMatch(/undefined|null|\[object|[a-z]+\.[a-z]+-[a-z]+|[a-z]+-[a-z]+-[a-z]+-/);
});

test("work typed longer moves the finish as it is typed, the sentence says by how much, and undo brings all of it back", async () => {
  const page = await app.example(wall);
  const before = await headline(page);
  await written(page, "Stand and brace the back face");
  const work = page.getByLabel("Work", { exact: true });
  const asWas = await work.inputValue();
  await work.fill("30 h");
  await expect.poll(() => headline(page)).not.toBe(before);
  expect(await words(page.getByRole("region", { name: "what moved" }))).toMatch(/site days? lost/);
  await page.locator("header").getByRole("button", { name: "undo" }).click();
  await expect.poll(() => headline(page)).toBe(before);
  expect(await work.inputValue()).toBe(asWas);
  expect(await page.locator("header").getByRole("button", { name: "undo" }).isDisabled()).toBe(true);
});

test("what cannot be read stays in its field with a sentence beside it, and the plan stays", async () => {
  const page = await app.example(wall);
  const before = await headline(page);
  await written(page, "Tie the wall steel");
  const work = page.getByLabel("Work", { exact: true });
  await work.fill("three sacks");
  const fault = page.getByRole("complementary").getByRole("alert");
  expect(await words(fault)).toMatch(/three sacks/);
  await page.getByLabel("Name", { exact: true }).click();
  expect(await work.inputValue()).toBe("three sacks");
  expect(await work.getAttribute("aria-invalid")).toBe("true");
  expect(await headline(page)).toBe(before);
  await work.fill("3 h");
  await fault.waitFor({ state: "detached" });
});

test("trying one step before another answers at once, with the reasons that forbid it", async () => {
  const page = await app.example(wall);
  await page.getByRole("button", { name: "try X before Y" }).click();
  await page.getByLabel("Try", { exact: true }).selectOption({ label: "Front face and ties" });
  await page.getByLabel("before", { exact: true }).selectOption({ label: "Tie the wall steel" });
  const verdict = page.locator("[data-verdict]");
  await verdict.waitFor();
  expect(await words(verdict)).toMatch(/^(No|Yes)\. “Front face and ties” can/);
  await page.getByLabel("Try", { exact: true }).selectOption({ label: "Mix and place the wall" });
  await page.locator('[data-verdict="no"]').waitFor();
  expect(await page.getByText("These cannot all hold together").count()).toBe(1);
});

test("the drawing shows every step and arrow keys walk it", async () => {
  const page = await app.example(wall);
  await page.getByRole("button", { name: "Drawing" }).click();
  const drawing = page.getByRole("application");
  await drawing.waitFor();
  expect(await drawing.getAttribute("aria-label")).toMatch(/^Steps in order, 16/);
  await drawing.focus();
  await page.keyboard.press("Home");
  const first = await words(page.locator("#sheet-title"));
  await page.keyboard.press("ArrowRight");
  await expect.poll(() => words(page.locator("#sheet-title"))).not.toBe(first);
});

test("from nothing, the first step typed shows at once and a second one follows it", async () => {
  const page = await app.start();
  await page.getByLabel("What is it called?").fill("Trial block");
  await page.getByLabel("What is the first thing to do?").fill("Build a small form");
  await page.getByRole("button", { name: "begin" }).click();
  await page.locator(".row", { hasText: "Build a small form" }).waitFor();
  expect(await headline(page)).toMatch(/^Finishe[sd] Sat/);
  await page.getByLabel("A new step").fill("Cast the block");
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: "Cast the block" }).waitFor();
  await page.getByRole("button", { name: "As written" }).click();
  await page.getByLabel("add: After which steps, whatever else holds?").selectOption({ label: "Build a small form" });
  await page.getByRole("button", { name: "Why", exact: true }).click();
  expect(await words(page.getByRole("complementary"))).toContain("Build a small form");
  await saved(page);
});

test("a step that puts up the first piece opens to be written, and leaves one in the list where one types", async () => {
  const page = await app.start({ viewport: phone, hasTouch: true });
  await page.getByLabel("What is it called?").fill("Shed");
  await page.keyboard.press("Enter");
  await page.getByLabel("A new step").fill("Pour the slab");
  await page.getByRole("button", { name: "add it with that" }).click();
  const sheet = page.getByRole("complementary");
  await sheet.getByLabel("Work", { exact: true }).waitFor();
  await sheet.getByRole("button", { name: "Why", exact: true }).click();
  await sheet.getByText("Why not earlier").waitFor();
  await sheet.getByRole("button", { name: "close" }).click();
  await page.getByLabel("A new step").waitFor();
  expect(await page.locator(".row", { hasText: "Pour the slab" }).count()).toBe(1);
});

test("units switch in place and change nothing in the document", async () => {
  const page = await app.example(wall);
  const units = page.getByRole("group", { name: "Units" });
  await units.getByRole("button", { name: "ft·in" }).click();
  expect(await units.getByRole("button", { name: "ft·in" }).getAttribute("aria-pressed")).toBe("true");
  expect(await page.locator("header").getByRole("button", { name: "undo" }).isDisabled()).toBe(true);
});

test("an order that is possible can be kept, and is then a link that undo takes away", async () => {
  const page = await app.example(wall);
  await page.getByRole("button", { name: "try X before Y" }).click();
  await page.getByLabel("Try", { exact: true }).selectOption({ label: "Tie the wall steel" });
  await page.getByLabel("before", { exact: true }).selectOption({ label: "Dig the footing trench" });
  await page.locator('[data-verdict="no"]').waitFor();
  await page.getByLabel("Try", { exact: true }).selectOption({ label: "Seal joints at the foot" });
  await page.getByLabel("before", { exact: true }).selectOption({ label: "Three weep pipes" });
  const verdict = page.locator('[data-verdict="yes"]');
  await verdict.waitFor();
  expect(await words(verdict)).toMatch(/^Yes\. .* (the finish stays|later: finished|earlier: finished) /);
  await page.getByRole("button", { name: "keep it like that" }).click();
  await page.locator('[data-verdict="already"]').waitFor();
  await page.locator("header").getByRole("button", { name: "undo" }).click();
  await verdict.waitFor();
});

test("a delivery three days late costs nothing and says so; two weeks late costs site days, and is not written down until asked", async () => {
  const page = await app.example(cellar);
  const before = await headline(page);
  await written(page, "Tie the vault steel");
  const needs = page.getByRole("group", { name: "Which deliveries must be there?" });
  await needs.getByRole("button").first().click();
  const sheet = page.getByRole("complementary");
  await sheet.getByRole("button", { name: "3 days later" }).click();
  await expect.poll(() => words(sheet)).toMatch(/costs nothing/);
  await sheet.getByRole("button", { name: "two weeks later" }).click();
  await expect.poll(() => words(sheet)).toMatch(/site days? lost/);
  expect(await headline(page)).toBe(before);
  await sheet.getByRole("button", { name: "write it down like that" }).click();
  await expect.poll(() => headline(page)).not.toBe(before);
});
