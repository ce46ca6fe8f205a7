import { mkdtemp, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { projectFolders } from '../../src/cli/folders.ts'
import { loadFonts } from '../../src/cli/load/load-fonts.ts'
import { loadManual } from '../../src/cli/load/load-manual.ts'
import { loadPressScript } from '../../src/cli/load/load-scripts.ts'
import { loadTemplates } from '../../src/cli/load/load-templates.ts'
import { printManual } from '../../src/cli/print-manual.ts'
import type { Text } from '../../src/model/manual/text.ts'
import type { Manual } from '../../src/model/manual.ts'
import { printBinder } from '../../src/print/binder/print-binder.ts'
import { findBrowser } from '../../src/print/browser/find-browser.ts'
import { openDocument } from '../../src/print/pdf/documents.ts'
import { pageCount } from '../../src/print/pdf/pages.ts'
import { openPress } from '../../src/print/press/press.ts'
import { type PrintCache, printCache } from '../../src/print/press/print-cache.ts'
import { renderBinder } from '../../src/render/binder/render-binder.ts'
import { noCache } from '../support/no-cache.ts'

// What a finished binder, and everything that a build prints, cost against one plain print of the
// binder's pages by the same browser, paired in one run. Aims: 1.6 for either where nothing is known
// of an earlier build; for the binder 1.25 where no page number has moved since; for everything
// under 3 s after one procedure has been edited.

const folders = projectFolders()
const { manual, library } = await loadManual(
  path.join(folders.content, 'facilities', 'larkmoor'),
  folders,
  '2027-06-14',
)
const found = await findBrowser(process.env)
if (!manual || !library || found.kind !== 'found') throw new Error('no manual or no browser')
const [fonts, script, templates] = await Promise.all([
  loadFonts(),
  loadPressScript(folders),
  loadTemplates(folders),
])
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

/** What some work took, ms: by the clock, and of the processor for node alone. */
type Timed<T> = { readonly ms: number; readonly ofNode: number; readonly value: T }

async function timed<T>(work: () => Promise<T>): Promise<Timed<T>> {
  const [started, used] = [performance.now(), process.cpuUsage()]
  const value = await work()
  const { user, system } = process.cpuUsage(used)
  return { ms: performance.now() - started, ofNode: (user + system) / 1000, value }
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
      script,
      lang: 'en',
      cache,
    })
    const printed = await printBinder(press, { binder, about, last }, () => undefined)
    await press.close()
    return printed
  })

const everything = (
  cache: PrintCache,
  printed: Manual,
  last?: Awaited<ReturnType<typeof printBinder>>['memory'],
) =>
  timed(() =>
    printManual(
      {
        found,
        cache,
        manual: printed,
        words: library.words,
        folders,
        version: '',
        last,
        before: undefined,
        meanwhile: async () => undefined,
      },
      () => undefined,
    ),
  )

/** The manual after somebody has changed when to stop one of its works. */
const [first] = manual.procedures
const more = (texts: readonly Text[]): readonly Text[] => texts.map((t) => `${t} Say so.`)
const edited: Manual = {
  ...manual,
  procedures: manual.procedures.map((p) =>
    p.id === first?.id
      ? { ...p, stop: more(p.stop), sheet: { ...p.sheet, stop: more(p.sheet.stop) } }
      : p,
  ),
}

/** Everything, without and with the prints of an earlier build, beside one plain print. */
async function benchEverything(whole: Manual): Promise<void> {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'bench-prints-'))
  const kept = printCache(folder)
  const base = await plain()
  const cold = await everything(kept, whole)
  const warm = await everything(kept, edited, cold.value.binder)
  const same = await everything(kept, edited, cold.value.binder)
  const ratio = (ms: number): string => (ms / base.ms).toFixed(2)
  const ofNode = [cold, warm, same].map((t) => `${(t.ofNode / 1000).toFixed(1)} s`).join(', ')
  console.log(
    `everything ${(cold.ms / 1000).toFixed(1)} s, ratio to one plain print ${ratio(cold.ms)} (aim 1.6); one procedure edited ${(warm.ms / 1000).toFixed(1)} s (aim 3), ratio ${ratio(warm.ms)}; nothing changed ${(same.ms / 1000).toFixed(1)} s; of these node itself took ${ofNode} of the processor`,
  )
  await rm(folder, { recursive: true, force: true })
}

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
    `plain ${(base.ms / 1000).toFixed(1)} s, ${pageCount(openDocument(base.value))} pages; finished ${(cold.ms / 1000).toFixed(1)} s; numbers known ${(known.ms / 1000).toFixed(1)} s; nothing changed ${(same.ms / 1000).toFixed(1)} s; ${cold.value.laid.length} pages`,
  )
}
const median = (i: number): string =>
  (rows.map((r) => r[i] ?? 0).sort((a, b) => a - b)[2] ?? 0).toFixed(2)
console.log(
  `ratio to one plain print, median of five: nothing known ${median(0)} (aim 1.6), no number moved ${median(1)} (aim 1.25), nothing changed ${median(2)}`,
)
for (let round = 0; round < 3; round++) await benchEverything(manual)
await found.browser.close()
await rm(folder, { recursive: true, force: true })
