import { readFileSync } from "node:fs";
import type { BrowserContext, Page } from "playwright-core";
import { expect, inject, test } from "vitest";
import { cellar, headline, saved, undoButton, wall, withBrowser, words, written } from "./app";
import { crash, goAlong, killWorker, noRoom } from "./faults";

const app = withBrowser();
const notesOf = (page: Page) => page.getByLabel("Notes", { exact: true });

async function editing(page: Page) {
  await written(page, "Tie the wall steel");
  return notesOf(page);
}

/** A page that may write to the console what the fault makes it write. */
async function unwatched(context: BrowserContext, url = inject("app")): Promise<Page> {
  const page = await context.newPage();
  page.setDefaultTimeout(10_000);
  // A page with work that is nowhere else asks before it goes.
  page.on("dialog", goAlong);
  await page.goto(url);
  return page;
}

async function again(context: BrowserContext, url = inject("app")): Promise<Page> {
  const page = await unwatched(context, url);
  await page.getByRole("heading", { name: "Tie the wall steel" }).waitFor();
  await page.getByRole("button", { name: "As written" }).click();
  return page;
}

test("the worker is killed while it works: it is replaced, answers, and no change is lost", async () => {
  const context = await app.context();
  const page = await unwatched(context);
  await page.getByRole("button", { name: wall }).click();
  await (await editing(page)).fill("before the worker died");
  await page.getByRole("button", { name: "Drawing", exact: true }).click();
  await page.locator("svg").first().waitFor();
  await killWorker(page);
  await notesOf(page).fill("after the worker died");
  await saved(page);
  await page.getByRole("button", { name: "try X before Y" }).click();
  await page.getByRole("button", { name: "Steps", exact: true }).click();
  await page.getByRole("button", { name: "Drawing", exact: true }).click();
  await page.locator("svg").first().waitFor();
  await page.close({ runBeforeUnload: false });
  const after = await again(context);
  expect(await notesOf(after).inputValue()).toBe("after the worker died");
});

test("the page's process crashes: all that was shown as saved is there, with its undo", async () => {
  const context = await app.context();
  const page = await unwatched(context);
  await page.getByRole("button", { name: wall }).click();
  await (await editing(page)).fill("said before the crash");
  await saved(page);
  await crash(page);
  await page.close({ runBeforeUnload: false });
  const after = await again(context);
  expect(await notesOf(after).inputValue()).toBe("said before the crash");
  await undoButton(after).click();
  await expect.poll(() => notesOf(after).inputValue()).toBe("");
});

test("a reload in the middle of a drag keeps what was there before it, and nothing half done", async () => {
  const page = await app.example(wall);
  await (await editing(page)).fill("before the drag");
  await saved(page);
  const finish = await headline(page);
  await page.keyboard.press("Escape");
  await page.getByRole("button", { name: "Dates", exact: true }).click();
  const flags = page.getByRole("group", { name: "Deliveries, bookings and inspections" }).getByRole("button", { name: /, delivery, / });
  const before = await flags.first().getAttribute("aria-label");
  const box = (await flags.first().boundingBox())!;
  await page.mouse.move(box.x + 6, box.y + 8);
  await page.mouse.down();
  await page.mouse.move(box.x + 240, box.y + 8, { steps: 8 });
  await page.getByText("Would be").waitFor();
  await page.reload();
  await expect.poll(() => flags.first().getAttribute("aria-label")).toBe(before);
  await page.mouse.up();
  await page.getByRole("button", { name: "Order", exact: true }).click();
  expect(await headline(page)).toBe(finish);
  expect(await undoButton(page).isDisabled()).toBe(false);
});

