import type { PartToLay, PrintWork } from '../../model/print-view.ts'
import { itemAt } from '../binder/item-at.ts'
import { layOpenings } from '../binder/openings/lay-openings.ts'
import { orderParts } from '../binder/order.ts'
import { pageLabel } from '../binder/page-numbers.ts'
import { fillSlots, slotsIn } from '../binder/slots.ts'
import { spanWide } from '../binder/span-wide.ts'
import { here } from '../page/here.ts'
import { refuseWide } from '../page/refuse-wide.ts'
import { countPages, type PagesOf, settleBreaks } from './pages-in-columns.ts'
import { breathe } from './place-in.ts'

type BinderWork = Extract<PrintWork, { kind: 'binder' }>

type Labels = Readonly<Record<string, string>>

/** A part that is laid out, with what stands in its slots. */
type LaidPart = PagesOf & { readonly element: PageElement; readonly filled: Labels }

/** Numbers may move lines and so pages; more rounds than this would mean that they never settle. */
const mostRounds = 5

/** Puts numbers into slots that stand on pages of their own, where they move nothing. */
function fillIn(element: PageElement, labels: Labels): void {
  for (const slot of element.querySelectorAll('[data-page-of]'))
    slot.textContent = labels[slot.dataset['pageOf'] ?? ''] ?? ''
}

/** The numbers that a part asks for. */
const askedFor = (part: PartToLay, labels: Labels): Labels =>
  Object.fromEntries(slotsIn(part.body).map((id) => [id, labels[id] ?? '']))

const same = (a: Labels, b: Labels): boolean =>
  Object.entries(a).every(([id, label]) => b[id] === label)

/** What the parts are laid out in, and with. */
type Room = {
  readonly book: PageElement
  readonly area: BinderWork['area']
  /** All places whose pages some part asks for. */
  readonly wanted: readonly string[]
  readonly scale: number
}

/** Lays a part out by itself, with these numbers in its slots; its openings are kept. */
async function layPart(
  { book, area, wanted, scale }: Room,
  part: PartToLay,
  labels: Labels,
  before?: LaidPart,
): Promise<LaidPart> {
  const filled = askedFor(part, labels)
  const element = before?.element ?? document.createElement('div')
  if (before && part.hasOpenings) fillIn(element, filled)
  else element.innerHTML = fillSlots(part.body, filled)
  book.replaceChildren(element)
  document.body.style.setProperty('width', `${area.width}px`)
  if (!before || !part.hasOpenings) {
    await spanWide(here, area)
    await layOpenings(here, area, scale)
    await refuseWide(here, area.width)
  }
  const columns = { area, scale }
  if (!part.hasOpenings) settleBreaks(element, columns)
  const counted = countPages(element, columns, wanted)
  document.body.style.setProperty('width', '')
  return { ...counted, element, filled }
}

/** The number on the page of every place that is asked for. */
const labelsOf = (parts: readonly PartToLay[], laid: readonly LaidPart[]): Labels =>
  Object.fromEntries(
    laid.flatMap(({ places }, i) =>
      [...places].map(([id, page]) => [id, pageLabel(itemAt(parts, i), page)]),
    ),
  )

/** A page without text, that the next part begins on the right. */
function blankLeaf(part: number): PageElement {
  const leaf = document.createElement('div')
  leaf.className = 'blank-leaf'
  leaf.dataset['part'] = String(part)
  return leaf
}

/**
 * Lays a whole binder out in a page, part by part, until each shows the numbers that are right.
 * @param scale What the page measures of a CSS pixel.
 * @param tell How much is done, from 0 to 1.
 * @returns how many pages the browser will print.
 * @throws Error when the numbers do not settle, or something is larger than its page.
 */
export async function layBinder(
  book: PageElement,
  { area, sides, parts }: BinderWork,
  scale: number,
  tell: (share: number) => void,
): Promise<number> {
  const wanted = [...new Set(parts.flatMap((part) => slotsIn(part.body)))]
  const room: Room = { book, area, wanted, scale }
  document.body.style.setProperty('--area-height', `${area.height}px`)
  const laid: LaidPart[] = []
  let labels: Labels = {}
  for (let round = 0; ; round++) {
    if (round > mostRounds) throw new Error('page numbers do not settle')
    for (const [i, part] of parts.entries()) {
      const before = laid[i]
      if (before && same(askedFor(part, labels), before.filled)) continue
      laid[i] = await layPart(room, part, labels, before)
      tell(round === 0 ? (i + 1) / (parts.length + 1) : 1)
      await breathe()
    }
    labels = labelsOf(parts, laid)
    if (parts.every((part, i) => same(askedFor(part, labels), itemAt(laid, i).filled))) break
  }
  const counts = laid.map(({ pages }) => pages)
  const { blanks } = orderParts(counts, { sides, parts })
  book.replaceChildren(
    ...laid.flatMap(({ element }, i) => {
      element.dataset['part'] = String(i)
      return blanks[i] ? [element, blankLeaf(i)] : [element]
    }),
  )
  return counts.reduce((sum, n) => sum + n, 0) + blanks.filter(Boolean).length
}
