import { describe, expect, it } from 'vitest'
import { baseCut } from '../../../src/compute/repairs/base-cut.ts'
import { missingDepthUnpriced } from '../../../src/compute/repairs/missing-depth.ts'
import { numberOf } from '../support/answers.ts'
import { FT, IN, PCF, TON } from '../support/realistic.ts'

const area = 180_000 * FT ** 2

const thin = {
  area,
  target: IN,
  found: 0.75 * IN,
  unitWeight: 105 * PCF,
  load: 20 * TON,
  swell: 0.25,
}

describe('cushion too thin', () => {
  it('takes the same cut as a stopgap that gains one step', () => {
    expect(baseCut.compute({ gain: thin.target - thin.found, swell: thin.swell }).cut).toBeCloseTo(
      numberOf(missingDepthUnpriced.compute(thin).cut),
      12,
    )
  })
})
