import type { LayingPage } from './open-page.ts'

/** The page in which this script runs: what elsewhere is sent into a page is called as it stands. */
export const here = {
  evaluate: async (work: (...args: unknown[]) => unknown, ...args: unknown[]) => work(...args),
} as LayingPage
