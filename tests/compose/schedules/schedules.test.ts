import { describe, expect, it } from 'vitest'
import { demoManual } from '../../support/demo.ts'

describe('plans', () => {
  it('date every task of the countdown back from the first race, in order', async () => {
    const { manual } = await demoManual('larkmoor')
    const rows = manual.plans.find((p) => p.id === 'countdown')?.tables[0]?.rows ?? []
    // First race 3 August 2027; material lies there 21 days before, and takes 10 days to come.
    expect(rows.find((r) => r[1] === 'Order material')?.[0]).toBe('Sat, Jul 3')
    const days = rows.map((r) => Date.parse(`${r[0]}, 2027`))
    expect(days).toEqual([...days].sort((a, b) => a - b))
  })

  it('give each race day its own clock and its own water, though the last of them ends after midnight', async () => {
    const { manual } = await demoManual('larkmoor')
    const tables = manual.plans.find((p) => p.id === 'race-days')?.tables ?? []
    const clocks = tables.filter((t) => t.id.startsWith('race-day-clock'))
    expect(clocks.map((t) => t.title.split(': ')[1])).toEqual([
      'Tue, Aug 3',
      'Wed, Aug 4',
      'Fri, Aug 6',
    ])
    expect(clocks[0]?.rows.find((r) => r[1]?.startsWith('Last race'))?.[0]).toBe('16:00')
    expect(clocks[1]?.rows.find((r) => r[1]?.startsWith('Last race'))?.[0]).toBe('16:20')
    expect(tables.filter((t) => t.id.startsWith('race-day-hours'))).toHaveLength(3)
    expect(clocks.flatMap((t) => t.rows.flat()).join(' ')).not.toMatch(/\{/)
  })

  it('move and pile up as much as the survey finds too much and too little', async () => {
    const { manual } = await demoManual('larkmoor')
    const [, stations, moves] = manual.plans.find((p) => p.id === 'depth-survey')?.tables ?? []
    const tons = (cells: readonly (string | undefined)[]): number =>
      cells.reduce((sum, c) => sum + Number.parseFloat((c ?? '').replace(',', '')), 0)
    const over = tons(stations?.rows.map((r) => r[3]) ?? [])
    const out = tons((moves?.rows ?? []).filter((r) => r[0] !== 'stockpile').map((r) => r[2]))
    // Each line is printed to a whole ton.
    expect(Math.abs(over - out)).toBeLessThanOrEqual(4)
    expect(manual.cushionMap?.cells).toHaveLength(24)
  })

  it('leave out what a facility gives no facts for', async () => {
    const { manual } = await demoManual('brambleford')
    const ids = manual.plans.map((p) => p.id)
    expect(ids).not.toContain('depth-survey')
    expect(ids).not.toContain('level-survey')
    expect(ids).toContain('countdown')
    expect(
      manual.plans
        .filter((p) => p.id !== 'symptom-chart')
        .flatMap((p) => p.tables.flatMap((t) => t.rows.flat()))
        .join('\n'),
    ).not.toMatch(/grader day|\broll(ed|ing)?\b/)
  })
})
