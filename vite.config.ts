import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { svelte } from "@sveltejs/vite-plugin-svelte";
import type { Plugin } from "vite";
import { defineConfig } from "vitest/config";

const top = import.meta.dirname;

// What page and worker do not use of these rooms is left out of them, with the packages that only that part needs (the layout of the order).
const treeshake = {
  moduleSideEffects: [{ test: /\/src\/(core|draw|words|files|store|worker)\/(?!entry\.ts).*\.ts$/, sideEffects: false }],
};

/** Writes the worker that keeps the program's files, with the list of what was built and a version that changes when any of it does. */
function offline(): Plugin {
  const fileName = "service-worker.js";
  const still = join(top, "src/app/public");
  return {
    name: "batterboard-offline",
    apply: "build",
    buildStart() {
      this.emitFile({ type: "chunk", id: join(top, "src/app/offline/service-worker.ts"), fileName });
    },
    generateBundle: {
      order: "post",
      handler(_options, bundle) {
        const worker = bundle[fileName];
        if (worker?.type !== "chunk") return this.error("The service worker was not built.");
        const parts = Object.values(bundle)
          // Every browser that has service workers reads woff2.
          .filter((part) => part !== worker && !/\.(map|woff)$/.test(part.fileName))
          .map((part) => [part.fileName, part.type === "chunk" ? part.code : part.source] as const);
        const all = [...parts, ...readdirSync(still).map((name) => [name, readFileSync(join(still, name))] as const)];
        all.sort(([a], [b]) => (a < b ? -1 : 1));
        const hash = createHash("sha256").update(worker.code);
        for (const [name, content] of all) hash.update(name).update(content);
        worker.code = worker.code
          .replaceAll("__files__", JSON.stringify(all.map(([name]) => `./${name}`)))
          .replaceAll("__version__", JSON.stringify(hash.digest("hex").slice(0, 16)));
      },
    },
  };
}

export default defineConfig({
  root: process.env.VITEST ? top : join(top, "src/app"),
  base: "./",
  plugins: [svelte({ configFile: join(top, "svelte.config.js") }), offline()],
  build: {
    outDir: join(top, "dist/app"),
    emptyOutDir: true,
    target: "es2023",
    rolldownOptions: { treeshake },
  },
  worker: { format: "es", rolldownOptions: { treeshake } },
  test: {
    testTimeout: 60_000,
    hookTimeout: 120_000,
    setupFiles: ["./test/tools/seed.ts"],
    reporters: ["default", "./test/tools/closing-line.ts"],
    projects: [
      {
        extends: true,
        test: { name: "rooms", environment: "node", include: ["src/**/*.test.ts", "test/**/*.test.ts"], exclude: ["test/browser/**"] },
      },
      {
        extends: true,
        test: {
          name: "browser",
          environment: "node",
          include: ["test/browser/**/*.test.ts"],
          globalSetup: "./test/tools/serve.ts",
          fileParallelism: false,
          // The page shares the machine with the other tests: what it misses only because it was slow, it gets when asked again.
          retry: 1,
        },
      },
    ],
  },
});
