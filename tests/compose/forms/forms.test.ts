import { describe, expect, it } from 'vitest'
import type { Manual } from '../../../src/model/manual.ts'
import { bareFacility, manualOf, smallManual } from '../../support/small.ts'

const formOf = (manual: Manual | undefined, id: string) => {
  const found = manual?.forms.find((f) => f.id === id)
  if (!found) throw new Error(`there is no form ${id}`)
  return found
}

const rows = (manual: Manual | undefined, id: string): readonly string[] =>
  formOf(manual, id).table?.rows.map((r) => r.head) ?? []
const heads = (manual: Manual | undefined, id: string): readonly string[] =>
  formOf(manual, id).table?.columns.map((c) => c.head) ?? []

describe('forms', () => {
  it('carry the races, machines and places of the facility', async () => {
    const { manual } = await smallManual()
    // The second day has eleven races.
    expect(rows(manual, 'between')).toEqual(Array.from({ length: 11 }, (_, i) => String(i + 1)))
    expect(rows(manual, 'opening')).toContain('Drain 1')
    expect(rows(manual, 'opening')).not.toContain('Finish')
    expect(rows(manual, 'hand-over')).toEqual(expect.arrayContaining(['The harrow', 'The truck']))
  })

  it('measure the depth where the last survey did, so that the two can be compared', async () => {
    const { manual } = await smallManual()
    expect(rows(manual, 'daily-log')).toEqual(['0 ft', '900 ft', '1,800 ft'])
    expect(
      heads(manual, 'daily-log')
        .slice(1, 4)
        .map((h) => /[\d,]+ ft$/.exec(h)?.[0]),
    ).toEqual(['5 ft', '30 ft', '60 ft'])
  })

  it('measure it evenly around the rail, on as many lines as the facility wants, where there is no survey', async () => {
    const { manual } = await manualOf(
      `${bareFacility}practice: { survey: { stations: "40", lines: "5" } }\n`,
    )
    const stations = rows(manual, 'daily-log')
    expect(stations).toHaveLength(40)
    expect(new Set(stations).size).toBe(40)
    expect(heads(manual, 'daily-log')).toHaveLength(7)
    expect(new Set(heads(manual, 'daily-log')).size).toBe(7)
  })

  it('have one check for each machine, of what that machine has', async () => {
    const { manual } = await smallManual()
    for (const m of manual.machines)
      expect(formOf(manual, `machine-${m.id}`).title).toContain(m.name)
    expect(rows(manual, 'machine-truck')).toEqual(['Tires', 'Tank, nozzles'])
    expect(rows(manual, 'machine-harrow')).toEqual(['Tires', 'Teeth'])
    const written = formOf(manual, 'machine-harrow').table?.rows.map((r) => r.write)
    expect(written).toEqual([undefined, 'line'])
  })

  it('have no check for a facility without machines', async () => {
    const { manual } = await manualOf(bareFacility)
    expect(manual.forms.some((f) => f.id.startsWith('machine-'))).toBe(false)
  })
})
