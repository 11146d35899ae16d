import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { saved, wall, withBrowser, written } from "./app";
import { offlineReady } from "./faults";
import { AppServer } from "./server";

const app = withBrowser();
const server = new AppServer();
let url = "";
const newer = mkdtempSync(join(tmpdir(), "batterboard-newer-"));
beforeAll(async () => {
  url = await server.start();
  // The same program with another version, as a new build of it is.
  cpSync("dist/app", newer, { recursive: true });
  const worker = join(newer, "service-worker.js");
  writeFileSync(worker, `${readFileSync(worker, "utf8").replace(/"[0-9a-f]{16}"/, '"00000000newer000"')}`);
  const page = join(newer, "index.html");
  writeFileSync(page, readFileSync(page, "utf8").replace("<body>", '<body data-newer="yes">'));
});
afterAll(async () => {
  await server.stop();
  rmSync(newer, { recursive: true, force: true });
});

const isNewer = (page: Page): Promise<string | undefined> => page.evaluate(() => document.body.dataset.newer);

test("with the server stopped it starts, opens every view and an example, keeps what is written, and plans", async () => {
  const context = await app.context();
  const first = await context.newPage();
  await first.goto(url);
  await offlineReady(first);
  await first.close();
  await server.stop();
  const page = app.watch(await context.newPage());
  await page.goto(url);
  await page.getByRole("button", { name: wall }).click();
  await page.getByText(/^Finishe[sd] /).waitFor();
  await written(page, "Tie the wall steel");
  await page.getByLabel("Notes", { exact: true }).fill("written without a network");
  await saved(page);
  for (const view of ["Dates", "Forms", "Cure", "Order"]) {
    await page.getByRole("navigation", { name: "Views" }).getByRole("button", { name: view, exact: true }).click();
    await page.getByText("This view could not be loaded").waitFor({ state: "detached" });
    await page.locator("main :is(h1, h2, svg)").first().waitFor({ state: "attached" });
  }
  await page.getByRole("button", { name: "Drawing", exact: true }).click();
  await page.locator("main svg").first().waitFor();
  await page.goto(`${url}?from=home-screen`);
  await page.getByText(/^Finishe[sd] /).waitFor();
  expect(await page.evaluate(() => document.fonts.check("16px 'Source Sans 3'"))).toBe(true);
  await server.start();
});

test("a newer program waits: it says so, never takes over in the middle of work, and is there at the next start", async () => {
  const context = await app.context();
  const page = app.watch(await context.newPage());
  await page.goto(url);
  await page.getByRole("button", { name: wall }).click();
  await offlineReady(page);
  server.folder = newer;
  try {
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
    const bar = page.getByText("A newer Batterboard is ready. It takes over when you start the next time.");
    await bar.waitFor();
    expect(await isNewer(page)).toBeUndefined();
    await written(page, "Tie the wall steel");
    await page.getByLabel("Notes", { exact: true }).fill("before the newer one");
    await saved(page);
    // Two tabs: the older program goes on in both, with every part of it.
    const second = app.watch(await context.newPage());
    await second.goto(url);
    await second.getByText("This build is being changed in another tab.").waitFor();
    expect(await isNewer(second)).toBeUndefined();
    await second.close();
    await page.reload();
    await page.getByText(/^Finishe[sd] /).waitFor();
    await expect.poll(() => isNewer(page)).toBe("yes");
    expect(await bar.count()).toBe(0);
    await page.getByRole("button", { name: "As written" }).click();
    expect(await page.getByLabel("Notes", { exact: true }).inputValue()).toBe("before the newer one");
    await server.stop();
    await page.reload();
    await page.getByText(/^Finishe[sd] /).waitFor();
    expect(await isNewer(page)).toBe("yes");
    await server.start();
  } finally {
    server.folder = "dist/app";
  }
});

test("or at once, by a button, when everything is on disk", async () => {
  const context = await app.context();
  const page = app.watch(await context.newPage());
  await page.goto(url);
  await page.getByRole("button", { name: wall }).click();
  await offlineReady(page);
  server.folder = newer;
  try {
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
    await page.getByRole("button", { name: "start it now" }).click();
    await expect.poll(() => isNewer(page).catch(() => undefined)).toBe("yes");
    await page.getByText(/^Finishe[sd] /).waitFor();
  } finally {
    server.folder = "dist/app";
  }
});

test("it can be installed: a manifest with a name, a start and icons of the sizes machines ask for", async () => {
  const context = await app.context();
  const page = app.watch(await context.newPage());
  await page.goto(url);
  const session = await context.newCDPSession(page);
  const { data, errors } = await session.send("Page.getAppManifest");
  expect(errors).toEqual([]);
  const manifest = JSON.parse(data ?? "{}");
  expect(manifest).toMatchObject({ name: "Batterboard", start_url: "./", display: "standalone" });
  for (const { src, sizes, type } of manifest.icons) {
    const size = await page.evaluate(async (address) => {
      const image = new Image();
      image.src = address;
      await image.decode();
      return `${image.naturalWidth}x${image.naturalHeight}`;
    }, new URL(src, url).href);
    if (type === "image/png") expect(size).toBe(sizes);
  }
  const { installabilityErrors } = await session.send("Page.getInstallabilityErrors");
  expect(installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== "in-incognito")).toEqual([]);
});
