import type { Reporter, TestModule } from "vitest/node";

/**
 * Prints the one line that continuous integration reads: "12 passed, 0 failed, 0 skipped".
 * A test file that could not be loaded, and an error outside of any test, count as failed.
 */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const count = { passed: 0, failed: unhandled.length, skipped: 0 };
    for (const module of modules) {
      count.failed += module.errors().length;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        count[state === "passed" || state === "failed" ? state : "skipped"] += 1;
      }
    }
    console.log(`${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped`);
  }
}
