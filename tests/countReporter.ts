import type { Reporter, TestModule } from 'vitest/node';

/** Prints `N passed, N failed` as the very last line of a test run, for people and machines that read only that. */
export default class CountReporter implements Reporter {
  onTestRunEnd(modules: ReadonlyArray<TestModule>): void {
    let passed = 0;
    let failed = 0;
    for (const module of modules) {
      let failedHere = 0;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state === 'passed') passed += 1;
        else if (state === 'failed') failedHere += 1;
      }
      // A file that died before its tests ran counts as one failure.
      if (failedHere === 0 && module.state() === 'failed') failedHere = 1;
      failed += failedHere;
    }
    process.on('exit', (code) => {
      // What ended the run beside the tests, such as their set-up, is a failure too.
      if (code !== 0 && failed === 0) failed = 1;
      process.stdout.write(`${passed} passed, ${failed} failed\n`);
    });
  }
}
