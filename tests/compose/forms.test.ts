import { describe, expect, it } from 'vitest'
import { composeTermIndex } from '../../src/compose/term-index.ts'
import { demoManual, demos } from '../support/demo.ts'

describe('forms', () => {
  it('carry the stations, races, machines and drains of the facility', async () => {
    const { manual } = await demoManual('larkmoor')
    const rows = (id: string): readonly string[] => manual.forms.find((f) => f.id === id)?.table?.rows.filter((r) => r !== '') ?? []
    expect(rows('depth-grid')).toHaveLength(8)
    expect(rows('depth-grid')[1]).toBe('330 ft')
    expect(rows('between-log')).toEqual(Array.from({ length: 11 }, (_, i) => String(i + 1)))
    expect(rows('machine-check')).toEqual(manual.machines.map((m) => m.name))
    expect(rows('opening-list')).toContain('Drain 1')
    expect(rows('opening-list')).not.toContain('Grandstand')
  })

  it.each(demos)('leave room to write in every table of %s', async (id) => {
    const { manual } = await demoManual(id)
    expect(manual.forms.length).toBeGreaterThanOrEqual(11)
    for (const f of manual.forms) if (f.table) expect(f.table.rows.length, f.id).toBeGreaterThanOrEqual(6)
  })
})

describe('the index of terms', () => {
  it('names the procedures that use a term, in the order of the binder, and no others', async () => {
    const { manual } = await demoManual('larkmoor')
    const windrow = manual.termIndex.find((t) => t.term === 'windrow')
    const using = manual.procedures.filter((p) => /windrows?\b/i.test(JSON.stringify(p).replace(/\{[a-z0-9.-]+\}/g, ''))).map((p) => p.id)
    expect(windrow?.procedures).toEqual(using)
    expect(manual.termIndex.find((t) => t.term === 'rail')).toMatchObject({ throughout: true, procedures: [] })
  })

  it('takes no word inside another, and no name of a figure', async () => {
    const { manual } = await demoManual('larkmoor')
    const [first] = manual.procedures
    if (!first) throw new Error('no procedure')
    const about = (purpose: string) => composeTermIndex([{ term: 'lap', means: '' }], [{ ...first, ...Object.fromEntries(Object.keys(first).filter((k) => Array.isArray(first[k as keyof typeof first])).map((k) => [k, []])), title: '', who: { people: 1, roles: '', authority: '' }, sheet: { ...first.sheet, when: '', cautions: [], figures: [], steps: [], done: [], stop: [], reckoner: undefined, worksheets: [] }, training: { aims: [], show: [], practice: [], questions: [] }, purpose, next: undefined }])
    expect(about('One lap.')).toHaveLength(1)
    expect(about('Two laps.')).toHaveLength(1)
    expect(about('An overlap of {between.lap}, and [it](procedure:lap).')).toHaveLength(0)
  })
})
