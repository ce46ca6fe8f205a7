import { setFlagsFromString } from 'node:v8'
import type { Manual } from '../model/manual.ts'
import type { OutputFile } from '../model/output-file.ts'
import { allSheets } from '../model/sheet-names.ts'
import { type BinderPrint, printBinder } from '../print/binder/print-binder.ts'
import { leafName, printReplacement } from '../print/binder/print-replacement.ts'
import { compareBinders, type LaidPage } from '../print/binder/replacement.ts'
import type { BinderMemory } from '../print/binder/settle-parts.ts'
import { endBrowser, isBrowserFault } from '../print/browser/end-browser.ts'
import type { BrowserFound } from '../print/browser/find-browser.ts'
import { printCards } from '../print/cards/print-cards.ts'
import { printFieldBook, printHandout } from '../print/field-book/print-field-book.ts'
import type { PdfAbout } from '../print/finish/finish-pdf.ts'
import { printForms } from '../print/forms/print-forms.ts'
import { inTurn, stepByStep } from '../print/in-turn.ts'
import { openPress, type Press } from '../print/press/press.ts'
import type { PrintCache } from '../print/press/print-cache.ts'
import { printPages } from '../print/press/print-pages.ts'
import { printSheets, type SheetFile } from '../print/sheets/print-sheets.ts'
import type { RenderAssets } from '../render/assets.ts'
import { type Binder, renderingBinder } from '../render/binder/render-binder.ts'
import { renderDividers } from '../render/binder/render-dividers.ts'
import { renderReplacementList } from '../render/binder/replacement-list.ts'
import { renderCards } from '../render/cards/render-cards.ts'
import { fieldBookFiles as names } from '../render/field-book/files.ts'
import { renderFieldBook, renderHandout } from '../render/field-book/render-field-book.ts'
import { renderForms } from '../render/forms/render-forms.ts'
import { renderSheets, type Sheets } from '../render/sheets/render-sheets.ts'
import { filesOffered } from '../render/site/papers.ts'
import type { Words } from '../validate/schemas/words.ts'
import { loadFonts } from './load/load-fonts.ts'
import type { Folders } from './load/load-manual.ts'
import { loadPressScript } from './load/load-scripts.ts'
import { loadTemplates } from './load/load-templates.ts'
import { printingProgram } from './printing-program.ts'

export type Printed = {
  readonly files: readonly OutputFile[]
  readonly binderPages: number
  readonly fieldBookPages: number
  /** What the site leads to. */
  readonly besideSite: readonly OutputFile[]
  readonly sheets: number
  /** Pages of each sheet, and how high the capitals of its steps are, mm, by paper. */
  readonly posted: readonly PostedSheet[]
  readonly binder: BinderMemory
  /** Pages of this binder, and those of the last build of another revision, to compare the next with. */
  readonly revision: BinderRevision
  readonly before: BinderRevision | undefined
  readonly toExchange: number
}

type PostedSheet = {
  readonly id: string
  readonly paper: string
  readonly pages: number
  readonly capitals: number
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
  /** Begins other work, when everything is rendered and the browser has the rest to do. */
  readonly meanwhile: () => Promise<unknown>
}

type Tell = (what: string) => void

type FieldBookFiles = { readonly files: readonly OutputFile[]; readonly pages: number }

/** What all documents of one build share. */
type Printing = {
  readonly press: Press
  readonly manual: Manual
  readonly assets: RenderAssets
  /** The font in which forms are filled in. */
  readonly typing: Uint8Array
  /** What a document says about itself, from its title and its name among the others. */
  readonly about: (title: string | undefined, name: string) => PdfAbout
  readonly tell: Tell
}

function aboutDocuments({ manual, words, version }: PrintJob): Printing['about'] {
  const { facility } = manual
  const shared = {
    author: facility.name,
    subject: words.binder.subject,
    keywords: [facility.name, facility.ovalName, ...manual.sections.map((s) => s.title)],
    lang: facility.lang,
    date: manual.date,
    creator: `Ovalkeep ${version}`,
  }
  return (title, name) => ({
    ...shared,
    title: `${facility.name}: ${title}`,
    seed: `${facility.id}/${facility.revision}/${manual.date}/${name}`,
  })
}

