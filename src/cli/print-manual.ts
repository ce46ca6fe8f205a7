import type { Browser } from 'puppeteer'
import { readingDistance } from '../compute/reading/reading-distance.ts'
import type { Manual } from '../model/manual.ts'
import { type PageLabels, printBinder } from '../print/binder/print-binder.ts'
import { printForms } from '../print/forms/print-forms.ts'
import { printSheets } from '../print/sheets/print-sheets.ts'
import { margins } from '../render/binder/page-rules.ts'
import { renderBinder } from '../render/binder/render-binder.ts'
import { renderForms } from '../render/forms/render-forms.ts'
import { renderSheets } from '../render/sheets/render-sheets.ts'
import type { Words } from '../validate/schemas/words.ts'
import type { OutputFile } from '../write/write-files.ts'
import { loadFonts, loadTemplates } from './load/load-assets.ts'
import type { Folders } from './load/load-manual.ts'

export type Printed = { readonly files: readonly OutputFile[]; readonly binderPages: number; readonly sheets: number; readonly labels: PageLabels }

/** What the PDFs of a build are made with. */
export type PrintJob = { readonly browser: Browser; readonly manual: Manual; readonly words: Words; readonly folders: Folders; readonly seed: string; readonly version: string; /** Page numbers of the last build. */ readonly last: PageLabels | undefined }

const pointsAnInch = 72

function distanceWords(points: number, manual: Manual): string {
  const meters = readingDistance(points)
  return manual.facility.system === 'us' ? `${Math.floor(meters / 0.3048)} ft` : `${Math.floor(meters * 10) / 10} m`
}

/** Prints the binder and the posted sheets of a manual, both in one browser. */
export async function printManual({ browser, manual, words, folders, seed, version, last }: PrintJob, tell: (what: string) => void): Promise<Printed> {
  const [fonts, templates] = await Promise.all([loadFonts(), loadTemplates(folders)])
  const assets = { ...templates, words, fontCss: fonts.inline }
  const about = { author: manual.facility.name, subject: words.binder['subject'] ?? '', keywords: [manual.facility.name, manual.facility.ovalName, ...manual.sections.map((s) => s.title)], lang: manual.facility.lang, date: manual.date, creator: `Ovalkeep ${version}` }
  tell('binder and sheets')
  const rendered = renderSheets(manual, assets)
  // One browser, two pages: each keeps a core busy.
  const [binder, forms, sheets] = await Promise.all([
    printBinder(browser, renderBinder(manual, assets), { ...about, title: `${manual.facility.name}: ${words.binder['subject']}`, seed: `${seed}/binder` }, margins.top * pointsAnInch, last, tell),
    printForms(browser, renderForms(manual, assets), { ...about, title: `${manual.facility.name}: ${words.forms['title']}`, seed: `${seed}/forms` }),
    printSheets(browser, rendered.html, rendered.sheets, { ...about, title: `${manual.facility.name}: ${words.site['sheets']}`, seed: `${seed}/sheets` }, (points) => distanceWords(points, manual), tell),
  ])
  return {
    files: [{ path: 'binder.pdf', data: binder.bytes }, { path: 'forms.pdf', data: forms.bytes }, { path: 'sheets/sheets.pdf', data: sheets.all }, ...sheets.each.map((s) => ({ path: `sheets/${s.id}.pdf`, data: s.bytes }))],
    binderPages: binder.pages,
    sheets: sheets.each.length,
    labels: binder.labels,
  }
}
