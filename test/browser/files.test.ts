import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { headline, saved, wall, withBrowser, words } from "./app";

const app = withBrowser();

async function open(page: Page, name: string, text: string): Promise<void> {
  if (!(await page.getByRole("button", { name: "open a build file" }).isVisible())) {
    await page.getByRole("button", { name: "open", exact: true }).click();
  }
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), page.getByRole("button", { name: "open a build file" }).click()]);
  await chooser.setFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });
}

const wallText = readFileSync("src/examples/garden-wall.json", "utf8");

test.each([
  ["cut off", wallText.slice(0, 400), /Line \d+/],
  ["no build", '{ "name": "a shopping list" }', /batterboard/i],
  ["a step that works in sacks", wallText.replace(/"work": "[^"]*"/, '"work": "three sacks"'), /three sacks/],
  ["a date that is none", wallText.replace(/"start": "[^"]*"/, '"start": "2027-02-30"'), /2027-02-30|30 Feb/],
])("a file that is %s is refused in a sentence, and what was open stays", async (_what, text, says) => {
  const page = await app.example(wall);
  const before = await headline(page);
  await open(page, "broken.json", text);
  const notice = page.getByRole("alert");
  await notice.waitFor();
  expect(await words(notice)).toMatch(/broken\.json was not opened; what was open stays as it is\./);
  expect(await words(notice)).toMatch(says);
  expect(await notice.getByRole("button", { name: "save a file" }).count()).toBe(0);
  await page.getByRole("button", { name: `back to ${wall}` }).click();
  expect(await headline(page)).toBe(before);
  await page.reload();
  await expect.poll(() => headline(page)).toBe(before);
});

test("what is saved opens again byte for byte the same", async () => {
  const page = await app.example(wall);
  const save = async (): Promise<string> => {
    const [file] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "save a file" }).click()]);
    return readFileSync(await file.path(), "utf8");
  };
  const first = await save();
  await open(page, "wall.json", first);
  await page.locator(".closing").first().waitFor();
  expect(await save()).toBe(first);
});

test("a build file dropped on the page opens; something else dropped is refused in a sentence", async () => {
  const page = await app.start();
  const drop = (name: string, text: string): Promise<void> =>
    page.evaluate(
      ([name, text]) => {
        const dataTransfer = new DataTransfer();
        dataTransfer.items.add(new File([text ?? ""], name ?? ""));
        document.body.dispatchEvent(new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }));
      },
      [name, text],
    );
  await drop("holiday.jpg", "\u0089PNG");
  expect(await words(page.getByRole("alert"))).toMatch(/^holiday\.jpg was not opened/);
  await drop("wall.json", wallText);
  await page.locator(".closing").first().waitFor();
  await saved(page);
});

test("a file of a newer program opens to be looked at, and nothing in it is changed", async () => {
  const page = await app.start();
  await open(page, "newer.json", wallText.replace('"batterboard": 1', '"batterboard": 99'));
  await page.locator(".closing").first().waitFor();
  await page.getByRole("button", { name: "Steps", exact: true }).click();
  expect(await page.getByLabel("A new step").count()).toBe(0);
  await page.locator(".row").first().click();
  await page.getByRole("button", { name: "As written" }).click();
  expect(await page.getByLabel("Work", { exact: true }).isDisabled()).toBe(true);
});

test("a build of 5,000 steps opens, is planned in the worker, and stays answerable", async () => {
  const page = await app.start();
  const steps = Array.from({ length: 5000 }, (_, index) => ({
    id: `step-${index}`,
    name: `Step ${index}`,
    work: "1 h",
    ...(index % 10 === 0 ? {} : { after: [`step-${index - 1}`] }),
  }));
  const document = {
    ...JSON.parse(wallText),
    name: "Long",
    steps,
    pieces: [],
    waits: [],
    deliveries: [],
    bookings: [],
    groups: [],
    choices: [],
    pours: [],
    solids: [],
  };
  await open(page, "long.json", JSON.stringify(document));
  await page.locator(".headline .main", { hasText: /^Finish/ }).waitFor({ timeout: 60_000 });
  await saved(page);
  expect(await words(page.locator(".headline"))).toContain("5000 steps");
});
