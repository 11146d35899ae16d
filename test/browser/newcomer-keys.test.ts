import { expect, test } from "vitest";
import { headline, saved, withBrowser, words } from "./app";
import { documentOf, Keyboard } from "./newcomer";

const app = withBrowser();

test("from an empty app to a slab with a roof on it by keys alone, with its order, dates and pour sheets", async () => {
  const page = await app.start();
  const keys = new Keyboard(page);
  await page.getByRole("button", { name: "Footing", exact: true }).waitFor();
  await keys.press("Footing");
  await page.getByRole("heading", { name: "Footing", exact: true }).waitFor();
  // Each page begins at its heading: what comes next is one Tab away from what was done.
  await expect.poll(() => keys.focused()).toBe("Footing");
  await keys.type("What the ground carries there, and who says so", "1500 psf, soil report");
  await keys.putIn();
  await keys.press("Column");
  await page.getByRole("heading", { name: "Column", exact: true }).waitFor();
  await keys.putIn();
  await keys.press(/^Slab on a (timber )?deck/);
  await page.getByRole("heading", { name: /^Slab on/ }).waitFor();
  await keys.type("Thick", "7 in");
  await keys.putIn();
  await keys.press("Small roof on posts");
  await page.getByRole("heading", { name: "Small roof on posts" }).waitFor();
  await keys.putIn();

  await keys.press("see it on the sheet");
  await page.getByRole("region", { name: "Dates", exact: true }).waitFor();
  await page.keyboard.press("Escape");
  await page.keyboard.press("3");
  await page.getByRole("region", { name: "Forms", exact: true }).getByRole("heading", { level: 2 }).first().waitFor();
  await page.keyboard.press("1");
  await expect.poll(() => headline(page)).toMatch(/^Finishes /);
  const counted = (): Promise<string> => words(page.locator(".headline"));
  const before = await counted();

  await keys.press(/things not known yet/);
  await page.getByRole("heading", { name: "Not known yet" }).waitFor();
  const open = await words(page.getByRole("main"));
  expect(open).not.toMatch(/What the ground under it carries/);
  expect(open).toMatch(/before shores or props go/);

  // A part is taken out and brought back, from whatever view by one key.
  await page.keyboard.press("Escape");
  await page.keyboard.press("Escape");
  await page.keyboard.press("a");
  await page.getByRole("heading", { name: "Add to the build" }).waitFor();
  await keys.press(/^Small roof A/);
  await keys.press(/^take .* out of the build/);
  await keys.press("take it out");
  await page.getByRole("heading", { name: "Add to the build" }).waitFor();
  await page.keyboard.press("1");
  await expect.poll(counted).not.toBe(before);
  await page.keyboard.press("Control+z");
  await expect.poll(counted).toBe(before);
  await saved(page);
  expect((await documentOf(page)).parts.map(({ kit }) => kit)).toEqual(["footing", "column", "deck-slab", "post-roof"]);
});
