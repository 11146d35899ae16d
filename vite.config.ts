import { join } from "node:path";
import { svelte } from "@sveltejs/vite-plugin-svelte";
import { defineConfig } from "vitest/config";

const top = import.meta.dirname;

export default defineConfig({
  root: process.env.VITEST ? top : join(top, "src/app"),
  base: "./",
  plugins: [svelte({ configFile: join(top, "svelte.config.js") })],
  build: { outDir: join(top, "dist/app"), emptyOutDir: true, target: "es2023" },
  worker: { format: "es" },
  test: {
    testTimeout: 60_000,
    hookTimeout: 120_000,
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
