import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { desk, undoButton, withBrowser, words, written } from "./app";
import { Hand } from "./newcomer";

const app = withBrowser();
const autumn = "2026-11-26T12:00:00Z";
const side = (page: Page) => page.locator("form .side");
const verdict = (page: Page) => page.locator('[data-verdict="yes"]');

async function withFooting(today?: string): Promise<{ page: Page; hand: Hand }> {
  const page = await app.start({ viewport: desk }, today);
  const hand = new Hand(page);
  await hand.press("Footing");
  await hand.putIn();
  return { page, hand };
}

test("what is to order and whom to ask stands by name, with no bare count before it", async () => {
  const { page } = await withFooting();
  const line = (what: string) => page.locator("dl > div").filter({ has: page.getByRole("term").filter({ hasText: what }) });
  expect(await words(line("to order"))).toMatch(/^to order\s+Bars for Footing A, cut and bent\s+Concrete for Footing A$/);
  expect(await words(line("hold points"))).toMatch(
    /^hold points\s+Photograph bars of Footing A with a tape\s+Inspection of bars of Footing A$/,
  );
  expect(await words(line("work"))).toMatch(/8 steps, \d+ hours of work$/);
});

test("a part laid into another is remarked beside its picture, and no more once it lies elsewhere", async () => {
  const { page, hand } = await withFooting();
  await hand.press("all kits and parts");
  await hand.press("Pier in the ground");
  const said = side(page).getByText("“Pier A” and “Footing A” are in the same place");
  await said.waitFor();
  await hand.type("Middle of the first one, to the right of the datum", "40 ft");
  await said.waitFor({ state: "detached" });
});

test("the cold is told by the month in which concrete is placed, and no more once temperatures are written", async () => {
  const { page, hand } = await withFooting(autumn);
  await side(page).getByText("Concrete is placed in December, and no temperatures of the site are written down").waitFor();
  await hand.press("back to Order");
  await hand.press(/things not known yet/);
  const remark = page.getByRole("main").getByText("Concrete is placed in December");
  await remark.waitFor();
  await hand.press("Site");
  await page.getByRole("button", { name: /^Temperatures/ }).click();
  const fields = page.getByLabel(/^\w+, (low|high)$/);
  expect(await fields.count()).toBe(24);
  for (let at = 0; at < 24; at += 1) await fields.nth(at).fill(at % 2 === 0 ? "41 °F" : "58 °F");
  await page.getByRole("button", { name: "take all twelve months out" }).waitFor();
  await hand.press("Order");
  await hand.press(/things not known yet/);
  await page.getByRole("heading", { name: "Not known yet" }).waitFor();
  expect(await remark.count()).toBe(0);
});

test("what would hang is told before a part is taken out, then in Order, and is gone when that is undone", async () => {
  const { page, hand } = await withFooting();
  await hand.press("Column");
  await hand.putIn();
  await hand.press("all kits and parts");
  await hand.press("Footing A");
  await hand.press("take Footing A out of the build");
  const hangs = page.getByText("“Column A” stands on or leans on something that is not in the build any more");
  await hangs.waitFor();
  await hand.press("take it out");
  await hand.press("back to Order");
  await hangs.first().waitFor();
  await undoButton(page).click();
  await hangs.first().waitFor({ state: "detached" });
});

test("a new part says which finish it leads to instead of the one there is, and refused answers are named", async () => {
  const { page, hand } = await withFooting();
  await hand.press("Column");
  await page.getByText(/^An order was found\. It finishes .+ instead of .+ \d{4}\./).waitFor();
  await hand.type("Long", "far");
  await hand.type("Wide", "");
  await page.getByText("Two answers above cannot be taken yet: Long, Wide.").waitFor();
});

test("one copy of several is named where a step is written: its place, and what it gets at", async () => {
  const { page, hand } = await withFooting();
  await hand.press("Column");
  await hand.putIn();
  await hand.press("back to Order");
  const sheet = await written(page, "Stand three faces of Column A (1)");
  const chosen = await sheet
    .locator("select")
    .evaluateAll((all) => all.map((one) => (one as HTMLSelectElement).selectedOptions[0]?.textContent));
  expect(chosen).toEqual(expect.arrayContaining(["Hole over Footing A (1)", "Hole over Footing A (2)"]));
  expect(chosen).not.toContain(undefined);
});

test("on a tablet short answers stand two in a row, long ones and choices have a row of their own", async () => {
  const page = await app.start({ viewport: { width: 768, height: 1024 } });
  await new Hand(page).press("Footing");
  await verdict(page).waitFor();
  const box = async (label: string) => (await page.getByLabel(label, { exact: true }).boundingBox())!;
  const [wide, thick, name] = [await box("Wide"), await box("Thick"), await box("What you call it")];
  expect(Math.abs(wide.y - thick.y)).toBeLessThan(2);
  expect(wide.x + wide.width).toBeLessThan(thick.x);
  expect(name.width).toBeGreaterThan(2 * wide.width);
});

test("what is not known about the cold leads to where temperatures are written", async () => {
  const { page, hand } = await withFooting(autumn);
  await hand.press("back to Order");
  await hand.press(/not known yet/);
  await hand.press("write them now");
  await page.getByText("Usual temperatures of the months").waitFor();
  expect(await words(page.locator("header [aria-current=page]"))).toBe("Site");
});
