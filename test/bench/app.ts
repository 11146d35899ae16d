import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { CDPSession, Page } from "playwright-core";
import { preview } from "vite";

/** A build of its own: what is built meanwhile for something else does not change it. */
const outDir = join(process.cwd(), "dist/bench-app");

/** Builds the app as it ships (with --as-built: takes the one there), opens it in a browser of desk size, and hands over its first page. */
export async function withApp(run: (page: Page) => Promise<void>): Promise<void> {
  const { launch } = (await import(
    pathToFileURL(join(process.cwd(), "test/tools/browser.mjs")).href
  )) as typeof import("../tools/browser.mjs");
  if (!process.argv.includes("--as-built")) {
    const built = spawnSync(
      process.execPath,
      ["node_modules/vite/bin/vite.js", "build", "--logLevel", "error", "--outDir", outDir, "--emptyOutDir"],
      {
        env: { ...process.env, NODE_ENV: "production" },
        stdio: "inherit",
      },
    );
    if (built.status !== 0) process.exit(built.status ?? 1);
  }
  const server = await preview({ build: { outDir }, preview: { port: 0, host: "127.0.0.1" }, logLevel: "error" });
  const browser = await launch();
  try {
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, locale: "en-US" });
    // Without the picker of the system the page uses a plain file field.
    await context.addInitScript(() => {
      Reflect.deleteProperty(window, "showOpenFilePicker");
    });
    const page = await context.newPage();
    await page.goto(server.resolvedUrls!.local[0]!);
    await run(page);
  } finally {
    await browser.close();
    await server.close();
  }
}

/**
 * The browser's own count of what the page's main thread has worked, ms: a task's duration, or of that what scripts or layout took. `own`: only the time
 * the thread itself was running, so that other work on the machine does not count.
 */
export async function counter(
  page: Page,
  own = false,
): Promise<(name: "TaskDuration" | "ScriptDuration" | "LayoutDuration") => Promise<number>> {
  const session: CDPSession = await page.context().newCDPSession(page);
  await session.send("Performance.enable", { timeDomain: own ? "threadTicks" : "timeTicks" });
  return async (wanted) => {
    const { metrics } = await session.send("Performance.getMetrics");
    return 1000 * (metrics.find(({ name }) => name === wanted)?.value ?? Number.NaN);
  };
}

/** "median 12.1 ms, 95 % 20.0 ms, most 31.4 ms" */
export function spread(times: readonly number[]): string {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (part: number) => sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))]!.toFixed(1);
  return `median ${at(0.5)} ms, 95 % ${at(0.95)} ms, most ${at(1)} ms`;
}
