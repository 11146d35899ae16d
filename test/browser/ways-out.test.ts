import { expect, test } from "vitest";
import { headline, saved, tank, withBrowser, words } from "./app";

const app = withBrowser();
/** The worker may have to share a busy machine. */
const slowly = { timeout: 30_000 };

test("the build that cannot be built lists what is wrong, each with reasons and ways out; applying one for each makes it buildable, and undo brings the block back", async () => {
  const page = await app.example(tank);
  const wrong = page.locator(".blocked article");
  const count = await wrong.count();
  expect(count).toBeGreaterThanOrEqual(6);
  // Ways out are tried in the worker.
  await expect.poll(() => page.getByText("Ways out are being tried").count(), slowly).toBe(0);
  for (const article of await wrong.all()) {
    expect(await article.locator("ol li").count()).toBeGreaterThanOrEqual(2);
    expect(await article.getByRole("button", { name: /^do this/ }).count()).toBeGreaterThanOrEqual(1);
  }
  let applied = 0;
  while ((await wrong.count()) > 0 && applied < 3 * count) {
    const first = await words(wrong.first().getByRole("heading", { level: 3 }));
    await wrong
      .first()
      .getByRole("button", { name: /^do this/ })
      .first()
      .click();
    applied += 1;
    // That one is gone; behind the last block of order the dates may show one of their own.
    await expect.poll(() => page.getByRole("heading", { level: 3, name: first, exact: true }).count(), slowly).toBe(0);
    await expect.poll(() => page.getByText("Ways out are being tried").count(), slowly).toBe(0);
  }
  await page.locator(".headline .main", { hasText: /^Finish/ }).waitFor();
  await saved(page);
  for (let index = 0; index < applied; index += 1) await page.locator("header").getByRole("button", { name: "undo" }).click();
  expect(await headline(page)).toBe("This cannot be built as written.");
  expect(await wrong.count()).toBe(count);
});
