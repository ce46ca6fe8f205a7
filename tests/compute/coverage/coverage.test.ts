import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { coverage } from '../../../src/compute/coverage/coverage.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, FT, feet, MPH, mph, ovals } from '../support/realistic.ts'

const halfMile = {
  straight: 600 * FT,
  radius: 226.25 * FT,
  widthStraights: 65 * FT,
  widthTurns: 65 * FT,
}

const harrow = {
  width: 8 * FT,
  angle: 0,
  overlap: FT,
  speed: 5 * MPH,
  efficiency: 0.85,
  machines: 1,
  passes: 1,
}

describe('coverage', () => {
  it('harrows a half mile of 65 ft in ten laps and an hour and a quarter', () => {
    // 65 ÷ 7 = 9.3 → 10 laps; middle lap 1200 + 2π × 258.75 = 2825.8 ft; 28,257.7 ft = 5.3518 mi ÷
    // (5 × 0.85) = 1.2593 h
    const { effective, strips, laps, distance, time } = coverage.compute({ ...halfMile, ...harrow })
    expect([numberOf(effective) / FT, strips, laps]).toEqual([expect.closeTo(7, 9), 10, 10])
    expect(numberOf(distance) / (5280 * FT)).toBeCloseTo(5.3518, 4)
    expect(numberOf(time) / 3600).toBeCloseTo(1.2593, 4)
  })

  it('draws a 12 ft blade at 30 degrees as 9.4 ft of width', () => {
    // 12 cos 30° − 1 = 9.392
    const { effective, strips } = coverage.compute({
      ...halfMile,
      ...harrow,
      width: 12 * FT,
      angle: Math.PI / 6,
    })
    expect(numberOf(effective) / FT).toBeCloseTo(9.3923, 4)
    expect(strips).toBe(7)
  })

  it('takes no extra strip where they come out even', () => {
    expect(
      coverage.compute({ ...halfMile, widthStraights: 63 * FT, widthTurns: 63 * FT, ...harrow })
        .strips,
    ).toBe(9)
  })

  it('covers a track narrower than the implement in one lap', () => {
    expect(
      coverage.compute({ ...halfMile, widthStraights: 5 * FT, widthTurns: 5 * FT, ...harrow }).laps,
    ).toBe(1)
  })

  it('counts strips by the wider of straights and turns', () => {
    const wide = coverage.compute({ ...halfMile, widthStraights: 80 * FT, ...harrow }).strips
    expect(wide).toBe(coverage.compute({ ...halfMile, widthTurns: 80 * FT, ...harrow }).strips)
    expect(wide).toBe(12)
  })

  it('refuses an overlap as wide as the implement', () => {
    expectRefused(coverage.compute({ ...halfMile, ...harrow, overlap: 8 * FT }), /overlap/)
  })

  it('never takes longer with a wider, faster or second machine', () => {
    fc.assert(
      fc.property(ovals, feet(5, 14), mph(2, 8), (o, width, speed) => {
        const time = (change: object): number =>
          numberOf(coverage.compute({ ...o, ...harrow, width, speed, ...change }).time)
        expect(time({ width: width + FT })).toBeLessThanOrEqual(time({}))
        expect(time({ speed: 2 * speed })).toBeCloseTo(time({}) / 2, 5)
        // Two drive whole laps: with an odd number of them one has a lap more.
        const { laps } = coverage.compute({ ...o, ...harrow, width, speed })
        const more = Math.ceil(numberOf(laps) / 2) / numberOf(laps)
        expect(time({ machines: 2 })).toBeCloseTo(more * time({}), 5)
        expect(time({ machines: 4 })).toBeLessThanOrEqual(time({ machines: 3 }))
        expect(time({ passes: 3 })).toBeCloseTo(3 * time({}), 4)
      }),
      FEW,
    )
  })

  it('never leaves a gap: strips times their width reach the edge', () => {
    fc.assert(
      fc.property(ovals, feet(4, 14), (o, width) => {
        const { effective, strips } = coverage.compute({ ...o, ...harrow, width })
        expect(numberOf(effective) * numberOf(strips)).toBeGreaterThanOrEqual(o.widthTurns - 1e-4)
      }),
      FEW,
    )
  })
})
