import { describe, expect, it } from 'vitest'
import type { Manual } from '../../../../src/model/manual.ts'
import { renderDrawings } from '../../../../src/render/drawings/drawings.ts'
import { smallManual } from '../../../support/small.ts'
import { boxes } from '../../support/svg-boxes.ts'

type Interval = NonNullable<Manual['charts']['interval']>

/** Half an hour between races, in which the harrow drives four laps, s. */
const usual: Interval = {
  interval: 1800,
  clear: 300,
  lap: 240,
  laps: 4,
  harrowed: 1260,
  off: 1440,
  open: 1500,
  water: undefined,
}

async function drawn(interval: Interval): Promise<string> {
  const { manual, words } = await smallManual()
  const charts = { ...manual.charts, interval }
  return renderDrawings({ ...manual, charts }, words)['race-interval']?.at('page') ?? ''
}

describe('the chart of the interval between races', () => {
  it('draws the bar of the harrow as long as its laps take', async () => {
    const svg = await drawn(usual)
    const [before] = boxes(svg, 'horses')
    const [harrow] = boxes(svg, 'harrow')
    expect((harrow?.width ?? 0) / (before?.width ?? 1)).toBeCloseTo(
      (usual.harrowed - usual.clear) / usual.clear,
      2,
    )
    expect(svg.match(/class="lap"/g) ?? []).toHaveLength(usual.laps - 1)
  })

  it('shows the truck behind the harrow where laps of water fit', async () => {
    const water = { figure: 'gap.water-laps', laps: 2, from: 540, to: 1100, instead: false }
    const svg = await drawn({ ...usual, water })
    expect(boxes(svg, 'water')[0]?.x).toBeGreaterThan(boxes(svg, 'harrow')[0]?.x ?? Infinity)
    expect(boxes(await drawn(usual), 'water')).toHaveLength(0)
  })

  it('shows the rakes for the whole window where no lap of the harrow fits', async () => {
    const svg = await drawn({
      ...{ interval: 1200, clear: 180, lap: 456, laps: 0 },
      ...{ harrowed: 180, off: 540, open: 600, water: undefined },
    })
    expect(boxes(svg, 'harrow')).toHaveLength(0)
    const [before, after] = boxes(svg, 'horses')
    expect((boxes(svg, 'rakes')[0]?.width ?? 0) / (before?.width ?? 1)).toBeCloseTo(2, 2)
    expect((after?.width ?? 0) / (before?.width ?? 1)).toBeCloseTo(600 / 180, 2)
  })

  it('shows the truck in place of the harrow where no lap of water fits behind it', async () => {
    const water = { figure: 'gap.water-alone', laps: 1, from: 300, to: 900, instead: true }
    const svg = await drawn({ ...usual, lap: 400, laps: 1, harrowed: 700, water })
    expect(boxes(svg, 'water')[0]?.x).toBe(boxes(svg, 'harrow')[0]?.x)
  })
})
