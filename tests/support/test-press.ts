import { findBrowser } from '../../src/print/browser/find-browser.ts'
import { openPress, type Press } from '../../src/print/press/press.ts'
import { noCache } from '../../src/print/press/print-cache.ts'
import { assetsFor, demoManual } from './demo.ts'

/** A press with the project's fonts that keeps nothing, in a browser of its own. */
export async function openTestPress(): Promise<{
  readonly press: Press
  readonly close: () => Promise<void>
}> {
  const found = await findBrowser(process.env)
  if (found.kind !== 'found') throw new Error(found.message)
  const { words } = await demoManual('larkmoor')
  const press = openPress({
    browser: found.browser,
    browserName: found.version,
    program: '',
    fontCss: (await assetsFor(words, 'inline')).fontCss,
    lang: 'en',
    cache: noCache,
  })
  return {
    press,
    close: async () => {
      await press.close()
      await found.browser.close()
    },
  }
}
