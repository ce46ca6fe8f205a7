/** One named page of a part: what runs at its head. */
export type NamedPage = { readonly name: string; readonly left: string; readonly right: string }

/** Sides of a leaf that are printed: on one, every page is a right-hand page. */
export type Sides = 1 | 2

/** What the page rules of one part of a binder are made from. */
export type PartPages = {
  readonly paper: 'letter' | 'a4'
  readonly sides: Sides
  readonly foot: string
  /** Stands before the page number, as in `3-2`, and on the tab; the front has roman numbers and no tab. */
  readonly number: number | undefined
  /** Numbered parts of the whole binder, which share the height of the page for their tabs. */
  readonly tabs: number
  readonly pages: readonly NamedPage[]
}

export const quoteCss = (text: string): string => `"${text.replace(/\\/g, '\\\\').replace(/"/g, '\\"').replace(/\n/g, ' ')}"`

const sizes = { letter: '8.5in 11in', a4: '210mm 297mm' } as const
const heights = { letter: 11, a4: 297 / 25.4 } as const

/** Margins in inches: `bound` leaves room for punched holes. Both pages of a leaf have the same text width. */
export const margins = { top: 0.95, bottom: 0.85, bound: 1.15, outer: 0.75 } as const

const boxes = ['top-left', 'top-center', 'top-right', 'bottom-left', 'bottom-center', 'bottom-right', 'left-top', 'right-top']
const noBoxes = boxes.map((b) => `@${b}{content:none;background:none;border:none}`).join('')

type Hand = 'right' | 'left'

/** Tabs share the height between the margins; few stand closer together than they need to. */
const tabStep = (p: PartPages): number => Math.min(0.82, (heights[p.paper] - margins.top - margins.bottom) / Math.max(1, p.tabs))

function tabBox(p: PartPages, hand: Hand, width: number): string {
  const other = hand === 'right' ? 'left' : 'right'
  if (p.number === undefined) return `@${hand}-top{content:none;background:none}@${other}-top{content:none;background:none}`
  const step = tabStep(p)
  const down = ((p.number - 1) * step).toFixed(3)
  const margin = hand === 'right' ? `${down}in 0 auto auto` : `${down}in auto auto 0`
  return `@${hand}-top{content:${quoteCss(String(p.number))};background:#5c4a3a;color:#fff;width:${width}in;height:${(step - 0.1).toFixed(3)}in;margin:${margin};vertical-align:middle;text-align:center;font:600 15pt "Barlow Condensed"}@${other}-top{content:none;background:none}`
}

const pageMargin = (hand: Hand): string => (hand === 'right' ? `margin-left:${margins.bound}in;margin-right:${margins.outer}in` : `margin-left:${margins.outer}in;margin-right:${margins.bound}in`)

/** Page number outside, facility and revision inside. */
function running(p: PartPages, page: NamedPage, hand: Hand): string {
  const number = p.number === undefined ? 'counter(page,lower-roman)' : `"${p.number}-" counter(page)`
  const [left, right] = hand === 'right' ? [quoteCss(p.foot), number] : [number, quoteCss(p.foot)]
  return `@top-left{content:${quoteCss(page.left)}}@top-right{content:${quoteCss(page.right)}}@bottom-left{content:${left}}@bottom-right{content:${right}}${tabBox(p, hand, 0.38)}`
}

/** How wide the tab of a divider is, inches: it reaches the edge of the paper, where the others leave off before it. */
const dividerTab = 0.75

/**
 * Page rules of one part of a binder: mirrored gutter, running heads, feet, numbers, tab.
 * @param first The side of the leaf on which the part begins. The browser takes the first page of whatever it prints for a
 * right-hand page, so where a part begins on the left the two sides are exchanged.
 */
export function partPageRules(p: PartPages, first: Hand): string {
  const text = 'font:400 8.5pt "Source Sans 3";color:#4d463f'
  const common = ['top-left', 'top-right', 'bottom-left', 'bottom-right'].map((b) => `@${b}{${text};${b.startsWith('top') ? 'vertical-align:bottom;padding-bottom:8pt' : 'vertical-align:top;padding-top:8pt'}}`).join('')
  const hands: readonly (readonly [string, Hand])[] = p.sides === 1 ? [['', 'right']] : [['', first], [':left', first === 'right' ? 'left' : 'right']]
  return [
    `@page{size:${sizes[p.paper]};margin-top:${margins.top}in;margin-bottom:${margins.bottom}in;${common}}`,
    ...hands.map(([selector, hand]) => `@page ${selector}{${pageMargin(hand)}}`),
    // Neither of these counts as a page.
    `@page leaf-back{counter-increment:page 0;${noBoxes}}`,
    ...hands.map(([selector, hand]) => `@page divider${selector}{counter-increment:page 0;${noBoxes}${tabBox(p, hand, dividerTab)}}`),
    `@page cover{${noBoxes}}`,
    ...p.pages.flatMap((page) => hands.map(([selector, hand]) => `@page ${page.name}${selector}{${running(p, page, hand)}}`)),
  ].join('\n')
}
