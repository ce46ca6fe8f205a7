import { expect, it } from 'vitest'
import { isDayTwice } from '../../../src/edit/form/day-twice.ts'

it('is told at the second of two race days that are one day', () => {
  const days = ['2027-08-03', '2027-08-04', '2027-08-03']
  const data = { 'race-days': days.map((date) => ({ date })) }
  const twice = days.map((_day, i) => isDayTwice(data, ['race-days', i, 'date']))
  expect(twice).toEqual([false, false, true])
  expect(isDayTwice(data, ['race-days', 2, 'races'])).toBe(false)
  expect(isDayTwice({ 'race-days': [{}, {}] }, ['race-days', 1, 'date'])).toBe(false)
})
