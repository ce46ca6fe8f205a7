import type { Browser } from 'puppeteer'

/** The environment variables that the search looks at, as node gives them. */
export type Environment = Readonly<Record<string, string | undefined>>

/** One browser that may or may not be there. */
export type Candidate = {
  /** What a reader of the error message would recognise: a product and a path. */
  readonly name: string
  /** Starts it; rejects when it is absent or does not run. */
  readonly start: () => Promise<Browser>
}
