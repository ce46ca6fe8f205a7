import { calculation } from '../calculation.ts'

const mile = 1609.344

/** How far away lightning struck, from flash to thunder. */
export const lightning = calculation({
  id: 'lightning',
  title: 'How far away the lightning is',
  about: 'Count the seconds from the flash to the thunder. Thunder that can be heard at all is near enough: shelter first, count from there. Work begins again only after the wait from the last thunder, and each thunder starts the wait anew.',
  sources: ['nws-lightning'],
  inputs: {
    seconds: { symbol: 't', label: 'from flash to thunder', kind: 'seconds', range: [0, 120] },
    wait: { symbol: 'w', label: 'wait after the last thunder', kind: 'minutes', range: [900, 7200] },
  },
  outputs: {
    distance: { symbol: 'd', label: 'away', kind: 'longDistance', tex: '\\frac{@seconds}{5\\,\\text{s}}\\,1\\,\\text{mi}', round: 'down' },
    clear: { symbol: 'T', label: 'without thunder before anybody goes out', kind: 'minutes', tex: '@wait' },
  },
  compute: (x) => ({ distance: (x.seconds / 5) * mile, clear: x.wait }),
})
