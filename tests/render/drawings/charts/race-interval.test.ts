import { describe, expect, it } from 'vitest'
import { renderDrawings } from '../../../../src/render/drawings/drawings.ts'
import { smallManual } from '../../../support/small.ts'
import { boxes } from '../../support/svg-boxes.ts'

describe('the chart of the interval between races', () => {
  it('draws the bar of the harrow as long as its laps take', async () => {
    const { manual, words } = await smallManual()
    const at = {
      interval: 1800,
      clear: 300,
      lap: 240,
      laps: 4,
      harrowed: 1260,
      off: 1440,
      open: 1500,
      water: undefined,
    }
    const svg =
      renderDrawings({ ...manual, charts: { ...manual.charts, interval: at } }, words)[
        'race-interval'
      ]?.at('page') ?? ''
    const [before] = boxes(svg, 'horses')
    const [harrow] = boxes(svg, 'harrow')
    expect((harrow?.width ?? 0) / (before?.width ?? 1)).toBeCloseTo(
      (at.harrowed - at.clear) / at.clear,
      2,
    )
    expect(svg.match(/class="lap"/g) ?? []).toHaveLength(at.laps - 1)
  })

  it('shows the truck behind the harrow where laps of water fit', async () => {
    const { manual, words } = await smallManual()
    const water = { figure: 'gap.water-laps', laps: 2, from: 540, to: 1100, instead: false }
    const interval = {
      interval: 1800,
      clear: 300,
      lap: 240,
      laps: 4,
      harrowed: 1260,
      off: 1440,
      open: 1500,
      water,
    }
    const with2 =
      renderDrawings({ ...manual, charts: { ...manual.charts, interval } }, words)[
        'race-interval'
      ]?.at('page') ?? ''
    expect(boxes(with2, 'water')[0]?.x).toBeGreaterThan(boxes(with2, 'harrow')[0]?.x ?? Infinity)
    const without =
      renderDrawings(
        { ...manual, charts: { ...manual.charts, interval: { ...interval, water: undefined } } },
        words,
      )['race-interval']?.at('page') ?? ''
    expect(boxes(without, 'water')).toHaveLength(0)
  })

  it('shows the rakes for the whole window where no lap of the harrow fits', async () => {
    const { manual, words } = await smallManual()
    const interval = {
      interval: 1200,
      clear: 180,
      lap: 456,
      laps: 0,
      harrowed: 180,
      off: 540,
      open: 600,
      water: undefined,
    }
    const svg =
      renderDrawings({ ...manual, charts: { ...manual.charts, interval } }, words)[
        'race-interval'
      ]?.at('page') ?? ''
    expect(boxes(svg, 'harrow')).toHaveLength(0)
    const [before, after] = boxes(svg, 'horses')
    expect((boxes(svg, 'rakes')[0]?.width ?? 0) / (before?.width ?? 1)).toBeCloseTo(2, 2)
    expect((after?.width ?? 0) / (before?.width ?? 1)).toBeCloseTo(600 / 180, 2)
  })

  it('shows the truck in place of the harrow where no lap of water fits behind it', async () => {
    const { manual, words } = await smallManual()
    const water = { figure: 'gap.water-alone', laps: 1, from: 300, to: 900, instead: true }
    const interval = {
      interval: 1800,
      clear: 300,
      lap: 400,
      laps: 1,
      harrowed: 700,
      off: 1440,
      open: 1500,
      water,
    }
    const svg =
      renderDrawings({ ...manual, charts: { ...manual.charts, interval } }, words)[
        'race-interval'
      ]?.at('page') ?? ''
    expect(boxes(svg, 'water')[0]?.x).toBe(boxes(svg, 'harrow')[0]?.x)
  })
})
