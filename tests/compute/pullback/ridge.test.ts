import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ridge } from '../../../src/compute/pullback/ridge.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, FT, IN, inches } from '../support/realistic.ts'

const oval = {
  straight: 600 * FT,
  radius: 226.25 * FT,
  crossFallStraights: 0.02,
  crossFallTurns: 0.06,
  widthStraights: 65 * FT,
}

const harrow = { harrowWidth: 8 * FT, teeth: 0.75 * IN, print: 0.5 * IN }

describe('ridge at the rail', () => {
  it('of one inch leaves half-inch prints 6 ft out under an 8 ft harrow at 3/4 in', () => {
    // 8 × (1 − (0.75 − 0.5) ÷ 1) = 6
    expect(
      numberOf(ridge.compute({ ...oval, ...harrow, height: IN })['lift-width']) / FT,
    ).toBeCloseTo(6, 9)
  })

  it('lifts the teeth, at that distance, to just the depth of the print', () => {
    fc.assert(
      fc.property(inches(1, 3), (height) => {
        const x = numberOf(ridge.compute({ ...oval, ...harrow, height })['lift-width'])
        expect(harrow.teeth - height * (1 - x / harrow.harrowWidth)).toBeCloseTo(harrow.print, 9)
      }),
      FEW,
    )
  })

  it('refuses where the ridge is too low to leave prints', () => {
    expectRefused(
      [ridge.compute({ ...oval, ...harrow, height: IN / 4 })['lift-width']],
      /^ridge-too-low$/,
    )
  })

  it('that is not there holds back nothing and lifts no harrow', () => {
    const {
      'dam-width': width,
      'dam-volume': volume,
      'lift-width': lift,
    } = ridge.compute({ ...oval, ...harrow, height: 0 })
    expect([width, volume]).toEqual([0, 0])
    expectRefused(
      [lift, ridge.compute({ ...oval, ...harrow, print: harrow.teeth, height: 0 })['lift-width']],
      /^ridge-too-low$/,
    )
  })

  it('refuses prints that the teeth never reach', () => {
    expectRefused(
      [ridge.compute({ ...oval, ...harrow, print: IN, height: IN })['lift-width']],
      /^prints-below-teeth$/,
    )
  })
})
