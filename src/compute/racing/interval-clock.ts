import { calculation, refuse } from '../calculation.ts'
import { intervalInputs, workWindow } from './between-races.ts'

/**
 * Between two races by the minute: times (s) from the finish of a race, what fits, and what is left
 * for the next interval.
 */
export const intervalClock = calculation({
  id: 'interval-clock',
  sources: ['common-practice', 'geometry'],
  inputs: {
    ...intervalInputs,
    lap: { symbol: 't_1', kind: 'minutes', range: [10, 7200] },
    laps: { symbol: 'n', kind: 'whole', range: [0, 1000] },
    whole: { symbol: 'n_w', kind: 'whole', range: [1, 1000] },
    rail: { symbol: 'L_r', kind: 'distance', range: [100, 4000] },
    speed: { symbol: 'v', kind: 'speed', range: [0, 14] },
  },
  outputs: {
    clear: { symbol: 'a', kind: 'minutes', tex: '@clear' },
    harrowed: { symbol: 'b', kind: 'minutes', tex: '@clear + @laps\\,@lap' },
    left: { symbol: 'n_l', kind: 'whole', tex: '@whole - @laps' },
    'water-laps': {
      symbol: 'k',
      kind: 'whole',
      tex: '\\left\\lfloor \\frac{\\max(0,\\,@interval - @clear - @parade - @reserve - @lap)}{@rail / @speed} \\right\\rfloor',
    },
    'water-lap': { symbol: 't_w', kind: 'minutes', tex: '\\frac{@rail}{@speed}' },
    'water-alone': {
      symbol: 'k_a',
      kind: 'whole',
      tex: '\\left\\lfloor \\frac{\\max(0,\\,@interval - @clear - @parade - @reserve)}{@rail / @speed} \\right\\rfloor',
    },
    watered: { symbol: 'e', kind: 'minutes', tex: '@clear + @lap + k\\,\\frac{@rail}{@speed}' },
    off: { symbol: 'f', kind: 'minutes', tex: '@interval - @parade - @reserve', round: 'down' },
    open: { symbol: 'd', kind: 'minutes', tex: '@interval - @parade', round: 'down' },
  },
  refusals: ['no-water-truck', 'no-lap-of-water'],
  compute: (x) => {
    const { clear } = x
    const window = workWindow(x)
    const waterLap = x.rail / x.speed
    const lapsIn = (room: number): number => (room > 0 ? Math.floor(room / waterLap + 1e-9) : 0)
    const waterLaps = lapsIn(window - x.lap)
    const none = refuse('no-water-truck')
    return {
      clear,
      harrowed: clear + x.laps * x.lap,
      left: Math.max(0, x.whole - x.laps),
      'water-laps': x.speed > 0 ? waterLaps : none,
      'water-lap': x.speed > 0 ? waterLap : none,
      'water-alone': x.speed > 0 ? lapsIn(window) : none,
      watered:
        x.speed > 0
          ? waterLaps > 0
            ? clear + x.lap + waterLaps * waterLap
            : refuse('no-lap-of-water')
          : none,
      off: x.interval - x.parade - x.reserve,
      open: x.interval - x.parade,
    }
  },
})
