import { afterAll, beforeAll } from 'vitest'
import { demoFiles, formPage } from './form-page.ts'
import { loopbackBrowser } from './loopback-browser.ts'

type Browser = Awaited<ReturnType<typeof loopbackBrowser>>
export type FormTab = Awaited<ReturnType<Browser['newPage']>>

/** How a form is opened. */
type Opening = {
  /** Another browser than that of the file. */
  readonly of?: Browser
  /** Width of the window, px. */
  readonly width?: number
}

/** The form of a new fair and that of a demo, in one browser, before the tests of a file. */
export function useForms() {
  let browser: Browser
  let forms: Readonly<Record<'fresh' | 'larkmoor', Awaited<ReturnType<typeof formPage>>>>
  beforeAll(async () => {
    browser = await loopbackBrowser()
    forms = { fresh: await formPage({}), larkmoor: await formPage(demoFiles('larkmoor')) }
  })
  afterAll(async () => {
    await browser.close()
    await Promise.all(Object.values(forms).map(({ remove }) => remove()))
  })
  const address = (fair: keyof typeof forms, screen: string): string =>
    `${forms[fair].address}#${screen}`
  return {
    address,
    /** A page of its own that keeps nothing from the one before; faults of scripts are noted. */
    open: async (
      fair: keyof typeof forms,
      screen: string,
      { of = browser, width = 1280 }: Opening = {},
    ): Promise<{ readonly page: FormTab; readonly faults: readonly string[] }> => {
      const context = await of.createBrowserContext()
      const tab = await context.newPage()
      const faults: string[] = []
      tab.on('pageerror', (error) => faults.push(String(error)))
      await tab.setViewport({ width, height: 900 })
      await tab.goto(address(fair, screen))
      await tab.waitForSelector('main h1')
      return { page: tab, faults }
    },
  }
}
