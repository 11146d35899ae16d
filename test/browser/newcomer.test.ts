import { describe, expect, test } from "vitest";
import { desk, headline, phone, saved, undoButton, withBrowser, words } from "./app";
import { expectClean, tooLow } from "./clean";
import { documentOf, Hand } from "./newcomer";

const app = withBrowser();

test.each([
  { where: "desk", viewport: desk },
  { where: "phone", viewport: phone },
])("an empty app, kits only: two columns on footings, a slab on a deck and a small roof on it, on a $where", async ({ viewport }) => {
  const page = await app.start({ viewport });
  const hand = new Hand(page);
  await hand.press("Footing");
  await hand.type("Who says how deep it must go", "building office, 30 in");
  await hand.putIn();
  await hand.press("Column");
  await hand.putIn();
  await hand.press(/^Slab on a (timber )?deck/);
  await hand.type("Who says that a slab of this thickness and what it stands on carry it", "our engineer");
  await hand.putIn();
  await hand.press(/^Small roof on posts/);
  await hand.putIn();

  // An order, dates, and pours with their sheets.
  await hand.press("Order");
  await expect.poll(() => headline(page)).toMatch(/^Finishes \w+ \d+ \w+ \d{4}\.$/);
  await hand.press("Dates");
  await page.getByRole("region", { name: "Dates", exact: true }).waitFor();
  await hand.press("Forms");
  const forms = page.getByRole("region", { name: "Forms", exact: true });
  await forms.getByRole("heading", { level: 2 }).first().waitFor();
  expect(await words(forms)).toMatch(/of 100|full head/);

  // What an inspector asks is answered, or stands among what is not known yet.
  await hand.press("Order");
  await hand.press(/things not known yet/);
  const open = await words(page.getByRole("main"));
  expect(open).toMatch(/What the ground under it carries/);
  expect(open).not.toMatch(/Frost depth/);
  expect(open).toMatch(/before shores or props go/);
  expect(hand.did.length).toBeLessThan(80);

  await saved(page);
  const written = await documentOf(page);
  expect(written.parts.map(({ kit }) => kit)).toEqual(["footing", "column", "deck-slab", "post-roof"]);
  expect(written.steps.filter(({ after }) => after !== undefined)).toEqual([]);
  // Each stands on the one before it: nothing was typed for that, and nothing drawn.
  written.parts.forEach(({ answers }, at) => {
    const below = written.parts[at - 1];
    if (below)
      expect(
        Object.values(answers)
          .flat()
          .map(String)
          .some((key) => key.startsWith(`${below.id}/`)),
      ).toBe(true);
  });
  const holdPoints = written.steps.filter(({ holdPoint }) => holdPoint !== undefined).map(({ id }) => id);
  for (const part of written.parts.filter(({ kit }) => kit !== "post-roof")) {
    expect(holdPoints.filter((id) => part.made.steps?.includes(id)).length, part.name).toBeGreaterThan(0);
    expect(part.made.pours?.length, part.name).toBe(1);
  }
});

test("a part is asked again, copied and taken out; each is one change to undo, in words", async () => {
  const page = await app.start();
  const hand = new Hand(page);
  await hand.press("Footing");
  await hand.putIn();
  await expect.poll(() => undoButton(page).getAttribute("title")).toBe("put in Footing A");

  await hand.type("Thick", "a foot");
  const field = page.getByLabel("Thick", { exact: true });
  await page.getByText("One answer above cannot be taken yet: Thick.").waitFor();
  expect(await field.inputValue()).toBe("a foot");
  expect(await field.getAttribute("aria-invalid")).toBe("true");
  expect(await page.getByRole("button", { name: "change Footing A" }).isDisabled()).toBe(true);
  await hand.type("Thick", "14 in");
  await page.locator('[data-verdict="yes"]').waitFor();
  await hand.press("change Footing A");
  await expect.poll(() => undoButton(page).getAttribute("title")).toBe("change Footing A");
  expect(await field.inputValue()).toBe("14 in");

  await hand.press("another like it");
  expect(await page.getByLabel("What you call it").inputValue()).toBe("Footing B");
  expect(await field.inputValue()).toBe("14 in");
  expect(await page.getByLabel("Middle of the first one, to the right of the datum").inputValue()).not.toBe("0 in");
  await hand.putIn();
  expect((await documentOf(page)).parts.map(({ name }) => name)).toEqual(["Footing A", "Footing B"]);

  await hand.press("all kits and parts");
  await hand.press("Footing A");
  await hand.press("take Footing A out of the build");
  await page.getByText(/^It goes with its \d+ steps/).waitFor();
  await hand.press("take it out");
  expect((await documentOf(page)).parts.map(({ name }) => name)).toEqual(["Footing B"]);
  await undoButton(page).click();
  expect((await documentOf(page)).parts.map(({ name }) => name)).toEqual(["Footing A", "Footing B"]);
});

test("what was typed is there again when the form is left and opened anew, and nothing of it is in the build", async () => {
  const page = await app.start();
  const hand = new Hand(page);
  await hand.press("Footing");
  await hand.type("Thick", "two");
  await page.keyboard.press("Escape");
  await page.getByRole("heading", { name: "Add to the build" }).waitFor();
  await hand.press("Footing");
  expect(await page.getByLabel("Thick", { exact: true }).inputValue()).toBe("two");
  expect(await undoButton(page).isDisabled()).toBe(true);
});

