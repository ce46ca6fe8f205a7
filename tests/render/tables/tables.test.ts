import { describe, expect, it } from 'vitest'
import { dataTables } from '../../../src/render/tables/tables.ts'
import { demoManual, demos } from '../../support/demo.ts'

describe('tables to work with', () => {
  it.each(demos)('of %s have a cell below every head, and no names of figures', async (demo) => {
    const { manual, words } = await demoManual(demo)
    for (const { heads, rows } of dataTables(manual, words))
      for (const row of rows) {
        expect(row).toHaveLength(heads.length)
        expect(row.join(' ')).not.toMatch(/\{[a-z]|undefined|procedure:/)
      }
  })

  it('hold every figure with its worksheet, number and what it rests on', async () => {
    const { manual, words } = await demoManual('larkmoor')
    const figures = dataTables(manual, words).find((t) => t.id === 'figures')
    expect(figures?.rows).toHaveLength(manual.figures.length)
    const lap = figures?.rows.find((row) => row[1] === 'shape.lap')
    expect(lap?.slice(0, 7)).toEqual([
      'W-1',
      'shape.lap',
      expect.any(String),
      '2,640 ft',
      2640,
      'ft',
      expect.closeTo(804.672, 9),
    ])
    expect(String(lap?.[9])).toContain('stated')
  })

  it('put the crew of all race days under each other, each with its day', async () => {
    const { manual, words } = await demoManual('larkmoor')
    const rota = dataTables(manual, words).find((t) => t.id === 'rota')
    expect(new Set(rota?.rows.map((row) => row[0])).size).toBeGreaterThan(1)
  })
})
