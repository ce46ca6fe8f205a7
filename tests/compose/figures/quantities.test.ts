import { describe, expect, it } from 'vitest'
import { composeQuantities } from '../../../src/compose/figures/quantities.ts'
import { figureIds } from '../../../src/compute/uses/ids.ts'
import { factPaths } from '../../../src/model/fact-spec.ts'
import { contextFor, halfMile } from '../support/context.ts'

const quantities = async (file = halfMile) => composeQuantities(await contextFor(file))

describe('quantities that text can name', () => {
  it('are facts and figures with their value, and where the working of a figure stands', async () => {
    const all = await quantities()
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
    const { 'area.total': guessed } = await quantities()
    expect(guessed).toMatchObject({ ok: true, estimate: true })
    expect(guessed?.toMeasure).toContain('track width on the turns')
    const { 'area.total': taped } = await quantities(
      halfMile.replace('600 ft }', '600 ft, width: { straights: 65 ft, turns: 70 ft } }'),
    )
    expect(taped).toMatchObject({ ok: true, estimate: false, toMeasure: [] })
  })

  it('say so where nothing here can do the work, or the file says nothing', async () => {
    const all = await quantities()
    expect(all['grade.time']).toMatchObject({
      ok: false,
      text: 'not known',
      reason: 'no machine here does this work',
    })
    expect(all['prices.budget']?.reason).toMatch(/ is not known here yet$/)
  })

  it('are all that content may name, each worked out only when it is asked for', async () => {
    const context = await contextFor(halfMile)
    const asked: string[] = []
    const figure: typeof context.engine.figure = (id) => {
      asked.push(id)
      return context.engine.figure(id)
    }
    const all = composeQuantities({ ...context, engine: { ...context.engine, figure } })
    expect(all['shape.lap']?.ok).toBe(true)
    expect([all['shape.lap'], asked]).toEqual([expect.anything(), ['shape.lap']])
    expect(new Set(Object.keys(all))).toEqual(new Set([...figureIds, ...factPaths]))
    expect(all['shape.nothing']).toBeUndefined()
  })
})
