import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { loadLibrary, loadSources } from '../../../../src/cli/load/load-library.ts'
import { loadTemplates } from '../../../../src/cli/load/load-templates.ts'
import type { SourceTree } from '../../../../src/read/read-yaml.ts'
import { demoFiles } from '../../../answers/support/work.ts'
import { folders } from '../../../support/demo.ts'
import { dayAndNight, faultsOfPage } from '../../../support/faults-of-page.ts'
import { loopbackBrowser } from '../../../support/loopback-browser.ts'

type Browser = Awaited<ReturnType<typeof loopbackBrowser>>
type Page = Awaited<ReturnType<Browser['newPage']>>

/** The panel alone, with what changes an entry of the file and where it leads. */
const entry = `
import * as z from 'zod'
import { splice } from './src/edit/splice.ts'
import { livePanel } from './src/browser/form/live/live-panel.ts'
import { workFor } from './src/browser/form/workshop/work.ts'
z.config({ jitless: true })
const data = JSON.parse(document.getElementById('data').textContent)
const work = workFor(data, '2027-06-14', () => new Map())
globalThis.gone = []
const panel = livePanel(document.querySelector('aside'), (at) => gone.push(at))
let files = new Map(data.files)
globalThis.change = (path, value) => {
  files = new Map([...files, ['facility.yaml', splice(files.get('facility.yaml'), { path, value }).text]])
  panel.show(work(files))
}
panel.show(work(files))
`

const fileOf = ({ file, data }: SourceTree) => ({ path: file.path, data })

let browser: Browser
let folder: string
let address: string

beforeAll(async () => {
  browser = await loopbackBrowser()
  const [read, sources, { styles }, bundle] = await Promise.all([
    loadLibrary(folders.content, folders.shared),
    loadSources(folders.shared),
    loadTemplates(folders),
    build({
      stdin: { contents: entry, resolveDir: folders.project, loader: 'ts' },
      bundle: true,
      write: false,
      format: 'iife',
    }),
  ])
  const library = Object.fromEntries(
    Object.entries(read.value ?? {}).map(
      ([part, trees]: [string, SourceTree | readonly SourceTree[]]) => [
        part,
        'file' in trees ? fileOf(trees) : trees.map(fileOf),
      ],
    ),
  )
  const data = { kind: 'page', library, sources, fonts: [], files: [...demoFiles('brambleford')] }
  const style = ['shared', 'emergency', 'form-page', ...Object.keys(styles)]
    .filter((name, i) => i < 3 || name.startsWith('form/'))
    .map((name) => styles[name])
    .join('\n')
  const script = (bundle.outputFiles[0]?.text ?? '').replaceAll('</script', '<\\/script')
  folder = await mkdtemp(path.join(os.tmpdir(), 'live-'))
  const file = path.join(folder, 'panel.html')
  await writeFile(
    file,
    `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>Panel</title><style>${style}</style></head><body data-screen="oval"><div id="form"><a class="skip" href="#text">Questions</a><div class="desk"><main id="text"><h1>Questions</h1><input aria-label="question"></main><aside></aside></div></div><script type="application/json" id="data">${JSON.stringify(data).replaceAll('<', '\\u003c')}</script><script>${script}</script></body></html>`,
  )
  address = pathToFileURL(file).href
})

afterAll(async () => {
  await browser.close()
  await rm(folder, { recursive: true, force: true })
})

async function open(width: number): Promise<Page> {
  const page = await browser.newPage()
  await page.setViewport({ width, height: 844 })
  await page.goto(address)
  await page.waitForSelector('.live-missing', { hidden: false })
  return page
}

const change = (page: Page, at: readonly string[], value: string): Promise<unknown> =>
  page.evaluate(`change(${JSON.stringify(at)}, ${JSON.stringify(value)})`)

const openAll = 'for (const fold of document.querySelectorAll("details")) fold.open = true'

const textOf = (page: Page, selector: string): Promise<string> =>
  page.$eval(selector, (found) => found.textContent ?? '')

describe('what the answers make', () => {
  it('is drawn and reckoned anew where it changes, and all else is left in its place', async () => {
    const page = await open(1400)
    await page.evaluate(`${openAll}
      for (const made of document.querySelectorAll("svg, .emergency")) made.dataset.kept = ""`)
    await change(page, ['emergency', 'number'], '999')
    expect(await textOf(page, '.e-dial')).toBe('999')
    expect(await page.$('.emergency[data-kept]')).toBeNull()
    expect(await page.$('svg[data-kept]')).not.toBeNull()
    await change(page, ['oval', 'straight'], '200 m')
    expect(await page.$('svg[data-kept]')).toBeNull()
    expect(await textOf(page, '.live-figures')).toContain('200')
  }, 60_000)

  it('goes on without an answer that does not fit, and leads to it', async () => {
    const page = await open(1400)
    await change(page, ['oval', 'straight'], 'long')
    expect(await page.$('.live svg')).not.toBeNull()
    expect(await textOf(page, '.live-body')).toContain('Drawn from the answers that fit.')
    await page.evaluate('document.querySelector(".live-note a").click()')
    expect(await page.evaluate('gone')).toEqual(['oval.straight'])
  }, 60_000)

  it('opens over the questions on a phone, and closes by a button, a key or a way to a question', async () => {
    const page = await open(390)
    const isShown = () =>
      page.evaluate('getComputedStyle(document.querySelector(".live-sheet")).display !== "none"')
    expect(await isShown()).toBe(false)
    await page.click('.live-open')
    expect(await isShown()).toBe(true)
    expect(await page.evaluate('document.activeElement.tagName')).toBe('H2')
    await page.keyboard.press('Escape')
    expect(await isShown()).toBe(false)
    await page.click('.live-open')
    await page.click('.live-close')
    expect(await isShown()).toBe(false)
    await page.click('.live-open')
    await page.evaluate('document.querySelector(".live-missing a").click()')
    expect(await isShown()).toBe(false)
  }, 60_000)

  it('has no fault that a program finds, and fits narrow phones', async () => {
    const page = await open(375)
    await page.click('.live-open')
    await page.evaluate(openAll)
    expect(await faultsOfPage(page, dayAndNight)).toEqual([])
  }, 60_000)
})
