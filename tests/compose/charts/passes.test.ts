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
    const { harrow } = await passes(
      '{ id: h, name: h, can: [harrow], from: own, width: 12 ft, overlap: 1 ft }',
    )
    // Worked by hand: 70 ft in strips of 11 ft that the harrow keeps of its 12.
    expect(harrow?.strips).toBe(7)
    expect(harrow?.laps).toBe(7)
    expect(harrow?.covers).toBeCloseTo(12 * 0.3048, 9)
    expect(harrow).toMatchObject({ overlap: 'gear.harrow.overlap', angle: 0, from: 'rail' })
  })

  it('next to the rail are drawn out by half a harrow each lap, where no blade does it', async () => {
    const harrow = '{ id: h, name: h, can: [harrow], from: own, width: 8 ft }'
    const drawIn = (await passes(harrow))['draw-in']
    expect(drawIn?.strips).toBe(drawIn?.laps)
    const half = (drawIn?.covers ?? 0) - (drawIn?.over ?? 0)
    expect(half).toBeCloseTo(4 * 0.3048, 9)
    expect(drawIn?.band).toBeCloseTo(half * ((drawIn?.laps ?? 0) + 1), 9)
    const blade = '{ id: b, name: b, can: [draw], from: own, width: 8 ft }'
    const both = await passes(`${harrow}, ${blade}`)
    expect(Object.keys(both).sort()).toEqual(['grade-band', 'harrow'])
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
