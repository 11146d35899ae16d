/** The program without a network: the worker that keeps its files, and a newer version of them that waits. */
export class Offline {
  /** A newer program is here and takes over at the next start. */
  update = $state(false);
  #registration: ServiceWorkerRegistration | null = null;

  /** Registers the worker once the page is up. Where a page may have none (plain http, private windows) all else works. */
  async begin(): Promise<void> {
    if (!import.meta.env.PROD || !("serviceWorker" in navigator)) return;
    try {
      this.#registration = await navigator.serviceWorker.register("./service-worker.js", { updateViaCache: "none" });
    } catch {
      return;
    }
    this.#look();
    this.#registration.addEventListener("updatefound", () => {
      this.#registration?.installing?.addEventListener("statechange", () => this.#look());
    });
  }

  later(): void {
    this.update = false;
  }

  /** Lets the newer program take over and loads the page again. Everything must be on disk by then. */
  async startNewer(): Promise<void> {
    if (await takeOver(this.#registration)) location.reload();
  }

  #look(): void {
    this.update = this.#registration?.waiting != null && navigator.serviceWorker.controller !== null;
  }
}

/** Before anything is shown: a newer program that waits takes over now, unless another tab still works with the old one. True where the page loads again. */
export async function newerFirst(): Promise<boolean> {
  if (!import.meta.env.PROD || !("serviceWorker" in navigator) || navigator.serviceWorker.controller === null) return false;
  const registration = await navigator.serviceWorker.getRegistration().catch(() => undefined);
  if (!registration?.waiting || (await tabsOf(registration.waiting)) > 1) return false;
  if (!(await takeOver(registration))) return false;
  location.reload();
  return true;
}

/** False where it does not: then the page goes on with the program it has, and does not load again and again. */
function takeOver(registration: ServiceWorkerRegistration | null): Promise<boolean> {
  const waiting = registration?.waiting;
  if (!waiting) return Promise.resolve(false);
  return new Promise((settle) => {
    navigator.serviceWorker.addEventListener("controllerchange", () => settle(true), { once: true });
    setTimeout(() => settle(false), 3000);
    waiting.postMessage({ say: "take over" });
  });
}

function tabsOf(worker: ServiceWorker): Promise<number> {
  return new Promise((settle) => {
    const channel = new MessageChannel();
    channel.port1.onmessage = ({ data }) => settle(Number(data));
    setTimeout(() => settle(Number.POSITIVE_INFINITY), 1000);
    worker.postMessage({ say: "how many tabs" }, [channel.port2]);
  });
}
