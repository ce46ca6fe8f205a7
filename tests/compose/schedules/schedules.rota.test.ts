import { describe, expect, it } from 'vitest'
import { composeSchedules } from '../../../src/compose/schedules/schedules.ts'
import { demoManual } from '../../support/demo.ts'
import { contextFor, halfMile } from '../support/context.ts'

const machines = `equipment:
  - { id: drag, name: Harrow, can: [harrow], from: own, width: 8 ft, speed: 5 mph }
  - { id: blade, name: Blade, can: [draw], from: own, width: 8 ft, speed: 3 mph }
  - { id: truck, name: Truck, can: [spray], from: own, tank: 2000 gal, spray-width: 15 ft }
lights: true
`

/** A half mile under lights, with one race day. */
const onDay = (day: string) =>
  contextFor(
    `${halfMile}${machines}race-days: [{ date: 2027-08-03, ${day} }]\n`,
    {},
    { findings: [], procedures: [], symptoms: [] },
  )

/** Rows of a table for that day. */
async function rowsOf(id: string, day: string): Promise<readonly (readonly string[])[]> {
  const tables = composeSchedules(await onDay(day)).flatMap((p) => p.tables)
  return (tables.find((t) => t.id.startsWith(id))?.rows ?? []).map((r) => r.map(String))
}

const minutes = (clock = ''): number => {
  const [, hours, past, half] = /(\d+):(\d+) ([AP])M/.exec(clock) ?? []
  return ((Number(hours) % 12) + (half === 'P' ? 12 : 0)) * 60 + Number(past)
}

describe('who works when', () => {
  it('goes on past midnight where racing does, for everybody', async () => {
    // Eight intervals of 22 min from 21:30: the ninth race at 0:26, clear at 0:48.
    const night = 'first-post: "9:30 PM", races: 9, interval: 22 min'
    const clock = await rowsOf('race-day-clock', night)
    expect(clock.find((r) => r[1] === 'Last race')?.[0]).toBe('12:26 AM')
    expect(clock.at(-1)).toEqual([
      '12:48 AM',
      expect.stringContaining('Gates locked'),
      'superintendent',
    ])
    const rota = await rowsOf('rota', night)
    for (const place of [
      'Gate crew',
      'On foot: 2 people',
      'Superintendent',
      'Deputy superintendent',
    ])
      expect(rota.map((r) => r[0])).toContain(place)
    expect(rota.find((r) => r[0] === 'Gate crew')?.[2]).toBe('12:48 AM')
  })

  it('has a place for whoever pulls back the rail, and for what is left for first light', async () => {
    const early = await rowsOf('rota', 'first-post: "1:00 PM", races: 3, interval: 20 min')
    expect(early.map((r) => r[0])).toContain('Harrow and blade driver, late')
    expect(early.some((r) => r[0]?.includes('next morning'))).toBe(false)
    const late = await rowsOf('rota', 'first-post: "9:30 PM", races: 9, interval: 22 min')
    const morning = late.filter((r) => r[0]?.includes('next morning'))
    expect(morning.map((r) => r.slice(0, 2))).toEqual([
      ['Superintendent, next morning', 'first light'],
      ['Driver, next morning', 'first light'],
    ])
  })

  it('adds up to the hours that a race day is paid for', async () => {
    const day = 'first-post: "1:00 PM", races: 9, interval: 22 min'
    const rows = (await rowsOf('rota', day)).map(([place = '', from, to]) => {
      const people = Number(/: (\d+)/.exec(place)?.[1] ?? 1)
      return (people * (minutes(to) - minutes(from))) / 60
    })
    const { engine } = await onDay(day)
    expect(rows.reduce((sum, h) => sum + h, 0)).toBeCloseTo(
      (engine.si('crew-day.all') ?? 0) / 3600,
      9,
    )
  })

  it('stands in the calendars: a night of the demo fair leaves work for the morning after', async () => {
    const { manual } = await demoManual('larkmoor')
    const driver = manual.calendars.find((c) => c.id === 'harrow-driver')
    const next = driver?.entries.filter((e) => e.title === 'Driver, next morning') ?? []
    expect(next).toHaveLength(1)
    // Races on the evening of 6 August, in summer time of the central states: five hours behind.
    const { time } = next[0] ?? {}
    expect(time?.kind === 'hours' && time.from.slice(0, 13)).toBe('2027-08-07T10')
  })
})
