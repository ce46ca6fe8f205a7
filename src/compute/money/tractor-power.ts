import { calculation } from '../calculation.ts'
import { implementDraft, pullPower, takeOffPower } from './pulling-power.ts'

/** Power that an implement asks of the tractor before it. */
export const tractorPower = calculation({
  id: 'pulling-power',
  sources: ['isu-a3-26'],
  inputs: {
    width: { symbol: 'w', kind: 'width', range: [0.2, 20] },
    draft: { symbol: 'q', kind: 'draft', range: [100, 20_000] },
    speed: { symbol: 'v', kind: 'speed', range: [0.1, 13.5] },
    traction: { symbol: 'e', kind: 'share', range: [0.3, 1] },
  },
  outputs: {
    pull: { symbol: 'F', kind: 'pull', tex: '@width\\,@draft' },
    drawbar: { symbol: 'P_d', kind: 'power', tex: '@pull\\,@speed', round: 'up' },
    need: { symbol: 'P', kind: 'power', tex: '\\frac{@drawbar}{@traction}', round: 'up' },
  },
  compute: (x) => {
    const pull = implementDraft(x.width, x.draft)
    const drawbar = pullPower(pull, x.speed)
    return { pull, drawbar, need: takeOffPower(drawbar, x.traction) }
  },
})
