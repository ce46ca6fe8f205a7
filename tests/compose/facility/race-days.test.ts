import { expect, it } from 'vitest'
import { composeRaceDays } from '../../../src/compose/facility/race-days.ts'
import { contextFor, halfMile } from '../support/context.ts'

it('race days stand as the file has them; an interval that it does not give is left empty', async () => {
  const context = await contextFor(`${halfMile}race-days:
  - { date: 2027-08-04, first-post: "13:30", races: 10, interval: 20 min }
  - { date: 2027-08-03, first-post: "13:00", races: 8 }
`)
  expect(composeRaceDays(context)).toEqual([
    { date: '2027-08-04', firstPost: '1:30 PM', races: 10, interval: '20 min' },
    { date: '2027-08-03', firstPost: '1:00 PM', races: 8, interval: '' },
  ])
})
