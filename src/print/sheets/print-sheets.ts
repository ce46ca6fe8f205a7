import { type Ink, inks } from '../../model/ink.ts'
import type { SheetPaper } from '../../model/papers.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import type { Sheets } from '../../render/sheets/render-sheets.ts'
import { finishOrdered, finishPart, orderContent, type PdfAbout } from '../finish/finish-pdf.ts'
import { joinWritten } from '../join/join-written.ts'
import type { PartPlace } from '../join/part-place.ts'
import type { WrittenPart } from '../join/write-part.ts'
import { once } from '../once.ts'
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
type Section = Pick<SectionPrint, 'paper' | 'sheets'> & { readonly ink: Ink }

/** A section as printed. */
type PrintedSection = Section & {
  readonly bytes: Uint8Array
  /** As a document whose content is in order; read once, when it is first asked for. */
  readonly ordered: () => Promise<PdfDocument>
}

function sectionsOf({ paper, sheets, printed }: SectionPrint): readonly PrintedSection[] {
  return inks.map((ink) => {
    const bytes = printed[ink]
    const ordered = once(async () => {
      // The browser is given its next section first, and works while this one is looked at.
      await new Promise((go) => setImmediate(go))
      const opened = await openDocument(bytes)
      orderContent(opened)
      return opened
    })
    return { paper, sheets, ink, bytes, ordered }
  })
}

/** Each sheet of a section in a file of its own. */
async function printApart(
  press: Press,
  { about, sheets }: SheetsJob,
  section: PrintedSection,
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
    return parts.map((part, i) => finishOrdered(part, abouts[i] ?? about))
  })
  return section.sheets.flatMap((sheet, i) => {
    const bytes = files[i]
    return bytes ? [{ ...sheet, paper, ink, bytes }] : []
  })
}

/** A section finished for its place among all of them. */
type WrittenSection = Section & { readonly written: WrittenPart }

/** The sheets of a section in files of their own, and as part of the file of all sheets. */
async function finishSection(
  press: Press,
  job: SheetsJob,
  printed: PrintedSection,
  place: PartPlace,
): Promise<{ readonly files: readonly SheetFile[]; readonly section: WrittenSection }> {
  const { paper, sheets, ink, bytes, ordered } = printed
  const files = await printApart(press, job, printed)
  const written = await press.keep([JSON.stringify(place), bytes], async () =>
    finishPart(await ordered(), place),
  )
  return { files, section: { paper, sheets, ink, written } }
}

/** All sheets on a paper in one ink. */
async function joinSections(
  { about }: SheetsJob,
  sections: readonly WrittenSection[],
): Promise<readonly SheetFile[]> {
  const [first] = sections
  if (!first) return []
  const { paper, ink } = first
  const own = { ...about, seed: `${about.seed}/${paper}/${ink}` }
  const parts = sections.map((s) => s.written)
  const bytes = await joinWritten(
    parts,
    parts.flatMap((p) => p.pages),
    own,
  )
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
    bySection.map(async (own, part) => {
      const prints = await printSection(press, job.system, papers, own)
      const place = { part, of: names.length }
      const finished = await Promise.all(
        prints.flatMap(sectionsOf).map((s) => finishSection(press, job, s, place)),
      )
      done += own.length
      tell(`sheet ${done} of ${sheets.length}`)
      return finished
    }),
  )
  const all = printed.flat()
  const sections = all.map((f) => f.section)
  const together = papers.flatMap(({ name }) =>
    inks.map((ink) =>
      joinSections(
        job,
        sections.filter((s) => s.paper === name && s.ink === ink),
      ),
    ),
  )
  return [...all.flatMap((f) => f.files), ...(await Promise.all(together)).flat()]
}
