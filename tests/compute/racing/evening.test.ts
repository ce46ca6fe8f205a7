import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { evening } from '../../../src/compute/racing/evening.ts'
import { FEW, whole } from '../support/realistic.ts'

const h = 3600

describe('the evening after the races', () => {
  const work = { pulling: h, harrowing: h, watering: 2 * h }

  it('pulls back, harrows and waters, one after another', () => {
    expect(evening(17 * h, 24 * h, work)).toEqual({
      pulled: 18 * h,
      harrowed: 19 * h,
      watered: 21 * h,
      done: 21 * h,
    })
  })

  it('leaves for the morning what would end after the light, and all that follows it', () => {
    const out = evening(17 * h, 18.5 * h, { ...work, watering: 0 })
    expect([out.pulled, out.done]).toEqual([18 * h, 18 * h])
    expect([out.harrowed, out.watered]).toEqual([
      { refused: 'after-light' },
      { refused: 'after-light' },
    ])
  })

  it('never ends earlier with more light', () => {
    fc.assert(
      fc.property(whole(12, 22), whole(12, 23), (after, light) => {
        const { done } = evening(after * h, light * h, work)
        expect(evening(after * h, (light + 1) * h, work).done).toBeGreaterThanOrEqual(done)
        expect(done === after * h || done <= light * h).toBe(true)
      }),
      FEW,
    )
  })
})
