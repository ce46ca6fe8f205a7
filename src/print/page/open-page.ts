import type { Browser, CDPSession, Page, Protocol } from 'puppeteer'
import { inScript } from '../../model/in-script.ts'

/** Pages are made of what they carry: anything else would be a request to somewhere outside. */
const inside = /^(data|about|blob):/

type PrintParameters = Protocol.Page.PrintToPDFRequest

/** A browser, for whoever opens pages in it. */
export type PagesBrowser = Pick<Browser, 'createBrowserContext'>

/** A page of a browser: the little of it that printing asks for. */
export type BrowserPage = LayingPage & {
  /** Prints what the page shows, with the parameters of `Page.printToPDF` of the browser's protocol. */
  readonly print: (how: PrintParameters) => Promise<Uint8Array>
}

/** What laying out asks for: that functions are run where the document is. */
export type LayingPage = Pick<Page, 'evaluate'>

export type OpenPage = {
  readonly page: BrowserPage
  /** @throws Error naming what the page has asked for outside of itself. */
  readonly refuseOutside: () => void
  readonly close: () => Promise<void>
}

/**
 * Takes the page's fonts up anew and waits for them. Chromium keeps scaled fonts by hundredths of a
 * pixel, and two sizes that differ by one hundredth may fall together: the one asked for first
 * serves both. With fonts that nothing has used, a document looks the same whatever was laid out on
 * the page before it. What the page shows is taken out meanwhile, so that it is not laid out for
 * nothing.
 * @throws Error naming fonts that do not load.
 */
export async function freshFonts(page: LayingPage): Promise<void> {
  const missing = await page.evaluate(async () => {
    const shown = document.createDocumentFragment()
    shown.append(...document.body.childNodes)
    const style = document.getElementById('fonts')
    if (style) {
      style.textContent = ''
      document.body.getBoundingClientRect()
      style.textContent = globalThis.fontCss
    }
    const { fonts } = document
    await Promise.all([...fonts].map((f) => f.load().catch(() => undefined)))
    // A face that has loaded is taken up by the layout a little later: whoever measures before that
    // measures another type.
    await fonts.ready
    document.body.append(shown)
    return [...fonts].filter((f) => f.status !== 'loaded').map((f) => `${f.family} ${f.weight}`)
  })
  if (missing.length > 0) throw new Error(`fonts did not load: ${missing.join(', ')}`)
}

/**
 * Puts a page's window away, so that nothing is painted for a screen that nobody looks at, sixty
 * times a second beside all that is laid out.
 */
async function putAway(session: CDPSession): Promise<void> {
  const { windowId } = await session.send('Browser.getWindowForTarget')
  const bounds = { windowState: 'minimized' } as const
  await session.send('Browser.setWindowBounds', { windowId, bounds })
}

/** What pages of a press are opened with. */
export type PageMakings = {
  readonly lang: string
  readonly fontCss: string
  /** What pages run: `src/print/lay/in-page.ts`, as one script. */
  readonly script: string
}

/**
 * The compiler marks the names of functions with a helper that functions sent into the page would
 * miss.
 */
const helper = 'globalThis.__name=(f)=>f'

const shell = ({ lang, fontCss, script }: PageMakings): string =>
  `<!doctype html><html lang="${lang}"><head><meta charset="utf-8"><title>-</title><style id="fonts"></style><style id="own"></style><script>${helper};globalThis.fontCss=${inScript(fontCss)};\n${script}</script></head><body></body></html>`

/**
 * Opens a page for printing, in a context of its own, which gives it a renderer of its own. The
 * browser is started so that it cannot reach any host.
 */
export async function openPage(browser: PagesBrowser, makings: PageMakings): Promise<OpenPage> {
  const context = await browser.createBrowserContext()
  const page = await context.newPage()
  const outside: string[] = []
  // Only watched, not intercepted: stopping every font's data URL for a word costs seconds.
  page.on('request', (request) => {
    if (!inside.test(request.url())) outside.push(request.url())
  })
  const [session] = await Promise.all([
    page.createCDPSession(),
    page.emulateMediaType('print'),
    page.setContent(shell(makings), { waitUntil: 'load', timeout: 120_000 }),
  ])
  // Nobody waits for it; a browser that cannot do so prints the same, and works more.
  putAway(session).catch(() => undefined)
  return {
    page: {
      evaluate: page.evaluate.bind(page),
      print: async (how) => {
        // All at once: the driver would fetch a print in pieces, each of them a journey.
        const { data } = await session.send('Page.printToPDF', how)
        return Buffer.from(data, 'base64')
      },
    },
    refuseOutside: () => {
      if (outside.length > 0)
        throw new Error(`the pages ask for something outside: ${outside.splice(0).join(', ')}`)
    },
    close: () => context.close(),
  }
}
