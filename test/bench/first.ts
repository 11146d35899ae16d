import { mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";
import type { Browser, Page } from "playwright-core";
import { build, type Plugin, preview } from "vite";

// What the first view costs: the large example as it was left open in Order, from an empty cache, the page's main thread slowed four times. Scripts are those asked
// for before the headline with the finish date is painted, gzipped; the worker's script, which runs beside the page and is not slowed by the browser's switch,
// is counted apart. `--modules` lists what lies in each of the page's scripts, by its length before it is made small; `--as-built` takes the last build of this script.

const wanted = { script_kB: 170, paint_ms: 1500, slower: 4 };
const runs = 7;
const outDir = join(process.cwd(), "dist/bench/first-app");

type Modules = readonly (readonly [module: string, length: number])[];
const modulesOf = new Map<string, Modules>();
const list: Plugin = {
  name: "list-modules",
  generateBundle: {
    order: "post",
    handler(_options, bundle) {
      for (const part of Object.values(bundle)) {
        if (part.type !== "chunk") continue;
        const modules = Object.entries(part.modules).map(
          ([id, { renderedLength }]) => [id.replace(process.cwd(), ""), renderedLength] as const,
        );
        modulesOf.set(
          part.fileName,
          modules.sort(([, a], [, b]) => b - a),
        );
      }
    },
  },
};

interface Opened {
  /** From the start of the navigation until the frame with the headline was out, ms. */
  readonly painted_ms: number;
  readonly scripts: readonly string[];
  readonly workers: readonly string[];
}

async function opened(browser: Browser, url: string): Promise<Opened> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, locale: "en-US", serviceWorkers: "block" });
  try {
    const page = await context.newPage();
    await page.goto(url);
    await page.getByRole("button", { name: "Bank cellar" }).first().click();
    await page.getByText(/^Finishes /).waitFor();
    await page
      .getByText(/^saved|^kept/i)
      .first()
      .waitFor({ timeout: 5000 })
      .catch(() => undefined);
    const session = await context.newCDPSession(page);
    await session.send("Network.enable");
    await session.send("Network.setCacheDisabled", { cacheDisabled: true });
    await session.send("Emulation.setCPUThrottlingRate", { rate: wanted.slower });
    await page.addInitScript(watchHeadline);
    await page.reload();
    const painted_ms = await painted(page);
    const scripts = await page.evaluate(
      (until) =>
        performance
          .getEntriesByType("resource")
          .filter(({ name, startTime }) => /\.js$/.test(name) && startTime < until)
          .map(({ name }) => name),
      painted_ms,
    );
    const workers = page.workers().map((worker) => worker.url());
    return { painted_ms, scripts: [...new Set(scripts)].filter((name) => !workers.includes(name)), workers };
  } finally {
    await context.close();
  }
}

/** Runs in the page before anything else: writes down when the headline has been painted. */
function watchHeadline(): void {
  const there = () => {
    const heading = [...document.querySelectorAll("main h1, main h2, main p")].find((one) =>
      /^Finishes .*\d/.test(one.textContent?.trim() ?? ""),
    );
    return heading !== undefined && heading.getBoundingClientRect().height > 0;
  };
  const observer = new MutationObserver(() => {
    if (!there()) return;
    observer.disconnect();
    // A task set in the frame that lays it out runs when that frame is out.
    requestAnimationFrame(() => setTimeout(() => Object.assign(window, { paintedAt: performance.now() })));
  });
  observer.observe(document, { subtree: true, childList: true, characterData: true });
}

async function painted(page: Page): Promise<number> {
  const handle = await page.waitForFunction(() => (window as { paintedAt?: number }).paintedAt, null, { timeout: 60_000 });
  return Number(await handle.jsonValue());
}

const fileOf = (url: string): string => new URL(url).pathname.slice(1);
const zipped_kB = (file: string): number => gzipSync(readFileSync(join(outDir, file))).length / 1000;

if (!process.argv.includes("--as-built")) {
  process.env.NODE_ENV = "production";
  mkdirSync(outDir, { recursive: true });
  await build({ logLevel: "warn", plugins: [list], build: { outDir, emptyOutDir: true } });
}
const { launch } = (await import(
  pathToFileURL(join(process.cwd(), "test/tools/browser.mjs")).href
)) as typeof import("../tools/browser.mjs");
const server = await preview({ preview: { port: 0, host: "127.0.0.1" }, build: { outDir }, logLevel: "error" });
const browser = await launch();
try {
  const all: Opened[] = [];
  for (let run = 0; run < runs; run += 1) all.push(await opened(browser, server.resolvedUrls!.local[0]!));
  // A script asked for just before the paint in one run and just after in another is counted.
  const scripts = [...new Set(all.flatMap((one) => one.scripts.map(fileOf)))];
  const sizes = scripts.map((file) => [file, zipped_kB(file)] as const).sort(([, a], [, b]) => b - a);
  for (const [file, kB] of sizes) {
    console.log(`${kB.toFixed(1).padStart(7)} kB  ${file}`);
    if (process.argv.includes("--modules"))
      for (const [module, length] of modulesOf.get(file) ?? []) console.log(`${String(length).padStart(17)}  ${module}`);
  }
  const total_kB = sizes.reduce((sum, [, kB]) => sum + kB, 0);
  const workers = [...new Set(all.flatMap((one) => one.workers.map(fileOf)))];
  const times = all.map((one) => one.painted_ms).sort((a, b) => a - b);
  const median_ms = times[Math.floor(times.length / 2)]!;
  console.log(`the page's scripts before the first useful paint: ${total_kB.toFixed(1)} kB gzipped; wanted at most ${wanted.script_kB}`);
  console.log(`the worker's, apart: ${workers.map((file) => `${zipped_kB(file).toFixed(1)} kB  ${file}`).join(", ") || "none asked for"}`);
  console.log(
    `first useful paint, processor ${wanted.slower} times slower: median ${median_ms.toFixed(0)} ms of ${runs} (${times[0]!.toFixed(0)} to ${times.at(-1)!.toFixed(0)}); wanted under ${wanted.paint_ms}`,
  );
  if (total_kB > wanted.script_kB || median_ms >= wanted.paint_ms) process.exitCode = 1;
} finally {
  await browser.close();
  await server.close();
}
