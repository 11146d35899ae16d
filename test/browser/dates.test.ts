import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { textWidth } from "../../src/draw/text/measure";
import { cellar, desk, openBrowser, phone, tank, wall } from "./app";

let app: Awaited<ReturnType<typeof openBrowser>>;
beforeAll(async () => {
  app = await openBrowser();
});
afterAll(async () => {
  app.expectNoFaults();
  await app.close();
});

async function dates(title: string, viewport = desk): Promise<Page> {
  const page = await app.example(title, { viewport });
  await page.keyboard.press("2");
  await page.getByRole("region", { name: "Dates", exact: true }).waitFor();
  return page;
}

const flags = (page: Page) =>
  page.getByRole("group", { name: "Deliveries, bookings and inspections" }).getByRole("button", { name: /, delivery, / });
const moved = (page: Page) => page.getByRole("region", { name: /what (would move|moved)/ });
const focused = (page: Page): Promise<string> => page.evaluate(() => document.activeElement?.getAttribute("aria-label") ?? "");

test("the sheet shows every step of the small example, with one sentence of what is next on top", async () => {
  const page = await dates(wall);
  expect(await page.locator(".next").textContent()).toMatch(/^(Next: .+ Finish|All is done by the plan\. Finish) \w{3} \d+ \w{3} \d{4}/);
  expect(await page.locator("[data-step]").count()).toBe(16);
});

test("a build without a plan says why there are no dates, in the sentences of Order, and leads there", async () => {
  const page = await dates(tank);
  expect(await page.locator(".next").textContent()).toMatch(/^No dates: this cannot be built as written\./);
  const told = await page.getByRole("list", { name: "Why there are no dates" }).getByRole("listitem").allTextContents();
  await page.getByRole("button", { name: "see in Order what is wrong" }).click();
  const wrong = await page.locator(".blocked h3").allTextContents();
  expect(told.length).toBeGreaterThan(1);
  expect(told.slice(0, -1)).toEqual(wrong.slice(0, told.length - 1));
});

test("a delivery is dragged: the sheet shows what would follow, then keeps it; undo brings it back", async () => {
  const page = await dates(wall);
  const flag = flags(page).first();
  const before = await flag.getAttribute("aria-label");
  const box = (await flag.boundingBox())!;
  await page.mouse.move(box.x + 6, box.y + 8);
  await page.mouse.down();
  await page.mouse.move(box.x + 120, box.y + 8, { steps: 4 });
  await page.mouse.move(box.x + 240, box.y + 8, { steps: 4 });
  await moved(page).getByText("Would be").waitFor();
  expect(await page.locator(".mark-ghost").count()).toBeGreaterThan(0);
  await page.mouse.up();
  await moved(page).getByText("Moved", { exact: true }).waitFor();
  await expect.poll(() => flags(page).first().getAttribute("aria-label")).not.toBe(before);
  await page.locator("header").getByRole("button", { name: "undo" }).click();
  await expect.poll(() => flags(page).first().getAttribute("aria-label")).toBe(before);
});

test("the same by keys: space takes it in hand, Escape puts it back, space lets go", async () => {
  const page = await dates(wall);
  const flag = flags(page).first();
  const before = await flag.getAttribute("aria-label");
  await flag.focus();
  await page.keyboard.press("Space");
  await page.keyboard.press("PageDown");
  await page.keyboard.press("PageDown");
  await moved(page).getByText("Would be").waitFor();
  await page.keyboard.press("Escape");
  await moved(page).waitFor({ state: "detached" });
  expect(await flag.getAttribute("aria-label")).toBe(before);
  await page.keyboard.press("Space");
  await page.keyboard.press("PageDown");
  await page.keyboard.press("PageDown");
  await page.keyboard.press("Space");
  await moved(page).getByText("Moved", { exact: true }).waitFor();
  await expect.poll(() => flag.getAttribute("aria-label")).not.toBe(before);
});

