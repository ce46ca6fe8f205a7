import { mile } from '../../model/quantity/units.ts'
import { calculation } from '../calculation.ts'

/**
 * When people may go out again: the wait from the last thunder; each thunder starts it anew.
 * @param thunders When thunder was heard, s of any one clock, in any order, at least one.
 * @param wait s.
 * @returns s of the same clock.
 * @see nws-lightning
 */
export const allClear = (thunders: readonly number[], wait: number): number =>
  Math.max(...thunders) + wait

/** How far away lightning struck (m), from flash to thunder (s), and how long to wait (s). */
export const lightning = calculation({
  id: 'lightning',
  sources: ['nws-lightning'],
  inputs: {
    seconds: { symbol: 't', kind: 'seconds', range: [0, 120] },
    wait: { symbol: 'w', kind: 'minutes', range: [900, 7200] },
  },
  outputs: {
    distance: {
      symbol: 'd',
      kind: 'longDistance',
      tex: '\\frac{@seconds}{5\\,\\text{s}} \\cdot 1\\,\\text{mi}',
      round: 'down',
    },
    clear: { symbol: 'T', kind: 'minutes', tex: '@wait' },
  },
  compute: (x) => ({ distance: (x.seconds / 5) * mile, clear: allClear([0], x.wait) }),
})
