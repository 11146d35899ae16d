import { svelte } from "@sveltejs/vite-plugin-svelte";
import { defineConfig } from "vitest/config";

export default defineConfig({
  root: ".",
  base: "./",
  plugins: [svelte()],
  build: { outDir: "dist/app", target: "es2023", rollupOptions: { input: "src/app/index.html" } },
  worker: { format: "es" },
  test: {
    include: ["src/**/*.test.ts", "test/**/*.test.ts"],
    exclude: ["test/browser/**", "node_modules/**"],
    environment: "node",
    testTimeout: 60_000,
  },
});
