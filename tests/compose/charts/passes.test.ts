import { describe, expect, it } from 'vitest'
import { composePasses } from '../../../src/compose/charts/passes.ts'
import { contextFor, halfMile } from '../support/context.ts'

const passes = async (machine: string) =>
  composePasses(
    await contextFor(
      `${halfMile.replace('600 ft }', '600 ft, width: { straights: 65 ft, turns: 70 ft } }')}equipment: [${machine}]\n`,
    ),
  )

describe('strips across the track', () => {
  it('are as many as cover its widest part, each as wide as the machine', async () => {
    const { harrow, ...others } = await passes(
      '{ id: h, name: h, can: [harrow], from: own, width: 12 ft, overlap: 1 ft }',
    )
    expect(others).toEqual({})
    // Worked by hand: 70 ft in strips of 11 ft that the harrow keeps of its 12.
    expect(harrow?.strips).toBe(7)
    expect(harrow?.laps).toBe(7)
    expect(harrow?.covers).toBeCloseTo(12 * 0.3048, 9)
    expect(harrow).toMatchObject({ overlap: 'gear.harrow.overlap', angle: 0, from: 'rail' })
  })

  it('of water begin at the outside', async () => {
    const { spray } = await passes(
      '{ id: t, name: t, can: [spray], from: own, tank: "2,000 gal", spray-width: 20 ft }',
    )
    expect(spray).toMatchObject({ from: 'outside', width: 'gear.spray.spray-width' })
  })

  it('are none where no machine covers the width', async () => {
    expect(await passes('{ id: l, name: l, can: [load], from: own }')).toEqual({})
  })
})
