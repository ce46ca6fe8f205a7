import type { Browser, Page } from 'puppeteer'

/** Pages are made of what they carry: anything else would be a request to somewhere outside. */
const inside = /^(data|about|blob):/

/**
 * Opens a document for printing. Every request that would leave it is refused and, with fonts that did not load, makes
 * the opening fail.
 * @throws Error naming what was asked for, or which fonts are missing.
 */
export async function openPage(browser: Browser, html: string): Promise<Page> {
  const page = await browser.newPage()
  const refused: string[] = []
  await page.setRequestInterception(true)
  page.on('request', (request) => {
    if (inside.test(request.url())) void request.continue()
    else {
      refused.push(request.url())
      void request.abort()
    }
  })
  await page.emulateMediaType('print')
  await page.setContent(html, { waitUntil: 'load', timeout: 120_000 })
  // The compiler marks the names of functions with a helper that functions sent into the page would miss.
  await page.evaluate('globalThis.__name = (f) => f')
  const missing = await page.evaluate(async () => {
    const { fonts } = globalThis.document
    await Promise.all([...fonts].map((f) => f.load().catch(() => undefined)))
    return [...fonts].filter((f) => f.status !== 'loaded').map((f) => `${f.family} ${f.weight}`)
  })
  if (refused.length > 0) throw new Error(`the pages ask for something outside: ${refused.join(', ')}`)
  if (missing.length > 0) throw new Error(`fonts did not load: ${missing.join(', ')}`)
  return page
}
