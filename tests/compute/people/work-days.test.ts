import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Job, workDays } from '../../../src/compute/people/work-days.ts'

const hour = 3600
const crew = { people: 2, days: 3, shift: 8 * hour }
const job = (id: string, hours: number, more: Partial<Job> = {}): Job => ({
  id,
  people: 1,
  time: hours * hour,
  from: 1,
  daily: false,
  split: false,
  ...more,
})

describe('work of a small crew', () => {
  it('gives daily work its time first, then the rest by turns to whoever has room', () => {
    const { days } = workDays([job('a', 3), job('b', 2), job('water', 6, { daily: true })], crew)
    expect(days[0]?.daily).toEqual([{ id: 'water', who: [0], time: 6 * hour }])
    expect(days[0]?.parts.map((p) => p.who)).toEqual([[1], [1]])
    expect(days[0]?.worked).toEqual([6 * hour, 5 * hour])
  })

  it('does what takes both on the first day on which both have the time', () => {
    const { days } = workDays([job('a', 5), job('both', 4, { people: 2 })], crew)
    expect(days.map((d) => d.parts.map((p) => p.id))).toEqual([['a'], ['both'], []])
  })

  it('goes on with long work on the next day, and says what is left in the end', () => {
    const long = job('rake', 30, { people: 2, split: true, from: 2 })
    const { days, left } = workDays([long], crew)
    expect(days.map((d) => d.parts.map((p) => p.time / hour))).toEqual([[], [8], [8]])
    expect(left).toEqual([{ id: 'rake', time: 14 * hour }])
  })

  it('says each time that daily work finds no room, and what asks for more people than there are', () => {
    const jobs = [job('drive', 9, { daily: true }), job('lift', 1, { people: 3 })]
    expect(workDays(jobs, crew).left.map((l) => l.id)).toEqual(['drive', 'drive', 'drive', 'lift'])
  })

  it('gives work to whoever is named for it, though another has more time', () => {
    const { days } = workDays([job('walk', 3, { by: 1 }), job('call', 2, { by: 1 })], crew)
    expect(days[0]?.parts.map((p) => p.who)).toEqual([[1], [1]])
  })

  it('sends those with the most time along with whoever is named', () => {
    const jobs = [job('call', 2, { by: 1 }), job('survey', 3, { people: 2, by: 1 })]
    const { days } = workDays(jobs, { ...crew, people: 3 })
    expect(days[0]?.parts.map((p) => p.who)).toEqual([[1], [0, 1]])
  })

  it('begins nothing after its last day', () => {
    const { days, left } = workDays([job('move', 30, { split: true, to: 2 })], crew)
    expect(days.map((d) => d.parts.length)).toEqual([1, 1, 0])
    expect(left).toEqual([{ id: 'move', time: 14 * hour }])
  })

  it('keeps the days of a borrowed machine for its work, and does it on no other', () => {
    // Six hours of raking would fill day 2; the grader is here on days 2 and 3 alone.
    const grade = job('grade', 10, { split: true, on: [2, 3] })
    const rake = job('rake', 24, { split: true })
    const { days, left } = workDays([rake, grade], { ...crew, people: 1 })
    expect(days.map((d) => d.parts.map((p) => [p.id, p.time / hour]))).toEqual([
      [['rake', 8]],
      [['grade', 8]],
      [
        ['grade', 2],
        ['rake', 6],
      ],
    ])
    expect(left).toEqual([{ id: 'rake', time: 10 * hour }])
  })

  it('refuses a crew without a shift', () => {
    expect(() => workDays([], { ...crew, shift: Number.NaN })).toThrow(RangeError)
  })

  it('never books anybody longer than a shift, and loses no work', () => {
    const jobs = fc.array(
      fc.record({
        people: fc.integer({ min: 1, max: 3 }),
        quarters: fc.integer({ min: 1, max: 60 }),
        from: fc.integer({ min: 1, max: 4 }),
        split: fc.boolean(),
      }),
      { maxLength: 12 },
    )
    fc.assert(
      fc.property(jobs, (drawn) => {
        const list = drawn.map(({ quarters, ...j }, i) => job(`j${i}`, quarters / 4, j))
        const { days, left } = workDays(list, crew)
        for (const d of days) for (const w of d.worked) expect(w).toBeLessThanOrEqual(crew.shift)
        for (const { id, time } of list) {
          const booked = days.flatMap((d) => d.parts).filter((p) => p.id === id)
          const all = [...booked, ...left.filter((l) => l.id === id)]
          expect(all.reduce((sum, p) => sum + p.time, 0)).toBeCloseTo(time, 3)
        }
      }),
    )
  })
})
