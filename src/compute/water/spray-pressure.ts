import { calculation } from '../calculation.ts'

/**
 * Flow of the bar at another pressure, m³/s: through the same nozzles it goes with the square root
 * of the pressure, which is that of the pump's gauge while the bar runs.
 */
export const sprayPressure = calculation({
  id: 'spray-pressure',
  sources: ['osu-b817'],
  inputs: {
    flow: { symbol: 'q_1', kind: 'waterFlow', range: [0.00006, 0.1] },
    pressure: { symbol: 'p_1', kind: 'pressure', range: [20_000, 2_000_000] },
    other: { symbol: 'p_2', kind: 'pressure', range: [20_000, 2_000_000] },
    wanted: { symbol: 'q_3', kind: 'waterFlow', range: [0.00006, 0.1] },
  },
  outputs: {
    flow: {
      symbol: 'q_2',
      kind: 'waterFlow',
      tex: '@flow\\,\\sqrt{\\frac{@other}{@pressure}}',
    },
    pressure: {
      symbol: 'p_3',
      kind: 'pressure',
      tex: '@pressure\\left(\\frac{@wanted}{@flow}\\right)^2',
    },
  },
  compute: (x) => ({
    flow: x.flow * Math.sqrt(x.other / x.pressure),
    pressure: x.pressure * (x.wanted / x.flow) ** 2,
  }),
})
