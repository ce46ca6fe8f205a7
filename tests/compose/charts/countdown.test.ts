import { describe, expect, it } from 'vitest'
import { placeInWeek } from '../../../src/compose/dates.ts'
import { changedSmallManual, smallManual } from '../../support/small.ts'

const metricManual = () => changedSmallManual((text) => text.replace('units: us', 'units: metric'))

describe.each([
  ['US', smallManual],
  ['metric', metricManual],
])('countdown of a %s facility', (_, manualHere) => {
  it('puts every dated task into the calendar or beside it, on its day of the table', async () => {
    const { manual } = await manualHere()
    const { earlier = [], weeks = [], later = [] } = manual.charts.countdown ?? {}
    const days = weeks.flat()
    // The third row has no short form.
    expect([...earlier, ...days.flatMap((d) => d.tasks), ...later]).toHaveLength(2)
    const daily = days.find((d) => d.tasks.includes('harrow daily'))
    const rows = manual.schedules.find((p) => p.id === 'countdown')?.tables[0]?.rows ?? []
    const date = rows.find((r) => r[1]?.startsWith('[Harrow]'))?.[0]
    expect(date).toContain(String(Number(daily?.date.slice(8))))
  })

  it('has whole weeks in order, all race days in them, and no gap', async () => {
    const { manual } = await manualHere()
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
