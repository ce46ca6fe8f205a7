import { describe, expect, it } from 'vitest'
import { renderDrawings } from '../../../../src/render/drawings/drawings.ts'
import { demoManual } from '../../../support/demo.ts'

describe('rolling with truck tires', () => {
  it('says where each truck runs on every lap of the first block, and where the next begins', async () => {
    const { manual, words } = await demoManual('larkmoor')
    const drawing = renderDrawings(manual, words).rolling
    for (const said of ['0 in · 7 in', '27 in · 34 in', '54 in · 61 in', '153 in · 160 in'])
      expect(drawing?.at('page')).toContain(said)
    for (const said of [
      'truck 1 at 27 in',
      'truck 2 at 34 in',
      '154 in',
      'then: truck 1 at 153 in',
      '36',
      '18',
    ])
      expect(drawing?.alt).toContain(said)
  })

  it('names the inside line as the track has it', async () => {
    const ownOf = async (id: string) => {
      const { manual, words } = await demoManual(id)
      return renderDrawings(manual, words).rolling?.at('page') ?? ''
    }
    expect(await ownOf('larkmoor')).toContain('pylon line')
    expect(await ownOf('ostmere')).toContain('hub rail')
  })

  it('is left out where no truck rolls', async () => {
    const { manual, words } = await demoManual('brambleford')
    expect(renderDrawings(manual, words)).not.toHaveProperty('rolling')
    expect(renderDrawings(manual, words)).not.toHaveProperty('passes-roll')
  })
})
