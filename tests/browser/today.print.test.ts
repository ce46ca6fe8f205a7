import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { useIdOf } from '../../src/compute/uses/use.ts'
import { demoManual, demos, folders } from '../support/demo.ts'
import { faultsOfPage, looks, show } from '../support/faults-of-page.ts'
import { loopbackBrowser } from '../support/loopback-browser.ts'
import { clock } from '../support/race-day-clock.ts'
import { siteFolder } from '../support/site-folder.ts'

type Browser = Awaited<ReturnType<typeof loopbackBrowser>>
type Page = Awaited<ReturnType<Browser['newPage']>>

let browser: Browser
const sites = new Map<string, Awaited<ReturnType<typeof siteFolder>>>()

beforeAll(async () => {
  browser = await loopbackBrowser()
  for (const id of demos) sites.set(id, await siteFolder(id))
})

afterAll(async () => {
  await browser.close()
  for (const site of sites.values()) await site.remove()
})

const address = (id: string, page: string): string =>
  pathToFileURL(path.join(sites.get(id)?.folder ?? '', page)).href

/** A page from disk on a phone, on the race day. */
async function open(id: string, name: string, begin = clock): Promise<Page> {
  const page = await browser.newPage()
  await page.setViewport({ width: 390, height: 844, hasTouch: true, isMobile: true })
  await page.evaluateOnNewDocument(begin)
  const [file = '', fragment] = name.split('#')
  await page.goto(address(id, file) + (fragment === undefined ? '' : `#${fragment}`))
  return page
}

/** Types into the field with this label, as a hand does. */
async function type(page: Page, label: string, text: string): Promise<void> {
  const id = await page.evaluate(
    `[...document.querySelectorAll('.day-field label')].find((l) => l.textContent.startsWith(${JSON.stringify(label)}))?.htmlFor`,
  )
  await page.evaluate(
    `document.getElementById('${id}').closest('details')?.setAttribute('open', '')`,
  )
  await page.focus(`#${id}`)
  await page.keyboard.type(text)
  await page.keyboard.press('Enter')
}

const textOf = (page: Page, selector: string): Promise<string> =>
  page.evaluate(
    `[...document.querySelectorAll(${JSON.stringify(selector)})].filter((e) => e.checkVisibility()).map((e) => e.textContent.replace(/\\s+/g, ' ').trim()).join(' | ')`,
  ) as Promise<string>

const besides = (name: string): string => `.day-now:has(+ [data-q="${name}"])`

/** What the day says of a figure on the page of the day, where it says something else. */
const nowOf = (page: Page, name: string): Promise<string> => textOf(page, besides(name))

describe.each(demos)('in a browser, with the files of %s', (id) => {
  it('every figure is that of figures.json, to the last digit', async () => {
    const { manual } = await demoManual(id)
    const probe = await build({
      stdin: {
        contents: `import { dayEngine } from './src/browser/today/day-engine.ts'
          const engine = dayEngine(globalThis.dayNumbers.sums)
          globalThis.worked = engine.figureIds.map((id) => [id, engine.figure(id).value])`,
        resolveDir: folders.project,
        loader: 'ts',
      },
      bundle: true,
      write: false,
      format: 'iife',
    })
    const page = await open(id, 'today.html')
    await page.evaluate(probe.outputFiles[0]?.text ?? '')
    const worked = new Map(
      (await page.evaluate('globalThis.worked')) as [string, { ok: boolean; text?: string }][],
    )
    const without = new Set(manual.today.sums.without)
    const figures = manual.figures.filter((f) => !without.has(useIdOf(f.id)))
    expect(worked.size).toBe(figures.length)
    for (const { id: name, value } of figures)
      expect([name, worked.get(name)?.text]).toEqual([name, value.ok ? value.text : undefined])
    await page.close()
  })
})

