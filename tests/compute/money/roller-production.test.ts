import { describe, expect, it } from 'vitest'
import {
  rollerArea,
  rollersNeeded,
  rollerVolume,
} from '../../../src/compute/money/roller-production.ts'

describe('rollers, loaders and trucks', () => {
  const roller = { width: 2, speed: 1, efficiency: 0.8, passes: 4 }

  it('finish area times lift, and half as much with twice the passes', () => {
    expect(rollerVolume(roller, 0.15)).toBeCloseTo(0.15 * rollerArea(roller), 9)
    expect(rollerArea({ ...roller, passes: 8 })).toBeCloseTo(rollerArea(roller) / 2, 9)
    expect(() => rollerArea({ ...roller, efficiency: 2 })).toThrow(RangeError)
  })

  it('need one roller where one just keeps up', () => {
    expect(rollersNeeded(10, 0.9, 9).whole).toBe(1)
    expect(rollersNeeded(10, 0.9, 8.9).whole).toBe(2)
  })
})
