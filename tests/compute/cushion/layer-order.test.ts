import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { layerOrder, layerOrderUnpriced } from '../../../src/compute/cushion/layer-order.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, FT, feet, IN, inches, PCF, TON } from '../support/realistic.ts'

const area = 180_000 * FT ** 2

const quarter = { area, depth: IN / 4, unitWeight: 105 * PCF, moisture: 0, load: 20 * TON }

describe('material for a layer', () => {
  it('takes 197 tons, ten loads and $3,938 for a quarter inch', () => {
    // 180,000 × 0.25 ÷ 12 × 105 ÷ 2000 = 196.875; ÷ 20 = 9.84; × 20
    const { mass, loads, cost } = layerOrder.compute({ ...quarter, price: 20 / TON })
    expect(numberOf(mass) / TON).toBeCloseTo(196.875, 6)
    expect(loads).toBe(10)
    expect(cost).toBeCloseTo(3937.5, 6)
  })

  it('orders damp stone by what the scale shows, and pays for its water', () => {
    // 196.875 × 1.05 = 206.7 tons, 11 loads.
    const { mass, order, loads, cost } = layerOrder.compute({
      ...quarter,
      moisture: 0.05,
      price: 20 / TON,
    })
    expect(numberOf(mass) / TON).toBeCloseTo(196.875, 6)
    expect(numberOf(order) / TON).toBeCloseTo(206.71875, 6)
    expect([loads, cost]).toEqual([11, expect.closeTo(4134.375, 6)])
  })

  it('does not send one more truck for a full last load', () => {
    expect(layerOrder.compute({ ...quarter, load: (196.875 / 9) * TON, price: 0 }).loads).toBe(9)
  })

  it('gives no price where nobody knows it, and the same loads', () => {
    const { loads, cost } = layerOrderUnpriced.compute(quarter)
    expect(loads).toBe(10)
    expectRefused([cost], /price/)
  })

  it('always brings enough, and never a whole truck too much', () => {
    fc.assert(
      fc.property(
        feet(50, 500),
        inches(1, 3),
        fc.integer({ min: 5, max: 30 }),
        (side, depth, tons) => {
          const load = tons * TON
          const { order, loads } = layerOrderUnpriced.compute({
            area: side ** 2,
            depth,
            unitWeight: 1700,
            moisture: 0.05,
            load,
          })
          expect(numberOf(loads) * load).toBeGreaterThanOrEqual(numberOf(order) * (1 - 1e-6))
          expect((numberOf(loads) - 1) * load).toBeLessThan(numberOf(order))
        },
      ),
      FEW,
    )
  })
})
