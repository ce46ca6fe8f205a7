import type { Reporter, TestModule } from 'vitest/node'

/** Ends a run with one plain line of counts, after the runner's own summary. */
export default class CountReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const tests = modules.flatMap((m) => [...m.children.allTests()])
    const count = (state: string): number => tests.filter((t) => t.result().state === state).length
    // A file that cannot even be loaded has no tests, but it is a failure.
    const broken = modules.filter(
      (m) =>
        m.state() === 'failed' &&
        [...m.children.allTests()].every((t) => t.result().state !== 'failed'),
    ).length
    const skipped = count('skipped')
    process.stdout.write(
      `\n${count('passed')} passed, ${count('failed') + broken} failed${skipped > 0 ? `, ${skipped} skipped` : ''}\n`,
    )
  }
}
