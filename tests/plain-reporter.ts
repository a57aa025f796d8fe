import type { Reporter, TestModule } from "vitest/node";

/** Closes a run with one plain line that any script can read. */
export default class PlainReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    let passed = 0;
    let failed = 0;
    for (const module of modules) {
      failed += module.errors().length > 0 ? 1 : 0;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state === "passed") passed++;
        if (state === "failed") failed++;
      }
    }
    console.log(`\nunit and component tests: ${passed} passed, ${failed} failed`);
  }
}