describe('a day on a phone, from disk', () => {
  it('moisture measured gives loads and time, beside what the manual says', async () => {
    const page = await open('larkmoor', 'today.html')
    expect(await textOf(page, '.day-now')).toBe('')
    await type(page, 'moisture now', '4')
    expect(await nowOf(page, 'layer.loads')).toBe('today 7')
    expect(await textOf(page, '[data-q="layer.loads"]')).toBe('in the manual 5')
    expect(await nowOf(page, 'layer.time')).toMatch(/^today 2 h 45 min/)
    await page.waitForFunction(
      'document.querySelector("[role=status].unseen").textContent.includes("today 7, in the manual 5")',
    )
    // Another page knows it, with its working.
    await page.goto(address('larkmoor', 'worksheets/layer.html'))
    await page.waitForSelector('.day-line')
    expect(await textOf(page, '[data-fact="cushion.moisture.found"] .day-printed')).toContain(
      'in the manual 5.5 %',
    )
    expect(await textOf(page, '.day-line')).toContain('(8%−4%)')
    await page.goto(address('larkmoor', 'procedures/water.html'))
    await page.waitForSelector('.day-now')
    expect(await textOf(page, '.day-note b')).toBe('Changed for today: 1')
    expect(await textOf(page, '.figure .day-now')).toContain('today 10,050 gal')
    // All is as it was once it is taken back.
    await page.evaluate(
      '[...document.querySelectorAll(".day-note button")].find((b) => b.textContent === "Undo all").click()',
    )
    expect(await textOf(page, '.day-now')).toBe('')
    expect(await page.evaluate('Object.keys(localStorage).length')).toBe(0)
    await page.close()
  })

  it('rain at ten past five gives the times at which sealing starts, or flattening alone', async () => {
    const page = await open('larkmoor', 'today.html')
    await type(page, 'Rain comes at', '5:10')
    expect(await textOf(page, '[data-clock="rain"] .at')).toBe(
      '3:30 PM in 1 h 25 min | 4:20 PM in 2 h 15 min | 5:00 PM in 2 h 55 min',
    )
    await type(page, 'people here today', '4')
    // With a driver for each machine they work behind each other.
    expect(await textOf(page, '[data-clock="rain"] .day-at')).toBe('4:00 PM | 4:20 PM | 5:00 PM')
    await type(page, 'The race finished at', '2:03')
    expect(await textOf(page, '[data-clock="between"] .day-at')).toBe(
      '2:06 PM | 2:12 PM | 2:13 PM | 2:23 PM',
    )
    await page.evaluate('localStorage.clear()')
    await page.close()
  })

  it('shows what comes next, by the card of the day', async () => {
    const page = await open('larkmoor', 'today.html')
    expect(await textOf(page, '.day-list [aria-current]')).toBe('2:15 PMRace 4next in 10 min')
    // The same stands first on the page, with what comes then.
    expect(await textOf(page, '.day-soon li')).toBe('2:15 PMRace 4next in 10 min | 2:35 PMRace 5')
    await type(page, 'first race', '1:30')
    expect(await textOf(page, '.day-list [aria-current]')).toBe('2:10 PMRace 3next in 5 min')
    expect(await textOf(page, '.day-soon [aria-current]')).toBe('2:10 PMRace 3next in 5 min')
    await page.evaluate('localStorage.clear()')
    await page.close()
  })

  it('says why, and gives no number, where something cannot be', async () => {
    const page = await open('larkmoor', 'today.html')
    await type(page, 'moisture now', '90')
    expect(await textOf(page, '.day-fault')).toBe('This can be from 0 % to 40 %.')
    expect(await nowOf(page, 'layer.loads')).toContain('no number today')
    await type(page, 'moisture now', '9 %')
    expect(await textOf(page, '.day-fault')).toBe('')
    // Wetter than wanted: the formula itself has no number.
    expect(await nowOf(page, 'layer.loads')).toMatch(/^today no number today: .+/)
    await page.evaluate('localStorage.clear()')
    await page.close()
  })

  it('is sent as a link, and used when somebody says so', async () => {
    const page = await open('larkmoor', 'today.html#today=30000000&cushion.moisture.found=4+%25')
    expect(await textOf(page, '.day-offer li')).toBe('moisture now: 4 %')
    expect(page.url()).not.toContain('#')
    expect(await textOf(page, '.day-now')).toBe('')
    await page.click('.day-offer button')
    expect(await nowOf(page, 'layer.loads')).toBe('today 7')
    await page.evaluate('localStorage.clear()')
    await page.close()
  })

  it('asks about numbers of another day before it uses them', async () => {
    const page = await open('larkmoor', 'index.html')
    await page.evaluate(
      `localStorage.setItem('today Larkmoor County Fair', '[["cushion.moisture.found","4 %",1700000000000]]')`,
    )
    await page.goto(address('larkmoor', 'procedures/water.html'))
    await page.waitForSelector('.day-offer')
    expect(await textOf(page, '.day-now')).toBe('')
    await page.click('.day-offer button:last-child')
    expect(await page.evaluate('localStorage.length')).toBe(0)
    await page.close()
  })

  it('works, and says so, where the browser keeps nothing', async () => {
    const page = await open(
      'larkmoor',
      'today.html',
      `${clock}; Object.defineProperty(window, 'localStorage', { get() { throw new Error('none') } })`,
    )
    await type(page, 'moisture now', '4')
    expect(await nowOf(page, 'layer.loads')).toBe('today 7')
    expect(await textOf(page, '.day-note')).toContain('This browser keeps nothing')
    await page.close()
  })

  it('reads ready reckoners off at values of the reader', async () => {
    const page = await open('larkmoor', 'reckoners.html')
    await page.click('.day-put')
    await page.waitForSelector('.day-own input')
    const moisture = await page.evaluateHandle(
      '[...document.querySelectorAll(".day-own input")].find((i) => i.closest("table").querySelector("caption").textContent.includes("moisture that is missing"))',
    )
    await (moisture.asElement() as unknown as { type: (text: string) => Promise<void> }).type('4')
    const row =
      '[...document.querySelectorAll("table")].find((t) => t.caption.textContent.includes("moisture that is missing"))'
    const cells = (which: string) =>
      page.evaluate(`[...${row}.querySelectorAll('${which} td')].map((c) => c.textContent)`)
    expect(await cells('.day-own')).toEqual(await cells('tbody tr:nth-child(2)'))
    await page.close()
  })
})

