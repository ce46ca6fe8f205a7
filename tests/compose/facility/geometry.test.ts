import { describe, expect, it } from 'vitest'
import { renderDrawings } from '../../../src/render/drawings/drawings.ts'
import { manualOf } from '../../support/small.ts'

// All three are stated, and do not quite close: 2 × 603 + 2π × (226.3 + 3) is 2,646.7 ft.
const overstated = `
id: any
name: Any Fair
place: { town: Nowhere }
units: us
paper: letter
oval: { lap: "2,640 ft", straight: 603 ft, radius: 226.3 ft }
cushion: { material: stone-dust }
`

describe('an oval of which more is stated than is needed', () => {
  it('has one shape on its worksheet, in text and in the plan', async () => {
    const { manual, words } = await manualOf(overstated)
    const outputs = manual.worksheets.flatMap((w) => w.outputs)
    const worked = (id: string): number => {
      const value = outputs.find((f) => f.id === id)?.value
      return value?.ok ? value.si : Number.NaN
    }
    // Worked by hand: 1,320 − π × 229.3, and twice that with 2π × 226.3.
    expect(manual.quantities['shape.straight']?.text).toBe('599.6 ft')
    expect(manual.quantities['rail.length']?.text).toBe('2,621.2 ft')
    const { straight, radius, lap, railLength } = manual.geometry
    expect({ straight, radius, lap, railLength }).toEqual({
      straight: worked('shape.straight'),
      radius: worked('shape.radius'),
      lap: worked('shape.lap'),
      railLength: worked('rail.length'),
    })
    const plan = renderDrawings(manual, words)['plan']?.at('page') ?? ''
    expect(plan).toMatch(/0 ft – 600 ft/)
    expect(plan).toMatch(/– 2,621 ft/)
    expect(plan).not.toMatch(/603|2,628/)
  })
})
