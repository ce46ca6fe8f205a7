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
  gap: 5 * IN,
  track: 72 * IN,
  overlap: IN,
  speed: 12 * MPH,
  efficiency: 0.95,
  machines: 2,
  passes: 1,
}

describe('rolling with truck tires', () => {
  it('takes two trucks with twin tires 36 laps, 18 each: blocks of 6 laps that roll 154 in', () => {
    // (780 − 1) in ÷ (154 − 1) in = 5.09 → 6 blocks of 6 laps; 18 × 2825.8 ft = 9.63 mi ÷ (12 × 0.95)
    // = 0.845 h
    const { width, laps, each, time } = rolling.compute({ ...halfMile, ...trucks })
    expect([numberOf(width) / IN, laps, each]).toEqual([expect.closeTo(154, 9), 36, 18])
    expect(numberOf(time) / 60).toBeCloseTo(50.7, 1)
  })

  it('lets the busiest truck decide how long it takes', () => {
    // 36 laps by five trucks: 8 for the first, not 7.2.
    const one = rolling.compute({ ...halfMile, ...trucks, machines: 1 })
    const five = rolling.compute({ ...halfMile, ...trucks, machines: 5 })
    expect(five.each).toBe(8)
    expect(numberOf(five.time) / numberOf(one.time)).toBeCloseTo(8 / 36, 9)
  })

  it('needs a lap for every print on single tires', () => {
    // Prints of 8 in, each an inch over the last: 11 of them fill the 72 in between the wheels, and
    // the block is 149 in wide.
    expect(rolling.compute({ ...halfMile, ...trucks, tiresPerSide: 1 }).block).toBe(11)
  })

  it('gives one truck all the laps', () => {
    const { laps, each } = rolling.compute({ ...halfMile, ...trucks, machines: 1 })
    expect(each).toBe(laps)
  })

  it('never takes longer with more trucks', () => {
    fc.assert(
      fc.property(ovals, inches(5, 14), whole(1, 5), (o, tireWidth, machines) => {
        const time = (count: number): number =>
          numberOf(rolling.compute({ ...o, ...trucks, tireWidth, machines: count }).time)
        expect(time(machines + 1)).toBeLessThanOrEqual(time(machines))
      }),
      FEW,
    )
  })

  it('refuses prints that lie wholly over each other', () => {
    expect(rolling.compute({ ...halfMile, ...trucks, overlap: 8 * IN }).laps).toEqual({
      refused: 'nothing-of-the-print-left',
    })
  })
})
