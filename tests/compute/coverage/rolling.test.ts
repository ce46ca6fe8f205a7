import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { rolling } from '../../../src/compute/coverage/rolling.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, FT, IN, inches, MPH, ovals, whole } from '../support/realistic.ts'

const halfMile = {
  straight: 600 * FT,
  radius: 226.25 * FT,
  widthStraights: 65 * FT,
  widthTurns: 65 * FT,
}

const trucks = {
  tireWidth: 8 * IN,
  tiresPerSide: 2,
  speed: 12 * MPH,
  efficiency: 0.95,
  machines: 2,
  passes: 1,
}

/**
 * Which bands of a track a truck rolls that moves out as the worksheet says: band by band until the
 * gap is closed, then by its whole width.
 */
function rolledBands(bands: number, gap: number): { rolled: ReadonlySet<number>; laps: number } {
  const rolled = new Set<number>()
  let laps = 0
  for (let start = 0; start < bands; start += 2 * (gap + 1)) {
    for (let step = 0; step <= gap && start + step < bands; step++) {
      rolled.add(start + step).add(start + step + gap + 1)
      laps++
    }
  }
  return { rolled, laps }
}

describe('rolling with truck tires', () => {
  it('takes two trucks with dual tires 25 laps, 13 each, moving out 16 in', () => {
    // 2 × 8 in = 16 in; 65 ft ÷ 32 in = 24.4 → 25 laps; 25 × 2825.8 ft = 13.38 mi ÷ (2 × 12 × 0.95)
    // = 0.587 h
    const { move, laps, each, time } = rolling.compute({ ...halfMile, ...trucks })
    expect([numberOf(move) / IN, laps, each]).toEqual([expect.closeTo(16, 9), 25, 13])
    expect(numberOf(time) / 60).toBeCloseTo(35.21, 1)
  })

  it('needs twice the laps on single tires', () => {
    expect(rolling.compute({ ...halfMile, ...trucks, tiresPerSide: 1 }).laps).toBe(49)
  })

  it('gives one truck all the laps', () => {
    const { laps, each } = rolling.compute({ ...halfMile, ...trucks, machines: 1 })
    expect(each).toBe(laps)
  })

  it('leaves no band out when the driver moves as it says, in the laps it says where the gap fits', () => {
    // Gap of four bands: two rounds of five laps roll 20 bands.
    expect(rolledBands(20, 4)).toEqual({
      rolled: new Set(Array.from({ length: 20 }, (_, i) => i)),
      laps: 10,
    })
    fc.assert(
      fc.property(whole(1, 40), whole(0, 8), (bands, gap) => {
        const { rolled, laps } = rolledBands(bands, gap)
        for (let band = 0; band < bands; band++) expect(rolled.has(band)).toBe(true)
        expect(laps).toBeGreaterThanOrEqual(Math.ceil(bands / 2))
      }),
      FEW,
    )
  })

  it('never takes longer with wider tires or more trucks', () => {
    fc.assert(
      fc.property(ovals, inches(5, 14), whole(1, 5), (o, tireWidth, machines) => {
        const time = (change: object): number =>
          numberOf(rolling.compute({ ...o, ...trucks, tireWidth, machines, ...change }).time)
        expect(time({ tireWidth: tireWidth + IN })).toBeLessThanOrEqual(time({}))
        expect(time({ machines: machines + 1 })).toBeLessThan(time({}))
      }),
      FEW,
    )
  })
})
