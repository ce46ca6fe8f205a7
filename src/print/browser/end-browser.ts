import type { Browser } from 'puppeteer'

/** How long a browser may take to end by itself, ms. */
const POLITE_MS = 10_000

/** Ends a browser with all its processes, whatever they are doing. */
function killBrowser(browser: Browser): void {
  const child = browser.process()
  if (child?.pid === undefined) return
  try {
    // Its pages are processes of their own, which would outlive it where they hang; on Linux and
    // macOS the driver starts it with a group of processes of its own.
    if (process.platform === 'win32') child.kill('SIGKILL')
    else process.kill(-child.pid, 'SIGKILL')
  } catch {
    // It has ended already.
  }
}

/** Ends a browser that does not answer, or has lost a page. */
export async function endBrowser(browser: Browser): Promise<void> {
  killBrowser(browser)
  await browser.close().catch(() => undefined)
}

/** Closes a browser; one that does not do so soon is ended. */
export async function closeBrowser(browser: Browser): Promise<void> {
  const timer = setTimeout(() => killBrowser(browser), POLITE_MS)
  await browser.close().catch(() => undefined)
  clearTimeout(timer)
}

/** What the driver says where an answer has not come in time, or cannot come any more. */
const unanswered = /timed out|closed|crashed|detached|Printing failed/i

/**
 * Whether an error means that the browser itself has failed: it has ended, a page of it has, or it
 * does not answer. Anything else is a fault of what was asked of it.
 */
export const isBrowserFault = (error: unknown, browser: Pick<Browser, 'connected'>): boolean =>
  !browser.connected ||
  (error instanceof Error &&
    (error.name === 'TimeoutError' ||
      (['ProtocolError', 'TargetCloseError'].includes(error.name) &&
        unanswered.test(error.message))))

/** Ends a browser as soon as one of its pages crashes: whoever waits for that page would wait long. */
export function endWithPages(browser: Browser): void {
  browser.on('targetcreated', (target) => {
    if (target.type() !== 'page') return
    void target
      .page()
      .then((page) => page?.once('error', () => killBrowser(browser)))
      .catch(() => undefined)
  })
}
