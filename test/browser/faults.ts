import type { CDPSession, Dialog, Page } from "playwright-core";

/** Takes away the room to store anything; what is answered gives it back. The browser holds to it as long as the session lasts. */
export async function noRoom(page: Page): Promise<() => Promise<void>> {
  const session = await page.context().newCDPSession(page);
  await session.send("Storage.overrideQuotaForOrigin", { origin: new URL(page.url()).origin, quotaSize: 1 });
  return () => session.detach();
}

/** The process of the page dies, as it does when memory runs out. */
export async function crash(page: Page): Promise<void> {
  const session: CDPSession = await page.context().newCDPSession(page);
  const crashed = page.waitForEvent("crash");
  void session.send("Page.crash").catch(() => undefined);
  await crashed;
}

/** The worker dies with an error, as it does when it runs out of memory. */
export async function killWorker(page: Page): Promise<void> {
  await Promise.all(
    page.workers().map((worker) =>
      worker
        .evaluate(() => {
          setTimeout(() => {
            throw new Error("killed by the test");
          }, 0);
        })
        .catch(() => undefined),
    ),
  );
}

/** Waits until the worker that keeps the program's files has all of them. */
export async function offlineReady(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    while (navigator.serviceWorker.controller === null) await new Promise((next) => setTimeout(next, 20));
  });
}

/** Asked whether to stay, the builder goes. A page that is gone already needs no answer. */
export function goAlong(dialog: Dialog): void {
  dialog.accept().catch(() => undefined);
}
