import { quoteCss } from './quote-css.ts'

export type Hand = 'right' | 'left'

export const otherHand = (hand: Hand): Hand => (hand === 'right' ? 'left' : 'right')

/** The outer edge of a page, where the numbered parts of a binder have their tabs. */
export type Edge = {
  readonly hand: Hand
  /** From the top margin to the bottom margin, inches. */
  readonly height: number
  /** Of the numbered parts, in their order. */
  readonly titles: readonly string[]
  readonly color: string
}

/** What printers of an office leave white along the edges of a leaf (18 pt), inches. */
export const unprinted = 0.25

/** How wide a tab is, inches: that of a divider reaches further into the page. */
export const tabWidth = { page: 0.28, divider: 0.4 } as const

/** Between one tab and the next, inches. */
const gap = 0.1

/** How far the name stands from its tab, and how much room it has, inches. */
const name = { gap: 0.07, length: 2.3 } as const

/** Tabs share the height between the margins; few stand closer together than they need to. */
const tabStep = ({ titles, height }: Edge): number => Math.min(0.82, height / titles.length)

const inches = (n: number): string => `${n.toFixed(3)}in`

/** Margins of a box: from the top, from the foot, and from the edge, which it is clear of. */
const atEdge = ({ hand }: Edge, top: string, bottom: string, clear: number = unprinted): string =>
  hand === 'right'
    ? `margin:${top} ${clear}in ${bottom} auto`
    : `margin:${top} auto ${bottom} ${clear}in`

/** No boxes along one side of a page. */
export const noBoxesAt = (hand: Hand): string =>
  ['top', 'bottom'].map((at) => `@${hand}-${at}{content:none;background:none}`).join('')

/** The tab of a part: its number, white on a block at the part's own height. */
export function tabBox(edge: Edge, number: number, width: number): string {
  const step = tabStep(edge)
  const down = inches((number - 1) * step)
  return `@${edge.hand}-top{content:${quoteCss(String(number))};background:${edge.color};color:#fff;width:${width}in;height:${inches(step - gap)};${atEdge(edge, down, 'auto')};vertical-align:middle;text-align:center;font:600 15pt "Barlow Condensed"}`
}

/**
 * The title of a part along the edge, below its tab; above it in the lower half of the page, where
 * below there is no room.
 */
export function tabName(edge: Edge, number: number): string {
  const step = tabStep(edge)
  const top = (number - 1) * step
  const isBelow = top < edge.height / 2
  const from = isBelow ? top + step - gap + name.gap : top - name.gap - name.length
  const up = inches(edge.height - from - name.length)
  const title = quoteCss(edge.titles[number - 1] ?? '')
  return `@${edge.hand}-bottom{content:${title};color:${edge.color};writing-mode:vertical-rl;white-space:pre;width:${tabWidth.page}in;height:${name.length}in;${atEdge(edge, 'auto', up)};text-align:${isBelow ? 'start' : 'end'};font:600 10pt/${tabWidth.page}in "Barlow Condensed"}`
}

/** Outer margin of a page that shows all tabs with their titles, inches. */
export const indexMargin = 2.35

/**
 * All tabs at once, each at the height at which it stands on its own pages, with the titles beside
 * them.
 */
export function edgeIndex(edge: Edge): string {
  const { hand, titles, color } = edge
  const step = tabStep(edge)
  const lines = (texts: readonly string[]): string =>
    `content:${texts.map(quoteCss).join('"\\A"')};white-space:pre;height:${inches(step * titles.length)}`
  // A line is as high as a tab with the gap below it, and its words stand in its middle.
  const top = inches(-gap / 2)
  const up = inches(edge.height - step * titles.length + gap / 2)
  const block = `linear-gradient(transparent ${inches(gap / 2)},${color} 0 ${inches(step - gap / 2)},transparent 0) 0 0/100% ${inches(step)}`
  const beside = unprinted + tabWidth.page + gap
  const font = (size: number): string => `font:600 ${size}pt/${inches(step)} "Barlow Condensed"`
  return [
    `@${hand}-top{${lines(titles)};width:${inches(indexMargin - beside - gap)};${atEdge(edge, top, 'auto', beside)};vertical-align:top;text-align:${hand};color:${color};${font(11)}}`,
    `@${hand}-bottom{${lines(titles.map((_, i) => String(i + 1)))};width:${tabWidth.page}in;background:${block};color:#fff;${atEdge(edge, 'auto', up)};vertical-align:top;text-align:center;${font(15)}}`,
  ].join('')
}
