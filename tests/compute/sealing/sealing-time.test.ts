import { describe, expect, it } from 'vitest'
import { sealingTime } from '../../../src/compute/sealing/sealing-time.ts'

describe('time to seal', () => {
  it('adds flattening, rolling and the margin', () => {
    expect(sealingTime.compute({ flatten: 2400, roll: 2100, margin: 600 })).toEqual({
      time: 4500,
      'start-before': 5100,
    })
  })

  it('is the rolling alone where nothing flattens and no margin is kept', () => {
    expect(sealingTime.compute({ flatten: 0, roll: 2100, margin: 0 })).toEqual({
      time: 2100,
      'start-before': 2100,
    })
  })
})
