import { describe, expect, it } from 'vitest'
import { crewDay } from '../../../src/compute/people/crew-day.ts'
import { numberOf } from '../support/answers.ts'

const h = 3600

describe('hours of a crew', () => {
  const crew = {
    harrow: h,
    round: h,
    rounds: 4,
    walk: h,
    walkers: 2,
    first: 13 * h,
    after: 17 * h,
    done: 19 * h,
    harrows: 1,
    trucks: 1,
    shifts: 1,
    people: 4,
  }

  it('fall with more people and rise with more races', () => {
    expect(crewDay.compute({ ...crew, people: 8 }).each).toBeCloseTo(
      numberOf(crewDay.compute(crew).each) / 2,
      9,
    )
    expect(
      numberOf(crewDay.compute({ ...crew, after: 18 * h, done: 20 * h }).each),
    ).toBeGreaterThan(numberOf(crewDay.compute(crew).each))
  })

  it('need the superintendent and each driver once for each crew', () => {
    // 1 + 2, at the gate 1, on foot 2; another three with a late crew.
    expect(crewDay.compute(crew).places).toBe(6)
    expect(crewDay.compute({ ...crew, shifts: 2 }).places).toBe(9)
    // A second truck has a driver of its own, in both crews: 2 × (1 + 1 + 2) + 1 + 2.
    expect(crewDay.compute({ ...crew, shifts: 2, trucks: 2 }).places).toBe(11)
  })
})
