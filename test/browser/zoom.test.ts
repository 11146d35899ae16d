import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { cellar, openBrowser } from "./app";

let app: Awaited<ReturnType<typeof openBrowser>>;
beforeAll(async () => {
  app = await openBrowser();
});
afterAll(async () => {
  app.expectNoFaults();
  await app.close();
});

async function dates(): Promise<Page> {
  const page = await app.example(cellar);
  await page.keyboard.press("2");
  await page.locator("[data-step]").first().waitFor();
  await page.locator(".dates .frame").focus();
  return page;
}
const width = (page: Page) => page.locator(".dates .body svg").evaluate((svg) => svg.clientWidth);

/** The first day of the sheet that begins in sight, and how far from the edge, px. */
const leftmost = (page: Page) =>
  page.evaluate(() => {
    const left = document.querySelector(".dates .side")!.getBoundingClientRect().right;
    const months = [...document.querySelectorAll<SVGTextElement>(".dates .head text")].filter((text) =>
      /^\d+$/.test(text.textContent ?? ""),
    );
    const first = months
      .map((text) => ({ day: text.textContent, from: text.getBoundingClientRect().left - left }))
      .filter(({ from }) => from > -2)
      .sort((a, b) => a.from - b.from)[0]!;
    return { ...first, from: Math.round(first.from) };
  });

/** Of the steps in sight: how many there are to touch, and how many of them lie on their block. */
const touched = (page: Page) =>
  page.evaluate(() => {
    const frame = document.querySelector(".dates .frame")!.getBoundingClientRect();
    const left = document.querySelector(".dates .side")!.getBoundingClientRect().right;
    const blocks = [...document.querySelectorAll(".dates .body .mark-block, .dates .body .mark-block-pour")].map((one) =>
      one.getBoundingClientRect(),
    );
    const rings = [...document.querySelectorAll("[data-step] .focus")]
      .map((ring) => ring.getBoundingClientRect())
      .filter((ring) => ring.left > left && ring.right < frame.right && ring.top > frame.top && ring.bottom < frame.bottom);
    const on = rings.filter((ring) =>
      blocks.some((block) => Math.abs(block.left - ring.left - 4) < 2 && Math.abs(block.top - ring.top - 4) < 2),
    );
    return { there: rings.length, on: on.length };
  });

test("wider days keep the day at the left edge, and what is touched follows what is drawn", async () => {
  const page = await dates();
  await page.locator(".dates .frame").evaluate((frame) => frame.scrollTo(600, 0));
  await page.waitForTimeout(400);
  const before = { width: await width(page), left: await leftmost(page) };
  await page.keyboard.press("+");
  await expect.poll(() => width(page)).toBeGreaterThan(before.width * 1.1);
  const after = await leftmost(page);
  expect(after.day).toBe(before.left.day);
  expect(after.from).toBeLessThanOrEqual(Math.ceil(before.left.from * 1.4) + 2);
  await page.waitForTimeout(100);
  const { there, on } = await touched(page);
  expect(there).toBeGreaterThan(5);
  expect(on).toBe(there);
});

test("several presses at once come to the last; as many back come to where it began", async () => {
  const page = await dates();
  const before = await width(page);
  const press = (key: string, times: number) =>
    page.evaluate(
      ([one, count]) => {
        for (let at = 0; at < count; at += 1)
          document.activeElement!.dispatchEvent(new KeyboardEvent("keydown", { key: one, bubbles: true, cancelable: true }));
      },
      [key, times] as const,
    );
  await press("+", 3);
  await expect.poll(() => width(page)).toBeGreaterThan(before * 1.6);
  await press("-", 3);
  await expect.poll(() => width(page)).toBe(before);
  // Back before the other was there: nothing changes.
  await page.evaluate(() => {
    for (const key of ["+", "-"])
      document.activeElement!.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true }));
  });
  await page.waitForTimeout(300);
  expect(await width(page)).toBe(before);
});

