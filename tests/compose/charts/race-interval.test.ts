import { describe, expect, it } from 'vitest'
import { composeRaceInterval } from '../../../src/compose/charts/race-interval.ts'
import { contextFor, halfMile } from '../support/context.ts'

const harrow =
  '  - { id: h, name: h, can: [harrow], from: own, width: 12 ft, overlap: 1 ft, speed: 6 mph }\n'
const truck =
  '  - { id: t, name: t, can: [spray], from: own, tank: "2,000 gal", flow: 180 gal/min, spray-width: 20 ft, overlap: 1 ft, speed: 4 mph }\n'
const races = (interval: string): string =>
  `race-days: [{ date: 2027-08-03, first-post: "13:00", races: 10, interval: ${interval} }]\n`

const between = async (machines: string, interval: string) =>
  composeRaceInterval(await contextFor(`${halfMile}equipment:\n${machines}${races(interval)}`))

describe('the minutes between two races', () => {
  it('are shared out one after another: clear, harrow, open again', async () => {
    const times = await between(harrow, '30 min')
    if (!times) throw new Error('no times')
    expect(times.interval).toBe(1800)
    expect(times.laps).toBeGreaterThanOrEqual(1)
    expect(times.harrowed).toBeCloseTo(times.clear + times.laps * times.lap, 6)
    expect(times.open).toBeGreaterThanOrEqual(times.harrowed)
    expect(times.open).toBeLessThanOrEqual(times.interval)
    expect(times.water).toBeUndefined()
  })

  it('have water behind the first lap of the harrow where there is time, and never past the opening', async () => {
    const times = await between(`${harrow}${truck}`, '40 min')
    expect(times?.water).toMatchObject({ figure: 'gap.water-laps', instead: false })
    expect(times?.water?.from).toBeCloseTo((times?.clear ?? 0) + (times?.lap ?? 0), 6)
    expect(times?.water?.to).toBeLessThanOrEqual((times?.open ?? 0) + 1e-6)
  })

  it('cannot be shared out where nothing harrows, nor where the interval leaves no time', async () => {
    expect(await between(truck, '30 min')).toBeUndefined()
    expect(await between(harrow, '5 min')).toBeUndefined()
  })
})
