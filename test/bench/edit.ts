import type { Page } from "playwright-core";
import { counter, spread, withApp } from "./app";

// What an edit of the large example costs, in the browser, as it ships: a field of a step is typed in, in Order beside the list and in Dates beside the
// sheet. Until it is on the screen, by the wall clock (a busy machine counts), and how long the main thread itself ran for it (a busy machine does not).

const edits = 50;

await withApp(async (page) => {
  await page.getByRole("button", { name: "Bank cellar with porch and potting shed" }).click();
  await page.getByRole("button", { name: "Steps", exact: true }).click();
  await page.locator(".row", { hasText: "Tie the vault steel" }).click();
  await page.getByRole("button", { name: "As written" }).click();
  await page.getByLabel("Work", { exact: true }).waitFor();
  await measure(page, "Order");
  await page.getByRole("button", { name: "Dates", exact: true }).click();
  await page.locator("[data-step]").first().waitFor({ state: "attached" });
  await page.waitForTimeout(1500);
  await measure(page, "Dates");
});

async function measure(page: Page, view: string): Promise<void> {
  await typed(page, 10);
  const ran = await counter(page, true);
  const kinds = ["TaskDuration", "ScriptDuration", "LayoutDuration"] as const;
  const before = await Promise.all(kinds.map(ran));
  const taken = await typed(page, edits);
  const after = await Promise.all(kinds.map(ran));
  const [task, script, layout] = kinds.map((_, index) => ((after[index]! - before[index]!) / edits).toFixed(1));
  console.log(
    `${view}: on the screen after ${spread(taken)}; the thread ran ${task} ms an edit, ${script} of it scripts, ${layout} layout`,
  );
}

function typed(page: Page, count: number): Promise<number[]> {
  return page.evaluate(async (count) => {
    const field = [...document.querySelectorAll("label")].find((label) => label.textContent === "Work")?.control as HTMLInputElement;
    const frame = (): Promise<void> => new Promise((next) => requestAnimationFrame(() => setTimeout(next, 0)));
    const taken: number[] = [];
    for (let edit = 0; edit < count; edit += 1) {
      await frame();
      const start = performance.now();
      field.value = `${9 + (edit % 4)} h`;
      field.dispatchEvent(new InputEvent("input", { bubbles: true }));
      await frame();
      taken.push(performance.now() - start);
    }
    return taken;
  }, count);
}
