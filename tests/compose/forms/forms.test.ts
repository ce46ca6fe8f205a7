import { describe, expect, it } from 'vitest'
import type { Manual } from '../../../src/model/manual.ts'
import { demoManual, demos, loadText } from '../../support/demo.ts'

const oval =
  'id: tiny\nname: Tiny Fair\nplace: { town: Nowhere }\nunits: us\npaper: letter\noval: { lap: 2640 ft, straight: 600 ft }\ncushion: { material: clay }\n'

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
  it('carry the stations, races, machines and drains of the facility', async () => {
    const { manual } = await demoManual('larkmoor')
    expect(rows(manual, 'between-log')).toEqual(Array.from({ length: 11 }, (_, i) => String(i + 1)))
    expect(rows(manual, 'opening-list')).toContain('Drain 1')
    expect(rows(manual, 'opening-list')).not.toContain('Grandstand')
    expect(rows(manual, 'hand-over')).toEqual(
      expect.arrayContaining(['Hydrant', 'The plate tamper']),
    )
  })

  it('measure the depth where the last survey did, so that the two can be compared', async () => {
    const { manual } = await demoManual('larkmoor')
    expect(rows(manual, 'depth-grid')).toEqual([
      '0 ft',
      '330 ft',
      '660 ft',
      '990 ft',
      '1,320 ft',
      '1,650 ft',
      '1,980 ft',
      '2,310 ft',
    ])
    expect(
      heads(manual, 'depth-grid')
        .slice(1, 4)
        .map((h) => /[\d,]+ ft$/.exec(h)?.[0]),
    ).toEqual(['5 ft', '32 ft', '60 ft'])
  })

  it('measure it evenly around the rail, on as many lines as the facility wants, where there is no survey', async () => {
    const { manual } = await loadText(
      `${oval}practice: { survey: { stations: "40", lines: "5" } }\n`,
    )
    const stations = rows(manual, 'depth-grid')
    expect(stations).toHaveLength(40)
    expect(new Set(stations).size).toBe(40)
    expect(heads(manual, 'depth-grid')).toHaveLength(7)
    expect(new Set(heads(manual, 'depth-grid')).size).toBe(7)
  })

  it('have one check for each machine, of what that machine has', async () => {
    const { manual } = await demoManual('larkmoor')
    for (const m of manual.machines)
      expect(formOf(manual, `machine-check-${m.id}`).title).toContain(m.name)
    const looks = (id: string) => rows(manual, `machine-check-${id}`).join('\n')
    expect(looks('water-truck')).toMatch(/[Nn]ozzles/)
    expect(looks('county-grader')).toMatch(/[Bb]lade/)
    expect(looks('county-grader')).not.toMatch(/[Nn]ozzles/)
    expect(looks('tamper')).not.toMatch(/[Bb]rakes|belt/)
    expect(
      formOf(manual, 'machine-check-harrow').table?.rows.filter((r) => r.write === 'line').length,
    ).toBeGreaterThan(0)
  })

  it('have no check for a facility without machines', async () => {
    const { manual } = await loadText(oval)
    expect(manual?.forms.some((f) => f.id.startsWith('machine-check'))).toBe(false)
  })

  it.each(demos)('leave room to write in every table of %s', async (id) => {
    const { manual } = await demoManual(id)
    for (const f of manual.forms)
      if (f.table) expect(f.table.rows.length + f.table.spare, f.id).toBeGreaterThan(2)
  })

  it.each(demos)('cover the whole work at %s', async (id) => {
    const { manual } = await demoManual(id)
    const ids = manual.forms.map((f) => f.id)
    for (const wanted of [
      'daily-log',
      'depth-grid',
      'moisture-log',
      'watering-log',
      'repair-record',
      'rain-record',
      'incident',
      'training-record',
      'hand-over',
      'order',
    ])
      expect(ids).toContain(wanted)
    expect(new Set(ids).size).toBe(ids.length)
  })
})
