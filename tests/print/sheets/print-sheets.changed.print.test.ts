import { mkdtemp, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { loadFonts } from '../../../src/cli/load/load-fonts.ts'
import { loadPressScript } from '../../../src/cli/load/load-scripts.ts'
import { findBrowser } from '../../../src/print/browser/find-browser.ts'
import { openPress } from '../../../src/print/press/press.ts'
import { printCache } from '../../../src/print/press/print-cache.ts'
import { printSheets } from '../../../src/print/sheets/print-sheets.ts'
import type { Sheet } from '../../../src/render/sheets/render-sheets.ts'
import { folders } from '../../support/demo.ts'
import { about } from '../../support/sample-document.ts'

const page = (words: string): string =>
  `<section class="sheet"><div class="sheet-fit"><div class="columns"><div class="ways"><h1>${words}</h1></div></div><footer class="foot"><span data-reading-distance></span></footer></div></section>`

const css =
  '@page{size:4in 5in;margin:0}body{margin:0}.sheet{--fs:11pt;font-size:var(--fs);width:4in;height:5in;overflow:hidden}.sheet-fit{height:100%;overflow:hidden}'

const sheet =
  (id: string, words: string): (() => Sheet) =>
  () => ({
    id,
    title: id,
    pages: [page(words)],
    layouts: [{ name: 'whole', pages: [0] }],
    drawings: [],
  })

let folder: string
let found: Awaited<ReturnType<typeof findBrowser>>

beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'sheets-'))
  found = await findBrowser(process.env)
})

afterAll(async () => {
  if (found.kind === 'found') await found.browser.close()
  await rm(folder, { recursive: true, force: true })
})

/** Prints sheets with what was kept of earlier ones. @returns them, and how many were laid out anew. */
async function printed(sheets: readonly (() => Sheet)[]) {
  if (found.kind !== 'found') throw new Error(found.message)
  const { inline: fontCss } = await loadFonts()
  const { browser, version: browserName } = found
  const cache = printCache(folder)
  const script = await loadPressScript(folders)
  const press = openPress({ browser, browserName, program: '', lang: 'en', fontCss, script, cache })
  let laid = 0
  const counting: typeof press = {
    ...press,
    run: (copy, args, work, isNext) => {
      laid++
      return press.run(copy, args, work, isNext)
    },
  }
  const job = { sheets: { papers: [{ name: 'letter' as const, css }], sheets }, about }
  try {
    const files = await printSheets(counting, { ...job, system: 'us' }, () => undefined)
    return { laid, files }
  } finally {
    await press.close()
  }
}

it('a change of one sheet lays out that sheet alone, and leaves the file of every other as it is', async () => {
  const before = await printed([sheet('rake', 'Rake'), sheet('roll', 'Roll'), sheet('wet', 'Wet')])
  const after = await printed([
    sheet('rake', 'Rake'),
    sheet('roll', 'Roll it'),
    sheet('wet', 'Wet'),
  ])
  expect([before.laid, after.laid]).toEqual([3, 1])
  const changed = before.files.flatMap(({ id, ink, bytes }, i) =>
    Buffer.from(bytes).equals(after.files[i]?.bytes ?? Buffer.of()) ? [] : [`${id} ${ink}`],
  )
  expect(changed).toEqual(['roll color', 'roll black', 'undefined color', 'undefined black'])
})
