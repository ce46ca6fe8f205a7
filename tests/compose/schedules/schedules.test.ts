import { describe, expect, it } from 'vitest'
import { changedSmallManual, smallManual } from '../../support/small.ts'

describe('plans', () => {
  it('date every task of the countdown back from the first race, in order', async () => {
    const { manual } = await smallManual()
    const rows = manual.schedules.find((p) => p.id === 'countdown')?.tables[0]?.rows ?? []
    // First race 3 August 2027; material lies there 21 days before, and takes 10 days to come.
    expect(rows.find((r) => r[1] === 'Order material')?.[0]).toBe('Sat, Jul 3')
    const days = rows.map((r) => Date.parse(`${r[0]}, 2027`))
    expect(days).toEqual([...days].sort((a, b) => a - b))
  })

  it('say of a day that it is past when the manual is made', async () => {
    // The manual is of 14 June; material that takes 40 days to come was to be ordered on 3 June.
    const { manual } = await changedSmallManual((text) =>
      text.replace('lead-time: 10 days', 'lead-time: 40 days'),
    )
    const rows = manual.schedules.find((p) => p.id === 'countdown')?.tables[0]?.rows ?? []
    expect(rows.find((r) => r[1] === 'Order material')?.[0]).toBe('Thu, Jun 3: past')
  })

  it('give each race day its own clock and its own water, though the last of them ends after midnight', async () => {
    const { manual } = await smallManual()
    const tables = manual.schedules.find((p) => p.id === 'race-days')?.tables ?? []
    const clocks = tables.filter((t) => t.id.startsWith('clock'))
    expect(clocks.map((t) => t.title.split(': ')[1])).toEqual(['Tue, Aug 3', 'Wed, Aug 4'])
    // Nine intervals of 20 min after 13:00, ten after 18:30.
    expect(clocks.map((t) => t.rows[0]?.[0])).toEqual(['4:00 PM', '9:50 PM'])
    expect(tables.filter((t) => t.id.startsWith('hours'))).toHaveLength(2)
  })

  it('say which tables rest on usual values where their numbers stand as plain text', async () => {
    const { manual } = await smallManual()
    const tables = manual.schedules.flatMap((p) => p.tables)
    const marked = (id: string) => tables.filter((t) => t.id.startsWith(id)).map((t) => t.estimate)
    // The last race follows from the program; what the air draws does not.
    expect(marked('clock')).toEqual([false, false])
    expect(marked('hours')).toEqual([true, true])
    expect(marked('stations')).toEqual([false])
  })

  it('move and pile up no more than the survey finds too much', async () => {
    const { manual } = await smallManual()
    const [stations, moves] = manual.schedules.find((p) => p.id === 'depth-survey')?.tables ?? []
    const tons = (cells: readonly (string | undefined)[]): number =>
      cells.reduce((sum, c) => sum + Number.parseFloat((c ?? '').replace(',', '')), 0)
    const over = tons(stations?.rows.map((r) => r[3]) ?? [])
    const out = tons((moves?.rows ?? []).filter((r) => r[0] !== 'stockpile').map((r) => r[2]))
    expect(over).toBeGreaterThan(0)
    expect(out).toBeGreaterThan(0)
    // Each line is printed to a whole ton; what is within the limits stays.
    expect(out).toBeLessThanOrEqual(over + 4)
    expect(manual.cushionMap?.cells).toHaveLength(9)
  })

  it('leave out what a facility gives no facts for', async () => {
    const { manual } = await changedSmallManual((text) =>
      text.replace(/surveys:\n( .*\n)+/, '').replace(/ {2}- \{ id: harrow,.*\n/, ''),
    )
    expect(manual.schedules.map((p) => p.id)).toEqual(['countdown', 'race-days'])
    const rows = manual.schedules[0]?.tables[0]?.rows.map((r) => r[1]) ?? []
    expect(rows).toEqual(['Order material', 'Write up the season'])
  })
})