/** `sheets/<procedure>.pdf` on the first paper in color; others say so in their names. */
function sheetPath(f: SheetFile, usual: string | undefined): string {
  const marks = [
    f.id ?? allSheets,
    ...(f.paper === usual ? [] : [f.paper]),
    ...(f.ink === 'black' ? ['black'] : []),
  ]
  return `sheets/${marks.join('-')}.pdf`
}

async function sheetFiles(
  { press, manual, assets, about, tell }: Printing,
  sheets: Sheets,
): Promise<{ readonly files: OutputFile[]; readonly posted: PostedSheet[] }> {
  const { system, sheetPapers } = manual.facility
  const titled = about(assets.words.site.sheets, 'sheets')
  const printed = await printSheets(press, { sheets, about: titled, system }, tell)
  return {
    files: printed.map((f) => ({ path: sheetPath(f, sheetPapers[0]), data: f.bytes })),
    posted: printed.flatMap(({ id, ink, paper, pages, capitals }) =>
      id === undefined || ink === 'black'
        ? []
        : [{ id, paper, pages, capitals: Math.round(capitals * 100) / 100 }],
    ),
  }
}

async function formFiles(printing: Printing): Promise<OutputFile[]> {
  const { press, manual, assets, about, typing } = printing
  const titled = about(assets.words.forms.title, 'forms')
  const forms = { ...renderForms(manual, assets), typing }
  return [{ path: 'forms.pdf', data: await printForms(press, forms, titled) }]
}

async function cardFiles({ press, manual, assets, about }: Printing): Promise<OutputFile[]> {
  if (manual.cards.length === 0) return []
  const titled = about(assets.words.cards.title, 'cards')
  return [{ path: 'cards.pdf', data: await printCards(press, renderCards(manual, assets), titled) }]
}

async function fieldBookFiles({ press, manual, assets, about }: Printing): Promise<FieldBookFiles> {
  if (manual.fieldBook.pages.length === 0) return { files: [], pages: 0 }
  const { title, booklet, handout } = assets.words.fieldBook
  const printed = await printFieldBook(press, renderFieldBook(manual, assets), {
    book: about(title, 'field-book'),
    booklet: about(booklet, 'field-book-booklet'),
  })
  const handed = await printHandout(press, renderHandout(manual, assets), about(handout, 'handout'))
  return {
    files: [
      { path: names.book, data: printed.book },
      { path: names.booklet, data: printed.booklet },
      { path: names.handout, data: handed },
    ],
    pages: printed.pages,
  }
}

async function dividerFiles({ press, manual, assets, about }: Printing): Promise<OutputFile[]> {
  if (manual.facility.binder.dividers !== 'tab-stock') return []
  const titled = about(assets.words.binder.dividers, 'dividers')
  const data = await printPages(press, renderDividers(manual, assets), titled)
  return [{ path: 'dividers.pdf', data }]
}

/**
 * The leaves to exchange since another revision, and how many they are.
 * @param laid Pages of the binder in color, by which revisions are compared.
 */
async function replacementFiles(
  { press, manual, assets, about }: Printing,
  { rendered: binder, printed }: { readonly rendered: Binder; readonly printed: BinderPrint },
  laid: BinderPrint['laid'],
  before: BinderRevision | undefined,
): Promise<{ readonly files: readonly OutputFile[]; readonly toExchange: number }> {
  if (!before) return { files: [], toExchange: 0 }
  const { takeOut, putIn } = compareBinders(before.pages, laid, binder.sides)
  if (putIn.length + takeOut.length === 0) return { files: [], toExchange: 0 }
  const [out, into] = [takeOut.map(leafName), putIn.map(leafName)]
  const list = renderReplacementList(manual, assets, before, out, into)
  const titled = about(assets.words.binder.replacement, 'replacement')
  const data = await printReplacement(press, { binder, printed, putIn, list, about: titled })
  return { files: [{ path: 'replacement-pages.pdf', data }], toExchange: putIn.length }
}

