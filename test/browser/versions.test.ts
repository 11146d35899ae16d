import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { cellar, headline, saved, undoButton, wall, withBrowser, words, written } from "./app";
import { list, openList, tabAt, twoKept } from "./kept";

const app = withBrowser();

/** Takes a kept build off the disk behind the page's back, as clearing what a page stores does; the list shows it still. */
const loseOnDisk = (page: Page, name: string): Promise<void> =>
  page.evaluate(
    (called) =>
      new Promise<void>((done, failed) => {
        const opening = indexedDB.open("batterboard");
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const work = opening.result.transaction("snapshots", "readwrite");
          const all = work.objectStore("snapshots").getAll();
          all.onsuccess = () => {
            for (const kept of all.result) if (kept.name === called) work.objectStore("snapshots").delete(kept.key);
          };
          work.oncomplete = () => {
            opening.result.close();
            done();
          };
        };
      }),
    name,
  );

describe("versions", () => {
  test("each day's last state is kept, can be looked at, and comes back as one change that undo takes back", async () => {
    const context = await app.context();
    const page = await tabAt(app, context, "2027-05-03T10:00:00");
    await page.getByRole("button", { name: wall }).click();
    await written(page, "Tie the wall steel");
    const notes = page.getByLabel("Notes", { exact: true });
    await notes.fill("Monday, first");
    await notes.fill("Monday, last");
    await saved(page);
    await page.clock.setFixedTime(new Date("2027-05-04T09:00:00"));
    await notes.fill("Tuesday");
    await saved(page);
    await page.reload();
    await page.clock.setFixedTime(new Date("2027-05-06T09:00:00"));
    await page.getByRole("button", { name: "As written" }).click();
    await notes.fill("Thursday");
    await saved(page);
    await page.locator("header .name").click();
    await page.getByRole("button", { name: "versions", exact: true }).click();
    const kept = page.getByRole("list", { name: "Versions kept" });
    await expect.poll(() => kept.locator(".word").allInnerTexts()).toEqual(["End of Tue 4 May 2027", "End of Mon 3 May 2027"]);
    expect(await words(kept)).toMatch(/last change: .*Tie the wall steel/);
    await kept.getByRole("button", { name: "End of Mon 3 May 2027" }).click();
    await page.getByText("You are looking at this build as it was at the end of Mon 3 May 2027.").waitFor();
    await written(page, "Tie the wall steel");
    expect(await notes.inputValue()).toBe("Monday, last");
    expect(await notes.isDisabled()).toBe(true);
    await page.getByRole("button", { name: "back to the build as it is" }).click();
    await written(page, "Tie the wall steel");
    expect(await notes.inputValue()).toBe("Thursday");
    await page.locator("header .name").click();
    await page.getByRole("button", { name: "versions", exact: true }).click();
    await kept.getByRole("button", { name: "End of Mon 3 May 2027" }).click();
    await page.getByRole("button", { name: "bring it back" }).click();
    await written(page, "Tie the wall steel");
    await expect.poll(() => notes.inputValue()).toBe("Monday, last");
    await saved(page);
    await page.reload();
    await page.getByRole("button", { name: "As written" }).click();
    expect(await notes.inputValue()).toBe("Monday, last");
    await undoButton(page).click();
    await expect.poll(() => notes.inputValue()).toBe("Thursday");
  });

  test("one with a name stays until it is thrown away, by two presses", async () => {
    const page = await app.example(wall);
    const finish = await headline(page);
    await page.locator("header .name").click();
    await page.getByRole("button", { name: "versions", exact: true }).click();
    await page.getByText("No version is kept yet.").waitFor();
    await page.getByRole("button", { name: "keep", exact: true }).click();
    await page.getByText("Write what to call it, like Before the pour.").waitFor();
    const name = page.getByLabel("Keep the build as it is now, as");
    await name.fill("As drawn");
    await page.keyboard.press("Escape");
    await saved(page);
    await page.reload();
    await page.locator("header .name").click();
    await page.getByRole("button", { name: "versions", exact: true }).click();
    expect(await name.inputValue()).toBe("As drawn");
    await name.press("Enter");
    await expect.poll(() => name.inputValue()).toBe("");
    const kept = page.getByRole("list", { name: "Versions kept" });
    await kept.getByRole("button", { name: "As drawn" }).click();
    await page.getByText("You are looking at the version “As drawn”.").waitFor();
    expect(await headline(page)).toBe(finish);
    await page.keyboard.press("Escape");
    await page.getByText("You are looking at").waitFor({ state: "detached" });
    await page.locator("header .name").click();
    await page.getByRole("button", { name: "versions", exact: true }).click();
    await kept.getByRole("button", { name: "throw away" }).click();
    await kept.getByRole("button", { name: "really, for good" }).click();
    await page.getByText("No version is kept yet.").waitFor();
  });

  test("one stays on the screen, and the build behind it, when another build cannot be opened", async () => {
    const page = await twoKept(app);
    const notes = page.getByLabel("Notes", { exact: true });
    await list(page).getByRole("button", { name: wall, exact: true }).click();
    await expect.poll(() => words(page.locator("header .name"))).toBe(wall);
    await page.locator("header .name").click();
    await page.getByRole("button", { name: "versions", exact: true }).click();
    await page.getByLabel("Keep the build as it is now, as").fill("As drawn");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Escape");
    await written(page, "Tie the wall steel");
    await notes.fill("after the version");
    await saved(page);
    await page.locator("header .name").click();
    await page.getByRole("button", { name: "versions", exact: true }).click();
    await page.getByRole("list", { name: "Versions kept" }).getByRole("button", { name: "As drawn" }).click();
    await page.getByText("You are looking at the version “As drawn”.").waitFor();
    await openList(page);
    await loseOnDisk(page, cellar);
    await list(page).getByRole("button", { name: cellar, exact: true }).click();
    await page.getByText("This build is no longer kept in this browser.").waitFor();
    await page.keyboard.press("Escape");
    await page.getByRole("button", { name: "back to the build as it is" }).click();
    await written(page, "Tie the wall steel");
    expect(await notes.inputValue()).toBe("after the version");
    expect(await notes.isDisabled()).toBe(false);
  });
});
