import { closeBrowser, endBrowser, isBrowserFault } from './end-browser.ts'
import type { BrowserFound } from './find-browser.ts'
import type { NoBrowser } from './no-browser.ts'

/** The browser has failed twice at the same work. */
type BrowserFailed = { readonly kind: 'failed'; readonly message: string }

type Used<T> = { readonly kind: 'done'; readonly value: T; readonly browser: BrowserFound }

/** One browser for everything that is printed by a command, one thing after the other. */
export type KeptBrowser = {
  /** Lets it start while there is other work. */
  readonly warm: () => void
  /** Waits for its start. @returns whether anything can be printed. */
  readonly isThere: () => Promise<boolean>
  /**
   * Does something with the browser when nobody else does. Where the browser hangs, crashes or is
   * killed, the work is done once more with a fresh one.
   * @throws whatever the work throws while the browser is well.
   */
  readonly use: <T>(
    work: (found: BrowserFound) => Promise<T>,
  ) => Promise<Used<T> | NoBrowser | BrowserFailed>
  readonly close: () => Promise<void>
}

/** How often something is tried with a browser that fails. */
const tries = 2

const failed = (name: string): BrowserFailed => ({
  kind: 'failed',
  message: `The browser (${name}) ended or did not answer any more while it was printing, ${tries} times; often the computer has too little memory left. Close other programs and build again: what was printed already is not printed anew.`,
})

/** @param find Finds a browser and starts it. */
export function keepBrowser(find: () => Promise<BrowserFound | NoBrowser>): KeptBrowser {
  let current: Promise<BrowserFound | NoBrowser> | undefined
  let last: Promise<unknown> = Promise.resolve()

  const start = (): Promise<BrowserFound | NoBrowser> => {
    current ??= find()
    return current
  }
  /** The browser that is there, unless it has ended meanwhile. */
  const ready = async (): Promise<BrowserFound | NoBrowser> => {
    const found = await start()
    if (found.kind !== 'found' || found.browser.connected) return found
    current = undefined
    return start()
  }
  const tryTwice = async <T>(work: (found: BrowserFound) => Promise<T>) => {
    let name = ''
    for (let n = 0; n < tries; n++) {
      const found = await ready()
      if (found.kind !== 'found') return found
      try {
        return { kind: 'done', value: await work(found), browser: found } as const
      } catch (error) {
        if (!isBrowserFault(error, found.browser)) throw error
        name = found.name
        current = undefined
        await endBrowser(found.browser)
      }
    }
    return failed(name)
  }
  return {
    warm: () => void start(),
    isThere: async () => (await start()).kind === 'found',
    use: (work) => {
      const turn = last.then(() => tryTwice(work))
      last = turn.catch(() => undefined)
      return turn
    },
    close: async () => {
      await last
      const found = await current
      if (found?.kind === 'found') await closeBrowser(found.browser)
    },
  }
}
