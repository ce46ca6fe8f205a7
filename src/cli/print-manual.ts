import { readdir, readFile } from 'node:fs/promises'
import path from 'node:path'
import type { Manual } from '../model/manual.ts'
import { allSheets } from '../model/sheet-names.ts'
import { type BinderMemory, printBinder } from '../print/binder/print-binder.ts'
import { leafName, printReplacement } from '../print/binder/print-replacement.ts'
import { compareBinders, type LaidPage } from '../print/binder/replacement.ts'
import type { BrowserFound } from '../print/browser/find-browser.ts'
import { printCards } from '../print/cards/print-cards.ts'
import { printForms } from '../print/forms/print-forms.ts'
import { openPress } from '../print/press/press.ts'
import type { PrintCache } from '../print/press/print-cache.ts'
import { printPages } from '../print/press/print-pages.ts'
import { printSheets, type SheetFile } from '../print/sheets/print-sheets.ts'
import { margins } from '../render/binder/page-rules.ts'
import { renderBinder } from '../render/binder/render-binder.ts'
import { renderReplacementList } from '../render/binder/replacement-list.ts'
import { renderCards } from '../render/cards/render-cards.ts'
import { renderDividers } from '../render/dividers/render-dividers.ts'
import { renderForms } from '../render/forms/render-forms.ts'
import { renderSheets } from '../render/sheets/render-sheets.ts'
import type { Words } from '../validate/schemas/words.ts'
import { hashOf } from '../write/build-record.ts'
import type { OutputFile } from '../write/write-files.ts'
import { loadFonts, loadTemplates } from './load/load-assets.ts'
import type { Folders } from './load/load-manual.ts'

export type Printed = {
  readonly files: readonly OutputFile[]
  readonly binderPages: number
  readonly sheets: number
  readonly binder: BinderMemory /** Pages of this binder, and those of the last build of another revision, to compare the next with. */
  readonly revision: BinderRevision
  readonly before: BinderRevision | undefined
  readonly toExchange: number
}

/** The pages of one revision of a binder. */
type BinderRevision = {
  readonly revision: string
  readonly date: string
  readonly pages: readonly LaidPage[]
}

/** What the PDFs of a build are made with. */
export type PrintJob = {
  readonly found: BrowserFound
  readonly cache: PrintCache
  readonly manual: Manual
  readonly words: Words
  readonly folders: Folders
  readonly version: string
  /** What is known of the binder of the last build. */
  readonly last: BinderMemory | undefined
  /** The binder that is in use: the last build of another revision. */
  readonly before: BinderRevision | undefined
}

const pointsAnInch = 72

/**
 * A hash over the program's own printing: what another state of it has printed is not taken from
 * the cache.
 */
async function printingProgram(folders: Folders): Promise<string> {
  const root = path.join(folders.project, 'src', 'print')
  const names = (await readdir(root, { recursive: true })).filter((n) => n.endsWith('.ts'))
  return hashOf(
    await Promise.all(
      [
        ...names.map((n) => path.join(root, n)),
        path.join(folders.project, 'package-lock.json'),
      ].map(async (file) => ({
        path: path.relative(folders.project, file),
        text: await readFile(file, 'utf8'),
      })),
    ),
  )
}

/** `sheets/<procedure>.pdf` on the first paper in color; others say so in their names. */
function sheetPath(f: SheetFile, usual: string): string {
  const marks = [
    f.id ?? allSheets,
    ...(f.paper === usual ? [] : [f.paper]),
    ...(f.ink === 'black' ? ['black'] : []),
  ]
  return `sheets/${marks.join('-')}.pdf`
}

/**
 * Prints the binder, the posted sheets, the forms and the pocket cards of a manual, all in one
 * browser.
 */
export async function printManual(
  { found, cache, manual, words, folders, version, last, before }: PrintJob,
  tell: (what: string) => void,
): Promise<Printed> {
  const [fonts, templates, program] = await Promise.all([
    loadFonts(),
    loadTemplates(folders),
    printingProgram(folders),
  ])
  const assets = { ...templates, words, fontCss: fonts.inline }
  const { facility } = manual
  const about = {
    author: facility.name,
    subject: words.binder.subject,
    keywords: [facility.name, facility.ovalName, ...manual.sections.map((s) => s.title)],
    lang: facility.lang,
    date: manual.date,
    creator: `Ovalkeep ${version}`,
  }
  const titled = (title: string | undefined, name: string) => ({
    ...about,
    title: `${facility.name}: ${title}`,
    seed: `${facility.id}/${facility.revision}/${manual.date}/${name}`,
  })
  const press = openPress({
    browser: found.browser,
    browserName: found.version,
    program,
    fontCss: fonts.inline,
    lang: facility.lang,
    cache,
  })
  try {
    tell('binder and sheets')
    const posted = renderSheets(manual, assets)
    const rendered = renderBinder(manual, assets)
    const [binder, forms, cards, dividers, sheets] = await Promise.all([
      printBinder(
        press,
        rendered,
        titled(words.binder.subject, 'binder'),
        margins.top * pointsAnInch,
        last,
        tell,
      ),
      printForms(press, renderForms(manual, assets), titled(words.forms.title, 'forms')),
      printCards(press, renderCards(manual, assets), titled(words.cards.title, 'cards')),
      facility.binder.dividers === 'tab-stock'
        ? printPages(
            press,
            renderDividers(manual, assets),
            titled(words.binder.dividers, 'dividers'),
          )
        : undefined,
      printSheets(press, posted, titled(words.site.sheets, 'sheets'), facility.system, tell),
    ])
    const [usual = ''] = facility.sheetPapers
    const exchange = before
      ? compareBinders(before.pages, binder.laid, rendered.sides)
      : { takeOut: [], putIn: [] }
    const replacement =
      before && exchange.putIn.length + exchange.takeOut.length > 0
        ? [
            {
              path: 'replacement-pages.pdf',
              data: await printReplacement(
                press,
                rendered,
                binder,
                exchange.putIn,
                renderReplacementList(
                  manual,
                  assets,
                  before,
                  exchange.takeOut.map(leafName),
                  exchange.putIn.map(leafName),
                ),
                titled(words.binder.replacement, 'replacement'),
              ),
            },
          ]
        : []
    return {
      files: [
        { path: 'binder.pdf', data: binder.bytes },
        ...replacement,
        { path: 'forms.pdf', data: forms.bytes },
        ...(manual.cards.length > 0 ? [{ path: 'cards.pdf', data: cards }] : []),
        ...(dividers ? [{ path: 'dividers.pdf', data: dividers }] : []),
        ...sheets.files.map((f) => ({ path: sheetPath(f, usual), data: f.bytes })),
      ],
      binderPages: binder.laid.length,
      sheets: posted.sheets.length,
      binder: binder.memory,
      revision: {
        revision: facility.revision,
        date: manual.date,
        pages: binder.laid.map(({ label, print }) => ({ label, print })),
      },
      before,
      toExchange: exchange.putIn.length,
    }
  } finally {
    await press.close()
  }
}
