import { describe, expect, it } from 'vitest'
import { walkedLine } from '../../../../src/compute/oval/rail-line/walked-line.ts'

describe('length on the earth', () => {
  it('gives the lap back when the line is walked at the measuring line instead of the rail', () => {
    const lap = 2 * 183 + 2 * Math.PI * (69 + 0.9144)
    const walked = walkedLine.compute({ length: lap, walked: 0.9144, offset: 0.9144, lap })
    expect(walked.off).toBeCloseTo(0, 9)
    expect(walked.rail).toBeCloseTo(2 * 183 + 2 * Math.PI * 69, 9)
  })
})
