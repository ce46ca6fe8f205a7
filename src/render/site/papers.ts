import type { Manual } from '../../model/manual.ts'
import { fill } from '../../model/pattern.ts'
import { allSheets, emergencySheet } from '../../model/sheet-names.ts'
import type { Words } from '../../validate/schemas/words.ts'
import { fieldBookFiles } from '../field-book/files.ts'

/**
 * Files beside the pages, by their path below the site: their size in bytes, and the revision that
 * they are of, where they were not made anew.
 */
export type PrintedFiles = ReadonlyMap<
  string,
  {
    readonly bytes: number
    readonly older?: { readonly revision: string; readonly date: string } | undefined
  }
>

/** What pages ask of them. */
export type FilesBeside = Pick<PrintedFiles, 'get'>

type Paper = { readonly file: string; readonly title: string; readonly about: string }

/** Where the posted sheet of a procedure lies, on the first paper of the facility, in color. */
export const sheetFile = (id: string): string => `sheets/${id}.pdf`

/** What is printed as a whole, the whole manual first. */
const papersOf = (words: Words): readonly Paper[] => [
  { file: 'binder.pdf', title: words.site.binder, about: words.site.binderAbout },
  { file: fieldBookFiles.book, title: words.fieldBook.title, about: words.fieldBook.carry },
  { file: fieldBookFiles.booklet, title: words.fieldBook.booklet, about: words.fieldBook.fold },
  {
    file: fieldBookFiles.handout,
    title: words.fieldBook.handout,
    about: words.fieldBook.handoutAbout,
  },
  { file: sheetFile(allSheets), title: words.site.sheets, about: words.site.sheetsAbout },
  { file: 'cards.pdf', title: words.cards.title, about: words.site.cardsAbout },
  { file: 'forms.pdf', title: words.forms.title, about: words.binder.formsAbout },
]

/** The whole manual in one file, to be sent from hand to hand. */
export const oneFileName = 'manual.html'

/** "PDF, 1.9 MB", so that nobody with a weak signal is surprised. */
const sizeWords = (file: string, bytes: number, words: Words): string =>
  fill(file === oneFileName ? words.oneFile.file : words.site.file, {
    size: Math.max(0.1, bytes / 1e6).toFixed(1),
  })

/** A printed file as pages offer it; undefined where no browser could print it. */
export function offeredFile(file: string, printed: FilesBeside, words: Words) {
  const found = printed.get(file)
  if (!found) return undefined
  const size = sizeWords(file, found.bytes, words)
  const { older } = found
  return { file, size: older ? fill(words.site.olderFile, { file: size, ...older }) : size }
}

/** Which printed files the pages lead to, where there is a browser to print them. */
export const filesOffered = (manual: Manual, words: Words): ReadonlySet<string> =>
  new Set([
    ...papersOf(words).map(({ file }) => file),
    ...[emergencySheet, ...manual.procedures.map((p) => p.id)].map(sheetFile),
  ])

/** The manual in one file before what is printed. */
export const offeredPapers = (printed: FilesBeside, words: Words) =>
  [
    { file: oneFileName, title: words.oneFile.title, about: words.oneFile.about },
    ...papersOf(words),
  ].flatMap((paper) => {
    const offered = offeredFile(paper.file, printed, words)
    return offered ? [{ ...paper, ...offered }] : []
  })
