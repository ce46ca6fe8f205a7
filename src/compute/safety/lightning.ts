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
  title: 'How far away the lightning is',
  about:
    'Count the seconds from the flash to the thunder: sound goes a mile in about five seconds, a kilometer in about three. Thunder that can be heard at all is near enough: shelter first, count from there. Work begins again only after the wait from the last thunder, and each thunder starts the wait anew.',
  sources: ['nws-lightning'],
  inputs: {
    seconds: {
      symbol: 't',
      label: 'from flash to thunder',
      kind: 'seconds',
      range: [0, 120],
      howTo: 'Count, or use a watch.',
    },
    wait: {
      symbol: 'w',
      label: 'wait after the last thunder',
      kind: 'minutes',
      range: [900, 7200],
      howTo: 'A rule of the weather service.',
    },
  },
  outputs: {
    distance: {
      symbol: 'd',
      label: 'away',
      kind: 'longDistance',
      tex: '\\frac{@seconds}{5\\,\\text{s}} \\cdot 1\\,\\text{mi}',
      round: 'down',
    },
    clear: {
      symbol: 'T',
      label: 'without thunder before anybody goes out',
      kind: 'minutes',
      tex: '@wait',
    },
  },
  compute: (x) => ({ distance: (x.seconds / 5) * mile, clear: allClear([0], x.wait) }),
})
