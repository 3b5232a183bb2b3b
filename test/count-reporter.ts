import { writeFileSync } from 'node:fs';
import type { Reporter, TestModule } from 'vitest/node';

/** Writes how many tests passed, failed and were skipped, for the line `npm test` ends with. */
export default class CountReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const file = process.env['EASEWRIGHT_TEST_COUNT'];
    if (!file) return;
    const count = { passed: 0, failed: unhandled.length, skipped: 0 };
    for (const module of modules) {
      for (const test of module.children.allTests()) {
        const state = test.result().state;
        if (state === 'passed') count.passed += 1;
        else if (state === 'skipped') count.skipped += 1;
        else count.failed += 1;
      }
      // A file that could not be loaded has no tests to count but has failed all the same.
      count.failed += module.errors().length;
    }
    writeFileSync(file, JSON.stringify(count));
  }
}
