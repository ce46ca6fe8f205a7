import { describe, expect, it } from 'vitest'
import { composeFindings } from '../../../src/compose/findings.ts'
import { eachRaceDay, raceDayGroups } from '../../../src/compose/schedules/race-day-groups.ts'
import { contextFor, halfMile } from '../support/context.ts'

describe('race days', () => {
  it('with the same card share a group, named by their dates in order', async () => {
    const context = await contextFor(`${halfMile}race-days:
  - { date: 2027-08-06, first-post: "13:00", races: 10, interval: 20 min }
  - { date: 2027-08-05, first-post: "13:00", races: 8, interval: 20 min }
  - { date: 2027-08-03, first-post: "13:00", races: 10, interval: 20 min }
`)
    const groups = raceDayGroups(context)
    expect(groups.map((g) => g.dates)).toEqual(['Tue, Aug 3; Fri, Aug 6', 'Thu, Aug 5'])
    expect(groups.map((g) => g.context.engine.si('race-days.races'))).toEqual([10, 8])
  })

  it('differ where one has breaks, and know the race days on the morrow', async () => {
    const context = await contextFor(`${halfMile}race-days:
  - { date: 2027-08-03, first-post: "13:00", races: 10, interval: 20 min }
  - { date: 2027-08-04, first-post: "13:00", races: 10, interval: 20 min, break-every: 3, break: 35 min }
`)
    const [plain, paused] = raceDayGroups(context)
    expect(plain?.context.here.si('clock.breaks')).toBe(0)
    expect(paused?.context.here.si('clock.breaks')).toBe(3)
    expect(plain?.morrows.map((m) => m.si('clock.breaks'))).toEqual([3])
    expect(paused?.morrows).toEqual([])
  })

  it('are none where none are given', async () => {
    expect(raceDayGroups(await contextFor(halfMile))).toEqual([])
  })
})

it('begins each race day with what the day before has left in store', async () => {
  const fair = `${halfMile}equipment: [{ id: t, name: t, can: [spray], from: own, tank: "1,500 gal" }]
water: { storage: "40,000 gal" }
race-days:
  - { date: 2027-08-08, first-post: "13:00", races: 8 }
  - { date: 2027-08-09, first-post: "13:00", races: 8 }
`
  const context = await contextFor(fair, {}, { findings: [] })
  const mornings = eachRaceDay(context).map((d) => d.context.engine.si('store.morning') ?? 0)
  const drawn = context.engine.si('store.drawn') ?? 0
  const full = context.engine.si('water.storage') ?? 0
  expect(drawn).toBeLessThan(full)
  expect(2 * drawn).toBeGreaterThan(full)
  expect(mornings).toEqual([full, full - drawn])
  // 40,000 gal are enough for one day and not for two: the finding names the second.
  const found = composeFindings(context).find((f) => f.id === 'store-runs-dry')
  expect(found?.text).toMatch(/^Mon, Aug 9: /)
  const more = fair.replace('40,000 gal', '250,000 gal')
  const enough = await contextFor(more, {}, { findings: [] })
  expect(composeFindings(enough).map((f) => f.id)).not.toContain('store-runs-dry')
})
