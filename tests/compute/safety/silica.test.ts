import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { eightHourMean, silica } from '../../../src/compute/safety/silica.ts'
import { numberOf } from '../support/answers.ts'
import { FEW, whole } from '../support/realistic.ts'

const hour = 3600

describe('noise and dust', () => {
  it('let the mean of the day reach the limit after the time that is given', () => {
    fc.assert(
      fc.property(whole(1, 5000), (micrograms) => {
        const dust = micrograms * 1e-9
        const { action, limit, hourly } = silica.compute({ dust })
        expect(eightHourMean([{ dust, time: numberOf(limit) }])).toBeCloseTo(50e-9, 15)
        expect(numberOf(limit)).toBeCloseTo(2 * numberOf(action), 6)
        expect((numberOf(hourly) * numberOf(action)) / hour).toBeCloseTo(25e-9, 15)
      }),
      FEW,
    )
  })
})
