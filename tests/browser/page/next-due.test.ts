import { expect, it } from 'vitest'
import { nextDue } from '../../../src/browser/page/next-due.ts'

const dates = ['2027-06-01', '2027-06-14', '2027-06-14', '2027-07-20', '2027-08-03']

it('shows what comes next, today included', () => {
  expect(nextDue(dates, '2027-06-02', 3)).toEqual([1, 2, 3])
  expect(nextDue(dates, '2027-06-14', 2)).toEqual([1, 2])
})

it('shows what is left, and after the last day nothing', () => {
  expect(nextDue(dates, '2027-07-21', 3)).toEqual([4])
  expect(nextDue(dates, '2027-08-04', 3)).toEqual([])
})
