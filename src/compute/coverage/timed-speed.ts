import { calculation } from '../calculation.ts'

/** Speed (m/s) from a stretch between two flags and the time over it. */
export const timedSpeed = calculation({
  id: 'timed-speed',
  sources: ['osu-b817', 'geometry'],
  inputs: {
    distance: { symbol: 'L', kind: 'distance', range: [5, 2000] },
    time: { symbol: 't', kind: 'seconds', range: [3, 3600] },
  },
  outputs: { speed: { symbol: 'v', kind: 'speed', tex: '\\frac{@distance}{@time}' } },
  compute: ({ distance, time }) => ({ speed: distance / time }),
})
