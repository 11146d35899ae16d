/// <reference lib="webworker" />
// Keeps the program's own files, so that it starts without a network. It keeps nothing of the builds.
// `files` and `version` are put in when the program is built: what it consists of, and a name for just these contents.
declare const __files__: readonly string[];
declare const __version__: string;

const worker = self as unknown as ServiceWorkerGlobalScope;
const prefix = "batterboard-";
const mine = prefix + __version__;
/** Vary says nothing about files that lie still: a page's own requests differ from those made at install in headers only. */
const match = { ignoreVary: true, ignoreSearch: true } as const;
const home = "./index.html";

async function install(): Promise<void> {
  const cache = await caches.open(mine);
  // A file there has a hash in its name and never changes: one that an older version has is not fetched again.
  const fetched = __files__.map(async (file) => {
    const known = file.startsWith("./assets/") ? await caches.match(file, match) : undefined;
    const response = known ?? (await fetch(file, { cache: "no-cache" }));
    if (!response.ok) throw new Error(`${file}: ${response.status}`);
    await cache.put(file, response);
  });
  await Promise.all(fetched);
}

async function activate(): Promise<void> {
  const names = (await caches.keys()).filter((name) => name.startsWith(prefix));
  // The version before stays: a tab that still runs it may yet ask for a part of it.
  const old = names.filter((name) => name !== mine).slice(0, -1);
  await Promise.all(old.map((name) => caches.delete(name)));
  await worker.clients.claim();
}

async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(mine);
  const known = await cache.match(request.mode === "navigate" ? home : request, match);
  return known ?? (await caches.match(request, match)) ?? fetch(request);
}

worker.addEventListener("install", (event) => event.waitUntil(install()));
worker.addEventListener("activate", (event) => event.waitUntil(activate()));
worker.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method === "GET" && new URL(request.url).origin === worker.location.origin) event.respondWith(answer(request));
});
worker.addEventListener("message", (event) => {
  if (event.data?.say === "take over") event.waitUntil(worker.skipWaiting());
  if (event.data?.say !== "how many tabs") return;
  const counted = worker.clients.matchAll({ type: "window", includeUncontrolled: true });
  event.waitUntil(counted.then((tabs) => event.ports[0]?.postMessage(tabs.length)));
});
