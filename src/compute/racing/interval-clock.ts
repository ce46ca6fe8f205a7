import { calculation, refuse } from '../calculation.ts'

/**
 * Between two races by the minute: times (s) from the finish of a race, what fits, and what is left
 * for the next interval.
 */
export const intervalClock = calculation({
  id: 'interval-clock',
  sources: ['common-practice', 'geometry'],
  inputs: {
    interval: { symbol: 'i', kind: 'minutes', range: [60, 14_400] },
    clear: { symbol: 'c', kind: 'minutes', range: [0, 7200] },
    lap: { symbol: 't_1', kind: 'minutes', range: [10, 7200] },
    laps: { symbol: 'n', kind: 'whole', range: [0, 1000] },
    whole: { symbol: 'n_w', kind: 'whole', range: [1, 1000] },
    rail: { symbol: 'L_r', kind: 'distance', range: [100, 4000] },
    speed: { symbol: 'v', kind: 'speed', range: [0, 14] },
  },
  outputs: {
    clear: { symbol: 'a', kind: 'minutes', tex: '\\tfrac12\\,@clear' },
    harrowed: { symbol: 'b', kind: 'minutes', tex: 'a + @laps\\,@lap' },
    left: { symbol: 'n_l', kind: 'whole', tex: '@whole - @laps' },
    'water-laps': {
      symbol: 'k',
      kind: 'whole',
      tex: '\\left\\lfloor \\frac{@interval - @clear - @lap}{@rail / @speed} \\right\\rfloor',
    },
    'water-lap': { symbol: 't_w', kind: 'minutes', tex: '\\frac{@rail}{@speed}' },
    'water-alone': {
      symbol: 'k_a',
      kind: 'whole',
      tex: '\\left\\lfloor \\frac{@interval - @clear}{@rail / @speed} \\right\\rfloor',
    },
    watered: { symbol: 'e', kind: 'minutes', tex: 'a + @lap + k\\,\\frac{@rail}{@speed}' },
    open: { symbol: 'd', kind: 'minutes', tex: '@interval - \\tfrac12\\,@clear' },
  },
  refusals: ['no-water-truck', 'no-lap-of-water'],
  compute: (x) => {
    const clear = x.clear / 2
    const waterLap = x.rail / x.speed
    const lapsIn = (room: number): number => (room > 0 ? Math.floor(room / waterLap + 1e-9) : 0)
    const waterLaps = lapsIn(x.interval - x.clear - x.lap)
    const none = refuse('no-water-truck')
    return {
      clear,
      harrowed: clear + x.laps * x.lap,
      left: Math.max(0, x.whole - x.laps),
      'water-laps': x.speed > 0 ? waterLaps : none,
      'water-lap': x.speed > 0 ? waterLap : none,
      'water-alone': x.speed > 0 ? lapsIn(x.interval - x.clear) : none,
      watered:
        x.speed > 0
          ? waterLaps > 0
            ? clear + x.lap + waterLaps * waterLap
            : refuse('no-lap-of-water')
          : none,
      open: x.interval - clear,
    }
  },
})
