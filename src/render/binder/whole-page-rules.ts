import { type Hand, tabBox, tabWidth } from './edge-tabs.ts'
import {
  blankWords,
  edgeOf,
  noBoxes,
  type PartPages,
  pageFrame,
  pageMargin,
  running,
} from './page-rules.ts'

/** What the page rules of a whole binder are made from. */
export type WholePages = {
  readonly parts: readonly PartPages[]
  /** What a blank page says. */
  readonly blank: string
}

/** Sides of a leaf by their selector: the browser begins on a right-hand page and alternates. */
const handsOf = ({ sides }: PartPages): readonly (readonly [string, Hand])[] =>
  sides === 1
    ? [['', 'right']]
    : [
        [':right', 'right'],
        [':left', 'left'],
      ]

/** Counts the pages of a part. Browsers do not begin their own count anew. */
const counter = (i: number): string => `part-${i}`

/** Page rules of one part; it counts its pages itself, and its opener and blanks have names of their own. */
function ownRules(p: PartPages, i: number, blank: string): readonly string[] {
  const number =
    p.number === undefined
      ? `counter(${counter(i)},lower-roman)`
      : `"${p.number}-" counter(${counter(i)})`
  const counts = `counter-increment:${counter(i)}`
  const hands = handsOf(p)
  const empty = { name: '', part: '', subject: '' }
  return [
    ...p.pages.flatMap((page) => [
      `@page ${page.name}-${i}{${counts}}`,
      ...hands.map(
        ([side, hand]) => `@page ${page.name}-${i}${side}{${running(p, page, hand, number)}}`,
      ),
    ]),
    ...(p.number === undefined
      ? [`@page cover{${counts};${noBoxes}}`]
      : hands.map(
          ([side, hand]) =>
            `@page divider-${i}${side}{${noBoxes}${tabBox(edgeOf(p, hand), p.number ?? 0, tabWidth.divider)}}`,
        )),
    `@page blank-${i}{${counts};${running(p, empty, 'left', number)}${blankWords(blank)}}`,
  ]
}

/** Which page is whose, in a document that holds each part in an element with `data-part`. */
function names({ pages }: PartPages, i: number): string {
  const inPart = `[data-part="${i}"]`
  return [
    ...pages.map(({ name }) => `${inPart} .${name}{page:${name}-${i}}`),
    `${inPart} .section-end{page:section-notes-${i}}`,
    `${inPart} .divider{page:divider-${i}}`,
    `.blank-leaf${inPart}{page:blank-${i}}`,
  ].join('\n')
}

/**
 * Page rules of a binder that is printed as one document, beginning on a right-hand page: those of its
 * parts, each with a count of its own. A part that begins on its divider has the tab of its other
 * pages there, since only the first page of a document can be told from the others of its name.
 */
export function wholePageRules({ parts, blank }: WholePages): string {
  const [first] = parts
  if (!first) return ''
  return [
    pageFrame(first),
    ...handsOf(first).map(([side, hand]) => `@page ${side}{${pageMargin(hand)}}`),
    ...parts.flatMap((p, i) => ownRules(p, i, blank)),
    ...parts.map(names),
  ].join('\n')
}
