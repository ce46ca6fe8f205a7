import { baseCut } from '../repairs/base-cut.ts'
import { fact, type Use, use } from './use.ts'

/**
 * What a stopgap takes when no material can be had: one step of the harrow, gained from the base.
 */
export const stopgapUses = (): readonly Use[] => [
  use('base-cut', baseCut, { gain: fact('practice.harrow.step'), swell: fact('base.swell') }),
]
