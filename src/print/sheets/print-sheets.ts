import { type Ink, inks } from '../../model/ink.ts'
import type { SheetPaper } from '../../model/papers.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import type { Sheet, Sheets } from '../../render/sheets/render-sheets.ts'
import { finishOrdered, finishPart, orderContent, type PdfAbout } from '../finish/finish-pdf.ts'
import { inTurn } from '../in-turn.ts'
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
      const opened = openDocument(bytes)
      orderContent(opened)
      return opened
    })
    return { paper, sheets, ink, bytes, ordered }
  })
}

/** Each sheet of a section in a file of its own. */
async function printApart(
  press: Press,
  { about }: SheetsJob,
  titles: ReadonlyMap<string, string>,
  section: PrintedSection,
): Promise<readonly SheetFile[]> {
  const { paper, ink } = section
  const abouts = section.sheets.map(({ id }) => ({
    ...about,
    title: titles.get(id) ?? '',
    seed: `${about.seed}/${paper}/${id}/${ink}`,
  }))
  const counts = section.sheets.map((s) => s.pages)
  const files = await press.keep([JSON.stringify([abouts, counts]), section.bytes], async () => {
    const parts = splitDocument(await section.ordered(), counts)
    return parts.map((part, i) => finishOrdered(part, abouts[i] ?? about))
  })
  return section.sheets.flatMap((sheet, i) => {
    const bytes = files[i]
    return bytes ? [{ ...sheet, paper, ink, bytes }] : []
  })
}

/** A section finished for its place among all of them. */
type WrittenSection = Section & { readonly written: WrittenPart }

type FinishedSection = {
  /** Its sheets in files of their own. */
  readonly files: readonly SheetFile[]
  /** As part of the file of all sheets. */
  readonly section: WrittenSection
}

/** Prints and finishes the sheets of a section on every paper in both inks. */
async function finishSection(
  press: Press,
  job: SheetsJob,
  sheets: readonly Sheet[],
  place: PartPlace,
): Promise<readonly FinishedSection[]> {
  const titles = new Map(sheets.map(({ id, title }) => [id, title]))
  const prints = await printSection(press, job.system, job.sheets.papers, sheets)
  const finished: FinishedSection[] = []
  // One after another, so that only one of them is held as a document at a time.
  for (const printed of prints.flatMap(sectionsOf)) {
    const { paper, sheets, ink, bytes, ordered } = printed
    const files = await printApart(press, job, titles, printed)
    const written = await press.keep([JSON.stringify(place), bytes], async () =>
      finishPart(await ordered(), place),
    )
    finished.push({ files, section: { paper, sheets, ink, written } })
  }
  return finished
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
  const bytes = joinWritten(
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
  const { papers, sections: all } = job.sheets
  const count = all.reduce((sum, s) => sum + s.count, 0)
  let done = 0
  const printed = await inTurn(all, async (section, part) => {
    const finished = await finishSection(press, job, section.sheets(), { part, of: all.length })
    done += section.count
    tell(`sheet ${done} of ${count}`)
    return finished
  })
  const files = printed.flatMap((p) => p.flatMap((f) => f.files))
  const sections = printed.flatMap((p) => p.map((f) => f.section))
  const together = papers.flatMap(({ name }) =>
    inks.map((ink) =>
      joinSections(
        job,
        sections.filter((s) => s.paper === name && s.ink === ink),
      ),
    ),
  )
  return [...files, ...(await Promise.all(together)).flat()]
}
