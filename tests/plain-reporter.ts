import { mkdirSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import type { Reporter, TestModule } from "vitest/node";

/** Leaves the tally of a run in the file that `scripts/test.mjs` names. */
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
    console.log(`\nengine and components: ${passed} passed, ${failed} failed`);
    const file = process.env.TALLY_FILE;
    if (!file) return;
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, JSON.stringify({ passed, failed }));
  }
}
