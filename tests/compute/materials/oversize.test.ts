import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { oversize } from '../../../src/compute/materials/oversize.ts'

const laboratory = { highest: 1922, best: 0.1, coarse: 0.2, gravity: 2.65, moisture: 0.02 }

describe('oversize', () => {
  it('leaves a material without coarse grains as it is', () => {
    const out = oversize.compute({ ...laboratory, coarse: 0 })
    expect(out.highest).toBeCloseTo(1922, 9)
    expect(out.best).toBeCloseTo(0.1, 12)
  })
  it('keeps the volumes: fine part and coarse part fill what the whole fills', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.4, noNaN: true }), (coarse) => {
        const { highest } = oversize.compute({ ...laboratory, coarse })
        const volume = (1 - coarse) / laboratory.highest + coarse / (laboratory.gravity * 1000)
        expect(Number(highest) * volume).toBeCloseTo(1, 9)
      }),
    )
  })
})
