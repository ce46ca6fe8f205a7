import { describe, expect, it } from 'vitest'
import { raceDaySupply, sprayPass, tankRun, truckCycle } from '../../../src/compute/water/truck.ts'

const n = (out: Readonly<Record<string, number | { refused: string }>>, name: string): number => {
  const value = out[name]
  if (typeof value !== 'number') throw new Error(`${name}: ${value?.refused}`)
  return value
}

const gallon = 0.003785411784

describe('spraying', () => {
  it('speed and depth undo each other', () => {
    const bar = { flow: 0.011, sprayWidth: 6 }
    const { speed } = sprayPass.compute({ ...bar, usual: 1.8, wanted: 0.00127 })
    expect(
      n(sprayPass.compute({ ...bar, usual: Number(speed), wanted: 0.001 }), 'depth'),
    ).toBeCloseTo(0.00127, 12)
  })

  it('a tank reaches as far as it lasts at that speed', () => {
    const bar = { flow: 0.011, sprayWidth: 6 }
    const speed = n(sprayPass.compute({ ...bar, usual: 1.8, wanted: 0.00127 }), 'speed')
    const run = tankRun.compute({ ...bar, depth: 0.00127, tank: 7.5, usable: 0.9 })
    expect(n(run, 'distance')).toBeCloseTo(speed * n(run, 'time'), 9)
  })

  it('a 2,000 gal tank at 90 %, 250 gal/min in, 180 gal/min out and 5 min of road takes 22.2 min', () => {
    // 1800/250 + 5 + 1800/180 = 7.2 + 5 + 10
    const out = truckCycle.compute({
      tank: 2000 * gallon,
      usable: 0.9,
      fillFlow: (250 * gallon) / 60,
      flow: (180 * gallon) / 60,
      travel: 300,
    })
    expect(n(out, 'time') / 60).toBeCloseTo(22.2, 9)
  })

  const day = {
    round: 4,
    before: 2,
    after: 1,
    breaks: 3,
    lapsInBreak: 1,
    rail: 800,
    reach: 900,
    sprayWidth: 5,
    load: 7,
    fillFlow: 0.01,
    points: 1,
  }

  it('counts the loads of three rounds and one for each of three breaks', () => {
    const out = raceDaySupply.compute(day)
    expect([n(out, 'rounds'), n(out, 'loads'), n(out, 'need'), n(out, 'hours')]).toEqual([
      3, 15, 105, 10_500,
    ])
  })

  it('counts a second load in a break where the way of the truck is longer than one reaches', () => {
    // 890 m of rail and 3.14 · 5 m make 905.7 m; a load reaches 900.
    expect(n(raceDaySupply.compute({ ...day, rail: 890 }), 'break-loads')).toBe(2)
    expect(n(raceDaySupply.compute({ ...day, rail: 880 }), 'break-loads')).toBe(1)
  })

  it('is filled in half the time from two hoses', () => {
    expect(n(raceDaySupply.compute({ ...day, points: 2 }), 'hours')).toBe(5250)
  })

  it('plans no water between races where there are no breaks, or none fits into them', () => {
    expect(n(raceDaySupply.compute({ ...day, breaks: 0 }), 'loads')).toBe(12)
    expect(n(raceDaySupply.compute({ ...day, lapsInBreak: 0 }), 'loads')).toBe(12)
  })
})
