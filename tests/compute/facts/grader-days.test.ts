import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addDays, secondsPerDay } from '../../../src/model/day.ts'
import { contextFor, halfMile } from '../../compose/support/context.ts'

/** A fair of two days in July to which a grader is lent. */
const fair = (days: readonly string[], cushion = ''): string =>
  `${halfMile.replace('stone-dust }', `stone-dust${cushion} }`)}equipment:
  - { id: g, name: the grader, can: [grade], from: borrowed, owner: county, days: [${days.join(', ')}] }
race-days:
  - { date: 2027-07-08, first-post: "13:00", races: 8 }
  - { date: 2027-07-09, first-post: "13:00", races: 8 }
`

const daysOf = async (text: string) => {
  const { engine } = await contextFor(text)
  const days = (path: 'grader.before' | 'practice.grade-before') => {
    const si = engine.si(path)
    return si === undefined ? undefined : si / secondsPerDay
  }
  return {
    before: days('grader.before'),
    plan: days('practice.grade-before'),
    within: engine.si('grader.within'),
  }
}

describe('the days of a borrowed grader', () => {
  it('say when it shapes: on the first of them, and on the last where material comes off first', async () => {
    // 3 and 4 July are 5 and 4 days before 8 July.
    const days = ['2027-07-03', '2027-07-04']
    expect(await daysOf(fair(days))).toEqual({ before: 5, plan: 5, within: 2 })
    const deep = ', depth: { target: 1 in, found: 2 in }'
    expect(await daysOf(fair(days, deep))).toEqual({ before: 4, plan: 4, within: 2 })
  })

  it('count as two weeks before where nobody has said, and as none when racing has begun', async () => {
    const { engine } = await contextFor(fair(['2027-07-03']).replace(/, days: .*\]/, ''))
    expect(engine.si('practice.grade-before')).toBe(14 * secondsPerDay)
    expect(await daysOf(fair(['2027-07-08']))).toEqual({
      before: undefined,
      plan: 14,
      within: undefined,
    })
  })

  it('are of use in the last days only while horses can settle what it opens', async () => {
    expect((await daysOf(fair(['2027-07-06']))).within).toBeUndefined()
    expect((await daysOf(fair(['2027-06-20']))).within).toBeUndefined()
  })

  it('never let a plan count from a day on which it is not here', async () => {
    const offsets = fc.uniqueArray(fc.integer({ min: -40, max: 3 }), { minLength: 1, maxLength: 4 })
    await fc.assert(
      fc.asyncProperty(offsets, async (chosen) => {
        const days = chosen.map((n) => addDays('2027-07-08', n))
        const { before } = await daysOf(fair(days))
        if (before === undefined) expect(chosen.every((n) => n >= 0)).toBe(true)
        else expect(days).toContain(addDays('2027-07-08', -before))
      }),
      { numRuns: 15 },
    )
  })
})
