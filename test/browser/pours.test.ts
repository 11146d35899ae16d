import { join } from "node:path";
import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { cellar, phone, saved, undoButton, wall, withBrowser, words } from "./app";

const app = withBrowser();

const forms = (page: Page): Locator => page.getByRole("region", { name: "Forms", exact: true });
const headline = (page: Page): Promise<string> => words(forms(page).locator(".main"));

/** The columns of the cellar's porch. */
async function columns(options = {}): Promise<Page> {
  const page = await app.example(cellar, options);
  await page.keyboard.press("3");
  const list = page.getByRole("button", { name: /^all pours and elements/ });
  await forms(page).getByRole("heading", { level: 2 }).first().waitFor();
  if (await list.isVisible()) await list.click();
  await page.getByRole("button", { name: /^Columns/ }).click();
  await forms(page).getByRole("heading", { name: "Columns", exact: true }).waitFor();
  return page;
}

const first = (text: string): number => Number(/(\d+) of 100/.exec(text)?.[1]);

test("the view alone says which part gives first and why, and how it is filled", async () => {
  const page = await columns();
  const said = await headline(page);
  expect(said).toMatch(/give first.*of 100 of what they may, in \w+/);
  expect(await words(forms(page).locator("article"))).toMatch(/From the hose it feels .* at its foot: full head/);
  // One member is marked as the one that gives first, in the list and in the drawing's table, with the same figure.
  const marked = forms(page).locator(".part", { hasText: "gives first" });
  expect(await marked.count()).toBe(1);
  expect(first(await words(marked))).toBe(first(said));
  await forms(page).getByText("the same as a table").click();
  expect(
    await forms(page)
      .getByRole("cell", { name: `${first(said)} of 100, gives first` })
      .count(),
  ).toBe(1);
});

test("a band more changes the figures at once and is one change to undo", async () => {
  const page = await columns();
  const before = await headline(page);
  await forms(page)
    .locator(".part", { hasText: /^Bands/ })
    .click();
  const bands = page.getByLabel(/^band \d+$/);
  const count = await bands.count();
  await page.getByRole("button", { name: "one more band", exact: true }).click();
  await expect.poll(() => bands.count()).toBe(count + 1);
  expect(first(await headline(page))).toBeLessThanOrEqual(first(before));
  await undoButton(page).click();
  await expect.poll(() => bands.count()).toBe(count);
  expect(await headline(page)).toBe(before);
});

test("a fix that is offered does what it says it does", async () => {
  const page = await columns();
  const fix = forms(page)
    .getByRole("button", { name: /^do it: / })
    .first();
  const promised = first((await fix.getAttribute("aria-label")) ?? "");
  await fix.click();
  await expect.poll(async () => first(await headline(page))).toBe(promised);
});

test("a held rate counts only as a written act with a name to it", async () => {
  const page = await columns();
  await page.getByRole("radio", { name: /^at a held rate/ }).check();
  await forms(page).getByText("Until somebody is named it does not count.").waitFor();
  const wanted = page.getByLabel("Kept by", { exact: true });
  await wanted.selectOption({ index: 1 });
  await forms(page).getByText("Until somebody is named it does not count.").waitFor({ state: "detached" });
  expect(await page.getByLabel("One pass").inputValue()).toBe("9 in");
  await page.getByRole("radio", { name: /full head/ }).check();
  expect(await page.getByLabel("One pass").count()).toBe(0);
});

test("what cannot be read is refused at its field and changes nothing", async () => {
  const page = await columns();
  const before = await headline(page);
  await page.getByRole("button", { name: "change dimensions" }).click();
  const high = page.getByLabel("High", { exact: true });
  await high.fill("tall");
  expect(await high.getAttribute("aria-invalid")).toBe("true");
  expect(await headline(page)).toBe(before);
  await high.fill("3 ft");
  expect(await high.getAttribute("aria-invalid")).toBe("true");
  await page.getByRole("button", { name: "done" }).click();
  expect(await headline(page)).toBe(before);
});

test("other units change the figures and nothing of the build", async () => {
  const page = await columns();
  const before = first(await headline(page));
  await page.getByRole("button", { name: "m", exact: true }).click();
  await forms(page)
    .getByText(/kPa at its foot/)
    .first()
    .waitFor();
  expect(first(await headline(page))).toBe(before);
  expect(await undoButton(page).isDisabled()).toBe(true);
});

test("from nothing: a pour, an element with a form, figures at once; undone as one", async () => {
  const page = await app.start({ viewport: phone });
  await page.getByLabel("What is it called?").fill("Shed");
  await page.getByRole("button", { name: "begin" }).click();
  await page.getByText("Nothing to do yet.").waitFor();
  await page.getByRole("button", { name: "Forms", exact: true }).click();
  await page.getByText("What is poured, and does its form hold?").waitFor();
  await page.getByLabel("and casts").selectOption({ label: "a wall" });
  await page.getByText("Write first what the pour is called, like Garden wall.").waitFor();
  await page.getByLabel("It is called").fill("Garden wall");
  await page.getByLabel("and casts").selectOption({ label: "a wall" });
  await expect.poll(() => headline(page)).toMatch(/first/);
  await page.getByRole("button", { name: "Order", exact: true }).click();
  await page.getByRole("button", { name: "Steps", exact: true }).click();
  await page.locator(".row", { hasText: "Garden wall" }).waitFor();
  await undoButton(page).click();
  await page.getByRole("button", { name: "Forms", exact: true }).click();
  await page.getByText("What is poured, and does its form hold?").waitFor();
});

