import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { drinkingWater } from '../../../src/compute/safety/drinking-water.ts'
import { heatShift } from '../../../src/compute/safety/heat-shift.ts'
import { letterHeight } from '../../../src/compute/safety/letter-height.ts'
import { lifting } from '../../../src/compute/safety/lifting.ts'
import { noise, permittedByRule, recommended } from '../../../src/compute/safety/noise.ts'
import { powerLine } from '../../../src/compute/safety/power-line.ts'
import { silica } from '../../../src/compute/safety/silica.ts'
import { truckOnBank } from '../../../src/compute/safety/truck-on-bank.ts'
import { readingDistance } from '../../../src/compute/reading/reading-distance.ts'
import { heatRisk } from '../../../src/compute/weather/heat.ts'
import { expectRefused, numberOf } from '../support/answers.ts'
import { FEW, whole } from '../support/realistic.ts'

const bag = { reach: 0.4, height: 0.9, travel: 0.7, twist: 0.5, often: 1, grip: 0.95, load: 20 }

describe('figures behind the cautions', () => {
  it('use up more of a truck\'s stability on a steeper bank', () => {
    fc.assert(
      fc.property(whole(2, 150), (permille) => {
        const used = (e: number): number => numberOf(truckOnBank.compute({ tank: 7, crossFall: e, threshold: 0.35 }).used)
        expect(used((permille + 1) / 1000)).toBeGreaterThan(used(permille / 1000))
      }),
      FEW,
    )
  })

  it('never let a newcomer work longer than somebody used to heat, nor longer on an earlier day', () => {
    const at = heatShift.compute({ shift: 28_800 })
    const days = [at.first, at.second, at.third, at.fourth].map(numberOf)
    expect(days).toEqual([...days].sort((a, b) => a - b))
    expect(numberOf(at.returning)).toBeGreaterThan(days[0] ?? 0)
  })

  it('ask for drinks in proportion to people', () => {
    const crew = (people: number): number => numberOf(drinkingWater.compute({ every: 900, hours: 28_800, people }).crew)
    expect(crew(8)).toBeCloseTo(2 * crew(4), 12)
  })

  it('halve the time in noise for each exchange of levels, and always recommend less than the rule allows', () => {
    fc.assert(
      fc.property(whole(86, 120), (level) => {
        expect(permittedByRule(level + 5)).toBeCloseTo(permittedByRule(level) / 2, 6)
        expect(recommended(level + 3)).toBeCloseTo(recommended(level) / 2, 6)
        expect(recommended(level)).toBeLessThan(permittedByRule(level))
      }),
      FEW,
    )
    expect(noise.compute({ level: 90, shift: 28_800 }).dose).toBeCloseTo(1, 12)
  })

  it('allow a lighter lift farther out, lower down, twisted or repeated, and refuse what nobody should do', () => {
    const limit = (more: object): number => numberOf(lifting.compute({ ...bag, ...more }).limit)
    for (const worse of [{ reach: 0.5 }, { height: 0.2 }, { travel: 1.2 }, { twist: 1 }, { often: 0.6 }, { grip: 0.9 }]) expect(limit(worse)).toBeLessThan(limit({}))
    expectRefused(lifting.compute({ ...bag, often: 0 }), /nobody/)
  })

  it('keep farther from a higher voltage, and refuse beyond the table', () => {
    const distance = (kV: number) => powerLine.compute({ voltage: kV * 1000 }).distance
    const steps = [10, 50, 51, 200, 350, 500, 750, 1000].map((kV) => numberOf(distance(kV)))
    expect(steps).toEqual([...steps].sort((a, b) => a - b))
    expectRefused([distance(1001)], /owner/)
  })

  it('allow half the time in twice the dust', () => {
    expect(silica.compute({ dust: 2e-7 }).limit).toBeCloseTo(numberOf(silica.compute({ dust: 1e-7 }).limit) / 2, 6)
  })

  it('read a sign from as far as its letters were made for', () => {
    // 24 points of Source Sans have capitals of 0.22 in, which read to 66 in.
    const far = readingDistance(24)
    expect(numberOf(letterHeight.compute({ distance: far }).message)).toBeCloseTo(24 * 0.66 * (0.0254 / 72), 12)
  })

  it('raise the risk of heat at the ends of its bands only', () => {
    expect([80, 90.9, 91, 103, 103.1, 115, 115.1].map(heatRisk)).toEqual([1, 1, 2, 2, 3, 3, 4])
  })
})
