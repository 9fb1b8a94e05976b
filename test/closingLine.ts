// Prints the run's counts as its last line: `N passed, N failed`, with `, N skipped` when some were.
import type { Reporter, TestModule } from 'vitest/node';

export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: ReadonlyArray<TestModule>, errors: ReadonlyArray<unknown>) {
    const count = { passed: 0, failed: errors.length, skipped: 0, pending: 0 };
    for (const module of modules) {
      // A file that could not be loaded has no tests to fail, and counts as one failure.
      if (module.errors().length > 0) count.failed += 1;
      for (const test of module.children.allTests()) count[test.result().state] += 1;
    }
    const skipped = count.skipped + count.pending;
    const line = `${count.passed} passed, ${count.failed} failed${skipped ? `, ${skipped} skipped` : ''}`;
    // After the other reporters, which print their summaries at this same event.
    setImmediate(() => console.log(line));
  }
}
