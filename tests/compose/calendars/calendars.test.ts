import { describe, expect, it } from 'vitest'
import { demoManual, demos } from '../../support/demo.ts'

describe('calendars', () => {
  it.each(demos)('of %s hold every race day, by time, and nothing that is over', async (demo) => {
    const { manual } = await demoManual(demo)
    expect(manual.calendars.length).toBeGreaterThan(1)
    for (const { entries } of manual.calendars) {
      for (const { date } of manual.raceDays)
        expect(entries.map((e) => e.id)).toContain(`race-day-${date}`)
      expect(new Set(entries.map((e) => e.id)).size).toBe(entries.length)
      const days = entries.map((e) => (e.time.kind === 'day' ? e.time.date : e.time.from))
      for (const day of days) expect(day.slice(0, 10) >= manual.date).toBe(true)
    }
  })

  it('give the superintendent each task of the countdown and each order, with who and how much', async () => {
    const { manual } = await demoManual('larkmoor')
    const own = manual.calendars.find((c) => c.id === 'superintendent')
    const order = own?.entries.find((e) => e.title === 'Order grit')
    expect(order?.time).toEqual({ kind: 'day', date: '2027-07-03' })
    expect(order?.notes[1]).toMatch(/^Who: /)
    expect(own?.entries.some((e) => e.title.startsWith('Order by today: '))).toBe(true)
  })

  it('give a driver the hours of each race day', async () => {
    const { manual } = await demoManual('larkmoor')
    const driver = manual.calendars.find((c) => c.id === 'harrow-driver')
    const hours = driver?.entries.filter((e) => e.title.startsWith('Harrow driver'))
    expect(
      new Set(hours?.map((e) => (e.time.kind === 'hours' ? e.time.from.slice(0, 10) : ''))),
    ).toEqual(new Set(manual.raceDays.map((d) => d.date)))
  })
})