test("the same by field: what would follow shows while the date is typed, and only the button keeps it", async () => {
  const page = await dates(wall);
  await flags(page).first().click();
  const field = page.locator("form").getByLabel(/ comes on$/);
  const before = await field.inputValue();
  const later = new Date(Date.parse(before) + 21 * 86_400_000).toISOString().slice(0, 10);
  await field.fill(later);
  await moved(page).getByText("Would be").waitFor();
  await page.getByRole("button", { name: "put it back" }).click();
  await moved(page).waitFor({ state: "detached" });
  expect(await field.inputValue()).toBe(before);
  await field.fill(later);
  await page.getByRole("button", { name: "keep this date" }).click();
  await moved(page).getByText("Moved", { exact: true }).waitFor();
  expect(await field.inputValue()).toBe(later);
});

test("arrow keys walk the steps, with Shift along the chalk line, over the whole sheet; Enter shows why", async () => {
  const page = await dates(cellar);
  await page.locator('[data-step][tabindex="0"]').focus();
  await page.keyboard.press("End");
  const last = await focused(page);
  expect(last).toContain("on the chalk line");
  await page.keyboard.press("Shift+ArrowLeft");
  await expect.poll(() => focused(page)).not.toBe(last);
  expect(await focused(page)).toContain("on the chalk line");
  const name = (await focused(page)).split(",")[0]!;
  await page.keyboard.press("Enter");
  await page.getByRole("complementary").getByRole("heading", { level: 2, name }).first().waitFor();
  await page.keyboard.press("Home");
  await expect.poll(() => focused(page)).not.toContain(name);
});

test("on a desk beside the side sheet ten weekends are in sight, wherever one has scrolled to", async () => {
  const page = await dates(cellar);
  await page.getByRole("toolbar").getByRole("button", { name: "ten weekends", exact: true }).waitFor();
  const weekends = () =>
    page.evaluate(() => {
      const frame = document.querySelector<HTMLElement>(".dates .frame")!.getBoundingClientRect();
      const left = document.querySelector(".dates .side")!.getBoundingClientRect().right;
      // Site days whose date is in sight; where no folded days lie between, they are of one weekend.
      const days = [...document.querySelectorAll<SVGTextElement>(".dates .head text")]
        .filter((text) => /^(Sa|Su)$/.test(text.textContent?.trim() ?? ""))
        .map((text) => text.getBoundingClientRect())
        .filter((box) => box.left >= left && box.right <= frame.right)
        .map((box) => box.left)
        .sort((a, b) => a - b);
      return days.filter((x, index) => index === 0 || x - days[index - 1]! > 34).length;
    });
  for (const x of [0, 700, 1500]) {
    await page.locator(".dates .frame").evaluate((frame, to) => frame.scrollTo(to, 0), x);
    // On to the next Saturday.
    await page.locator(".dates .frame").evaluate(async (frame) => {
      await new Promise((done) => setTimeout(done, 100));
      const left = document.querySelector(".dates .side")!.getBoundingClientRect().right;
      const days = [...document.querySelectorAll<SVGTextElement>(".dates .head text")].filter((text) => text.textContent?.trim() === "Sa");
      frame.scrollLeft += Math.min(...days.map((text) => text.getBoundingClientRect().left - left - 3).filter((x) => x > -1));
    });
    await expect.poll(weekends, { message: `at ${x} px` }).toBeGreaterThanOrEqual(10);
  }
});

test("lanes keep their height under a scrolling hand, and take that of what is in sight once it rests", async () => {
  const page = await dates(cellar);
  const heights = () => page.locator("[data-place] rect").evaluateAll((all) => all.map((one) => one.getAttribute("height")).join(" "));
  const before = await heights();
  const during = await page.locator(".dates .frame").evaluate(async (frame) => {
    const seen = new Set<string>();
    for (let step = 0; step < 12; step += 1) {
      frame.scrollLeft += 50;
      await new Promise(requestAnimationFrame);
      seen.add([...document.querySelectorAll("[data-place] rect")].map((one) => one.getAttribute("height")).join(" "));
    }
    return [...seen];
  });
  expect(during).toEqual([before]);
  await expect.poll(heights).not.toBe(before);
});