test("the disk is full: it is said with a way to keep the work, edits stay, and one press keeps them all once there is room", async () => {
  const context = await app.context();
  const page = await unwatched(context);
  // Before the first write: afterwards the browser lets some pass before it looks again.
  const giveBack = await noRoom(page);
  await page.getByRole("button", { name: wall }).click();
  const notes = await editing(page);
  await notes.fill("written while the disk is full");
  const bar = page.getByRole("alert");
  await bar.getByText("There is no room left on this machine").waitFor();
  await page.locator('[data-saved="not-saved"]').waitFor();
  const [file] = await Promise.all([page.waitForEvent("download"), bar.getByRole("button", { name: "save a file" }).click()]);
  expect(readFileSync(await file.path(), "utf8")).toContain("written while the disk is full");
  await bar.getByRole("button", { name: "try again" }).click();
  await page.locator('[data-saved="not-saved"]').waitFor();
  expect(await notes.inputValue()).toBe("written while the disk is full");
  // Another build is not opened over work that is nowhere else.
  await page.getByRole("button", { name: "open", exact: true }).click();
  await page.getByRole("button", { name: cellar }).click();
  await page.getByText(/only in this page\. Save a file of it before/).waitFor();
  await page.getByRole("button", { name: "close", exact: true }).click();
  await giveBack();
  await bar.getByRole("button", { name: "try again" }).click();
  await saved(page);
  expect(await bar.count()).toBe(0);
  await page.close({ runBeforeUnload: false });
  const after = await again(context);
  expect(await notesOf(after).inputValue()).toBe("written while the disk is full");
});

test("the browser's storage is cleared under the page: the next change writes all of it anew", async () => {
  const context = await app.context();
  const page = await unwatched(context);
  await page.getByRole("button", { name: wall }).click();
  const notes = await editing(page);
  await notes.fill("first");
  await saved(page);
  const session = await context.newCDPSession(page);
  await session.send("Storage.clearDataForOrigin", { origin: new URL(page.url()).origin, storageTypes: "indexeddb" });
  await notes.fill("second");
  await saved(page);
  await page.close({ runBeforeUnload: false });
  const after = await again(context);
  expect(await notesOf(after).inputValue()).toBe("second");
});

test("a tab that is closed right after an edit has it when it is opened again", async () => {
  const context = await app.context();
  const page = await unwatched(context);
  await page.getByRole("button", { name: wall }).click();
  const notes = await editing(page);
  await saved(page);
  // In one turn: nothing is on disk by the time the page goes. Its answer goes with it.
  const gone = page.waitForURL("about:blank", { waitUntil: "commit" });
  void notes
    .evaluate((field) => {
      (field as HTMLTextAreaElement).value = "closed at once";
      field.dispatchEvent(new InputEvent("input", { bubbles: true }));
      location.replace("about:blank");
    })
    .catch(() => undefined);
  await gone;
  await page.close({ runBeforeUnload: false });
  const after = await again(context);
  expect(await notesOf(after).inputValue()).toBe("closed at once");
  await saved(after);
});

test("two tabs: what one changes the other shows, each can take over, and what both wrote is there", async () => {
  const context = await app.context();
  const first = await unwatched(context);
  await first.getByRole("button", { name: wall }).click();
  const here = await editing(first);
  await saved(first);
  const second = await unwatched(context);
  await second.getByText("This build is being changed in another tab.").waitFor();
  const there = await editing(second);
  await here.fill("seen in the other tab");
  await expect.poll(() => there.inputValue()).toBe("seen in the other tab");
  expect(await there.isDisabled()).toBe(true);
  await second.getByRole("button", { name: "change it here instead" }).click();
  await expect.poll(() => there.isDisabled()).toBe(false);
  await there.fill("and back");
  await expect.poll(() => here.inputValue()).toBe("and back");
  await first.getByRole("button", { name: "change it here instead" }).click();
  await expect.poll(() => here.isDisabled()).toBe(false);
  await here.fill("the first tab again");
  await saved(first);
  await first.close({ runBeforeUnload: false });
  await second.close({ runBeforeUnload: false });
  const after = await again(context);
  expect(await notesOf(after).inputValue()).toBe("the first tab again");
  for (const before of ["and back", "seen in the other tab", ""]) {
    await undoButton(after).click();
    await expect.poll(() => notesOf(after).inputValue()).toBe(before);
  }
});

test("two tabs on two builds each get their own back", async () => {
  const context = await app.context();
  const first = await unwatched(context);
  await first.getByRole("button", { name: wall }).click();
  await (await editing(first)).fill("first");
  await saved(first);
  const second = await unwatched(context);
  await second.getByText("This build is being changed in another tab.").waitFor();
  await second.getByRole("button", { name: "open", exact: true }).click();
  await second.getByRole("button", { name: cellar }).click();
  await expect.poll(() => words(second.locator("header .name"))).toBe(cellar);
  await saved(second);
  await first.reload();
  await first.getByRole("button", { name: "As written" }).click();
  expect(await notesOf(first).inputValue()).toBe("first");
  expect(await notesOf(first).isDisabled()).toBe(false);
});
