import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    reporters:
      process.env['CI'] === undefined
        ? ['default', './tests/support/count-reporter.ts']
        : ['dot', './tests/support/count-reporter.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    fileParallelism: true,
    maxWorkers: 2,
  },
})
