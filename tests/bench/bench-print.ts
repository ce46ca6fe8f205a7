import { mkdtemp, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { projectFolders } from '../../src/cli/folders.ts'
import { loadFonts } from '../../src/cli/load/load-fonts.ts'
import { loadManual } from '../../src/cli/load/load-manual.ts'
import { loadTemplates } from '../../src/cli/load/load-templates.ts'
import { printBinder } from '../../src/print/binder/print-binder.ts'
import { findBrowser } from '../../src/print/browser/find-browser.ts'
import { openDocument } from '../../src/print/pdf/documents.ts'
import { pageCount } from '../../src/print/pdf/pages.ts'
import { openPress } from '../../src/print/press/press.ts'
import { type PrintCache, printCache } from '../../src/print/press/print-cache.ts'
import { renderBinder } from '../../src/render/binder/render-binder.ts'
import { noCache } from '../support/no-cache.ts'

// What a finished binder costs against one plain print of the same pages by the same browser,
// paired in one run. Aims: 1.6 where nothing is known of an earlier build, 1.25 where no page
// number has moved since.

const folders = projectFolders()
const { manual, library } = await loadManual(
  path.join(folders.content, 'facilities', 'larkmoor'),
  folders,
  '2027-06-14',
)
const found = await findBrowser(process.env)
if (!manual || !library || found.kind !== 'found') throw new Error('no manual or no browser')
const [fonts, templates] = await Promise.all([loadFonts(), loadTemplates(folders)])
const binder = renderBinder(manual, { ...templates, words: library.words, fontCss: fonts.inline })
const about = {
  title: 't',
  author: 'a',
  subject: 's',
  keywords: [],
  lang: 'en',
  date: manual.date,
  creator: 'c',
  seed: 's',
}

async function timed<T>(work: () => Promise<T>): Promise<{ ms: number; value: T }> {
  const started = performance.now()
  const value = await work()
  return { ms: performance.now() - started, value }
}

/**
 * The whole book as one document, as anybody would print it: put into a page, printed once, without
 * tags, nothing done to it afterwards.
 */
const plain = () =>
  timed(async () => {
    const context = await found.browser.createBrowserContext()
    const page = await context.newPage()
    const css = [fonts.inline, ...binder.parts.map((p) => p.css.right)].join('\n')
    await page.setContent(
      `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>t</title><style>${css}</style></head><body>${binder.parts.map((p) => p.body).join('\n')}</body></html>`,
      { waitUntil: 'load', timeout: 120_000 },
    )
    const bytes = await page.pdf({
      preferCSSPageSize: true,
      printBackground: true,
      tagged: false,
      timeout: 300_000,
    })
    await context.close()
    return bytes
  })

const finished = (cache: PrintCache, last?: Awaited<ReturnType<typeof printBinder>>['memory']) =>
  timed(async () => {
    const press = openPress({
      browser: found.browser,
      browserName: found.version,
      program: '',
      fontCss: fonts.inline,
      lang: 'en',
      cache,
    })
    const printed = await printBinder(press, { binder, about, last }, () => undefined)
    await press.close()
    return printed
  })

const folder = await mkdtemp(path.join(os.tmpdir(), 'bench-prints-'))
const kept = printCache(folder)
const rows: number[][] = []
await plain()
for (let round = 0; round < 5; round++) {
  const base = await plain()
  const cold = await finished(noCache)
  const known = await finished(noCache, cold.value.memory)
  await finished(kept, cold.value.memory)
  const same = await finished(kept, cold.value.memory)
  rows.push([cold.ms, known.ms, same.ms].map((ms) => ms / base.ms))
  console.log(
    `plain ${(base.ms / 1000).toFixed(1)} s, ${pageCount(await openDocument(base.value))} pages; finished ${(cold.ms / 1000).toFixed(1)} s; numbers known ${(known.ms / 1000).toFixed(1)} s; nothing changed ${(same.ms / 1000).toFixed(1)} s; ${cold.value.laid.length} pages`,
  )
}
const median = (i: number): string =>
  (rows.map((r) => r[i] ?? 0).sort((a, b) => a - b)[2] ?? 0).toFixed(2)
console.log(
  `ratio to one plain print, median of five: nothing known ${median(0)} (aim 1.6), no number moved ${median(1)} (aim 1.25), nothing changed ${median(2)}`,
)
await found.browser.close()
await rm(folder, { recursive: true, force: true })
