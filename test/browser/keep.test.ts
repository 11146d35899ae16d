import { expect, inject, test } from "vitest";
import { headline, saved, tank, wall, withBrowser, written } from "./app";

const app = withBrowser();

const undo = (page: Awaited<ReturnType<typeof app.start>>) => page.locator("header").getByRole("button", { name: "undo" });

async function editing(page: Awaited<ReturnType<typeof app.start>>) {
  await written(page, "Tie the wall steel");
  return page.getByLabel("Notes", { exact: true });
}

test("a reload in the middle of typing loses nothing: text, plan, view, what was selected and undo are there", async () => {
  const page = await app.example(wall);
  const notes = await editing(page);
  await notes.pressSequentially("mind the starters");
  await saved(page);
  const finish = await headline(page);
  await page.reload();
  expect(await headline(page)).toBe(finish);
  await page.getByRole("heading", { name: "Tie the wall steel" }).waitFor();
  await page.getByRole("button", { name: "As written" }).click();
  expect(await notes.inputValue()).toBe("mind the starters");
  await undo(page).click();
  await expect.poll(() => notes.inputValue()).toBe("");
});

test("a page that dies without notice loses nothing that was shown as saved", async () => {
  const context = await app.context();
  const page = app.watch(await context.newPage());
  await page.goto(inject("app"));
  await page.getByRole("button", { name: wall }).click();
  const notes = await editing(page);
  await notes.fill("said once");
  await saved(page);
  await page.close({ runBeforeUnload: false });
  const again = app.watch(await context.newPage());
  await again.goto(inject("app"));
  await again.getByRole("heading", { name: "Tie the wall steel" }).waitFor();
  await again.getByRole("button", { name: "As written" }).click();
  expect(await again.getByLabel("Notes", { exact: true }).inputValue()).toBe("said once");
});

test("what is typed and not yet put in is there after another view and after a reload, and gone once it is put in", async () => {
  const page = await app.example(wall);
  await saved(page);
  const view = (name: string) => page.getByRole("button", { name, exact: true }).click();
  await view("Steps");
  const step = page.getByLabel("A new step");
  await step.fill("Sweep the");
  const people = async () => {
    await view("Site");
    await page.getByRole("button", { name: "People" }).click();
  };
  await people();
  const person = page.getByLabel("Another person");
  await person.fill("Jo");
  await view("Cure");
  await page.getByLabel("Carried").fill("3200 psi");
  await view("Order");
  await view("Steps");
  expect(await step.inputValue()).toBe("Sweep the");
  await page.reload();
  expect(await step.inputValue()).toBe("Sweep the");
  await view("Cure");
  expect(await page.getByLabel("Carried").inputValue()).toBe("3200 psi");
  await people();
  expect(await person.inputValue()).toBe("Jo");
  await person.press("Enter");
  await expect.poll(() => person.inputValue()).toBe("");
  await saved(page);
  await page.reload();
  await people();
  expect(await person.inputValue()).toBe("");
});

test("the answers of a kit that is not put in yet, and those for a new build, are there after a reload", async () => {
  const page = await app.start();
  const named = page.getByLabel("What is it called?");
  await named.fill("Shed");
  await page.reload();
  expect(await named.inputValue()).toBe("Shed");
  const footing = page.getByRole("button", { name: "Footing" }).first();
  await footing.click();
  const called = page.locator("#part-name");
  await called.fill("North footing");
  await saved(page);
  await page.reload();
  await page.getByRole("button", { name: "add", exact: true }).click();
  await footing.click();
  expect(await called.inputValue()).toBe("North footing");
});

test("a hundred changes come back in order after a reload, and each can be undone", async () => {
  const page = await app.example(wall);
  const first = await headline(page);
  await page.getByRole("button", { name: "Steps", exact: true }).click();
  for (let count = 1; count <= 100; count += 1) {
    await page.getByLabel("A new step").fill(`Extra ${count}`);
    await page.keyboard.press("Enter");
  }
  await saved(page);
  await page.reload();
  await page.locator(".headline", { hasText: "115 steps" }).waitFor();
  for (let count = 0; count < 100; count += 1) await undo(page).click();
  await page.locator(".headline", { hasText: "15 steps" }).waitFor();
  expect(await headline(page)).toBe(first);
  expect(await undo(page).isDisabled()).toBe(true);
});

test("a second tab may look, says so, and takes over with everything the first had written", async () => {
  const context = await app.context();
  const first = app.watch(await context.newPage());
  await first.goto(inject("app"));
  await first.getByRole("button", { name: wall }).click();
  await saved(first);
  const second = app.watch(await context.newPage());
  await second.goto(inject("app"));
  await second.getByText("This build is being changed in another tab.").waitFor();
  const there = await editing(second);
  await expect.poll(() => there.isDisabled()).toBe(true);
  await (await editing(first)).fill("from the first tab");
  await saved(first);
  await second.getByRole("button", { name: "change it here instead" }).click();
  const notes = second.getByLabel("Notes", { exact: true });
  await expect.poll(() => notes.inputValue()).toBe("from the first tab");
  await expect.poll(() => notes.isDisabled()).toBe(false);
  await first.getByText("This build is being changed in another tab.").waitFor();
  await expect.poll(() => first.getByLabel("Notes", { exact: true }).isDisabled()).toBe(true);
});

test("a browser that keeps nothing is said plainly, and a file can still be saved", async () => {
  const context = await app.context();
  await context.addInitScript(() => {
    Object.defineProperty(window, "indexedDB", {
      get: () => ({
        open: () => {
          throw new DOMException("denied", "SecurityError");
        },
      }),
    });
  });
  const page = app.watch(await context.newPage());
  await page.goto(inject("app"));
  await page.getByRole("button", { name: wall }).click();
  await page.getByText("This browser keeps nothing for this page").waitFor();
  await page.locator('[data-saved="not-saved"]').waitFor();
  const [file] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("alert").getByRole("button", { name: "save a file" }).click(),
  ]);
  expect(file.suggestedFilename()).toBe("garden-wall-with-a-planter.json");
});

test("a build left for another stays in the list of those kept, and opens again as it was", async () => {
  const page = await app.example(wall);
  await (await editing(page)).fill("kept apart");
  await saved(page);
  await page.getByRole("button", { name: "open", exact: true }).click();
  await page.getByRole("button", { name: tank }).click();
  await page.getByText("This cannot be built as written.").waitFor();
  await page.getByRole("button", { name: "open", exact: true }).click();
  await page.getByRole("region", { name: "Kept in this browser" }).getByRole("button", { name: wall }).click();
  await page.locator(".row", { hasText: "Tie the wall steel" }).click();
  await page.getByRole("button", { name: "As written" }).click();
  expect(await page.getByLabel("Notes", { exact: true }).inputValue()).toBe("kept apart");
});
