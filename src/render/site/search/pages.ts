import { offeredPapers } from '../papers.ts'
import { type FindablesOf, termPlace } from './entry.ts'

export const terms: FindablesOf = ({ manual, pen }) =>
  manual.terms.map(({ term, means }) => ({
    kind: 'term',
    href: `terms.html#${termPlace(term)}`,
    title: term,
    lines: [pen.plain(means)],
    text: [],
  }))

/** The first sentence of a chapter stands for it. */
export const chapters: FindablesOf = ({ manual, pen }) =>
  manual.chapters.map((c) => {
    const text = pen.plain(c.text).replace(/[#>-]+ /g, ' ')
    return {
      kind: 'chapter',
      href: `terms.html#${c.id}`,
      title: c.title,
      lines: [/^.{0,160}?[.!?](?=\s|$)/s.exec(text.trim())?.[0] ?? ''],
      text: [text],
    }
  })

/** Whom to call is found by every role and name. */
const calls: FindablesOf = ({ manual: { emergency }, words }) => [
  {
    kind: 'page',
    href: 'emergency.html',
    title: words.emergency.title,
    lines: [words.safety.call, words.emergency.about],
    text: [
      emergency.number,
      words.emergency.firstAid,
      words.emergency.defibrillator,
      words.emergency.hospital,
      words.emergency.radio,
      words.emergency.address,
      ...[...emergency.stops, ...emergency.contacts].flatMap((c) => [c.roleTitle, c.name]),
    ],
  },
]

export const pages: FindablesOf = (site) => [
  ...calls(site),
  ...[...site.doors, ...site.offered].map(({ id, link, about }) => ({
    kind: 'page' as const,
    href: `${id}.html`,
    title: link,
    lines: [about],
    text: [],
  })),
]

export const papers: FindablesOf = ({ printed, words }) =>
  offeredPapers(printed, words).map(({ file, title, about, size }) => ({
    kind: 'paper',
    href: file,
    title,
    lines: [`${about} ${size}`],
    text: [],
  }))
