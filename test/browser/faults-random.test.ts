import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { randomFrom } from "../../src/core/base";
import { openBrowser, wall } from "./app";
import { crash, goAlong, killWorker, offlineReady } from "./faults";
import { AppServer } from "./server";

/** How many edits; each is an added step, an undo or a redo. */
const count = Number(process.env.BATTERBOARD_FAULT_EDITS ?? 500);
const seed = Number(process.env.BATTERBOARD_SEED ?? 20270306);

let app: Awaited<ReturnType<typeof openBrowser>>;
const server = new AppServer();
let url = "";
beforeAll(async () => {
  url = await server.start();
  app = await openBrowser();
});
afterAll(async () => {
  await app.close();
  await server.stop();
});

type Edit = "undo" | "redo" | number;

/** What undo and redo must come to, written down a second time and as plainly as can be. */
interface Model {
  readonly done: readonly number[];
  readonly undone: readonly number[];
}
function after({ done, undone }: Model, edit: Edit): Model {
  if (edit === "undo") return done.length === 0 ? { done, undone } : { done: done.slice(0, -1), undone: [...undone, done.at(-1)!] };
  if (edit === "redo") return undone.length === 0 ? { done, undone } : { done: [...done, undone.at(-1)!], undone: undone.slice(0, -1) };
  return { done: [...done, edit], undone: [] };
}

/** Does the edits by the page's own fields and buttons, and tells at once how many of them the page has called saved. */
function edit(page: Page, edits: readonly Edit[], pauses_ms: readonly number[]): Promise<void> {
  return page.evaluate(
    async ([edits, pauses_ms]) => {
      const wait = (time_ms: number) => new Promise((next) => setTimeout(next, time_ms));
      const button = (name: string) => [...document.querySelectorAll("header button")].find((one) => one.textContent?.trim() === name);
      for (const [at, one] of edits.entries()) {
        if (typeof one === "string") (button(one) as HTMLButtonElement).click();
        else {
          const field = document.querySelector('[aria-label="A new step"]') as HTMLInputElement;
          field.value = `Extra ${one}`;
          field.dispatchEvent(new InputEvent("input", { bubbles: true }));
          await wait(0);
          // Another view came between typing and adding: nothing was added, so nothing after it counts.
          if (!field.isConnected) throw new Error(`Extra ${one} was typed, and its field is gone`);
          field.form!.requestSubmit();
        }
        await wait(pauses_ms[at] ?? 0);
        if (document.querySelector('[data-saved="saved"]')) (window as unknown as { heard(edits: number): void }).heard(at + 1);
      }
    },
    [edits, pauses_ms] as const,
  );
}

const extras = (page: Page): Promise<readonly number[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll(".row")]
      .flatMap((row) => [/Extra (\d+)/.exec(row.textContent ?? "")?.[1] ?? []].flat())
      .map(Number)
      .sort((a, b) => a - b),
  );

async function open(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  page.setDefaultTimeout(15_000);
  page.on("dialog", goAlong);
  await page.goto(url);
  return page;
}

async function steps(page: Page): Promise<void> {
  await page.getByText(/^Finishe[sd] /).waitFor();
  await page.getByRole("button", { name: "Steps", exact: true }).click();
  await page.getByLabel("A new step").waitFor();
}

/** Each leaves a page that shows what is kept. */
const faults: Readonly<Record<string, (page: Page, context: BrowserContext) => Promise<Page>>> = {
  "loaded again": async (page) => {
    await page.reload();
    return page;
  },
  "tab closed": async (page, context) => {
    await page.close({ runBeforeUnload: false });
    return open(context);
  },
  "process crashed": async (page, context) => {
    await crash(page);
    await page.close({ runBeforeUnload: false });
    return open(context);
  },
  "worker killed, then loaded again": async (page) => {
    await page.getByRole("button", { name: "Drawing", exact: true }).click();
    await killWorker(page);
    await page.reload();
    return page;
  },
  "another tab takes over": async (page, context) => {
    const other = await open(context);
    await other.getByRole("button", { name: "change it here instead" }).click();
    await other.getByText("This build is being changed in another tab.").waitFor({ state: "detached" });
    await page.close({ runBeforeUnload: false });
    return other;
  },
  "server stopped, then loaded again": async (page) => {
    await server.stop();
    await page.reload();
    await page.getByText(/^Finishe[sd] /).waitFor();
    await server.start();
    return page;
  },
};