test("a first sitting: pick the kit, see the sheet, change one thing, see why, with a hint at a time that goes", async () => {
  const page = await app.start();
  const hand = new Hand(page);
  await hand.press("Footing");
  await hand.putIn();
  await hand.press("see it on the sheet");
  await page.getByRole("region", { name: "Dates", exact: true }).waitFor();
  await page.getByRole("complementary").getByRole("heading", { level: 2 }).first().waitFor();
  // Picked and changed already: there is nothing left to hint at.
  await expect.poll(() => page.locator(".hint").count()).toBe(0);

  const other = await app.example("Garden wall with a planter");
  await other.locator(".hint", { hasText: "Pick any step" }).waitFor();
  await other.getByRole("button", { name: "Footing steel on spacers" }).click();
  await other.locator(".hint", { hasText: "As written" }).waitFor();
  await other.locator(".hint").getByRole("button").click();
  await expect.poll(() => other.locator(".hint").count()).toBe(0);
  await other.reload();
  await other.getByText(/^Finishe/).waitFor();
  expect(await other.locator(".hint").count()).toBe(0);
});

test("lengths are asked in the units shown, and put in as they were shown", async () => {
  const page = await app.start();
  const hand = new Hand(page);
  await hand.press("Footing");
  const thick = page.getByLabel("Thick", { exact: true });
  expect(await thick.inputValue()).toBe("12 in");
  await page.getByRole("group", { name: "Units" }).getByRole("button", { name: "m", exact: true }).click();
  expect(await thick.inputValue()).toBe("300 mm");
  await hand.type("Long", "1,2 m");
  await page.getByText("“1,2 m” is no length; write it with its unit, like 750 mm.").waitFor();
  await hand.type("Long", "1.2 m");
  await hand.putIn();
  expect((await documentOf(page)).parts[0]?.answers).toMatchObject({ thick: "300 mm", long: "1.2 m" });
});

test("a rate of one's own changes the hours of the part, and is refused where it is no time", async () => {
  const page = await app.start();
  const hand = new Hand(page);
  await hand.press("Footing");
  const work = page.locator("dl > div", { hasText: "work" }).first();
  await page.locator('[data-verdict="yes"]').waitFor();
  const before = await words(work);
  await page.getByText("What the hours rest on").click();
  await hand.type(/^dig by hand/, "soon");
  await page.getByText("“soon” is no time").waitFor();
  expect(await words(work)).toBe(before);
  await hand.type(/^dig by hand/, "20 h");
  await expect.poll(() => words(work)).not.toBe(before);
  await page.getByText("What the hours rest on (1 of your own)").waitFor();
});

test("an empty build offers the kits in every view, and a build begun with nothing takes a part", async () => {
  const page = await app.start();
  await page.getByLabel("What is it called?").fill("Porch");
  await page.getByRole("button", { name: "begin", exact: true }).click();
  const offer = page.getByRole("button", { name: "add to the build from a kit" });
  for (const view of ["Order", "Dates", "Forms", "Cure"]) {
    await page.getByRole("button", { name: view, exact: true }).click();
    await offer.waitFor();
  }
  await offer.click();
  await page.getByRole("heading", { name: "Add to the build" }).waitFor();
  await new Hand(page).press("Footing");
  await new Hand(page).putIn();
  await page.getByRole("button", { name: "back to Cure" }).click();
  await expect.poll(() => offer.count()).toBe(0);
});

describe.each([
  { where: "desk", viewport: desk, least: 13 },
  { where: "phone", viewport: phone, least: 16 },
])("on a $where", ({ viewport, least }) => {
  test.each(["light", "dark"] as const)("every page of the kits is clean, %s", async (colorScheme) => {
    const page = await app.start({ viewport, colorScheme });
    const hand = new Hand(page);
    await page.getByRole("button", { name: "Footing", exact: true }).waitFor();
    await expectClean(page, least, "start");
    await hand.press("Footing");
    await page.locator('[data-verdict="yes"]').waitFor();
    await expectClean(page, least, "form");
    await hand.press(/^what is that/);
    await page.getByText("What the hours rest on").click();
    await hand.type("Thick", "a foot");
    await expectClean(page, least, "form with help, rates and a refusal");
    if (viewport === phone) expect(await tooLow(page)).toEqual([]);
    await hand.type("Thick", "12 in");
    await hand.putIn();
    await expectClean(page, least, "part");
    await hand.press(/^take .* out of the build/);
    await expectClean(page, least, "before it is taken out");
    await hand.press("all kits and parts");
    await expectClean(page, least, "kits");
    if (viewport === phone) expect(await tooLow(page)).toEqual([]);
    await hand.press(/^Slab on a (timber )?deck/);
    await page.getByText("Put in first:").waitFor();
    await expectClean(page, least, "a kit that needs another first");
    await hand.press("back to Order");
    await expectClean(page, least, "order");
    await hand.press(/things not known yet/);
    await expectClean(page, least, "not known yet");
  });
});
