import { describe, expect, it } from 'vitest'
import { crewDay } from '../../../src/compute/people/crew-day.ts'
import { numberOf } from '../support/answers.ts'

const h = 3600

describe('hours of a crew', () => {
  it('fall with more people and rise with more races', () => {
    const crew = {
      harrow: h,
      pullBack: h,
      round: h,
      rounds: 4,
      walk: h,
      walkers: 2,
      first: 13 * h,
      after: 17 * h,
      people: 4,
    }
    expect(crewDay.compute({ ...crew, people: 8 }).each).toBeCloseTo(
      numberOf(crewDay.compute(crew).each) / 2,
      9,
    )
    expect(numberOf(crewDay.compute({ ...crew, after: 18 * h }).each)).toBeGreaterThan(
      numberOf(crewDay.compute(crew).each),
    )
  })
})
