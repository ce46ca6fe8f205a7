import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { type ContextFor, labels } from '../drawing.ts'
import type { DrawingSize } from '../sizes.ts'

export const wording = labels('plan', {
  ...entries(
    'lap',
    'radius',
    'travel',
    'haul',
    'homeStraight',
    'firstTurn',
    'backStraight',
    'lastTurn',
    'north',
  ),
  width: holding('width'),
})

export type OvalContext = ContextFor<typeof wording>

/** How much a plan says: across a page names and measures, in narrower places a list of names. */
export type Detail = {
  readonly width: number
  readonly side: number
  readonly margin: number
  readonly size: number
  readonly full: boolean
}

export const details: Readonly<Record<DrawingSize, Detail>> = {
  page: { width: 465, side: 58, margin: 44, size: 8.4, full: true },
  column: { width: 326, side: 40, margin: 36, size: 8.4, full: false },
  side: { width: 172, side: 26, margin: 34, size: 8.2, full: false },
}
