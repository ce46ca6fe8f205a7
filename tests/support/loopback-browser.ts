import puppeteer from 'puppeteer'
import { findBrowser } from '../../src/print/browser/find-browser.ts'

/**
 * The browser that prints, once more, allowed to reach this computer: the program's own reaches
 * nothing at all.
 * @param more What else it is started with.
 */
export async function loopbackBrowser(more: readonly string[] = []) {
  const found = await findBrowser(process.env)
  if (found.kind !== 'found') throw new Error(found.message)
  const { spawnfile = '', spawnargs = [] } = found.browser.process() ?? {}
  await found.browser.close()
  const args = spawnargs.filter((arg) => /^--(?:no-|disable-gpu|headless)/.test(arg))
  return puppeteer.launch({
    executablePath: spawnfile,
    headless: 'shell',
    args: [...args, ...more],
  })
}