test(`over ${count} random edits with random faults no edit is lost that the page called saved, and none comes out of order`, async () => {
  const random = randomFrom(seed);
  const pick = (below: number): number => random.int(0, below - 1);
  const context = await app.context();
  // Now and then the disk takes nothing for a while.
  await context.addInitScript(() => {
    const put = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (...args: Parameters<IDBObjectStore["put"]>) {
      if ((window as { full?: boolean }).full) throw new DOMException("full", "QuotaExceededError");
      return put.apply(this, args);
    };
  });
  let confirmed = 0;
  await context.exposeFunction("heard", (edits: number) => {
    confirmed = edits;
  });
  let page = await open(context);
  await page.getByRole("button", { name: wall }).click();
  await offlineReady(page);
  await steps(page);
  await page.locator('[data-saved="saved"]').waitFor();

  let models: readonly Model[] = [{ done: [], undone: [] }];
  let made = 0;
  let unconfirmedLost = 0;
  const met: Record<string, number> = {};
  let left: string[] = [];
  while (made < count) {
    const batch = Math.min(count - made, 1 + pick(40));
    const edits = Array.from({ length: batch }, (_, at): Edit => {
      const kind = pick(100);
      return kind < 55 ? made + at : kind < 85 ? "undo" : "redo";
    });
    const full = pick(4) === 0;
    if (full)
      await page.evaluate(() => {
        (window as { full?: boolean }).full = true;
      });
    confirmed = 0;
    const editing = edit(
      page,
      edits,
      edits.map(() => (pick(3) === 0 ? 25 : 0)),
    );
    // Half of the faults come in the middle of the edits.
    const cut = pick(2) === 0;
    if (cut) {
      editing.catch(() => undefined);
      await new Promise((next) => setTimeout(next, pick(250)));
    } else await editing;
    if (!cut && full && pick(2) === 0) {
      // There is room again before the fault: one press keeps everything.
      met["disk full, then not"] = (met["disk full, then not"] ?? 0) + 1;
      await page.evaluate(() => {
        (window as { full?: boolean }).full = false;
      });
      const again = page.getByRole("button", { name: "try again" });
      if (await again.isVisible()) await again.click();
    }
    const waited = !cut && pick(2) === 0 && !(await page.evaluate(() => (window as { full?: boolean }).full ?? false));
    if (waited) await page.locator('[data-saved="saved"]').waitFor();
    if (left.length === 0) left = random.shuffled(Object.keys(faults));
    const name = left.pop()!;
    met[name] = (met[name] ?? 0) + 1;
    page = await faults[name]!(page, context);
    await steps(page);

    // What is there must be what some number of the edits comes to, at least those called saved. Where several numbers come to the same
    // steps, they may differ in what redo brings: each is followed.
    const least = waited ? edits.length : confirmed;
    const shown = String(await extras(page));
    const fits = models.flatMap((first) => {
      const states = [first];
      for (const one of edits) states.push(after(states.at(-1)!, one));
      return states.flatMap((model, at) => (at >= least && String(model.done) === shown ? [{ model, at }] : []));
    });
    const where = `edit ${made} and on, ${name} ${cut ? "in the middle" : "after them"}, ${least} of ${edits.join(" ")} saved`;
    expect(fits.length, `${where}: not ${shown} after ${models.map(({ done }) => `[${done}]`)}`).toBeGreaterThan(0);
    unconfirmedLost += edits.length - Math.max(...fits.map(({ at }) => at));
    models = [...new Map(fits.map(({ model }) => [JSON.stringify(model), model])).values()];
    made += batch;
  }
  console.log(
    `${made} edits, seed ${seed}: ${JSON.stringify(met)}; ${unconfirmedLost} were cut off or lost before the page called them saved, 0 after`,
  );
  // The whole history is there too: undone to the first, the build is the example.
  await page.evaluate(async () => {
    const button = [...document.querySelectorAll("header button")].find((one) => one.textContent?.trim() === "undo") as HTMLButtonElement;
    while (!button.disabled) {
      button.click();
      await new Promise((next) => setTimeout(next, 0));
    }
  });
  expect(await extras(page)).toEqual([]);
}, 240_000);
