import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { cellar, desk, phone, saved, undoButton, wall, withBrowser, words, written } from "./app";
import { expectClean } from "./clean";
import { list, openList, row, rows, tabAt, twoKept } from "./kept";

const app = withBrowser();

async function documentOf(page: Page): Promise<{ id: string; name: string }> {
  const [file] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "save a file" }).first().click()]);
  return JSON.parse(readFileSync(await file.path(), "utf8"));
}

describe("the list of kept builds", () => {
  test("shows of each its drawing, when it was changed and its size", async () => {
    const page = await twoKept(app);
    const kept = row(page, wall);
    await kept.locator("img").waitFor();
    expect(await kept.locator("img").evaluate((image: HTMLImageElement) => image.decode().then(() => image.naturalWidth))).toBeGreaterThan(
      20,
    );
    expect(await words(kept)).toMatch(/changed \w{3} \d+ \w{3} \d{4}, \d+:\d\d, \d+ kB/);
    expect(await words(row(page, cellar))).toContain("open now");
  });

  test("a build that is not open is renamed where it lies; an empty name is refused beside the field", async () => {
    const page = await twoKept(app);
    await row(page, wall).getByRole("button", { name: "rename" }).click();
    const field = list(page).getByLabel("Name of the build");
    await field.fill("  ");
    await page.keyboard.press("Enter");
    await list(page).getByText("Write what it is called, like Garden wall.").waitFor();
    await field.fill("Wall by the lane");
    await page.reload();
    await openList(page);
    expect(await field.inputValue()).toBe("Wall by the lane");
    await field.press("Enter");
    await expect.poll(() => rows(page)).toEqual([cellar, "Wall by the lane"]);
    await list(page).getByRole("button", { name: "Wall by the lane", exact: true }).click();
    await expect.poll(() => words(page.locator("header .name"))).toBe("Wall by the lane");
    await undoButton(page).click();
    await expect.poll(() => words(page.locator("header .name"))).toBe(wall);
  });

  test("a copy has an id of its own, and a change of it leaves the first alone", async () => {
    const page = await twoKept(app);
    await row(page, wall).getByRole("button", { name: "copy" }).click();
    await expect.poll(() => rows(page)).toEqual([`${wall}, copy`, cellar, wall]);
    await list(page)
      .getByRole("button", { name: `${wall}, copy` })
      .click();
    await page.getByText(/^Finishe[sd] /).waitFor();
    const copy = await documentOf(page);
    await page.locator("header .name").click();
    await page.getByLabel("Name of the build").fill("Another wall");
    await page.keyboard.press("Escape");
    await saved(page);
    await openList(page);
    await list(page).getByRole("button", { name: wall, exact: true }).click();
    await page.getByText(/^Finishe[sd] /).waitFor();
    await expect.poll(() => words(page.locator("header .name"))).toBe(wall);
    const first = await documentOf(page);
    expect(first.id).toBe("garden-wall");
    expect(copy.id).not.toBe(first.id);
    expect(copy).toEqual({ ...first, id: copy.id, name: `${wall}, copy` });
  });

  test("what is thrown away comes back by undo, or from the list for 30 days; after that it is gone", async () => {
    const context = await app.context();
    const page = await tabAt(app, context, "2027-05-03T10:00:00");
    await page.getByRole("button", { name: wall }).click();
    await written(page, "Tie the wall steel");
    await page.getByLabel("Notes", { exact: true }).fill("not for good");
    await saved(page);
    await openList(page);
    // Also the one that is open.
    await row(page, wall).getByRole("button", { name: "throw away" }).click();
    await page.getByText(`“${wall}” is thrown away. Until Wed 2 Jun 2027 it can be brought back from the list below.`).waitFor();
    await page.getByRole("button", { name: "undo" }).click();
    await expect.poll(() => rows(page)).toEqual([wall]);
    await row(page, wall).getByRole("button", { name: "throw away" }).click();
    await expect.poll(() => rows(page)).toEqual([]);
    await page.reload();
    await list(page).locator("summary").click();
    await list(page).getByText("can be brought back until Wed 2 Jun 2027").waitFor();
    await list(page).getByRole("button", { name: "bring back" }).click();
    await row(page, wall).getByRole("button", { name: wall, exact: true }).click();
    await written(page, "Tie the wall steel");
    expect(await page.getByLabel("Notes", { exact: true }).inputValue()).toBe("not for good");
    await openList(page);
    await row(page, wall).getByRole("button", { name: "throw away" }).click();
    await expect.poll(() => rows(page)).toEqual([]);
    await page.close();
    const later = await tabAt(app, context, "2027-06-03T10:00:00");
    await later.getByRole("heading", { level: 1 }).waitFor();
    expect(await list(later).count()).toBe(0);
  });

  test.each([
    ["phone", phone, 16, "light"],
    ["phone", phone, 16, "dark"],
    ["desk", desk, 13, "dark"],
  ] as const)(
    "is clean on a %s, with its dialogs, and every button large enough for a thumb",
    async (_where, viewport, least, colorScheme) => {
      const page = await app.example(wall, { viewport, colorScheme });
      await page.locator("header .name").click();
      await page.getByLabel("Name of the build").fill(`${"Donaudampfschifffahrtsgesellschaftskapitän".repeat(3)} wall`);
      await expectClean(page, least, "the build");
      await page.getByRole("button", { name: "versions", exact: true }).click();
      await page.getByLabel("Keep the build as it is now, as").fill(`Before ${"the pour ".repeat(20)}`);
      await page.keyboard.press("Enter");
      await page.getByRole("list", { name: "Versions kept" }).getByRole("button").first().waitFor();
      await expectClean(page, least, "versions");
      await page.getByRole("list", { name: "Versions kept" }).getByRole("button").first().click();
      await page.getByText(/^You are looking at the version/).waitFor();
      await expectClean(page, least, "looking at a version");
      await page.getByRole("button", { name: "back to the build as it is" }).click();
      await openList(page);
      await list(page).getByRole("button", { name: "copy" }).click();
      await expect.poll(async () => (await rows(page)).length).toBe(2);
      await list(page).getByRole("button", { name: "throw away" }).first().click();
      await list(page).locator("summary").click();
      await list(page).getByRole("button", { name: "rename" }).click();
      await expectClean(page, least, "the list");
      const low = await list(page)
        .locator("button:not(.word), summary, input")
        .evaluateAll((all) => all.filter((one) => one.getBoundingClientRect().height < 44).map((one) => one.textContent));
      expect(low).toEqual([]);
    },
  );
});

