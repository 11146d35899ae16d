import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";
import { expect } from "vitest";

const source = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

export async function violations(page: Page): Promise<readonly string[]> {
  await page.evaluate(source);
  return page.evaluate(async () => {
    const { axe } = window as unknown as {
      axe: { run(): Promise<{ violations: { id: string; nodes: { target: unknown[]; failureSummary?: string }[] }[] }> };
    };
    const { violations } = await axe.run();
    return violations.flatMap((found) => found.nodes.map((node) => `${found.id}: ${node.target.join(" ")} ${node.failureSummary ?? ""}`));
  });
}

/** Text that a reader sees smaller than it may be. */
export const tooSmall = (page: Page, least: number): Promise<readonly string[]> =>
  page.evaluate((px) => {
    const found: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const parent = node.parentElement;
      if (!parent || !node.textContent?.trim() || parent.closest("script, style, .unseen, noscript")) continue;
      if (parent.checkVisibility?.() && Number.parseFloat(getComputedStyle(parent).fontSize) < px) found.push(node.textContent.trim());
    }
    return found;
  }, least);

export const sideways = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);

/** Nothing for axe to find, nothing too small to read, nothing wider than the page. */
export async function expectClean(page: Page, least: number, what: string): Promise<void> {
  expect(await violations(page), what).toEqual([]);
  expect(await tooSmall(page, least), what).toEqual([]);
  expect(await sideways(page), what).toBeLessThanOrEqual(0);
}

/** What is touched and is not 44 px high; a box with words beside it is touched by its words too. */
export const tooLow = (page: Page): Promise<readonly (string | undefined)[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll("button, select, input, summary")]
      .filter((element) => {
        const boxed = element instanceof HTMLInputElement && ["checkbox", "radio"].includes(element.type);
        const touched = (boxed ? element.closest("label") : null) ?? element;
        return element.checkVisibility() && touched.getBoundingClientRect().height < 43.5;
      })
      .map((element) => element.textContent?.trim() || element.id || element.getAttribute("name") || element.tagName),
  );