test("a wheel with the control key down zooms by notches; small pulls add up", async () => {
  const page = await dates();
  const before = await width(page);
  const box = (await page.locator(".dates .frame").boundingBox())!;
  await page.mouse.move(box.x + 500, box.y + 300);
  await page.keyboard.down("Control");
  await page.mouse.wheel(0, -20);
  await page.waitForTimeout(300);
  expect(await width(page)).toBe(before);
  await page.mouse.wheel(0, -20);
  await page.mouse.wheel(0, -20);
  await expect.poll(() => width(page)).toBeGreaterThan(before * 1.1);
  await page.mouse.wheel(0, 120);
  await page.keyboard.up("Control");
  await expect.poll(() => width(page)).toBe(before);
});

test("what else is asked of the sheet while wider days are worked out is not lost", async () => {
  const page = await dates();
  const before = await width(page);
  await page.evaluate(() => {
    for (const key of ["+", "s"])
      document.activeElement!.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true }));
  });
  await expect.poll(() => width(page)).toBeGreaterThan(before * 1.1);
  await expect.poll(() => page.locator(".mark-slack").count()).toBeGreaterThan(0);
});

test("two fingers stretch the sheet as it is, and when they let go the day between them is where it was", async () => {
  const page = await app.example(cellar, { hasTouch: true, viewport: { width: 844, height: 390 } });
  await page.keyboard.press("2");
  await page.locator("[data-step]").first().waitFor({ state: "attached" });
  // On a low screen too there are buttons for the same.
  expect(await page.getByRole("toolbar").evaluate((tools) => tools.clientHeight)).toBeGreaterThan(40);
  await page.locator(".dates .frame").evaluate((frame) => {
    frame.scrollIntoView();
    frame.scrollTo(600, 100);
  });
  await page.waitForTimeout(400);
  const before = await width(page);
  const box = (await page.locator(".dates .frame").boundingBox())!;
  const cdp = await page.context().newCDPSession(page);
  const [mid, y] = [box.x + 480, Math.max(0, box.y) + 200];
  const fingers = (type: "touchStart" | "touchMove", apart: number) =>
    cdp.send("Input.dispatchTouchEvent", {
      type,
      touchPoints: [-1, 1].map((side, id) => ({ x: mid + (side * apart) / 2, y, id })),
    });
  /** How far from between the fingers the nearest site day of that number begins, px; without one, the nearest of all. */
  const between = (number?: string | null) =>
    page.evaluate(
      ([mid, number]) => {
        const days = [...document.querySelectorAll<SVGTextElement>(".dates .head text")].filter(({ textContent }) =>
          number ? textContent === number : /^\d+$/.test(textContent ?? ""),
        );
        const far = (text: SVGTextElement) => Math.round(text.getBoundingClientRect().left - mid);
        const nearest = days.sort((a, b) => Math.abs(far(a)) - Math.abs(far(b)))[0]!;
        return { day: nearest.textContent, far: far(nearest) };
      },
      [mid, number] as const,
    );
  const stood = await between();
  await fingers("touchStart", 80);
  for (const apart of [90, 110, 136]) await fingers("touchMove", apart);
  const stretched = () => page.locator(".dates .body > svg").evaluate((svg) => getComputedStyle(svg).transform);
  expect(await stretched()).toMatch(/^matrix\(1\.7,/);
  expect(await width(page)).toBe(before);
  await cdp.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
  await expect.poll(() => width(page)).toBeGreaterThan(before * 1.5);
  await expect.poll(stretched).toBe("none");
  const stands = await between(stood.day);
  expect(Math.abs(stands.far)).toBeLessThanOrEqual(Math.ceil(Math.abs(stood.far) * 1.69) + 3);
  await fingers("touchStart", 136);
  for (const apart of [110, 80]) await fingers("touchMove", apart);
  await cdp.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
  await expect.poll(() => width(page)).toBe(before);
});
