import { describe, expect, it } from 'vitest'
import { composeQuantities } from '../../../src/compose/figures/quantities.ts'
import { contextFor, halfMile } from '../support/context.ts'

/** Quantities that a manual with this text shows, beside those that every manual has. */
async function quantities(said: string, file = halfMile) {
  const context = await contextFor(file)
  const parts = { figures: [], procedures: [], date: said }
  return composeQuantities({ ...context.parts, ...parts }, context)
}

describe('quantities that text can name', () => {
  it('are facts and figures with their value, and where the working of a figure stands', async () => {
    const all = await quantities('{shape.radius} at {oval.straight}')
    expect(all['oval.straight']).toMatchObject({
      text: '600 ft',
      number: '600',
      unit: 'ft',
      ok: true,
      estimate: false,
      worksheet: undefined,
    })
    // Worked by hand: (2,640 − 1,200) ÷ 2π − 3 ft.
    expect(all['shape.radius']).toMatchObject({
      text: '226.2 ft',
      ok: true,
      worksheet: { number: 'W-1', id: 'shape' },
    })
  })

  it('are estimates while they rest on a usual value, and say what to measure', async () => {
    const { 'area.total': guessed } = await quantities('{area.total}')
    expect(guessed).toMatchObject({ ok: true, estimate: true })
    expect(guessed?.toMeasure).toContain('track width on the turns')
    const { 'area.total': taped } = await quantities(
      '{area.total}',
      halfMile.replace('600 ft }', '600 ft, width: { straights: 65 ft, turns: 70 ft } }'),
    )
    expect(taped).toMatchObject({ ok: true, estimate: false, toMeasure: [] })
  })

  it('say so where nothing here can do the work, or the file says nothing', async () => {
    const all = await quantities('{grade.time} and {prices.budget}')
    expect(all['grade.time']).toMatchObject({
      ok: false,
      text: 'not known',
      reason: 'no machine here does this work',
    })
    expect(all['prices.budget']?.reason).toMatch(/ is not known here yet$/)
  })

  it('are found in all parts of a manual, however deep, and stand in the order of their names', async () => {
    const context = await contextFor(halfMile)
    const chapter = { id: 'a', title: 'A', place: 'front', text: 'A lap is {shape.lap}.' } as const
    const parts = { figures: [], procedures: [], chapters: [chapter] }
    const names = Object.keys(composeQuantities({ ...context.parts, ...parts }, context))
    expect(names).toContain('shape.lap')
    expect(names).not.toContain('shape.radius')
    expect(names).toEqual([...names].sort())
  })
})
