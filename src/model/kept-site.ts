/**
 * What a phone keeps of a site, so that it works without signal: files by their path below the site,
 * each with the first digits of the SHA-256 of its bytes, in hex.
 */
export type KeptSite = {
  /** Stands for all files together: another one is another revision. */
  readonly version: string
  /** Kept whole or not at all: pages, styles, scripts, fonts. */
  readonly files: Readonly<Record<string, string>>
  /** Printed files, kept when somebody asks for them. */
  readonly papers: Readonly<Record<string, string>>
}

/** What a page asks of the worker that keeps the site. */
export type AskOfWorker = 'show the newer revision' | 'keep the papers'

/** What the foot of a page says of what is kept. */
export type SavedWords = {
  /** Which revision it is. */
  readonly saved: string
  /** That there is a newer one, and the button that shows it. */
  readonly newer: string
  readonly show: string
}
