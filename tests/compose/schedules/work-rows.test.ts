import { describe, expect, it } from 'vitest'
import { addDays, workingDaysOff } from '../../../src/model/day.ts'
import { demoManual, demos } from '../../support/demo.ts'

/** Minutes of every "2 h 35 min", "8 h" or "40 min" in a text. */
const minutesIn = (text: string): readonly number[] =>
  [...text.matchAll(/(?:(\d+) h)?(?:\s?(\d+) min)?/g)]
    .filter((m) => m[0] !== '')
    .map((m) => Number(m[1] ?? 0) * 60 + Number(m[2] ?? 0))

/** Printed times are rounded up to five minutes, each on its own. */
const rounding = 5

/** People on a usual day, as the demos say. */
const people = { larkmoor: 3, brambleford: 2, ostmere: 5 }

describe.each(demos)('the ten days of %s', (id) => {
  const tablesOf = async (): Promise<ReadonlyMap<string, readonly (readonly string[])[]>> => {
    const { manual } = await demoManual(id)
    const plan = manual.schedules.find((s) => s.id === 'ten-days')
    return new Map(plan?.tables.map((t) => [t.id, t.rows as readonly (readonly string[])[]]))
  }

  it('are ten, and nobody works longer than a shift on any', async () => {
    const days = (await tablesOf()).get('ten-days')?.filter((r) => r[0] !== '') ?? []
    expect(days.map((r) => Number.parseInt(r[0] ?? '', 10))).toEqual([
      1, 2, 3, 4, 5, 6, 7, 8, 9, 10,
    ])
    for (const day of days) {
      const hours = minutesIn(day[4] ?? '')
      expect(hours.length, day[0]).toBeGreaterThan(0)
      expect(hours.length, day[0]).toBeLessThanOrEqual(Math.min(5, Math.max(2, people[id])))
      for (const h of hours) {
        expect(h, day[0]).toBeLessThanOrEqual(8 * 60)
        // Who has nothing to do is not named.
        expect(h, day[0]).toBeGreaterThan(0)
      }
    }
  })

  it('say as hours of a day what its work adds up to for each person', async () => {
    const tables = await tablesOf()
    const daily = tables.get('ten-days-daily') ?? []
    const rows = tables.get('ten-days') ?? []
    const heads = rows.flatMap((r, i) => (r[0] === '' ? [] : [i]))
    heads.forEach((start, d) => {
      const parts = [
        ...rows.slice(start, heads[d + 1]).map((r) => ({ who: r[2], takes: r[3] ?? '' })),
        ...daily
          .filter((r) => Number(r[1]) <= d + 1)
          .map((r) => ({ who: r[2], takes: r[3] ?? '' })),
      ]
      const worked = (rows[start]?.[4] ?? '').split('; ').map((h) => minutesIn(h)[0] ?? 0)
      const crew = worked.length
      const hands = (who = ''): number =>
        who === 'Both' || who === 'All' ? crew : who.split(', ').length
      const sum = parts.reduce((total, p) => total + (minutesIn(p.takes)[0] ?? 0) * hands(p.who), 0)
      const total = worked.reduce((a, b) => a + b, 0)
      expect(Math.abs(sum - total)).toBeLessThanOrEqual(rounding * crew * (parts.length + 1))
    })
  })

  it('dig and drive nothing before the notice of the locating service has run', async () => {
    const { manual } = await demoManual(id)
    const first = manual.raceDays.map((d) => d.date).sort()[0] ?? ''
    const rows = (await tablesOf()).get('ten-days') ?? []
    const heads = rows.flatMap((r, i) => (r[0] === '' ? [] : [i]))
    const at = rows.findIndex((r) => r[1]?.startsWith('Drive the posts'))
    const day = heads.filter((h) => h <= at).length
    // Three working days, called on the first of the ten.
    expect(day).toBeGreaterThan(4)
    expect(addDays(first, day - 11) >= workingDaysOff(addDays(first, -10), 3)).toBe(true)
  })

  it('find room for all but work that may be left in the middle', async () => {
    const tables = await tablesOf()
    const over = (tables.get('ten-days-over') ?? []).map((r) => r[0] ?? '')
    for (const text of over) expect(text).toMatch(/^(\[Move material|Rake the build-up|Set the )/)
    const said = (tables.get('ten-days') ?? []).map((r) => r[1] ?? '').join()
    expect(said).toContain('Last inspection')
    expect(said).toContain('Train the volunteers')
  })

  it('ask for no machine that is not here', async () => {
    const { manual } = await demoManual(id)
    const can = new Set(manual.machines.flatMap((m) => m.can))
    const text = [...(await tablesOf())]
      .filter(([table]) => table === 'ten-days' || table === 'ten-days-daily')
      .flatMap(([, rows]) => rows.flat())
      .join()
    expect(text.includes('with the blade')).toBe(can.has('draw'))
    expect(text.includes('[Water]')).toBe(can.has('spray'))
  })
})
