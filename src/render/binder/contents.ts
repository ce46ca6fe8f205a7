import { fill } from '../../model/pattern.ts'
import type { Html } from '../text/html.ts'
import type { Book } from './book.ts'
import type { BackPart } from './divided-parts.ts'

/** A line of the contents: what is found, under which number, and the place that it leads to. */
export type ContentsEntry = {
  readonly place: string
  readonly number: string
  readonly title: string | Html
}

/** A part of the binder with what is in it; a group is never torn over two pages. */
export type ContentsGroup = ContentsEntry & { readonly entries: readonly ContentsEntry[] }

const entry = (place: string, title: string | Html, number = ''): ContentsEntry => ({
  place,
  number,
  title,
})

/** Worksheets that one line of the contents stands for: a reader looks for a number. */
const worksheetsInLine = 20

function worksheetLines({ manual, words }: Book): readonly ContentsEntry[] {
  const { worksheets } = manual
  return Array.from({ length: Math.ceil(worksheets.length / worksheetsInLine) }, (_, i) => {
    const own = worksheets.slice(i * worksheetsInLine, (i + 1) * worksheetsInLine)
    const [first, last] = [own[0], own.at(-1)]
    if (!first || !last) throw new RangeError('a line of worksheets without one')
    const named = { first: first.number, last: last.number }
    return entry(`worksheet-${first.id}`, fill(words.binder.fromTo, named))
  })
}

/** What stands in each part behind the sections. */
const insideBack: Readonly<Record<BackPart['id'], (book: Book) => readonly ContentsEntry[]>> = {
  plans: ({ manual }) => manual.schedules.map((s) => entry(`plan-${s.id}`, s.title)),
  symptoms: ({ manual, pen }) =>
    manual.symptoms.map((s) => entry(`symptom-${s.id}`, pen.line(s.says))),
  reckoners: ({ manual, reckoner }) =>
    manual.reckoners.map((r) => {
      const { number, title } = reckoner(r)
      return entry(`reckoner-${r.id}`, title, number)
    }),
  safety: ({ words }) => [
    entry('signals', words.safety.signals),
    entry('hazards', words.safety.hazards),
  ],
  worksheets: worksheetLines,
  glossary: ({ manual, words }) => [
    ...manual.chapters
      .filter((c) => c.place === 'back')
      .map((c) => entry(`chapter-${c.id}`, c.title)),
    entry('index', words.binder.index),
    entry('sources', words.binder.sources),
  ],
}

/** What stands before the first section, in its order. */
export const frontContents = ({ manual, words }: Book): readonly ContentsEntry[] => [
  // The record is on the back of the cover, so that who to call is on the right.
  entry('record', words.binder.record),
  entry('call', words.emergency.title),
  entry('lists', words.binder.lists),
  entry('glance', words.binder.glance),
  ...manual.chapters
    .filter((c) => c.place === 'front')
    .map((c) => entry(`chapter-${c.id}`, c.title)),
  entry('findings', words.binder.findings),
]

/** The contents of a binder: every numbered part with its entries. */
export function contentsOf(book: Book): readonly ContentsGroup[] {
  const { manual } = book
  const sections = manual.sections.map((s) => ({
    ...entry(`section-${s.id}`, s.title, String(s.number)),
    entries: manual.procedures
      .filter((p) => s.procedures.includes(p.id))
      .map((p) => entry(`procedure-${p.id}`, p.title, p.number)),
  }))
  const back = book.back.map((b) => ({
    ...entry(`part-${b.id}`, b.title, String(b.number)),
    entries: insideBack[b.id](book),
  }))
  return [...sections, ...back]
}
