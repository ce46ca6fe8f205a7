import { type Ink, inks } from '../../model/ink.ts'
import type { SheetPaper } from '../../model/papers.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import type { Sheets } from '../../render/sheets/render-sheets.ts'
import { finishOrdered, orderContent, type PdfAbout } from '../finish/finish-pdf.ts'
import { addDocument, finishMerge, startMerge } from '../merge/merge-documents.ts'
import { openDocument } from '../pdf/documents.ts'
import type { PdfDocument } from '../pdf/kinds.ts'
import type { Press } from '../press/press.ts'
import { splitDocument } from '../split/split-document.ts'
import { printSection, type SectionPrint } from './print-section.ts'

export type SheetFile = {
  readonly paper: SheetPaper
  readonly ink: Ink
  /** Of the procedure; undefined for all sheets in one file. */
  readonly id: string | undefined
  readonly pages: number
  /** Height of the capitals of its steps, mm; of all sheets the smallest. */
  readonly capitals: number
  readonly bytes: Uint8Array
}

export type SheetsJob = {
  readonly sheets: Sheets
  readonly about: PdfAbout
  readonly system: UnitSystem
}

/** The sheets of a section on a paper in an ink. */
type Section = Pick<SectionPrint, 'paper' | 'sheets'> & {
  readonly ink: Ink
  readonly bytes: Uint8Array
  /** As a document whose content is in order; read once, when it is first asked for. */
  readonly ordered: () => Promise<PdfDocument>
}

function sectionsOf({ paper, sheets, printed }: SectionPrint): readonly Section[] {
  return inks.map((ink) => {
    const bytes = printed[ink]
    let document: Promise<PdfDocument> | undefined
    const read = async (): Promise<PdfDocument> => {
      // The browser is given its next section first, and works while this one is looked at.
      await new Promise((go) => setImmediate(go))
      const opened = await openDocument(bytes)
      orderContent(opened)
      return opened
    }
    const ordered = () => {
      document ??= read()
      return document
    }
    return { paper, sheets, ink, bytes, ordered }
  })
}

/** Each sheet of a section in a file of its own. */
async function printApart(
  press: Press,
  { about, sheets }: SheetsJob,
  section: Section,
): Promise<readonly SheetFile[]> {
  const { paper, ink } = section
  const titles = new Map(sheets.sheets.map(({ id, title }) => [id, title]))
  const abouts = section.sheets.map(({ id }) => ({
    ...about,
    title: titles.get(id) ?? '',
    seed: `${about.seed}/${paper}/${id}/${ink}`,
  }))
  const counts = section.sheets.map((s) => s.pages)
  const files = await press.keep([JSON.stringify([abouts, counts]), section.bytes], async () => {
    const parts = await splitDocument(await section.ordered(), counts)
    return Promise.all(parts.map((part, i) => finishOrdered(part, abouts[i] ?? about)))
  })
  return section.sheets.flatMap((sheet, i) => {
    const bytes = files[i]
    return bytes ? [{ ...sheet, paper, ink, bytes }] : []
  })
}

/** All sheets on a paper in one ink. */
async function printTogether(
  press: Press,
  { about }: SheetsJob,
  sections: readonly Section[],
): Promise<readonly SheetFile[]> {
  const [first] = sections
  if (!first) return []
  const { paper, ink } = first
  const own = { ...about, seed: `${about.seed}/${paper}/${ink}` }
  const parts = [JSON.stringify(own), ...sections.map((s) => s.bytes)]
  const bytes = await press.keep(parts, async () => {
    const merge = await startMerge()
    const pages = []
    for (const section of sections) pages.push(...addDocument(merge, await section.ordered()))
    return finishOrdered(finishMerge(merge, pages), own)
  })
  const all = sections.flatMap((s) => s.sheets)
  const pages = all.reduce((sum, s) => sum + s.pages, 0)
  const capitals = Math.min(...all.map((s) => s.capitals))
  return [{ paper, ink, id: undefined, pages, capitals, bytes }]
}

/**
 * Prints posted sheets, each in the largest type that fits, on every paper in color and in
 * black: each in a file of its own, and all in one. Sheets of a section are printed together.
 * @throws Error naming the sheet that does not fit.
 */
export async function printSheets(
  press: Press,
  job: SheetsJob,
  tell: (what: string) => void,
): Promise<readonly SheetFile[]> {
  const { papers, sheets } = job.sheets
  const names = [...new Set(sheets.map((s) => s.section))]
  const bySection = names.map((name) => sheets.filter((s) => s.section === name))
  let done = 0
  const printed = await Promise.all(
    bySection.map(async (own) => {
      const prints = await printSection(press, job.system, papers, own)
      const sections = prints.flatMap(sectionsOf)
      const files = await Promise.all(sections.map((s) => printApart(press, job, s)))
      done += own.length
      tell(`sheet ${done} of ${sheets.length}`)
      return { sections, files: files.flat() }
    }),
  )
  const all = printed.flatMap((p) => p.sections)
  const together = papers.flatMap(({ name }) =>
    inks.map((ink) =>
      printTogether(
        press,
        job,
        all.filter((s) => s.paper === name && s.ink === ink),
      ),
    ),
  )
  const files = [...printed.map((p) => p.files), ...(await Promise.all(together))]
  return files.flat()
}
