import type { Binder } from '../../render/binder/render-binder.ts'
import type { PartPlace } from '../join/part-place.ts'
import type { Press } from '../press/press.ts'
import { itemAt } from './item-at.ts'
import { type Order, orderParts } from './order.ts'
import { pageLabel } from './page-numbers.ts'
import { askedFor, askedOfOthers, draftPart, type PartPrint, printPart } from './print-part.ts'

/** What is known of a binder from its last build, and saves prints where nothing has moved. */
export type BinderMemory = {
  /** What stood in each slot, by the place that it names. */
  readonly labels: Readonly<Record<string, string>>
  /** Page counts by part. */
  readonly pages: Readonly<Record<string, number>>
}

/** Numbers may move lines and so pages; more rounds than this would mean that they never settle. */
const mostRounds = 5

/** The number on the page of every place that something leads to. */
function labelsOf(
  binder: Binder,
  prints: readonly (Pick<PartPrint, 'places'> | undefined)[],
): Readonly<Record<string, string>> {
  return Object.fromEntries(
    binder.parts.flatMap((part, i) =>
      [...(prints[i]?.places ?? [])].map(([id, page]): [string, string] => [
        id,
        pageLabel({ number: part.pages.number, unnumbered: part.unnumbered }, page),
      ]),
    ),
  )
}

const sameLabels = (
  a: Readonly<Record<string, string>>,
  b: Readonly<Record<string, string>>,
): boolean => Object.entries(a).every(([id, label]) => b[id] === label)

/** How the parts lie one after another, as printed. */
export const orderOf = (binder: Binder, prints: readonly PartPrint[]): Order =>
  orderParts(
    prints.map((p) => p.pages),
    binder,
  )

/** Behind the parts there is a place for blank pages, whether there are any or not. */
export const placeOf = ({ parts }: Pick<Binder, 'parts'>, part: number): PartPlace => ({
  part,
  of: parts.length + 1,
})

/**
 * Prints all parts with what the last build knew of them. Parts that ask for numbers of others are
 * printed when the others are there, since these may have moved; where nobody knows what they ask
 * for, it has been seen before where everything stands in them themselves.
 */
async function printAll(
  press: Press,
  binder: Binder,
  last: BinderMemory | undefined,
): Promise<readonly PartPrint[]> {
  const { parts } = binder
  const known = last?.labels ?? {}
  const { hands } = orderParts(
    parts.map((p) => last?.pages[p.id] ?? 2),
    binder,
  )
  // The longest first, so that both cores are busy to the end.
  const longestFirst = [...parts.entries()].sort(([, a], [, b]) => b.body.length - a.body.length)
  const later = longestFirst.filter(([, part]) => askedOfOthers(part).length > 0)
  const unknown = later.filter(([, part]) =>
    askedOfOthers(part).some((id) => known[id] === undefined),
  )
  const found: (Pick<PartPrint, 'places'> | undefined)[] = []
  const drafts = unknown.map(async ([i, part]) => {
    found[i] = { places: await draftPart(press, part, itemAt(hands, i), known) }
  })
  const prints: PartPrint[] = []
  const print = async (i: number, labels: BinderMemory['labels'], isNext: boolean) => {
    const [part, hand, place] = [itemAt(parts, i), itemAt(hands, i), placeOf(binder, i)]
    const job = { part, hand, place, labels, foresees: true, isNext }
    found[i] = prints[i] = await printPart(press, job)
  }
  const first = longestFirst.filter((one) => !later.includes(one))
  await Promise.all([...drafts, ...first.map(([i]) => print(i, known, false))])
  const labels = { ...known, ...labelsOf(binder, found) }
  await Promise.all(later.map(([i]) => print(i, labels, true)))
  return prints
}

/**
 * Prints all parts until each begins on the side on which it lies and shows the numbers that are
 * right.
 * @throws Error when the numbers do not settle.
 */
export async function settleParts(
  press: Press,
  binder: Binder,
  last: BinderMemory | undefined,
  tell: (what: string) => void,
): Promise<readonly PartPrint[]> {
  let prints = await printAll(press, binder, last)
  for (let round = 1; round <= mostRounds; round++) {
    tell(`binder, round ${round}`)
    const { hands } = orderOf(binder, prints)
    const labels = labelsOf(binder, prints)
    const isSettled = (print: PartPrint, i: number): boolean =>
      print.hand === hands[i] && sameLabels(askedFor(itemAt(binder.parts, i), labels), print.filled)
    if (prints.every(isSettled)) return prints
    prints = await Promise.all(
      prints.map((print, i) =>
        isSettled(print, i)
          ? print
          : printPart(press, {
              part: itemAt(binder.parts, i),
              hand: itemAt(hands, i),
              place: placeOf(binder, i),
              labels,
              foresees: false,
              isNext: true,
            }),
      ),
    )
  }
  throw new Error('page numbers do not settle')
}
