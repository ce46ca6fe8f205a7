import { idsIn } from '../../render/binder/link-parts.ts'
import type { Binder, BinderPart } from '../../render/binder/render-binder.ts'
import type { PartPlace } from '../join/part-place.ts'
import type { Press } from '../press/press.ts'
import { itemAt } from './item-at.ts'
import { type Order, orderParts } from './order.ts'
import { pageLabel } from './page-numbers.ts'
import { askedFor, askedOfOthers, draftPart, type PartPrint, printPart } from './print-part.ts'
import { wavesOf } from './waves.ts'

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

/** The parts that have the places whose numbers each part asks for, itself left out. */
function partsAsked(parts: readonly BinderPart[]): readonly (readonly number[])[] {
  const asked = parts.map(askedOfOthers)
  if (asked.every((ids) => ids.length === 0)) return parts.map(() => [])
  const own = parts.map(({ body }) => idsIn(body))
  return asked.map((ids, i) =>
    own.flatMap((places, j) => (j !== i && ids.some((id) => places.has(id)) ? [j] : [])),
  )
}

/**
 * Prints all parts, each when those are there whose page numbers it asks for, since these may have
 * moved; of parts that ask for each other's, with what the last build knew. Where nobody knows what a
 * part asks for, it is seen before where everything stands in it.
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
  const found: (Pick<PartPrint, 'places'> | undefined)[] = []
  const labels = (): BinderMemory['labels'] => ({ ...known, ...labelsOf(binder, found) })
  const isUnknown = (part: BinderPart): boolean =>
    askedOfOthers(part).some((id) => known[id] === undefined)
  const drafts = Promise.all(
    parts.map(async (part, i) => {
      if (isUnknown(part))
        found[i] = { places: await draftPart(press, part, itemAt(hands, i), known) }
    }),
  )
  const prints: PartPrint[] = []
  const print = async (i: number, foresees: boolean, isNext: boolean): Promise<void> => {
    const [part, hand, place] = [itemAt(parts, i), itemAt(hands, i), placeOf(binder, i)]
    const job = { part, hand, place, labels: labels(), foresees, isNext }
    found[i] = prints[i] = await printPart(press, job)
  }
  const asked = partsAsked(parts)
  const waves = wavesOf(asked)
  const printing: Promise<void>[] = []
  const printWhenThere = async (i: number): Promise<void> => {
    const part = itemAt(parts, i)
    if (isUnknown(part)) await drafts
    const wave = itemAt(waves, i)
    const earlier = itemAt(asked, i).filter((j) => itemAt(waves, j) < wave)
    await Promise.all(earlier.map((j) => printing[j]))
    await print(i, true, wave > 0)
    // Its own pages may have moved, for which others are waiting.
    if (!sameLabels(askedFor(part, labels()), itemAt(prints, i).filled)) await print(i, false, true)
  }
  // The longest first, so that both cores are busy to the end.
  const longestFirst = [...parts.entries()].sort(([, a], [, b]) => b.body.length - a.body.length)
  for (const wave of [0, 1, 2])
    for (const [i] of longestFirst) if (waves[i] === wave) printing[i] = printWhenThere(i)
  await Promise.all([drafts, ...printing])
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
