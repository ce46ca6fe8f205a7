import { afterAll, beforeAll } from 'vitest'
import { loadFonts } from '../../src/cli/load/load-fonts.ts'
import { loadPressScript } from '../../src/cli/load/load-scripts.ts'
import { findBrowser } from '../../src/print/browser/find-browser.ts'
import { openPress, type Press } from '../../src/print/press/press.ts'
import { folders } from './demo.ts'
import { noCache } from './no-cache.ts'

/** A press with the project's fonts that keeps nothing, in a browser of its own. */
export async function openTestPress(): Promise<{
  readonly press: Press
  readonly close: () => Promise<void>
}> {
  const found = await findBrowser(process.env)
  if (found.kind !== 'found') throw new Error(found.message)
  const press = openPress({
    browser: found.browser,
    browserName: found.version,
    program: '',
    fontCss: (await loadFonts()).inline,
    script: await loadPressScript(folders),
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

/** Opens a press before the tests of a file and closes it after them. @returns what gives it. */
export function usePress(): () => Press {
  let open: Awaited<ReturnType<typeof openTestPress>>
  beforeAll(async () => {
    open = await openTestPress()
  })
  afterAll(() => open.close())
  return () => open.press
}
