import type { Reporter, TestModule } from "vitest/node";

/** Ends the run with one plain line that any machine can read: "N passed, N failed, N skipped". */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: ReadonlyArray<TestModule>, errors: ReadonlyArray<unknown>): void {
    let passed = 0;
    let failed = errors.length;
    let skipped = 0;
    for (const module of modules) {
      failed += module.errors().length;
      for (const test of module.children.allTests()) {
        const state = test.result().state;
        if (state === "passed") passed += 1;
        else if (state === "failed") failed += 1;
        else skipped += 1;
      }
    }
    process.stdout.write(`\n${passed} passed, ${failed} failed, ${skipped} skipped\n`);
  }
}
