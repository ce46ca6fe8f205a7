import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  blockStarts,
  firstPlaces,
  rollingPattern,
} from '../../../../src/compute/sealing/rolling-pattern.ts'
import type { RollingBlock } from '../../../../src/model/manual/charts.ts'
import { looseBands } from '../../../../src/render/drawings/rolling/table.ts'
import { merged, printsAt, rollingRows } from '../../../../src/render/drawings/rolling/tracks.ts'
import { demoManual } from '../../../support/demo.ts'

const inch = 0.0254
const whole = (min: number, max: number) => fc.integer({ min, max })

/** Blocks as the worksheet counts them, for a track so many feet wide. */
function blockOf(
  [tread, perSide, gap, track, overlap]: readonly number[],
  feet: number,
  trucks: number,
): RollingBlock {
  const tires = {
    tread: (tread ?? 0) * inch,
    perSide: perSide ?? 1,
    gap: (gap ?? 0) * inch,
    track: (track ?? 0) * inch,
    overlap: (overlap ?? 0) * inch,
  }
  const pattern = rollingPattern(tires)
  const across = feet * 12 * inch
  const blocks = Math.ceil((across - tires.overlap) / (pattern.width - tires.overlap) - 1e-9)
  return {
    ...tires,
    trucks,
    across,
    width: pattern.width,
    places: firstPlaces(pattern).map((offset) => ({ offset, at: '', next: '' })),
    starts: blockStarts(pattern.width, tires.overlap, across, blocks),
    begins: [],
    laps: blocks * pattern.laps,
    between: '',
  }
}

const blocks = fc
  .tuple(
    fc.tuple(whole(6, 14), whole(1, 2), whole(0, 9), whole(50, 90), whole(0, 3)),
    whole(30, 110),
    whole(1, 4),
  )
  .map(([tires, feet, trucks]) => blockOf(tires, feet, trucks))

describe('the laps of trucks', () => {
  it('leave no ground loose between the rail and the outside edge', () => {
    fc.assert(
      fc.property(blocks, (block) => {
        const all = rollingRows(block).flatMap((laps) =>
          laps.flatMap(({ place }) => printsAt(block, place)),
        )
        expect(looseBands(all, block.across)).toEqual([])
      }),
    )
  })

  it('are as many as the worksheet counts, one of each truck in a row', () => {
    fc.assert(
      fc.property(blocks, (block) => {
        const rows = rollingRows(block)
        expect(rows.flat()).toHaveLength(block.laps)
        expect(rows).toHaveLength(Math.ceil(block.laps / block.trucks))
        for (const laps of rows) expect(laps.map((l) => l.truck)).toEqual(laps.map((_, i) => i + 1))
      }),
    )
  })

  it('never put a tire over the outside edge where a block has room', () => {
    fc.assert(
      fc.property(blocks, (block) => {
        if (block.width > block.across) return
        for (const { place } of rollingRows(block).flat())
          for (const [, to] of printsAt(block, place))
            expect(to).toBeLessThanOrEqual(block.across + 1e-9)
      }),
    )
  })

  it('shut the first block, and nothing beyond it, when its laps are done', () => {
    fc.assert(
      fc.property(blocks, (block) => {
        const first = block.places.flatMap(({ offset }) => printsAt(block, offset))
        const [shut, ...more] = merged(first)
        expect(more).toEqual([])
        expect(shut?.[0]).toBeCloseTo(0, 9)
        expect(shut?.[1]).toBeCloseTo(block.width, 9)
      }),
    )
  })

  it('are the figures of the complete demo: 36 laps, 18 for each of two trucks', async () => {
    const { manual } = await demoManual('larkmoor')
    const block = manual.charts.rolling
    if (!block) throw new Error('it has trucks')
    expect(rollingRows(block).flat()).toHaveLength(36)
    expect(rollingRows(block)).toHaveLength(18)
    const laps = manual.figures.find((f) => f.id === 'roll.laps')?.value
    expect(laps?.ok && laps.si).toBe(block.laps)
  })
})
