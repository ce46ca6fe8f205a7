import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sprayPressure } from '../../../src/compute/water/spray-pressure.ts'

describe('spray pressure', () => {
  it('gives back the pressure that gave the flow', () => {
    const bar = fc.double({ min: 20_000, max: 2_000_000, noNaN: true })
    fc.assert(
      fc.property(bar, bar, (pressure, other) => {
        const { flow } = sprayPressure.compute({ flow: 0.006, pressure, other, wanted: 0.006 })
        const back = sprayPressure.compute({
          flow: 0.006,
          pressure,
          other,
          wanted: Number(flow),
        }).pressure
        expect(Number(back) / other).toBeCloseTo(1, 9)
      }),
    )
  })
})
