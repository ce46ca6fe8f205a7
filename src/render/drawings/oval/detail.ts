import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { type ContextFor, labels } from '../drawing.ts'

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

/**
 * How much a plan says: `page` is read across a page, `small` in the side column of a posted sheet.
 */
export type Detail = {
  readonly width: number
  readonly side: number
  readonly margin: number
  readonly size: number
  readonly full: boolean
}

export const details: Readonly<Record<'page' | 'small', Detail>> = {
  page: { width: 465, side: 58, margin: 44, size: 8.4, full: true },
  small: { width: 172, side: 26, margin: 34, size: 8.2, full: false },
}
