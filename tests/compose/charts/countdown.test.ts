import { describe, expect, it } from 'vitest'
import { placeInWeek } from '../../../src/compose/dates.ts'
import { demoManual, demos } from '../../support/demo.ts'

describe.each(demos)('countdown of %s', (id) => {
  it('puts every dated task into the calendar or beside it, on its day of the table', async () => {
    const { manual } = await demoManual(id)
    const calendar = manual.charts.countdown
    const rows = manual.plans.find((p) => p.id === 'countdown')?.tables[0]?.rows ?? []
    const days = calendar?.weeks.flat() ?? []
    expect([
      ...(calendar?.earlier ?? []),
      ...days.flatMap((d) => d.tasks),
      ...(calendar?.later ?? []),
    ]).toHaveLength(rows.length)
    const grader = days.find((d) =>
      d.tasks.some((t) => /^(?:grader day|pull back by hand)$/.test(t)),
    )
    expect(
      rows.find((r) => /^Borrowed-grader day|^Pull back the rail by hand/.test(r[1] ?? ''))?.[0],
    ).toContain(String(Number(grader?.date.slice(8))))
  })

  it('has whole weeks in order, all race days in them, and no gap', async () => {
    const { manual } = await demoManual(id)
    const { weeks = [], weekdays = [] } = manual.charts.countdown ?? {}
    const days = weeks.flat()
    expect(weekdays[0]).toBe(manual.facility.system === 'us' ? 'Sun' : 'Mon')
    for (const week of weeks) {
      expect(week).toHaveLength(7)
      week.forEach((d, i) => expect(placeInWeek(d.date, manual.facility.system), d.date).toBe(i))
    }
    for (const [i, d] of days.slice(1).entries())
      expect(Date.parse(d.date) - Date.parse(days[i]?.date ?? '')).toBe(86_400_000)
    expect(days.filter((d) => d.isRaceDay).map((d) => d.date)).toEqual(
      manual.raceDays.map((d) => d.date).sort(),
    )
  })
})
