import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { balancedSpeed } from '../../../src/compute/oval/curve-balance.ts'
import { truckOnBank } from '../../../src/compute/safety/truck-on-bank.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, whole } from '../support/realistic.ts'

describe('a water truck on the bank', () => {
  const truck = { tank: 7, crossFall: 0.065, threshold: 0.35, radius: 69, offset: 0.9, pace: 1.8 }
  const used = (more: object, name: 'used' | 'moving' = 'used'): number =>
    numberOf(truckOnBank.compute({ ...truck, ...more })[name])

  it('has less stability left on a steeper bank, and with a lower threshold', () => {
    fc.assert(
      fc.property(whole(2, 150), whole(15, 79), (permille, percent) => {
        expect(used({ crossFall: (permille + 1) / 1000 })).toBeGreaterThan(
          used({ crossFall: permille / 1000 }),
        )
        expect(used({ threshold: percent / 100 })).toBeGreaterThan(
          used({ threshold: (percent + 1) / 100 }),
        )
      }),
      FEW,
    )
  })

  it('wins next to nothing back at walking pace, and all of it at the speed that the bank balances', () => {
    expect(used({}) - used({}, 'moving')).toBeLessThan(0.02)
    // Both are in proportion to the cosine of the bank, so the balance is the one of the turn
    // itself.
    expect(
      used(
        { pace: balancedSpeed(truck.crossFall, truck.radius + truck.offset) * (1 - 1e-9) },
        'moving',
      ),
    ).toBeCloseTo(0, 6)
  })

  it('is not answered for a speed at which it is thrown outward', () => {
    expectRefused([truckOnBank.compute({ ...truck, pace: 10 }).moving], /^thrown-outward$/)
  })

  it('uses all its stability on a bank that pulls as much as tips it over', () => {
    expect(used({ crossFall: Math.tan(Math.asin(0.15)), threshold: 0.15 })).toBeCloseTo(1, 12)
  })
})
