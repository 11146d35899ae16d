import { join } from "node:path";
import { svelte } from "@sveltejs/vite-plugin-svelte";
import { defineConfig } from "vitest/config";

const top = import.meta.dirname;

export default defineConfig({
  root: process.env.VITEST ? top : join(top, "src/app"),
  base: "./",
  plugins: [svelte({ configFile: join(top, "svelte.config.js") })],
  build: {
    outDir: join(top, "dist/app"),
    emptyOutDir: true,
    target: "es2023",
    // What the page does not use of these rooms is left out of it, with the packages that only that part needs (the layout of the order).
    rolldownOptions: {
      treeshake: { moduleSideEffects: [{ test: /\/src\/(core|draw|words|files|store|worker)\/.*\.ts$/, sideEffects: false }] },
    },
  },
  worker: { format: "es" },
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
        },
      },
    ],
  },
});
