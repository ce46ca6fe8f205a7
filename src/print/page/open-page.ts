import type { Browser, Page } from 'puppeteer'

/** Pages are made of what they carry: anything else would be a request to somewhere outside. */
const inside = /^(data|about|blob):/

/**
 * Opens a document for printing. The browser is started so that it cannot reach any host; a document that tries to, or
 * whose fonts do not load, makes the opening fail.
 * @throws Error naming what was asked for, or which fonts are missing.
 */
export async function openPage(browser: Browser, html: string): Promise<Page> {
  const page = await browser.newPage()
  const outside: string[] = []
  // Only watched, not intercepted: stopping every font's data URL for a word costs seconds.
  page.on('request', (request) => {
    if (!inside.test(request.url())) outside.push(request.url())
  })
  await page.emulateMediaType('print')
  await page.setContent(html, { waitUntil: 'load', timeout: 120_000 })
  // The compiler marks the names of functions with a helper that functions sent into the page would miss.
  await page.evaluate('globalThis.__name = (f) => f')
  const missing = await page.evaluate(async () => {
    const { fonts } = globalThis.document
    await Promise.all([...fonts].map((f) => f.load().catch(() => undefined)))
    // A face that has loaded is taken up by the layout a little later: whoever measures before that measures another type.
    await fonts.ready
    return [...fonts].filter((f) => f.status !== 'loaded').map((f) => `${f.family} ${f.weight}`)
  })
  if (outside.length > 0) throw new Error(`the pages ask for something outside: ${outside.join(', ')}`)
  if (missing.length > 0) throw new Error(`fonts did not load: ${missing.join(', ')}`)
  return page
}
