import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { tasksOf } from '../../../src/compose/charts/countdown.ts'
import { composeSchedules } from '../../../src/compose/schedules/schedules.ts'
import { workDayRows } from '../../../src/compose/schedules/work-rows.ts'
import { addDays } from '../../../src/model/day.ts'
import { contextFor, halfMile } from '../support/context.ts'

/** The manual is made on 14 June. A fair so many days later, with a grader on some days before it. */
const made = '2027-06-14'
const fair = (inDays: number, before: readonly number[], people = 3): string => {
  const race = addDays(made, inDays)
  return `${halfMile}equipment:
  - { id: h, name: the harrow, can: [harrow], from: own, width: 8 ft }
  - { id: g, name: the grader, can: [grade], from: borrowed, owner: county, width: 12 ft, days: [${before.map((n) => addDays(race, -n)).join(', ')}] }
crew: { people: ${people} }
race-days: [{ date: ${race}, first-post: "13:00", races: 8 }]
`
}

const composed = async (text: string) => {
  const whole = await contextFor(text, {}, { findings: [] })
  const plans = new Set(['countdown', 'ten-days'])
  const schedules = whole.library.schedules.filter((s) => plans.has(s.value.id))
  const context = { ...whole, library: { ...whole.library, schedules } }
  const composedPlans = composeSchedules(context)
  const rowsOf = (plan: string, table: string) =>
    composedPlans.find((s) => s.id === plan)?.tables.find((t) => t.id === table)?.rows ?? []
  return { context, rowsOf }
}

/** Days of the plan for the last days, each with its work. */
const workOn = (rows: readonly (readonly string[])[]) => {
  let day = ''
  return rows.map((r) => {
    day = r[0] === '' ? day : (r[0] ?? '')
    return { day, does: r[1] ?? '' }
  })
}

describe('a fair that is close', () => {
  it('has one list: what the plan for the last days does, the countdown leaves out', async () => {
    // 24 June; the grader is here on the 18th and 19th, days 5 and 6 of ten.
    const { context, rowsOf } = await composed(fair(10, [6, 5]))
    const countdown = rowsOf('countdown', 'countdown')
    expect(countdown.map((r) => r[0])).toEqual(['Fri, Jun 18', 'Thu, Jul 1'])
    const grader = workOn(workDayRows(context)).filter((w) =>
      w.does.startsWith('The grader is here'),
    )
    expect(grader.map((w) => w.day)).toEqual(['5: Fri, Jun 18'])
    const leave = rowsOf('ten-days', 'ten-days-leave').map((r) => r[0])
    expect(leave).not.toContain('Shaping the whole width with a grader')
    expect(tasksOf(context).filter((t) => t.task === 'grader: shape the track')).toContainEqual({
      date: '2027-06-18',
      task: 'grader: shape the track',
    })
    // Two weeks and more ahead the countdown stands whole.
    const far = await composed(fair(30, [14]))
    expect(far.rowsOf('countdown', 'countdown').length).toBeGreaterThan(15)
  })

  it('is planned for the days that are left, by the people that there are', async () => {
    const { context } = await composed(fair(6, [4], 4))
    const days = workDayRows(context).filter((r) => r[0] !== '')
    expect(days.map((r) => r[0]?.split(':')[0])).toEqual(['1', '2', '3', '4', '5', '6'])
    expect(days[0]?.[0]).toBe('1: Mon, Jun 14')
    expect(days[0]?.[4]).toMatch(/^You .*; Helper .*; Second helper .*; Third helper /)
  })

  it('puts the grader only on days on which it is here, in both plans', async () => {
    const days = fc.uniqueArray(fc.integer({ min: 1, max: 12 }), { minLength: 1, maxLength: 3 })
    await fc.assert(
      fc.asyncProperty(days, fc.integer({ min: 3, max: 40 }), async (before, inDays) => {
        const { context } = await composed(fair(inDays, before))
        const here = new Set(before.map((n) => addDays(addDays(made, inDays), -n)))
        for (const { date, task } of tasksOf(context))
          if (task === 'grader: shape the track') expect(here).toContain(date)
        for (const { day, does } of workOn(workDayRows(context)))
          if (does.startsWith('The grader is here')) {
            const first = addDays(made, Math.max(0, inDays - 10))
            expect(here).toContain(addDays(first, Number.parseInt(day, 10) - 1))
          }
      }),
      { numRuns: 20 },
    )
  })
})
