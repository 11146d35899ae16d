import { defineConfig } from "vitest/config";

/**
 * The tests that judge a mutant: fast ones only, so that each is tried in seconds. Stryker runs of them those alone that import the mutated file and
 * come across the mutant, so that every room's can stand here together.
 */
export default defineConfig({
  test: {
    environment: "node",
    testTimeout: 20_000,
    setupFiles: ["./test/tools/seed.ts"],
    // One load of the modules for all test files of a mutant; no file here leaves anything behind for the next.
    isolate: false,
    include: ["src/core/{access,graph,concrete}/**/*.test.ts", "test/tools/mutation.builds.ts", "test/published/{concrete,yeh}.test.ts"],
  },
});
