import type { Ink } from '../../model/ink.ts'
import { mmOfInch, type Paper, paperLengths, paperSize } from '../../model/papers.ts'
import {
  type Edge,
  edgeIndex,
  type Hand,
  indexMargin,
  noBoxesAt,
  otherHand,
  tabBox,
  tabName,
  tabWidth,
} from './edge-tabs.ts'
import { quoteCss } from './quote-css.ts'

export type { Hand } from './edge-tabs.ts'

/**
 * One named page of a part: what runs at its head. The part stands over left-hand pages, its subject
 * over right-hand ones, each outside; over both where only one side is printed.
 */
export type NamedPage = {
  readonly name: string
  readonly part: string
  readonly subject: string
  /** Shows the tabs of all parts, in a wider margin. */
  readonly showsTabs?: true
}

/** Sides of a leaf that are printed: on one, every page is a right-hand page. */
export type Sides = 1 | 2

/** What the page rules of one part of a binder are made from. */
export type PartPages = {
  readonly paper: Paper
  readonly sides: Sides
  readonly foot: string
  readonly ink: Ink
  /**
   * Stands before the page number, as in `3-2`, and on the tab; the front has roman numbers and no
   * tab.
   */
  readonly number: number | undefined
  /** Titles of the numbered parts of the whole binder, which share the height of the page for tabs. */
  readonly titles: readonly string[]
  readonly pages: readonly NamedPage[]
  /** Whether its first page is its divider, with a tab that reaches further into the page. */
  readonly divides: boolean
}

/**
 * Margins in inches: `bound` leaves room for punched holes. Both pages of a leaf have the same text
 * width.
 */
export const margins = { top: 0.74, bottom: 0.68, bound: 1, outer: 0.7 } as const

/** Room for text on a page, inches. */
export const textArea = (
  paper: PartPages['paper'],
): { readonly width: number; readonly height: number } => {
  const [width, height] = paperSize(paper).map((mm) => mm / mmOfInch) as [number, number]
  return {
    width: width - margins.bound - margins.outer,
    height: height - margins.top - margins.bottom,
  }
}

const boxes = [
  'top-left',
  'top-center',
  'top-right',
  'bottom-left',
  'bottom-center',
  'bottom-right',
  'left-top',
  'right-top',
  'left-bottom',
  'right-bottom',
]
export const noBoxes = boxes.map((b) => `@${b}{content:none;background:none;border:none}`).join('')

export const edgeOf = (p: PartPages, hand: Hand): Edge => ({
  hand,
  height: textArea(p.paper).height,
  titles: p.titles,
  color: p.ink === 'black' ? '#000' : '#5c4a3a',
})

/** What stands along the outer edge; nothing stands along the other. */
function alongEdge(p: PartPages, page: NamedPage, hand: Hand): string {
  const edge = edgeOf(p, hand)
  if (page.showsTabs) return `${edgeIndex(edge)}${noBoxesAt(otherHand(hand))}`
  return p.number === undefined
    ? `${noBoxesAt(hand)}${noBoxesAt(otherHand(hand))}`
    : `${tabBox(edge, p.number, tabWidth.page)}${tabName(edge, p.number)}${noBoxesAt(otherHand(hand))}`
}

export const pageMargin = (hand: Hand, outer: number = margins.outer): string =>
  hand === 'right'
    ? `margin-left:${margins.bound}in;margin-right:${outer}in`
    : `margin-left:${outer}in;margin-right:${margins.bound}in`

export const blankWords = (words: string): string => `@top-center{content:${quoteCss(words)}}`

/** What stands at the left and the right of the head. */
function headsOf({ part, subject }: NamedPage, sides: Sides, hand: Hand): [string, string] {
  if (sides === 1) return [part, subject]
  return hand === 'left' ? [part, ''] : ['', subject === '' ? part : subject]
}

/** Page number outside, facility and revision inside. */
export function running(p: PartPages, page: NamedPage, hand: Hand, number: string): string {
  const [left, right] = hand === 'right' ? [quoteCss(p.foot), number] : [number, quoteCss(p.foot)]
  const [part, subject] = headsOf(page, p.sides, hand)
  return `@top-left{content:${quoteCss(part)}}@top-right{content:${quoteCss(subject)}}@bottom-left{content:${left}}@bottom-right{content:${right}}${alongEdge(p, page, hand)}${page.showsTabs ? pageMargin(hand, indexMargin) : ''}`
}

export function pageFrame(p: Pick<PartPages, 'paper'>): string {
  const common = ['top-left', 'top-center', 'top-right', 'bottom-left', 'bottom-right']
    .map(
      (b) =>
        `@${b}{font:400 8.5pt "Source Sans 3";color:#4d463f;${b.startsWith('top') ? 'vertical-align:bottom;padding-bottom:8pt' : 'vertical-align:top;padding-top:8pt'}}`,
    )
    .join('')
  return `@page{size:${paperLengths(p.paper).join(' ')};margin-top:${margins.top}in;margin-bottom:${margins.bottom}in;${common}}`
}

/**
 * Page rules of one part of a binder: mirrored gutter, running heads, feet, numbers, tab.
 * @param first The side of the leaf on which the part begins. The browser takes the first page of
 * whatever it prints for a right-hand page, so where a part begins on the left the two sides are
 * exchanged.
 */
export function partPageRules(p: PartPages, first: Hand): string {
  const hands: readonly (readonly [string, Hand])[] =
    p.sides === 1
      ? [['', 'right']]
      : [
          ['', first],
          [':left', otherHand(first)],
        ]
  const number =
    p.number === undefined ? 'counter(page,lower-roman)' : `"${p.number}-" counter(page)`
  return [
    pageFrame(p),
    ...hands.map(([selector, hand]) => `@page ${selector}{${pageMargin(hand)}}`),
    // This does not count as a page.
    ...hands.map(
      ([selector, hand]) =>
        `@page divider${selector}{counter-increment:page 0;${noBoxes}${p.number === undefined ? '' : tabBox(edgeOf(p, hand), p.number, tabWidth.divider)}}`,
    ),
    `@page cover{${noBoxes}}`,
    ...p.pages.flatMap((page) =>
      hands.map(
        ([selector, hand]) => `@page ${page.name}${selector}{${running(p, page, hand, number)}}`,
      ),
    ),
    // Parts are printed one by one, so that the first page is that of the part.
    ...p.pages.flatMap(({ name }) =>
      p.divides && p.number !== undefined
        ? [`@page ${name}:first{${tabBox(edgeOf(p, first), p.number, tabWidth.divider)}}`]
        : [],
    ),
  ].join('\n')
}

/** A page without text that fills a leaf: whose it is, its number, and the words that say so. */
export type BlankPage = { readonly part: PartPages; readonly label: string; readonly words: string }

/** Page rules of blank pages, which are all left-hand: named `blank-0`, `blank-1` and so on. */
export function blankPageRules(pages: readonly BlankPage[]): string {
  const [first] = pages
  if (!first) return ''
  return [
    pageFrame(first.part),
    `@page{${pageMargin('left')}}`,
    ...pages.map(
      ({ part, label, words }, i) =>
        `@page blank-${i}{${running(part, { name: '', part: '', subject: '' }, 'left', quoteCss(label))}${blankWords(words)}}`,
    ),
  ].join('\n')
}
