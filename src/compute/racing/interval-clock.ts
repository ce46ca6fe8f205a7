import { calculation, refuse } from '../calculation.ts'

/**
 * Between two races by the minute: times (s) from the finish of a race, what fits, and what is left
 * for the next interval.
 */
export const intervalClock = calculation({
  id: 'interval-clock',
  title: 'Between two races, by the minute',
  about:
    'Half of the clearing time goes until the last horse is off, half before the next field comes on. In between the harrow works outward from the rail, lap by lap; where water is due, the truck follows one lap behind it, or goes in its place when no lap is left for that. What does not fit is done in the next interval, before the strip at the rail is begun again.',
  sources: ['common-practice', 'geometry'],
  inputs: {
    interval: {
      symbol: 'i',
      label: 'time from race to race',
      kind: 'minutes',
      range: [60, 14_400],
    },
    clear: {
      symbol: 'c',
      label: 'time in which horses leave the track and come on again',
      kind: 'minutes',
      range: [0, 7200],
    },
    lap: { symbol: 't_1', label: 'one lap with the harrow', kind: 'minutes', range: [10, 7200] },
    laps: { symbol: 'n', label: 'laps that fit', kind: 'whole', range: [0, 1000] },
    whole: { symbol: 'n_w', label: 'laps for the whole width', kind: 'whole', range: [1, 1000] },
    rail: { symbol: 'L_r', label: 'length of the rail', kind: 'distance', range: [100, 4000] },
    speed: {
      symbol: 'v',
      label: 'driving speed of the water truck',
      kind: 'speed',
      range: [0, 14],
    },
  },
  outputs: {
    clear: {
      symbol: 'a',
      label: 'the track is clear, the harrow starts',
      kind: 'minutes',
      tex: '\\tfrac12\\,@clear',
    },
    harrowed: {
      symbol: 'b',
      label: 'the harrow comes off',
      kind: 'minutes',
      tex: 'a + @laps\\,@lap',
    },
    left: {
      symbol: 'n_l',
      label: 'laps left for the next interval',
      kind: 'whole',
      tex: '@whole - @laps',
    },
    'water-laps': {
      symbol: 'k',
      label: 'laps of water that fit behind it',
      kind: 'whole',
      tex: '\\left\\lfloor \\frac{@interval - @clear - @lap}{@rail / @speed} \\right\\rfloor',
    },
    'water-lap': {
      symbol: 't_w',
      label: 'one lap with the water truck',
      kind: 'minutes',
      tex: '\\frac{@rail}{@speed}',
    },
    'water-alone': {
      symbol: 'k_a',
      label: 'laps of water that fit in place of the harrow',
      kind: 'whole',
      tex: '\\left\\lfloor \\frac{@interval - @clear}{@rail / @speed} \\right\\rfloor',
    },
    watered: {
      symbol: 'e',
      label: 'the water truck comes off',
      kind: 'minutes',
      tex: 'a + @lap + k\\,\\frac{@rail}{@speed}',
    },
    open: {
      symbol: 'd',
      label: 'everybody is off, the track is called open',
      kind: 'minutes',
      tex: '@interval - \\tfrac12\\,@clear',
    },
  },
  compute: (x) => {
    const clear = x.clear / 2
    const waterLap = x.rail / x.speed
    const lapsIn = (room: number): number => (room > 0 ? Math.floor(room / waterLap + 1e-9) : 0)
    const waterLaps = lapsIn(x.interval - x.clear - x.lap)
    const none = refuse('there is no water truck here')
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
            : refuse('no lap of water fits behind the harrow')
          : none,
      open: x.interval - clear,
    }
  },
})
