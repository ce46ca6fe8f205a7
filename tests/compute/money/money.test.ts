import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fuelUse, YEARLY_MEAN } from '../../../src/compute/money/fuel.ts'
import { graderTime, meanPassSpeed } from '../../../src/compute/money/grader-time.ts'
import { tripTime, trucksInBalance, trucksWithSpare } from '../../../src/compute/money/hauling.ts'
import {
  costOf,
  jobTime,
  markUp,
  sumOfCosts,
  unitCost,
} from '../../../src/compute/money/job-cost.ts'
import { loadingRate } from '../../../src/compute/money/loading.ts'
import {
  capitalRecovery,
  depreciationByUse,
  recoveryFactor,
  repairShare,
} from '../../../src/compute/money/machine-cost.ts'
import { pullPower, takeOffPower } from '../../../src/compute/money/pulling-power.ts'
import { haulPull, rollingShare } from '../../../src/compute/money/resistance.ts'
import {
  rollerArea,
  rollersNeeded,
  rollerVolume,
} from '../../../src/compute/money/roller-production.ts'
import { FEW, feet, mph, whole } from '../support/realistic.ts'

describe('grader', () => {
  it('takes the sum of its operations, at the harmonic mean of their speeds', () => {
    fc.assert(
      fc.property(
        fc.array(mph(2, 8), { minLength: 1, maxLength: 6 }),
        feet(500, 5000),
        (speeds, distance) => {
          const hours = graderTime(
            speeds.map((speed) => ({ passes: 1, distance, speed })),
            0.6,
          )
          const mean = graderTime(
            [{ passes: speeds.length, distance, speed: meanPassSpeed(speeds) }],
            0.6,
          )
          expect(hours).toBeCloseTo(mean, 5)
        },
      ),
      FEW,
    )
  })

  it('throws at no speed and no passes at all', () => {
    expect(() => graderTime([{ passes: 1, distance: 10, speed: 0 }], 0.6)).toThrow(RangeError)
    expect(() => meanPassSpeed([])).toThrow(RangeError)
  })
})

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

  it('load a bucket a minute at 1 m³ as 60 m³ an hour', () => {
    expect(3600 * loadingRate(1, 1, 60, 1)).toBeCloseTo(60, 9)
    expect(() => loadingRate(1, 1, 0, 1)).toThrow(RangeError)
  })

  it('need one truck more after the Army rule than in balance', () => {
    const trip = tripTime({ load: 120, haul: 300, dump: 60, back: 240, spot: 0 })
    expect(trip).toBe(720)
    expect([trucksInBalance(trip, 120), trucksWithSpare(trip, 120)]).toEqual([6, 7])
    expect(() => tripTime({ load: -1, haul: 0, dump: 0, back: 0, spot: 0 })).toThrow(RangeError)
  })
})

describe('pull and power', () => {
  it('rolls at 2 % on a hard road and climbs on top of that', () => {
    expect(rollingShare(0)).toBeCloseTo(0.02, 9)
    expect(haulPull(1000, rollingShare(0), 0.05)).toBeCloseTo(70, 9)
    expect(() => rollingShare(-1)).toThrow(RangeError)
  })

  it('asks more of the take-off than reaches the ground', () => {
    expect(takeOffPower(pullPower(10_000, 2), 0.8)).toBeCloseTo(25_000, 6)
    expect(() => takeOffPower(10, 0)).toThrow(RangeError)
  })

  it('burns in step with power', () => {
    expect(fuelUse(40_000)).toBeCloseTo(2 * fuelUse(20_000), 12)
    // 0.044 gal/h for each horsepower: 3.785 L × 0.044 ÷ 0.7457 kW = 0.2234 L for a kilowatt-hour
    expect(YEARLY_MEAN * 3.6e9).toBeCloseTo(0.2234, 4)
  })
})

describe('cost', () => {
  it('of money comes back from the yearly share', () => {
    fc.assert(
      fc.property(whole(1, 20), whole(0, 12), (years, percent) => {
        const i = percent / 100
        const paid = Array.from(
          { length: years },
          (_, k) => recoveryFactor(i, years) / (1 + i) ** (k + 1),
        ).reduce((a, b) => a + b, 0)
        expect(paid).toBeCloseTo(1, 9)
      }),
      FEW,
    )
  })

  it('of a machine that keeps its price is the interest', () => {
    expect(capitalRecovery(1000, 1000, 0.06, 10)).toBeCloseTo(60, 9)
    expect(() => capitalRecovery(1000, 1200, 0.06, 10)).toThrow(RangeError)
    expect(repairShare(0, 0.007, 2)).toBe(0)
  })

  it('by use runs down to the salvage', () => {
    expect(depreciationByUse(1000, 200, 400, 400)).toEqual({ each: 2, lost: 800, left: 200 })
  })

  it('of a job is its time at its price, and of a unit the same over the amount', () => {
    const time = jobTime(300, 2)
    expect(costOf(time, 0.02) / 300).toBeCloseTo(unitCost(0.02, 2), 12)
    expect(sumOfCosts([])).toBe(0)
    expect(() => sumOfCosts([1, -1])).toThrow(RangeError)
  })

  it('is marked up in order', () => {
    // 100 + 10 = 110; 5 % of that = 5.50
    expect(markUp(100, 0.1, 0.05)).toEqual({
      overhead: 10,
      contract: 110,
      administration: 5.5,
      total: 115.5,
    })
  })
})
