import { describe, expect, it } from 'vitest'
import { demos, loadDemo } from '../../support/demo.ts'

/** Hours of "5:55 AM" or "17:30". */
function hourOf(clock: string): number {
  const [, hour, minute, half] = /^(\d+):(\d+)(?: (AM|PM))?$/.exec(clock) ?? []
  const hours = half === undefined ? Number(hour) : (Number(hour) % 12) + (half === 'PM' ? 12 : 0)
  return hours + Number(minute) / 60
}

describe.each(demos)('the crew schedule of %s', (id) => {
  it('adds up, row by row, to the hours that a race day is paid for', async () => {
    const { manual, computed } = await loadDemo(id)
    if (!manual || !computed) throw new Error(`${id} has faults`)
    const tables = manual.schedules.find((s) => s.id === 'race-days')?.tables ?? []
    const sums = tables
      .filter((t) => t.id.startsWith('rota'))
      .map(({ rows }) =>
        rows.reduce((sum, [place = '', from = '', to = '']) => {
          const people = Number(/: (\d+)/.exec(place)?.[1] ?? 1)
          return sum + people * (hourOf(to) - hourOf(from))
        }, 0),
      )
    expect(sums.length).toBeGreaterThan(0)
    const paid = (computed.engine.si('race-day.hours') ?? 0) / 3600
    // The figure is for the day with the most races; the others have schedules of their own.
    expect(sums.some((sum) => Math.abs(sum - paid) < 0.01)).toBe(true)
  })
})
