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

describe('countdown of a manual that is made late', () => {
  it('tells the days that are over from those to come', async () => {
    const { manual } = await changedSmallManual((text) =>
      text
        .replaceAll('date: 2027-08-0', 'date: 2027-07-0')
        .replace('lead-time: 10 days', 'lead-time: 40 days'),
    )
    const { earlier = [], weeks = [] } = manual.charts.countdown ?? {}
    const days = weeks.flat()
    expect(days[0]?.date).toBe('2027-05-30')
    expect(days.filter((d) => d.isPast).at(-1)?.date).toBe('2027-06-13')
    expect(days.find((d) => !d.isPast)?.date).toBe('2027-06-14')
    // What was due before the calendar begins says so beside its date.
    expect(earlier.map((t) => t.date)).toEqual(['Mon, May 3: past'])
  })
})
