import type { Reporter, TestModule } from 'vitest/node';

/** Closes the run with one plain line of counts, which continuous integration can read. */
export default class SummaryReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]) {
    const count = { passed: 0, failed: 0, skipped: 0, pending: 0 };
    for (const module of modules) {
      for (const test of module.children.allTests()) count[test.result().state] += 1;
    }
    console.log(`${count.passed} passed, ${count.failed} failed, ${count.skipped + count.pending} skipped`);
  }
}
