import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { loadManual } from '../../src/cli/load/load-manual.ts'
import { demoFolder, folders } from '../support/demo.ts'
import { loopbackBrowser } from '../support/loopback-browser.ts'
import { clock } from '../support/race-day-clock.ts'
import { siteFolder } from '../support/site-folder.ts'
import { siteServer } from '../support/site-server.ts'

let browser: Awaited<ReturnType<typeof loopbackBrowser>>
let site: Awaited<ReturnType<typeof siteFolder>>
let server: Awaited<ReturnType<typeof siteServer>>
let folder: string

beforeAll(async () => {
  browser = await loopbackBrowser()
  site = await siteFolder('larkmoor')
  server = await siteServer(site.folder)
  folder = await mkdtemp(path.join(os.tmpdir(), 'season-'))
})

afterAll(async () => {
  await browser.close()
  server.close()
  await site.remove()
  await rm(folder, { recursive: true, force: true })
})

/** The day after, on which the next revision is made. */
const next = '2027-08-04'

it('a day of the season, on a phone without network, reaches the next revision', async () => {
  const page = await browser.newPage()
  await page.setViewport({ width: 390, height: 844, hasTouch: true, isMobile: true })
  await page.evaluateOnNewDocument(clock)
  const textOf = (selector: string) =>
    page.evaluate(
      `[...document.querySelectorAll(${JSON.stringify(selector)})].filter((e) => e.checkVisibility()).map((e) => e.textContent.replace(/\\s+/g, ' ').trim()).join(' | ')`,
    ) as Promise<string>
  const follow = async (selector: string): Promise<void> => {
    await Promise.all([page.waitForNavigation(), page.locator(selector).click()])
  }
  const type = async (label: string, text: string): Promise<void> => {
    const id = await page.evaluate(
      `[...document.querySelectorAll('.day-field label')].find((l) => l.textContent.startsWith(${JSON.stringify(label)}))?.htmlFor`,
    )
    await page.focus(`#${id}`)
    await page.keyboard.type(text)
    await page.keyboard.press('Enter')
  }

  // At the office the phone takes the manual; at the track there is no network.
  await page.goto(`${server.base}/index.html`)
  await page.waitForFunction(
    'document.querySelector(".saved")?.textContent.startsWith("Saved on this phone")',
  )
  await page.setOfflineMode(true)
  server.asked.length = 0

  // "Holes", says the driver.
  await page.goto(`${server.base}/index.html`)
  await page.locator('form.find input').fill('holes')
  await page.focus('form.find input')
  await Promise.all([page.waitForNavigation(), page.keyboard.press('Enter')])
  await page.waitForSelector('.hits li')
  await follow('.hits li:nth-child(-n + 3) a[href*="cuppy"]')
  expect(await textOf('main')).toMatch(/cuppy/i)

  // Drier than the manual took it to be: more loads, and the time that they take.
  await page.goto(`${server.base}/today.html`)
  await type('moisture now', '4')
  expect(await textOf('.day-now:has(+ [data-q="layer.loads"])')).toBe('today 7')
  expect(await textOf('.day-now:has(+ [data-q="layer.time"])')).toMatch(/^today 2 h 45 min/)
  await type('Rain comes at', '5:10')
  expect(await textOf('[data-clock="rain"] .at')).toContain('3:30 PM')

  // What was seen is written down, and taken out as a table.
  await page.goto(`${server.base}/records.html#daily-log`)
  await page.waitForSelector('#daily-log-high')
  for (const [id, text] of [
    ['high', '88'],
    ['low', '61'],
    ['rain', '0.25'],
  ]) {
    await page.locator(`#daily-log-${id}`).fill(text ?? '')
    await page.keyboard.press('Tab')
  }
  const saved = String(
    await page.evaluate(
      `document.querySelector('.files textarea[aria-label="weather.csv"]')?.value ?? ''`,
    ),
  )
  expect(saved).toContain('2027-08-03,88,61,0.25')
  expect(server.asked).toEqual([])
  await page.close()

  // The readings go into the facility's folder, and the next revision counts them.
  const fair = path.join(folder, 'fair')
  await cp(demoFolder('larkmoor'), fair, { recursive: true })
  const about = path.join(fair, 'facility.yaml')
  await writeFile(about, (await readFile(about, 'utf8')).replace(/^as-of: .*$/m, `as-of: ${next}`))
  const { manual: without } = await loadManual(fair, folders, next)
  const own = path.join(fair, 'weather.csv')
  await writeFile(own, joined(await readFile(own, 'utf8'), saved))
  const { manual, problems } = await loadManual(fair, folders, next)
  expect(problems.filter((p) => p.severity === 'error')).toEqual([])
  expect(manual?.schedules).not.toEqual(without?.schedules)
})

/** A table with the lines of another of other columns below its own. */
function joined(own: string, more: string): string {
  const rows = (text: string) =>
    text
      .split(/\r?\n/)
      .filter((line) => line !== '' && !line.startsWith('#'))
      .map((line) => line.split(','))
  const [head = []] = rows(own)
  const [names = [], ...added] = rows(more)
  const at = head.map((name) => names.indexOf(name))
  return [own.trimEnd(), ...added.map((cells) => at.map((i) => cells[i] ?? '').join(',')), ''].join(
    '\n',
  )
}