/** The binder in black, where the facility prints it so; numbers and pages are those of color. */
async function blackBinder(
  { press, manual, assets, about, tell }: Printing,
  last: BinderMemory,
): Promise<{ readonly rendered: Binder; readonly printed: BinderPrint } | undefined> {
  if (manual.facility.binder.ink !== 'black') return undefined
  const rendered = await stepByStep(renderingBinder(manual, assets, 'black'))
  const titled = about(assets.words.binder.subject, 'binder-black')
  const printed = await printBinder(press, { binder: rendered, about: titled, last }, tell)
  return { rendered, printed }
}

async function printDocuments(
  printing: Printing,
  { last, before, meanwhile }: Pick<PrintJob, 'last' | 'before' | 'meanwhile'>,
): Promise<Printed> {
  const { press, manual, assets, about, tell } = printing
  tell('binder and sheets')
  // What is soon rendered is printed while the binder is, the longest first.
  const book = fieldBookFiles(printing)
  const small = inTurn([formFiles, cardFiles, dividerFiles], (make) => make(printing))
  // Whoever waits for them is told of a failure, even while the binder is rendered.
  for (const begun of [book, small]) begun.catch(() => undefined)
  await press.opened()
  const posted = renderSheets(manual, assets)
  const rendered = await stepByStep(renderingBinder(manual, assets))
  // Whoever asks for what comes of it is told of its failure.
  meanwhile().catch(() => undefined)
  const job = { binder: rendered, about: about(assets.words.binder.subject, 'binder'), last }
  const [binder, sheets, fieldBook, others] = await Promise.all([
    printBinder(press, job, tell),
    sheetFiles(printing, posted),
    book,
    small,
  ])
  const black = await blackBinder(printing, binder.memory)
  const replacement = await replacementFiles(
    printing,
    black ?? { rendered, printed: binder },
    binder.laid,
    before,
  )
  const pages = binder.laid.map(({ label, print }) => ({ label, print }))
  const files = [
    { path: 'binder.pdf', data: binder.bytes },
    ...(black ? [{ path: 'binder-black.pdf', data: black.printed.bytes }] : []),
    ...[replacement.files, fieldBook.files, others, sheets.files].flat(2),
  ]
  const offered = filesOffered(manual, assets.words)
  return {
    files,
    binderPages: binder.laid.length,
    fieldBookPages: fieldBook.pages,
    besideSite: files.filter((f) => offered.has(f.path)),
    sheets: posted.sheets.length,
    posted: sheets.posted,
    binder: binder.memory,
    revision: { revision: manual.facility.revision, date: manual.date, pages },
    before,
    toExchange: replacement.toExchange,
  }
}

/**
 * V8 lets its memory double before it looks what is still in use, and every part leaves megabytes
 * behind that nobody needs: with less a build takes a quarter less memory, and some tenths of a
 * second longer.
 */
const growSlowly = (): void => setFlagsFromString('--heap-growing-percent=40')

/**
 * Prints the binder, the posted sheets, the forms and the pocket cards of a manual, all in one
 * browser.
 */
export async function printManual(job: PrintJob, tell: Tell): Promise<Printed> {
  growSlowly()
  const { found, cache, manual, words, folders } = job
  const [fonts, script, templates, program] = await Promise.all([
    loadFonts(),
    loadPressScript(folders),
    loadTemplates(folders),
    printingProgram(folders),
  ])
  const press = openPress({
    browser: found.browser,
    browserName: found.version,
    program,
    fontCss: fonts.inline,
    script,
    lang: manual.facility.lang,
    cache,
  })
  const assets = { ...templates, words, fontCss: fonts.inline }
  try {
    const { typing } = fonts
    const printing = { press, manual, assets, typing, about: aboutDocuments(job), tell }
    return await printDocuments(printing, job)
  } catch (error) {
    // Nothing more comes of a browser that hangs; closing its pages would only wait for it.
    if (isBrowserFault(error, found.browser)) await endBrowser(found.browser)
    throw error
  } finally {
    // Everything is printed, or it was told why not.
    await press.close().catch(() => undefined)
  }
}
