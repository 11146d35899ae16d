import { describe, expect, test } from "vitest";
import { cellar, desk, phone, tank, wall, withBrowser } from "./app";
import { expectClean, tooSmall, violations } from "./clean";

const app = withBrowser();

describe.each([
  { where: "desk", viewport: desk, least: 13 },
  { where: "phone", viewport: phone, least: 16 },
])("on a $where", ({ viewport, least }) => {
  test.each(["light", "dark"] as const)("Order and Dates are clean, %s", async (colorScheme) => {
    const page = await app.example(wall, { viewport, colorScheme });
    const check = (what: string): Promise<void> => expectClean(page, least, what);
    await check("closings");
    await page.getByRole("button", { name: "Steps", exact: true }).click();
    await check("steps");
    await page.getByRole("button", { name: "Pieces", exact: true }).click();
    await check("pieces");
    await page.getByRole("button", { name: wall }).click();
    await page.getByRole("dialog", { name: "The build" }).waitFor();
    await check("the build");
    await page.keyboard.press("Escape");
    await page.getByRole("button", { name: "Drawing" }).click();
    await page.getByRole("application").waitFor();
    await check("drawing");
    await page.getByRole("button", { name: "try X before Y" }).click();
    await page.getByLabel("Try", { exact: true }).selectOption({ label: "Mix and place the wall" });
    await page.getByLabel("before", { exact: true }).selectOption({ label: "Tie the wall steel" });
    await page.locator("[data-verdict]").waitFor();
    await check("trial of an order");
    await page.getByRole("button", { name: "Dates", exact: true }).click();
    await page.getByRole("region", { name: "Dates", exact: true }).waitFor();
    await check("dates");
    await page.getByRole("button", { name: "Order", exact: true }).click();
    await page.getByRole("button", { name: "Steps", exact: true }).click();
    await page.locator(".row", { hasText: "Front face and ties" }).click();
    await check("why");
    await page.getByRole("button", { name: "As written" }).click();
    await check("step as written");
    await page.getByRole("complementary").getByRole("button", { name: "Front face of the form", exact: true }).click();
    await check("piece as written");
  });

  test.each(["light", "dark"] as const)("Forms is clean, %s", async (colorScheme) => {
    const page = await app.example(cellar, { viewport, colorScheme });
    const check = (what: string): Promise<void> => expectClean(page, least, what);
    await page.keyboard.press("3");
    await page.locator("#pour-title").waitFor();
    const list = page.getByRole("button", { name: /^all pours/ });
    // Colours are the same in every field: in the dark one element stands for all.
    for (const name of colorScheme === "light" ? [/^Columns/, /^Back wall/, /^Vault/, /^Pads/] : [/^Columns/]) {
      if (await list.isVisible()) await list.click();
      await page.getByRole("button", { name }).first().click();
      await page.locator("#element-title").waitFor();
      for (const part of await page.locator(".part").all()) {
        await part.click();
        if (colorScheme === "light") await check(`${name} with a part opened`);
      }
      const closed = page.getByRole("button", { name: /^change / });
      while ((await closed.count()) > 0) await closed.first().click();
      await check(`${name} with its fields`);
    }
  });

  test.each(["light", "dark"] as const)("Cure is clean, %s", async (colorScheme) => {
    const page = await app.example(cellar, { viewport, colorScheme });
    const check = (what: string): Promise<void> => expectClean(page, least, what);
    await page.keyboard.press("4");
    await page.locator(".cure h2").first().waitFor();
    await check("the first pour");
    await page.getByRole("button", { name: "Barrel vault", exact: true }).click();
    await page.getByRole("button", { name: "change what holds Strike the wedges" }).click();
    await page.getByRole("button", { name: "change how it is kept wet and warm" }).click();
    await page.getByRole("button", { name: "write it down" }).first().click();
    await check("a pour with its fields and a refusal");
  });

  test.each(["light", "dark", "sunlight"] as const)("Next and how it looks are clean, %s", async (colours) => {
    const page = await app.example(wall, { viewport });
    const check = (what: string): Promise<void> => expectClean(page, least, what);
    const more = page.getByRole("button", { name: "more", exact: true });
    if (await more.isVisible()) await more.click();
    await page.getByRole("button", { name: "look", exact: true }).click();
    const look = page.getByRole("dialog", { name: "Look" });
    await look.getByRole("button", { name: colours, exact: true }).click();
    await check("how it looks");
    await look.getByRole("button", { name: "close" }).click();
    await page.keyboard.press("5");
    const box = page.locator(".next").getByRole("checkbox").first();
    await box.waitFor();
    await check("the next day");
    await box.click();
    await page.locator(".next").getByLabel("finished").first().waitFor();
    await check("a step ticked");
  });

  test("the start page, what is wrong and the keys are clean", async () => {
    const page = await app.start({ viewport });
    expect(await violations(page)).toEqual([]);
    expect(await tooSmall(page, least)).toEqual([]);
    await page.getByRole("button", { name: tank }).click();
    await page.locator(".blocked").waitFor();
    expect(await violations(page)).toEqual([]);
    expect(await tooSmall(page, least)).toEqual([]);
    await page.keyboard.press("?");
    await page.getByRole("dialog").waitFor();
    expect(await violations(page)).toEqual([]);
  });
});

test("what one touches on a phone is 44 px high", async () => {
  const page = await app.example(wall, { viewport: phone });
  const low = await page.evaluate(() =>
    [...document.querySelectorAll("button, select, input, summary")]
      .filter((element) => element.checkVisibility() && element.getBoundingClientRect().height < 43.5)
      .map((element) => element.textContent?.trim()),
  );
  expect(low).toEqual([]);
});
