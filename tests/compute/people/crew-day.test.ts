import { describe, expect, it } from 'vitest'
import { crewDay } from '../../../src/compute/people/crew-day.ts'
import { numberOf } from '../support/answers.ts'

const h = 3600

describe('hours of a crew', () => {
  const crew = {
    start: 6 * h,
    water: 8 * h,
    look: 11 * h,
    after: 17 * h,
    done: 19 * h,
    walkers: 2,
    harrows: 1,
    trucks: 1,
    left: 0,
    shifts: 1,
    people: 4,
  }

  it('add up to what the rows of the crew schedule say, from coming to going', () => {
    // Superintendent and harrow driver 6 to 19, truck driver 8 to 19, gate and two on foot 11 to 17.
    const out = crewDay.compute(crew)
    expect(numberOf(out.driving) / h).toBe(13 + 11)
    expect(numberOf(out.foot) / h).toBe(13 + 3 * 6)
    expect(numberOf(out.all) / h).toBe(55)
    expect(numberOf(out.each) / h).toBe(55 / 4)
  })

  it('stay the same when a late crew takes over, and with more people', () => {
    expect(crewDay.compute({ ...crew, shifts: 2 }).all).toBe(crewDay.compute(crew).all)
    expect(crewDay.compute({ ...crew, people: 8 }).all).toBe(crewDay.compute(crew).all)
  })

  it('fall for each with more people and rise with more races', () => {
    expect(crewDay.compute({ ...crew, people: 8 }).each).toBeCloseTo(
      numberOf(crewDay.compute(crew).each) / 2,
      9,
    )
    expect(
      numberOf(crewDay.compute({ ...crew, after: 18 * h, done: 20 * h }).each),
    ).toBeGreaterThan(numberOf(crewDay.compute(crew).each))
  })

  it('count what is left for first light, for a driver and for the superintendent', () => {
    const out = crewDay.compute({ ...crew, left: 1.5 * h })
    expect(numberOf(out.driving) / h).toBe(13 + 11 + 1.5)
    expect(numberOf(out.all) / h).toBe(55 + 2 * 1.5)
    expect(out.places).toBe(crewDay.compute(crew).places)
  })

  it('need the superintendent and each driver once for each crew', () => {
    // 1 + 2, at the gate 1, on foot 2; another three with a late crew.
    expect(crewDay.compute(crew).places).toBe(6)
    expect(crewDay.compute({ ...crew, shifts: 2 }).places).toBe(9)
    // A second truck has a driver of its own, in both crews: 2 × (1 + 1 + 2) + 1 + 2.
    expect(crewDay.compute({ ...crew, shifts: 2, trucks: 2 }).places).toBe(11)
  })
})
