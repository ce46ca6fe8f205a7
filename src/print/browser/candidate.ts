import type { Browser } from 'puppeteer'

/** One browser that may or may not be there. */
export type Candidate = {
  /** What a reader of the error message would recognise: a product and a path. */
  readonly name: string
  /** Starts it; rejects when it is absent or does not run. */
  readonly start: () => Promise<Browser>
}