test("a tap on a part of the elevation lights its lane", async () => {
  const page = await dates(cellar);
  await page.locator(".corner rect").last().click();
  await page.locator(".body .mark-lane-lit").waitFor({ state: "attached" });
  expect(await page.locator('[data-place][aria-pressed="true"]').count()).toBe(1);
});

test("no two lines of text on the sheet meet, as the browser sets them", async () => {
  const page = await dates(cellar);
  const met = await page.evaluate(() => {
    const found: string[] = [];
    for (const svg of document.querySelectorAll(".dates svg")) {
      const texts = [...svg.querySelectorAll("text")].map((text) => ({ words: text.textContent, box: text.getBBox() }));
      texts.forEach((a, index) => {
        for (const b of texts.slice(index + 1)) {
          const wide = Math.min(a.box.x + a.box.width, b.box.x + b.box.width) - Math.max(a.box.x, b.box.x);
          const high =
            Math.min(a.box.y + a.box.height * 0.85, b.box.y + b.box.height * 0.85) - Math.max(a.box.y, b.box.y) - a.box.height * 0.25;
          if (wide > 1 && high > 1) found.push(`${a.words} / ${b.words}`);
        }
      });
    }
    return found;
  });
  expect(met).toEqual([]);
  // Set as wide as the table of widths says: a browser without the typeface would not come near.
  const widths = await page.evaluate(() =>
    [...document.querySelectorAll<SVGTextElement>(".side text, .foot-side text")].map((one) => ({
      text: one.textContent ?? "",
      wide: one.getComputedTextLength(),
    })),
  );
  expect(widths.length).toBeGreaterThan(10);
  for (const { text, wide } of widths) expect(wide / textWidth(text, 14), text).toBeCloseTo(1, 1.3);
});

test("the whole build, idle days unfolded, slack, key and table each show and go", async () => {
  const page = await dates(cellar);
  const button = (name: string) => page.getByRole("toolbar").getByRole("button", { name, exact: true });
  const width = () => page.locator(".body svg").evaluate((svg) => svg.clientWidth);
  const weekends = await width();
  await button("whole build").click();
  await expect.poll(width).toBeLessThan(weekends / 2);
  // All of it is in sight, and takes the room there is.
  const frame = page.locator(".dates .frame");
  expect(await frame.evaluate((one) => one.scrollWidth - one.clientWidth)).toBeLessThanOrEqual(0);
  expect(await frame.evaluate((one) => one.clientWidth - one.querySelector(".grid")!.clientWidth)).toBeLessThan(60);
  await button("ten weekends").click();
  await button("idle days").click();
  await expect.poll(width).not.toBe(weekends);
  await button("idle days").click();
  await button("slack").click();
  await expect.poll(() => page.locator(".mark-slack").count()).toBeGreaterThan(0);
  await page.locator('[data-step][tabindex="0"]').focus();
  await page.keyboard.press("w");
  await expect.poll(width).toBeLessThan(weekends / 2);
  await page.keyboard.press("w");
  await expect.poll(width).toBeGreaterThan(weekends / 2);
  await button("key").click();
  await page.getByRole("region", { name: "Key" }).getByText("the chalk line: sets the finish").waitFor();
  await button("key").click();
  await button("as a table").click();
  const rows = page.getByRole("row");
  expect(await rows.count()).toBeGreaterThan(139);
});

test("a phone shows the weekends as a column, in 16 px with targets of 44 px; held sideways the sheet", async () => {
  const page = await dates(wall, phone);
  await page.locator(".weekend").first().waitFor();
  expect(await page.locator(".dates svg [data-step]").count()).toBe(0);
  const small = await page
    .locator(".weekend button")
    .evaluateAll((all) => all.filter((one) => one.getBoundingClientRect().height < 44).length);
  expect(small).toBe(0);
  await page.setViewportSize({ width: 844, height: 390 });
  await page.locator("[data-step]").first().waitFor();
  const sizes = await page
    .locator(".dates svg text")
    .evaluateAll((all) => all.map((one) => Number.parseFloat(getComputedStyle(one).fontSize)));
  expect(Math.min(...sizes)).toBeGreaterThanOrEqual(16);
});
