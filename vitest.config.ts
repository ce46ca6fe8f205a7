import path from 'node:path'
import { defineConfig } from 'vitest/config'
import { countReporter } from './tests/gate/count-reporter.ts'

/** Tests that start a browser; all others must do without one. */
const printing = ['tests/**/*.print.test.ts']

/** Tests that go through all pages of whole demos, or build them; all others are fast. */
const whole = ['tests/**/*.whole.test.ts']

/** Tells of no browser, so that none is started by mistake. */
const env = { OVALKEEP_BROWSER: path.join(import.meta.dirname, 'no-browser') }

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
          exclude: [...printing, ...whole],
          env,
          // One set of modules for all files of a worker: each demo is loaded once, not in every file.
          isolate: false,
          sequence: { groupOrder: 1 },
        },
      },
      {
        extends: true,
        test: { name: 'whole', include: whole, env, isolate: false, sequence: { groupOrder: 2 } },
      },
      {
        extends: true,
        test: {
          name: 'printing',
          include: printing,
          globalSetup: './tests/support/printed-folder.ts',
          // A PDF is read once by a worker, however many files look at it.
          isolate: false,
          // One more than there are cores: a worker often waits for its browser.
          maxWorkers: 3,
          sequence: { groupOrder: 3 },
        },
      },
    ],
  },
})
