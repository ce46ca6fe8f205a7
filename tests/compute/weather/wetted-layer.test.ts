import fc from 'fast-check'
import { expect, it } from 'vitest'
import { partWater, poreWater } from '../../../src/compute/weather/wetted-layer.ts'
import { FEW, whole } from '../support/realistic.ts'

const room = { pores: 0.006, toHeld: 0.003, base: 0.002, hollows: 0.001 }

it('fills the layer first, then hollows, and lets the rest run', () => {
  expect(partWater(0.004, { ...room, base: 0 })).toEqual({
    layer: 0.004,
    base: 0,
    stands: 0,
    runs: 0,
  })
  const { layer, stands, runs } = partWater(0.02, { ...room, base: 0 })
  expect([layer, stands]).toEqual([0.006, 0.001])
  expect(runs).toBeCloseTo(0.013, 12)
})

it('lets the base drink what the layer does not hold, and no more', () => {
  // 4 mm in, 3 mm are held: 1 mm goes on into the base.
  const parts = partWater(0.004, room)
  expect(parts.base).toBeCloseTo(0.001, 12)
  expect(parts.layer).toBeCloseTo(0.003, 12)
})

it('loses and makes no water', () => {
  fc.assert(
    fc.property(whole(0, 300), whole(-50, 80), whole(0, 100), (mm, toHeld, base) => {
      const parts = partWater(mm / 1000, {
        ...room,
        toHeld: toHeld / 1e4,
        base: base / 1e4,
      })
      expect(parts.layer + parts.base + parts.stands + parts.runs).toBeCloseTo(mm / 1000, 12)
    }),
    FEW,
  )
})

it('has less room when it is pressed: the same stone with fewer pores', () => {
  const material = { depth: 0.032, worked: 1666, solids: 2700 }
  expect(poreWater(material, 1666, 1)).toBeCloseTo((1 - 1666 / 2700) * 0.032, 12)
  expect(poreWater(material, 2114, 1)).toBeLessThan(poreWater(material, 1666, 1))
})