test.each(["a column", "a pier", "a footing", "a slab on the ground", "a slab on a deck", "a barrel vault", "a stair"])(
  "%s begins with a form that has figures",
  async (kind) => {
    const page = await columns();
    await page.getByLabel("One more element in this pour").selectOption({ label: kind });
    await expect.poll(() => headline(page)).toMatch(/of 100|cast without/);
    await forms(page).locator("svg").first().waitFor();
  },
);

test("a step that pours with nothing said of it offers to write it down", async () => {
  const page = await app.start();
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), page.getByRole("button", { name: /file/ }).first().click()]);
  await chooser.setFiles(join(import.meta.dirname, "../fixtures/cases/cold-joint.json"));
  await page.getByText(/^Finishe[sd] /).waitFor();
  await page.keyboard.press("3");
  await page.getByText("What is poured, and does its form hold?").waitFor();
  const offer = page.locator("select", { hasText: "write down what is poured" }).first();
  await offer.selectOption({ label: "a wall" });
  await expect.poll(() => headline(page)).toMatch(/of 100/);
  await saved(page);
});

test("by keyboard: from the list to an element, to its bands and to a height", async () => {
  const page = await columns();
  const part = forms(page).locator(".part", { hasText: /^Bands/ });
  await part.focus();
  await page.keyboard.press("Enter");
  await page.keyboard.press("Tab");
  expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).labels?.[0]?.textContent)).toBe("band 1");
  await page.keyboard.press("Control+A");
  await page.keyboard.type("5 in");
  await expect.poll(() => forms(page).getByText("5 in", { exact: true }).count()).toBeGreaterThan(0);
});

test("what one touches on a phone is 44 px high, with fields open", async () => {
  const page = await columns({ viewport: phone });
  const low = (): Promise<readonly unknown[]> =>
    page.evaluate(() =>
      [...document.querySelectorAll("button, select, summary, input:not([type=checkbox], [type=radio]), label:has(input)")]
        .filter((element) => element.checkVisibility() && element.getBoundingClientRect().height < 43.5)
        .map((element) => element.outerHTML),
    );
  await forms(page)
    .locator(".part", { hasText: /^Bands/ })
    .click();
  await page.getByRole("button", { name: "change dimensions" }).click();
  expect(await low()).toEqual([]);
});

test("bars are read with what is computed of them, changed, added and taken out", async () => {
  const page = await columns();
  await forms(page).locator("summary", { hasText: /^Bars/ }).click();
  await forms(page).getByText("Upright: 4 of number 5, 8 ft 6 in long.").waitFor();
  // 34 ft at 1.043 lb/ft (ASTM A615).
  await forms(page).getByText("Together they weigh 35 lb.").waitFor();
  await page.getByRole("button", { name: "change these bars" }).first().click();
  const cover = page.getByLabel("Cover", { exact: true });
  await cover.fill("thick");
  expect(await cover.getAttribute("aria-invalid")).toBe("true");
  await cover.fill("1/2 in");
  await forms(page).getByText("Cover 1/2 in, of at least 1 1/2 in there (ACI 318).").waitFor();
  await forms(page).getByText("of cover is less than the").first().waitFor();
  await page.getByLabel("Bar size", { exact: true }).selectOption({ label: "number 6" });
  await forms(page).getByText("Upright: 4 of number 6, 8 ft 6 in long.").waitFor();
  await page.getByRole("button", { name: "done" }).click();
  await page.getByRole("button", { name: "add bars" }).click();
  await forms(page)
    .getByText(/^Set 3: 4 of number 4, 8 ft long\./)
    .waitFor();
  await undoButton(page).click();
  await forms(page)
    .getByText(/^Set 3: /)
    .waitFor({ state: "detached" });
});

test("a face may stand against earth and stay visible or not", async () => {
  const page = await columns();
  await page.getByRole("button", { name: /^Back wall/ }).click();
  await page.getByRole("button", { name: "change dimensions" }).click();
  const first = page.getByLabel("First face", { exact: true });
  expect(await first.inputValue()).toBe("earth");
  const second = page.getByLabel("Second face: stays visible");
  expect(await second.isChecked()).toBe(true);
  await second.uncheck();
  expect(await second.isChecked()).toBe(false);
  await first.selectOption({ label: "a form" });
  await forms(page).getByText("One side only: ").waitFor({ state: "detached" });
  await undoButton(page).click();
  await forms(page).getByText("One side only: ").first().waitFor();
  expect(await first.inputValue()).toBe("earth");
});

test("hose, wires, truck and where it is washed out are said where the day is told", async () => {
  const page = await columns();
  await page.getByRole("button", { name: "change hose, wires and truck" }).click();
  await page.getByLabel("It has to reach", { exact: true }).fill("180 ft");
  await forms(page).getByText("The hose reaches 150 ft, and 180 ft is needed; ask for more hose or a longer boom.").waitFor();
  const wires = page.getByLabel("Wires hang above at", { exact: true });
  await wires.fill("24 ft");
  await forms(page).getByText("wires hang at 24 ft").first().waitFor();
  await page.getByLabel("somebody looked: no wires hang there").check();
  await forms(page)
    .getByText(/no wires hang there, a truck weighs/)
    .waitFor();
  expect(await wires.count()).toBe(0);
  await page.getByLabel("somebody looked: no wires hang there").uncheck();
  expect(await wires.inputValue()).toBe("");
  const slope = page.getByLabel("Its way slopes, %", { exact: true });
  await slope.fill("200");
  expect(await slope.getAttribute("aria-invalid")).toBe("true");
  expect(await slope.inputValue()).toBe("200");
});

test("a build whose forms all hold shows first one that has a form, and what gives first of it", async () => {
  const page = await app.example(wall);
  await page.keyboard.press("3");
  await expect.poll(() => headline(page)).toMatch(/gives? first: .*of 100 of what (it|they) may, in \w+/);
});