describe('numbers of the day', () => {
  it('have no faults that a program finds, large places to touch, and figures to read in the sun', async () => {
    const page = await open('larkmoor', 'today.html')
    await type(page, 'moisture now', '4')
    await type(page, 'people here today', '4')
    await type(page, 'wind today', '200')
    await type(page, 'Rain comes at', '5:10')
    await show(page, { width: 375, scheme: 'light' })
    for (const name of [
      'today.html',
      'procedures/water.html',
      'worksheets/layer.html',
      'index.html',
    ]) {
      await page.goto(address('larkmoor', name))
      await page.waitForSelector('.day-now')
      expect(await faultsOfPage(page, looks), name).toEqual([])
      for (const { width, scheme } of looks) {
        await show(page, { width, scheme })
        const pale = await page.evaluate(
          'axe.run({ include: [[".day-now"], [".day-field"]].filter(([s]) => document.querySelector(s)) }, { runOnly: ["color-contrast-enhanced"] }).then((r) => r.violations.flatMap((v) => v.nodes.map((n) => n.html.slice(0, 120))))',
        )
        expect(pale, `${name} ${width} ${scheme}`).toEqual([])
        const small = await page.evaluate(
          '[...document.querySelectorAll(".day-panel button, .day-page button, .day-page input, .day-page summary, .day-field input")].filter((e) => e.checkVisibility() && (e.offsetHeight < 48 || e.offsetWidth < 48)).map((e) => e.outerHTML)',
        )
        expect(small, `${name} ${width}`).toEqual([])
      }
    }
    await page.close()
  })
})