describe("files", () => {
  test("a build is handed over as a file where the machine can, else it is saved", async () => {
    const context = await app.context();
    await context.addInitScript(() => {
      Object.assign(navigator, {
        canShare: () => true,
        share: async ({ files }: { files: File[] }) => {
          Object.assign(window, { shared: [files[0]?.name, await files[0]?.text()] });
        },
      });
    });
    const page = await tabAt(app, context);
    await page.getByRole("button", { name: wall }).click();
    await page.getByText(/^Finishe[sd] /).waitFor();
    await page.locator("header .name").click();
    await page.getByRole("button", { name: "share", exact: true }).click();
    await expect
      .poll(() => page.evaluate(() => (window as unknown as { shared?: string[] }).shared?.[0]))
      .toBe("garden-wall-with-a-planter.txt");
    expect(await page.evaluate(() => JSON.parse((window as unknown as { shared: string[] }).shared[1] ?? "").id)).toBe("garden-wall");
    const plain = await app.example(wall);
    await plain.locator("header .name").click();
    const [file] = await Promise.all([plain.waitForEvent("download"), plain.getByRole("button", { name: "share", exact: true }).click()]);
    expect(file.suggestedFilename()).toBe("garden-wall-with-a-planter.json");
  });

  test("the text of a build opens where it is pasted; other text, or text meant for a field, is left alone", async () => {
    const text = readFileSync("src/examples/garden-wall.json", "utf8");
    const page = await app.start();
    const paste = (into: string, what: string): Promise<void> =>
      page.evaluate(
        ([into, what]) => {
          const clipboardData = new DataTransfer();
          clipboardData.setData("text/plain", what ?? "");
          document
            .querySelector(into ?? "")
            ?.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
        },
        [into, what],
      );
    await paste("body", "{ not a build }");
    await paste("input", text);
    expect(await page.getByText(/^Finishe[sd] /).count()).toBe(0);
    expect(await page.getByRole("alert").count()).toBe(0);
    await paste("body", text);
    await page.getByText(/^Finishe[sd] /).waitFor();
    await openList(page);
    await page.getByText("or paste the text of one").click();
    await page.getByLabel("Text of a build file").fill("a letter to the inspector");
    await page.getByRole("button", { name: "open this text" }).click();
    await page.getByText("What you pasted was not opened; what was open stays as it is.").waitFor();
    expect(await page.getByLabel("Text of a build file").inputValue()).toBe("a letter to the inspector");
    await page.getByLabel("Text of a build file").fill(text.replace(wall, "Pasted wall"));
    await page.getByRole("button", { name: "open this text" }).click();
    await expect.poll(() => words(page.locator("header .name"))).toBe("Pasted wall");
    await openList(page);
    await page.getByText("or paste the text of one").click();
    expect(await page.getByLabel("Text of a build file").inputValue()).toBe("");
  });

  test("save as copy goes on in a build of its own", async () => {
    const page = await app.example(wall);
    await page.locator("header .name").click();
    await page.getByRole("button", { name: "save as copy" }).click();
    await expect.poll(() => words(page.locator("header .name"))).toBe(`${wall}, copy`);
    await saved(page);
    expect((await documentOf(page)).id).toMatch(/^build-/);
  });
});

test("the browser is asked to keep the builds for good at the first change, and its answer is said in the build dialog", async () => {
  const context = await app.context();
  await context.addInitScript(() => {
    Object.assign(window, { asked: 0 });
    navigator.storage.persisted = async () => false;
    navigator.storage.persist = async () => {
      const state = window as unknown as { asked: number };
      state.asked += 1;
      return state.asked > 1;
    };
  });
  const page = await tabAt(app, context);
  const asked = (): Promise<number> => page.evaluate(() => (window as unknown as { asked: number }).asked);
  await page.getByRole("button", { name: wall }).click();
  await page.getByText(/^Finishe[sd] /).waitFor();
  await page.locator("header .name").click();
  const dialog = page.getByRole("dialog", { name: "The build" });
  await dialog.getByText("is asked at your first change").waitFor();
  expect(await asked()).toBe(0);
  await dialog.getByLabel("Name of the build").fill("Wall");
  await dialog.getByText("This browser may clear what is kept here when the machine runs short of room.").waitFor();
  await dialog.getByLabel("Name of the build").fill("Wall again");
  await saved(page);
  expect(await asked()).toBe(1);
  await dialog.getByRole("button", { name: "ask again" }).click();
  await dialog.getByText("This browser has promised to keep your builds until you throw them away.").waitFor();
});
