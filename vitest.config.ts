import path from 'node:path'
import { defineConfig } from 'vitest/config'
import { countReporter } from './tests/gate/count-reporter.ts'

/** Tests that start a browser; all others must do without one, and are fast. */
const printing = ['tests/**/*.print.test.ts']

export default defineConfig({
  test: {
    reporters: [process.env['CI'] === undefined ? 'default' : 'dot', countReporter()],
    // Far beyond what any test takes, so that none fails because a machine is busy.
    testTimeout: 300_000,
    hookTimeout: 600_000,
    maxWorkers: 2,
    globalSetup: 'tests/fixtures/small/set-up.ts',
    projects: [
      {
        extends: true,
        test: {
          name: 'fast',
          include: ['tests/**/*.test.ts'],
          exclude: printing,
          env: { OVALKEEP_BROWSER: path.join(import.meta.dirname, 'no-browser') },
          // One set of modules for all files of a worker: each demo is loaded once, not in every file.
          isolate: false,
          sequence: { groupOrder: 1 },
        },
      },
      {
        extends: true,
        test: {
          name: 'printing',
          include: printing,
          globalSetup: './tests/support/printed-folder.ts',
          // A PDF is read once by a worker, however many files look at it.
          isolate: false,
          sequence: { groupOrder: 2 },
        },
      },
    ],
  },
})
