import type { Browser, Page } from 'puppeteer'
import { openPage } from '../page/open-page.ts'
import type { PrintCache } from './print-cache.ts'

/** A document to print: the style and the inside of `body`. Fonts are the press's own. */
export type Copy = { readonly css: string; readonly body: string; /** Class of the body, for what one document is printed in two ways. */ readonly dress?: string }

/** A press prints many documents in one browser, on as many pages at once as the machine has cores to spare. */
export type Press = {
  /**
   * Lays a document out and does something with its page.
   * @param work Given the page with the document laid out. Its source is part of what the result is kept under, so it must
   * not depend on anything but the page and `args`.
   */
  readonly run: <A, T>(copy: Copy, args: A, work: (page: Page, args: A) => Promise<T>) => Promise<T>
  readonly close: () => Promise<void>
}

/** One renderer for each of two cores; more only wait for each other. */
const lanes = 2

const shell = (fontCss: string, lang: string): string =>
  `<!doctype html><html lang="${lang}"><head><meta charset="utf-8"><title>-</title><style>${fontCss}</style><style id="own"></style></head><body></body></html>`

/** Puts a document into an open page; the fonts are there already. */
async function load(page: Page, copy: Copy): Promise<void> {
  await page.evaluate(async ({ css, body, dress }) => {
    const own = document.getElementById('own')
    if (own) own.textContent = css
    document.body.className = dress ?? ''
    document.body.innerHTML = body
    await document.fonts.ready
    await new Promise<void>((done) => setTimeout(done, 0))
  }, copy)
}

type Task = () => Promise<void>

/** Opens a press. Its pages are opened when they are first needed. */
export function openPress(browser: Browser, fontCss: string, lang: string, browserName: string, cache: PrintCache): Press {
  const waiting: Task[] = []
  const open: Promise<Page>[] = []
  const idle: Page[] = []
  let busy = 0

  const openLane = async (): Promise<Page> => {
    // A context of its own gives the page a renderer of its own.
    const context = await browser.createBrowserContext()
    return openPage(context, shell(fontCss, lang))
  }
  const next = (): void => {
    while (busy < lanes && waiting.length > 0) {
      busy++
      void waiting.shift()?.().finally(() => {
        busy--
        next()
      })
    }
  }
  const onPage = <T>(use: (page: Page) => Promise<T>): Promise<T> =>
    new Promise((resolve, reject) => {
      waiting.push(async () => {
        try {
          let page = idle.pop()
          if (!page) {
            const opening = openLane()
            open.push(opening)
            page = await opening
          }
          try {
            resolve(await use(page))
          } finally {
            idle.push(page)
          }
        } catch (error) {
          reject(error)
        }
      })
      next()
    })

  return {
    run: (copy, args, work) =>
      cache.get([browserName, fontCss, lang, copy.css, copy.body, copy.dress ?? '', JSON.stringify(args), String(work)], () =>
        onPage(async (page) => {
          await load(page, copy)
          return work(page, args)
        }),
      ),
    close: async () => {
      await Promise.all(open.map(async (page) => (await page).browserContext().close()))
    },
  }
}
