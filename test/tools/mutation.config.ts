import { defineConfig } from "vitest/config";

/** The tests that judge the order: fast ones only, so that each mutant is tried in seconds. */
export default defineConfig({
  test: {
    environment: "node",
    testTimeout: 20_000,
    include: ["src/core/access/**/*.test.ts", "src/core/graph/**/*.test.ts"],
  },
});
