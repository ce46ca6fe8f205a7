import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { storeBetween, storeDay } from '../../../src/compute/water/store.ts'
import { numberOf } from '../support/answers.ts'

const h = 3600
const day = { full: 100, morning: 100, need: 54, usable: 0.9, recharge: 0, hours: 10 * h }

describe('the store over race days', () => {
  it('holds on the second day what the first has left, and no more', () => {
    // 54 m³ on the track are 60 drawn: 40 are left, and 60 are wanted again.
    const first = storeDay.compute(day)
    expect([first.drawn, first.hand, first.left, first.next]).toEqual([60, 100, 40, 40])
    const second = storeDay.compute({ ...day, morning: numberOf(first.next) })
    expect(second.left).toEqual({ refused: 'store-empty' })
    expect(second.next).toBe(0)
  })

  it('is refilled overnight, and never more than full', () => {
    // 1 m³ an hour: 10 while water is drawn, 14 in the night.
    const slow = storeDay.compute({ ...day, recharge: 1 / h })
    expect([slow.hand, slow.left, slow.next].map(numberOf)).toEqual([110, 50, 64])
    const quick = storeDay.compute({ ...day, recharge: 10 / h })
    expect([quick.left, quick.next].map(numberOf)).toEqual([100, 100])
  })

  it('gives a round on each day between, and takes what runs in', () => {
    expect(storeBetween(40, 2, { full: 100, drawn: 15, recharge: 0 })).toBe(10)
    expect(storeBetween(40, 1, { full: 100, drawn: 15, recharge: 1 / h })).toBeCloseTo(49, 9)
  })

  it('never grows without refill, and refill never makes it less', () => {
    const amount = fc.integer({ min: 0, max: 200 })
    const flow = fc.integer({ min: 0, max: 20 }).map((n) => n / h)
    fc.assert(
      fc.property(
        amount,
        amount,
        amount,
        flow,
        fc.integer({ min: 0, max: 3 }),
        (full, part, need, recharge, days) => {
          const morning = Math.min(full, part)
          const over = (r: number) => {
            const next = numberOf(
              storeDay.compute({ ...day, full, morning, need, recharge: r }).next,
            )
            return storeBetween(next, days, { full, drawn: need, recharge: r })
          }
          expect(over(0)).toBeLessThanOrEqual(morning)
          expect(over(recharge)).toBeGreaterThanOrEqual(over(0) - 1e-9)
          expect(over(recharge)).toBeLessThanOrEqual(full)
        },
      ),
    )
  })
})
