import { describe, expect, it } from 'vitest'
import { raceDayGroups } from '../../../src/compose/schedules/race-day-groups.ts'
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
