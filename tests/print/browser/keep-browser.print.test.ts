import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { BrowserFound } from '../../../src/print/browser/find-browser.ts'
import { findBrowser } from '../../../src/print/browser/find-browser.ts'
import { keepBrowser } from '../../../src/print/browser/keep-browser.ts'
import { launchBrowser } from '../../../src/print/browser/launch-browser.ts'
import { thisMachine } from '../../../src/print/browser/machine.ts'

type Browser = BrowserFound['browser']
type Page = Awaited<ReturnType<Browser['newPage']>>

/** The one that hangs is not waited for long; the next has all the time of a busy machine. */
const firstAnswersWithin = 5000

/** The path of the browser that is found on this machine. */
async function executableOf(): Promise<string> {
  const found = await findBrowser(process.env)
  if (found.kind !== 'found') throw new Error(found.message)
  const executable = found.browser.process()?.spawnfile
  await found.browser.close()
  return executable ?? ''
}

const executable = await executableOf()
const machine = thisMachine(process.env)

const find = async (time: number | undefined): Promise<BrowserFound> => {
  const shell = /chromium$|headless[-_]shell/.test(executable)
  const limit = time === 1 ? { answerWithin: firstAnswersWithin } : {}
  const browser = await launchBrowser({ executable, shell, machine, ...limit })
  return { kind: 'found', browser, name: 'this one', version: await browser.version() }
}

const groupOf = (browser: Browser): number => browser.process()?.pid ?? 0

/** Whether a process runs; one that has ended and that nobody has asked for yet does not. */
const isRunning = (pid: number): boolean =>
  existsSync(`/proc/${pid}/stat`) && !/\) Z /.test(readFileSync(`/proc/${pid}/stat`, 'utf8'))

/** What is done to the browser in the middle of a print, the first time. */
const mishaps: Readonly<Record<string, (browser: Browser, page: Page) => unknown>> = {
  'is killed': (browser) => process.kill(-groupOf(browser), 'SIGKILL'),
  hangs: (browser) => process.kill(-groupOf(browser), 'SIGSTOP'),
  'loses a page': async (_, page) => {
    const session = await page.createCDPSession()
    void session.send('Page.crash').catch(() => undefined)
  },
}

// Signals to groups of processes are those of Linux and macOS.
describe.runIf(process.platform !== 'win32')(
  'a browser that fails in the middle of a print',
  () => {
    it.each(Object.keys(mishaps))('%s: a fresh one prints the same again', async (name) => {
      const times = [1, 2, 3].values()
      const kept = keepBrowser(() => find(times.next().value))
      const groups: number[] = []
      const used = await kept.use(async ({ browser }) => {
        groups.push(groupOf(browser))
        const context = await browser.createBrowserContext()
        const page = await context.newPage()
        await page.setContent('<p>One page</p>'.repeat(400))
        const mishap = groups.length === 1 ? mishaps[name] : undefined
        // Whatever is asked of the page next never comes.
        const later = async (): Promise<void> => {
          await mishap?.(browser, page)
          await page.evaluate(() => document.fonts.ready.then(() => 0))
        }
        const [printed] = await Promise.all([page.pdf(), later()])
        return printed.length
      })
      expect(used).toMatchObject({ kind: 'done', value: expect.any(Number) })
      expect(groups).toHaveLength(2)
      expect(isRunning(groups[0] ?? 0)).toBe(false)
      await kept.close()
      expect(isRunning(groups[1] ?? 0)).toBe(false)
    })
  },
)
